export {
  addDays,
  addMonths,
  daysBetween,
  isCalendarDate,
  weekdayOf,
  yearsBetween,
} from './calendar.js';
export { CAUTION } from './caution.js';
export type { Basis, Citation } from './citation.js';
export { csvRows, toCsv } from './csv.js';
export { determined, type Finding, indeterminate } from './finding.js';
export { keyedUuid, sha256 } from './hashing.js';
export {
  compareInstants,
  inTimeZone,
  isTimeZone,
  minutesBetween,
  utcToTheSecond,
} from './instant.js';
export { InvariantError, invariant } from './invariant.js';
export { compareTexts, earlierOf, laterOf } from './order.js';
export { type Checked, failed, type Problem, passed } from './problem.js';
export { fixedText, roundTo, trimmedText } from './rounding.js';
export { StoreUnavailable } from './unavailable.js';
