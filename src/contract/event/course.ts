import { z } from 'zod';
import { date, instant, lengthMm, numberIn, oneOf, someOf, wholeIn } from '../scalars.js';
import { HAEMOSTASIS_MEANS } from '../words.table.js';
import * as words from './words.table.js';

const hours = numberIn({ from: 0, to: 10_000, unit: 'h' });
const gPerDl = numberIn({ from: 1, to: 25, unit: 'g/dL' });

/**
 * What the event needed and led to. The facts that both grades read, one to one: intervention,
 * drugsBeyondGradeI, emergencyVisit, admissionHours, observationHours and criticalCare by their
 * own names; generalAnaesthesia is `underGeneralAnaesthesia`, transfusion is `transfusionUnits`
 * above 0, death is `died`. Absent: not told.
 */
export const course = z.strictObject({
  intervention: oneOf(words.INTERVENTIONS).optional().describe('the gravest for this event'),
  intervenedAt: instant.optional(),
  underGeneralAnaesthesia: z.boolean().optional().describe('during the intervention'),
  transfusionUnits: wholeIn({ from: 0, to: 200, unit: 'units of blood products' }).optional(),
  drugsBeyondGradeI: z
    .boolean()
    .optional()
    .describe('drugs beyond antiemetics, antipyretics, analgesics and electrolytes'),
  emergencyVisit: z.boolean().optional(),
  readmitted: z.boolean().optional(),
  admissionHours: hours.optional().describe('of an admission, or by how much it was prolonged'),
  observationHours: hours.optional().describe('by how much observation was prolonged'),
  criticalCare: oneOf(words.CRITICAL_CARES).optional().describe('by the organs that failed'),
  died: z.boolean().optional().describe('of this event'),
  resolvedOn: date.optional(),
});

/** Grades as the unit states them; the record derives its own from the course. */
export const grades = z.strictObject({
  agree: oneOf(words.GRADES).optional(),
  clavienDindo: oneOf(words.GRADES).optional(),
});

export const haemoglobin = z.strictObject({
  beforeGPerDl: gPerDl.optional().describe('last value before the dissection'),
  lowestGPerDl: gPerDl.optional().describe('lowest value since'),
});

export const bleeding = z.strictObject({
  signs: someOf(words.BLEEDING_SIGNS).optional().describe('an empty list: no overt sign'),
  confirmedAtEndoscopy: z.boolean().optional().describe('a bleeding spot was seen at the scar'),
  haemostasis: someOf(HAEMOSTASIS_MEANS).optional().describe('an empty list: none was needed'),
});

/** A hole found after the scope was out; none had been seen at the end. */
export const perforation = z.strictObject({
  foundBy: oneOf(words.PERFORATION_FINDERS).optional(),
  sizeMm: lengthMm.optional(),
  peritonitis: z.boolean().optional(),
});

/** Signs of infection, of fever or of thermal injury of the wall. */
export const inflammation = z.strictObject({
  highestTemperatureC: numberIn({ from: 30, to: 45, unit: 'degrees Celsius' }).optional(),
  peritonealPain: z.boolean().optional(),
  crpMgPerL: numberIn({ from: 0, to: 1000, unit: 'mg/L' }).optional(),
  extraluminalAir: z.boolean().optional().describe('on imaging; absent where none was done'),
});

/** A narrow place at the scar. */
export const stricture = z.strictObject({
  gastroscopePasses: z.boolean().optional().describe('a standard one, of about 9 to 10 mm'),
  narrowestMm: lengthMm.optional(),
  dysphagiaGrade: wholeIn({ from: 0, to: 4 })
    .optional()
    .describe('0 eats all, 1 some solids, 2 soft food, 3 liquids alone, 4 nothing'),
});
