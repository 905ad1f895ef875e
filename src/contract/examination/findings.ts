import { z } from 'zod';
import { POLYP_TYPES } from '../pathology/words.table.js';
import { date, lengthMm, numberIn, oneOf, someOf, wholeIn } from '../scalars.js';
import { CHROMOENDOSCOPIES, ORGANS, SITES } from '../words.table.js';
import * as words from './words.table.js';

const segment = wholeIn({ from: 0, to: 3 });

/** How much could be seen. */
export const quality = z.strictObject({
  complete: z
    .boolean()
    .optional()
    .describe('lower: caecum or ileum reached; upper: second part of the duodenum reached'),
  bowelPreparation: z
    .strictObject({ right: segment, transverse: segment, left: segment })
    .partial()
    .optional()
    .describe('Boston bowel preparation scale, 0 to 3 a segment, after washing'),
  mucosaView: oneOf(words.MUCOSA_VIEWS).optional().describe('of the upper tract'),
  chromoendoscopy: someOf(CHROMOENDOSCOPIES).optional(),
  inspectionMin: numberIn({ from: 0, to: 300, unit: 'min' })
    .optional()
    .describe('time of looking, on the way out if lower'),
});

/** The place of the dissection. */
export const scar = z.strictObject({
  seen: z.boolean(),
  finding: oneOf(words.SCAR_FINDINGS).optional().describe('to the eye'),
  sizeMm: lengthMm.optional().describe('of the neoplasia at the scar'),
  biopsy: oneOf(words.TISSUE_RESULTS)
    .optional()
    .describe('of the scar, or of what was resected there; a later revision ends `pending`'),
  treatments: someOf(words.SCAR_TREATMENTS).optional().describe('an empty list: none'),
});

/** A new lesion elsewhere; one that was there before belongs to its own case. */
export const newLesion = z.strictObject({
  organ: oneOf(ORGANS),
  site: oneOf(SITES).optional(),
  sizeMm: lengthMm.optional(),
  histology: oneOf(words.TISSUE_RESULTS).optional(),
  polypType: oneOf(POLYP_TYPES).optional(),
  removed: z.boolean().optional().describe('in this examination'),
});

/** How wide the scar is. */
export const passage = z.strictObject({
  endoscopePasses: z.boolean().describe('a standard gastroscope of about 9 to 10 mm, or larger'),
  dilated: z.boolean().optional(),
  diameterMm: numberIn({ above: 0, to: 40, unit: 'mm' })
    .optional()
    .describe('largest balloon or bougie'),
});

export const barrettLeft = z.strictObject({
  present: z.boolean().describe('before any ablation in this examination'),
  maximumCm: numberIn({ from: 0, to: 40, unit: 'cm' }).optional().describe('Prague M'),
  ablated: z.boolean().optional().describe('in this examination'),
});

/** What the unit means to do next. */
export const next = z.strictObject({
  step: oneOf(words.NEXT_STEPS),
  on: date.optional().describe('day of an examination that is to be sooner than planned'),
  reason: oneOf(words.STOP_REASONS).optional().describe('why examinations stop'),
});
