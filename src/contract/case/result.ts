import { z } from 'zod';
import {
  count,
  date,
  identifier,
  instant,
  lengthMm,
  listOf,
  oneOf,
  percent,
  someOf,
} from '../scalars.js';
import * as words from '../words.table.js';

export const resection = z.strictObject({
  outcome: oneOf(words.RESECTION_OUTCOMES),
  technique: oneOf(words.TECHNIQUES).optional(),
  pieces: count.optional(),
  complete: z.boolean().optional().describe('nothing of the lesion left to see'),
  convertedTo: oneOf(words.CONVERSIONS).optional(),
  reason: oneOf(words.NOT_COMPLETED_REASONS)
    .optional()
    .describe('why the dissection was abandoned or never started'),
});

export const specimen = z.strictObject({
  retrieved: z.boolean(),
  retrievedAt: instant.optional(),
  oriented: z.boolean().optional().describe('oral or anal end marked'),
  pinned: z.boolean().optional(),
  longAxisMm: lengthMm.optional().describe('of the pinned specimen'),
  shortAxisMm: lengthMm.optional().describe('at right angles to the long axis'),
  thicknessMm: lengthMm.optional(),
  lesionLongAxisMm: lengthMm.optional().describe('of the lesion, measured on the specimen'),
  lesionShortAxisMm: lengthMm.optional(),
  pieces: listOf(z.strictObject({ longAxisMm: lengthMm, shortAxisMm: lengthMm }), 50, 'pieces')
    .optional()
    .describe('the pieces of a piecemeal resection, largest first'),
  container: identifier.optional(),
  fixative: oneOf(words.FIXATIVES).optional(),
  fixedAt: instant.optional(),
  laboratory: identifier.optional(),
});

export const team = z.strictObject({
  operator: identifier.describe('a practitioner number, not a name'),
  supervisor: identifier.optional(),
  assistants: listOf(identifier, 10, 'practitioner numbers').optional(),
  traineePercent: percent.optional().describe('part done by the trainee'),
});

export const after = z.strictObject({
  destination: oneOf(words.DESTINATIONS).optional(),
  diet: oneOf(words.DIETS).optional(),
  dietFromOn: date.optional(),
  acidSuppression: oneOf(words.ACID_SUPPRESSIONS).optional(),
  antibiotics: z.boolean().optional(),
  informed: someOf(words.INFORMED).optional().describe('who was told of the result'),
});
