import { z } from 'zod';
import { revision, source } from '../envelope.js';
import type { DeepReadonly } from '../read-only.js';
import { date, identifier, instant, listOf, oneOf } from '../scalars.js';
import { barrettLeft, newLesion, next, passage, quality, scar } from './findings.js';
import { ROUTES } from './words.table.js';

/**
 * A follow-up endoscopy that took place, natural key case + examination. An examination that
 * looked at the scars of several cases is sent once for each. Lengths in mm unless the name says
 * cm; a list that is absent was not told, an empty list says "none".
 */
export const examinationSchema = z.strictObject({
  schema: z.literal('examination/1'),
  source,
  case: identifier.describe('the dissection that is followed up'),
  patient: identifier,
  examination: identifier.describe('number of the examination in the note system'),
  revision: revision.describe('of this message, for one case and examination'),
  sentAt: instant,
  examinedOn: date,
  examinedAt: instant.optional().describe('when it began, where the time is known'),
  answers: identifier.optional().describe('the follow-up request that this examination fulfils'),
  endoscopist: identifier.optional().describe('a practitioner number, not a name'),
  route: oneOf(ROUTES),
  quality: quality.optional(),
  scar: scar.optional(),
  newLesions: listOf(newLesion, 50, 'lesions')
    .optional()
    .describe('metachronous ones; an empty list says that there were none'),
  passage: passage.optional(),
  barrettLeft: barrettLeft.optional().describe('Barrett mucosa that is still there'),
  next: next.optional(),
});

export type ExaminationFields = DeepReadonly<z.infer<typeof examinationSchema>>;
