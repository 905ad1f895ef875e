import { z } from 'zod';
import { date, identifier, instant, oneOf, wholeIn } from '../scalars.js';
import { SEXES } from '../words.table.js';
import { before } from './before.js';
import { lesion } from './lesion.js';
import {
  defect,
  dissection,
  equipment,
  incision,
  injection,
  markers,
  position,
  times,
} from './procedure.js';
import { after, resection, specimen, team } from './result.js';
import { safety } from './safety.js';

/**
 * The finished dissection of one lesion, as the note system knows it when the scope has left.
 * Lengths in mm unless the name says cm; instants carry their offset; a list that is absent was
 * not told, an empty list says "none".
 */
export const caseSchema = z.strictObject({
  schema: z.literal('case/1'),
  source: z
    .string()
    .regex(/^[a-z0-9][a-z0-9-]{0,39}$/)
    .meta({ title: '1 to 40 lower-case letters, digits and hyphens' })
    .describe('the sending system; must be the one the API key belongs to'),
  case: identifier.describe('natural key: one lesion dissected'),
  patient: z.strictObject({
    ...identifier.shape,
    bornOn: date.optional(),
    ageYears: wholeIn({ from: 0, to: 125, unit: 'years' }).optional(),
    sex: oneOf(SEXES).optional(),
  }),
  revision: wholeIn({ from: 1, to: 1_000_000 }),
  sentAt: instant,
  session: identifier.optional().describe('shared by the lesions of one session'),
  lesionsInSession: wholeIn({ from: 1, to: 20 }).optional(),
  encounter: identifier.optional(),
  unit: identifier.optional().describe('the endoscopy unit'),
  before: before.optional(),
  lesion,
  times,
  equipment: equipment.optional(),
  position: position.optional(),
  markers: markers.optional(),
  injection: injection.optional(),
  incision: incision.optional(),
  dissection: dissection.optional(),
  safety: safety.optional(),
  resection,
  defect: defect.optional(),
  specimen: specimen.optional(),
  team,
  after: after.optional(),
});

/** Fields of the contract made deeply read-only. */
type DeepReadonly<T> = T extends readonly (infer E)[]
  ? readonly DeepReadonly<E>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;

export type CaseFields = DeepReadonly<z.infer<typeof caseSchema>>;
