import { z } from 'zod';
import { revision, source } from '../envelope.js';
import type { DeepReadonly } from '../read-only.js';
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
  source,
  case: identifier.describe('natural key: one lesion dissected'),
  patient: z.strictObject({
    ...identifier.shape,
    bornOn: date.optional(),
    ageYears: wholeIn({ from: 0, to: 125, unit: 'years' }).optional(),
    sex: oneOf(SEXES).optional(),
  }),
  revision,
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

export type CaseFields = DeepReadonly<z.infer<typeof caseSchema>>;
