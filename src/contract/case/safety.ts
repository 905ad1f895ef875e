import { z } from 'zod';
import { instant, lengthMm, listOf, numberIn, oneOf, wholeIn } from '../scalars.js';
import * as words from '../words.table.js';

/** Bleeding, muscle injury, perforation, and what was done about them. */
export const safety = z.strictObject({
  bleeding: oneOf(words.BLEEDING_INTENSITIES)
    .optional()
    .describe('worst bleeding between first incision and end that was treated'),
  vessels: listOf(
    z.strictObject({
      site: oneOf(words.VESSEL_SITES).optional(),
      means: oneOf(words.HAEMOSTASIS_MEANS),
      bleeding: oneOf(words.BLEEDING_INTENSITIES).optional(),
      at: instant.optional(),
    }),
    50,
  )
    .optional()
    .describe('vessels treated, bleeding or not'),
  clips: listOf(
    z.strictObject({
      phase: oneOf(words.CLIP_PHASES),
      purpose: oneOf(words.CLIP_PURPOSES),
      count: wholeIn({ from: 1, to: 50 }),
    }),
    20,
  ).optional(),
  muscleInjury: oneOf(words.MUSCLE_INJURIES)
    .optional()
    .describe('Sydney grade of deep mural injury, worst place'),
  perforation: z
    .strictObject({
      occurred: z.boolean(),
      sizeMm: lengthMm.optional(),
      at: instant.optional(),
    })
    .optional(),
  closure: z
    .strictObject({
      kind: oneOf(words.CLOSURES),
      extent: oneOf(words.CLOSURE_EXTENTS).optional(),
    })
    .optional(),
  siteInspection: z
    .strictObject({
      inspectedAt: instant.optional(),
      visibleVessels: z.boolean().optional(),
      coagulated: z.boolean().optional(),
    })
    .optional()
    .describe('look at the bed for bleeding and perforation'),
  stricturePrevention: listOf(
    z.strictObject({
      measure: oneOf(words.STRICTURE_MEASURES),
      drug: oneOf(words.STRICTURE_DRUGS).optional(),
      doseMg: numberIn({ above: 0, to: 5000, unit: 'mg' }).optional(),
      at: instant.optional(),
    }),
    5,
  )
    .optional()
    .describe('an empty list says that none was given'),
});
