export { type Assessment, assess } from './assess.js';
export type { Curability, Reason, ScoreFinding, Shown, Verdict } from './assessment.js';
export { type DefectCircumference, defectCircumference } from './defect-circumference.js';
export { dissectionMin, procedureMin, speedCm2PerH } from './dissection-speed.js';
export { specimenAreaCm2 } from './specimen-area.js';
export { type StrictureRisk, strictureRisk } from './stricture-risk.js';
export { STRICTURE_BANDS, type StrictureFlag } from './stricture-risk.table.js';
