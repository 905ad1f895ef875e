import { z } from 'zod';
import {
  count,
  identifier,
  instant,
  lengthMm,
  listOf,
  numberIn,
  oneOf,
  percent,
  someOf,
} from '../scalars.js';
import * as words from '../words.table.js';

const channelMm = numberIn({ above: 0, to: 8, unit: 'mm' });

/** When each part of the procedure began and ended. */
export const times = z.strictObject({
  scopeInAt: instant,
  firstInjectionAt: instant.optional(),
  firstIncisionAt: instant.optional().describe('first cut through the mucosa'),
  dissectionEndAt: instant.optional().describe('the specimen is free'),
  scopeOutAt: instant,
});

export const equipment = z.strictObject({
  endoscope: z
    .strictObject({
      kind: oneOf(words.ENDOSCOPES),
      channelMm: channelMm.optional().describe('diameter of the working channel'),
      waterJet: z.boolean().optional(),
      cap: oneOf(words.CAPS).optional(),
      device: identifier.optional().describe('the instrument in the inventory of the unit'),
    })
    .optional(),
  knives: listOf(
    z.strictObject({
      kind: oneOf(words.KNIVES),
      injectionChannel: z.boolean().optional(),
      minChannelMm: channelMm.optional(),
    }),
    5,
  ).optional(),
  accessories: listOf(
    z.strictObject({ kind: oneOf(words.ACCESSORIES), minChannelMm: channelMm.optional() }),
    10,
  ).optional(),
  generator: listOf(
    z.strictObject({
      purpose: oneOf(words.ELECTRODE_PURPOSES),
      mode: oneOf(words.ELECTRODE_MODES),
      powerW: numberIn({ above: 0, to: 400, unit: 'W' }).optional(),
    }),
    10,
  )
    .optional()
    .describe('settings of the electrosurgical generator'),
  gas: oneOf(words.GASES).optional(),
});

export const position = z.strictObject({
  patient: oneOf(words.POSITIONS).optional(),
  changed: z.boolean().optional(),
  changedTo: someOf(words.POSITIONS).optional(),
  lesionSide: oneOf(words.GRAVITY_SIDES).optional().describe('where the lesion lies by gravity'),
  retroflexed: z.boolean().optional(),
});

export const markers = z.strictObject({
  placed: z.boolean(),
  distanceMm: numberIn({ from: 0, to: 50, unit: 'mm' })
    .optional()
    .describe('from the edge of the lesion'),
  spacingMm: numberIn({ above: 0, to: 50, unit: 'mm' }).optional(),
  nextVisibleFromEach: z.boolean().optional(),
});

export const injection = z.strictObject({
  fluids: someOf(words.FLUIDS).optional(),
  dye: oneOf(words.DYES).optional(),
  adrenaline: z.boolean().optional(),
  routes: someOf(words.INJECTION_ROUTES).optional(),
  totalMl: numberIn({ from: 0, to: 2000, unit: 'ml' }).optional(),
  repeated: z.boolean().optional().describe('injected again before further cuts'),
});

export const incision = z.strictObject({
  strategy: oneOf(words.INCISION_STRATEGIES).optional(),
  firstSide: oneOf(words.INCISION_SIDES).optional(),
  approach: oneOf(words.APPROACHES).optional(),
  tunnels: count.optional(),
});

export const dissection = z.strictObject({
  lifting: oneOf(words.LIFTINGS).optional(),
  fibrosis: oneOf(words.FIBROSIS_GRADES).optional(),
  fat: oneOf(words.FAT_AMOUNTS).optional(),
  plane: oneOf(words.PLANES).optional(),
  muscleInView: z.boolean().optional(),
  traction: someOf(words.TRACTIONS).optional().describe('an empty list: none was used'),
  pauses: listOf(z.strictObject({ leftPercent: percent, rightPercent: percent }), 20)
    .optional()
    .describe('how far each side was when the dissection paused'),
  incidents: listOf(z.strictObject({ kind: oneOf(words.INCIDENTS), at: instant.optional() }), 30)
    .optional()
    .describe('in the order in which they happened'),
});

export const defect = z.strictObject({
  longAxisMm: lengthMm.optional(),
  shortAxisMm: lengthMm.optional(),
  circumferencePercent: percent.optional().describe('share of the lumen, stated by the operator'),
  widthMm: lengthMm.optional().describe('extent along the circumference'),
  lumenDiameterMm: numberIn({ above: 0, to: 150, unit: 'mm' }).optional(),
});
