import { z } from 'zod';
import { date, identifier, instant, listOf, numberIn, oneOf, someOf, wholeIn } from '../scalars.js';
import * as words from '../words.table.js';

const segment = wholeIn({ from: 0, to: 3 });

/** One antithrombotic drug and what was done with it. */
const antithrombotic = z.strictObject({
  class: oneOf(words.ANTITHROMBOTIC_CLASSES),
  agent: oneOf(words.AGENTS).optional(),
  indication: oneOf(words.ANTITHROMBOTIC_INDICATIONS).optional(),
  thromboticRisk: oneOf(words.THROMBOTIC_RISKS).optional(),
  decision: oneOf(words.DRUG_DECISIONS),
  replacedBy: oneOf(words.ANTITHROMBOTIC_CLASSES).optional(),
  bridged: z.boolean().optional().describe('covered by heparin while stopped'),
  lastDoseAt: instant.optional(),
  inr: numberIn({ from: 0.5, to: 20 }).optional(),
  inrOn: date.optional(),
  creatinineClearanceMlPerMin: numberIn({ from: 0, to: 300, unit: 'ml/min' }).optional(),
  advisedBy: oneOf(words.ADVISERS).optional(),
  restartPlannedOn: date.optional(),
  restartedAt: instant.optional(),
});

/** What was known and done before the lesion was marked. */
export const before = z.strictObject({
  indications: someOf(words.INDICATIONS).optional(),
  biopsyResult: oneOf(words.BIOPSY_RESULTS).optional(),
  earlierAttempts: listOf(
    z.strictObject({ kind: oneOf(words.EARLIER_ATTEMPTS), on: date.optional() }),
    20,
  )
    .optional()
    .describe('earlier treatment of the same lesion; an empty list says that there was none'),
  tattooNearLesion: z.boolean().optional(),
  asaClass: oneOf(words.ASA_CLASSES).optional(),
  asaEmergency: z.boolean().optional(),
  haemodialysis: z.boolean().optional(),
  helicobacterPylori: oneOf(words.HELICOBACTER_STATES).optional(),
  iodineAllergy: z.boolean().optional(),
  antithrombotics: listOf(antithrombotic, 10, 'drugs')
    .optional()
    .describe('one entry a drug; an empty list says that none was taken'),
  sedation: oneOf(words.SEDATIONS).optional(),
  intubated: z.boolean().optional(),
  premedication: someOf(words.PREMEDICATIONS).optional(),
  bowelPreparation: z
    .strictObject({ right: segment, transverse: segment, left: segment })
    .partial()
    .optional()
    .describe('Boston bowel preparation scale, 0 to 3 a segment, after washing'),
  referral: identifier.optional().describe('the request that led to this procedure'),
});
