import { z } from 'zod';
import {
  lengthCm,
  lengthMm,
  listOf,
  numberIn,
  oneOf,
  percent,
  someOf,
  uri,
  wholeIn,
} from '../scalars.js';
import * as words from '../words.table.js';

/** The lesion as the endoscopist saw it. */
export const lesion = z.strictObject({
  organ: oneOf(words.ORGANS),
  site: oneOf(words.SITES).optional(),
  stomachThird: oneOf(words.STOMACH_THIRDS).optional(),
  wall: oneOf(words.WALLS).optional(),
  clockHour: wholeIn({ from: 1, to: 12 }).optional(),
  distanceFromIncisorsCm: lengthCm.optional(),
  distanceFromAnalVergeCm: numberIn({ from: 0, to: 200, unit: 'cm' }).optional(),
  circumferencePercent: percent.optional().describe('share of the lumen that the lesion takes'),
  touchesDentateLine: z.boolean().optional(),
  longAxisMm: lengthMm.describe('largest extent, estimated through the endoscope'),
  shortAxisMm: lengthMm.optional().describe('at right angles to the long axis'),
  tumour: oneOf(words.TUMOURS).optional(),
  paris: oneOf(words.PARIS_TYPES).optional(),
  lstType: oneOf(words.LST_TYPES).optional(),
  jnet: oneOf(words.JNET_TYPES).optional(),
  kudo: oneOf(words.KUDO_TYPES).optional(),
  nice: oneOf(words.NICE_TYPES).optional(),
  ipcl: oneOf(words.IPCL_TYPES).optional(),
  vesselPattern: oneOf(words.PATTERNS).optional(),
  surfacePattern: oneOf(words.PATTERNS).optional(),
  demarcationLine: z.boolean().optional(),
  predictedDepth: oneOf(words.PREDICTED_DEPTHS).optional(),
  pragueCircumferentialCm: numberIn({ from: 0, to: 40, unit: 'cm' }).optional(),
  pragueMaximumCm: numberIn({ from: 0, to: 40, unit: 'cm' }).optional(),
  hiatusFromIncisorsCm: lengthCm.optional(),
  chromoendoscopy: someOf(words.CHROMOENDOSCOPIES)
    .optional()
    .describe('an empty list says that none was used'),
  images: listOf(
    z.strictObject({ shows: oneOf(words.IMAGE_SUBJECTS), url: uri }),
    50,
    'images',
  ).optional(),
});
