import { z } from 'zod';
import { TNM_EDITIONS } from '../pathology/words.table.js';
import { count, date, identifier, numberIn, oneOf, wholeIn } from '../scalars.js';
import * as words from './words.table.js';

/** An operation after the dissection and what was found in its specimen. */
export const surgery = z.strictObject({
  reason: oneOf(words.SURGERY_REASONS),
  operation: oneOf(words.OPERATIONS).optional(),
  residualTumour: oneOf(words.RESIDUES).optional().describe('at the place of the dissection'),
  nodesExamined: count.optional(),
  nodesPositive: count.optional(),
  distantMetastasis: z.boolean().optional(),
  pT: oneOf(words.PRIMARY_TUMOURS_AT_SURGERY)
    .optional()
    .describe('as the report states it, with or without the specimen of the dissection'),
  pN: oneOf(words.NODE_CATEGORIES).optional(),
  tnmEdition: oneOf(TNM_EDITIONS).optional().describe('edition of the UICC TNM of pT and pN'),
});

/** What a meeting of several disciplines decided. */
export const meeting = z.strictObject({
  decision: oneOf(words.MEETING_DECISIONS),
  reason: oneOf(words.NO_SURGERY_REASONS).optional().describe('of a decision against surgery'),
});

/** One session of dilatation of a stricture. */
export const dilatation = z.strictObject({
  number: wholeIn({ from: 1, to: 200 }).optional().describe('1 for the first of this stricture'),
  means: oneOf(words.DILATORS).optional(),
  diameterMm: numberIn({ above: 0, to: 40, unit: 'mm' })
    .optional()
    .describe('largest balloon, bougie or stent'),
  steroidInjected: z.boolean().optional(),
});

/** The patient does not want to be examined again, or not here. */
export const decline = z.strictObject({
  request: identifier.optional().describe('the follow-up request; absent: all of them'),
  reason: oneOf(words.DECLINE_REASONS).optional(),
});

/**
 * Says that until the end of a day nothing happened but what has been sent as an event of its
 * own. Only such a statement answers "no"; without it the outcome is unknown.
 */
export const status = z.strictObject({
  untilOn: date.describe('last day of which is known that nothing happened'),
  learntFrom: oneOf(words.STATUS_SOURCES).optional(),
});
