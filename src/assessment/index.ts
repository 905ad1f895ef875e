export { assess, type Known } from './assess.js';
export type {
  Assessment,
  Curability,
  Reason,
  ScoreFinding,
  Shown,
  Verdict,
} from './assessment.js';
export { CLASSIFICATION_RULES } from './classifications/classification-rules.js';
export { CURABILITY_RULES } from './curability/rule-sets.js';
export { type DefectCircumference, defectCircumference } from './defect-circumference.js';
export { dissectionMin, procedureMin, speedCm2PerH } from './dissection-speed.js';
export type {
  Afterwards,
  BleedingFinding,
  EventGrades,
  GradeFinding,
  GradeOutcome,
  RecurrenceFinding,
} from './events/afterwards.js';
export { assessEvents } from './events/assess-events.js';
export { QUANTITY_RULES } from './quantities/quantity-rules.js';
export { reviewFirstLook } from './review/first-look.js';
export { SCORE_RULES } from './scores/score-rules.js';
export { specimenAreaCm2 } from './specimen-area.js';
export { type StrictureRisk, strictureRisk } from './stricture-risk.js';
export { STRICTURE_BANDS, type StrictureFlag } from './stricture-risk.table.js';
