import { z } from 'zod';
import { instant, lengthMm, listOf, numberIn, oneOf, wholeIn } from '../scalars.js';
import { horizontalMargin, verticalMargin } from './findings.js';
import * as words from './words.table.js';

/** One piece of a piecemeal resection and what was found in it. */
const piece = z.strictObject({
  longAxisMm: lengthMm.optional(),
  shortAxisMm: lengthMm.optional(),
  thicknessMm: lengthMm.optional(),
  histology: oneOf(words.HISTOLOGIES).optional(),
  depth: oneOf(words.DEPTHS).optional(),
  hm: horizontalMargin.optional().describe('its own edge, cuts between pieces included'),
  vm: verticalMargin.optional(),
});

/** The specimen as the laboratory received and measured it, fixed. */
export const specimen = z.strictObject({
  procedure: oneOf(words.SPECIMEN_PROCEDURES).optional(),
  receivedAt: instant.optional(),
  piecesReceived: wholeIn({ from: 1, to: 200 }).optional(),
  longAxisMm: lengthMm.optional().describe('of the only piece'),
  shortAxisMm: lengthMm.optional().describe('at right angles to the long axis'),
  thicknessMm: lengthMm.optional(),
  pieces: listOf(piece, 50, 'pieces').optional().describe('largest first'),
  sliceIntervalMm: numberIn({ above: 0, to: 20, unit: 'mm' }).optional(),
});
