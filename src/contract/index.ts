export { type AsOfFields, asOfSchema, REASON_WORD } from './as-of/as-of.js';
export { type BookingFields, bookingSchema } from './booking/booking.js';
export {
  BOOKING_CASE_CHECKS,
  checkBookingAgainstCase,
} from './booking/check-against-case.js';
export { BOOKING_CHECKS } from './booking/cross-checks.js';
export { type BookingMessage, parseBooking } from './booking/parse-booking.js';
export type { CancelReason } from './booking/words.table.js';
export { type CaseFields, caseSchema } from './case/case.js';
export { CROSS_CHECKS } from './case/cross-checks.js';
export {
  type CaseSearchFields,
  parseCaseSearch,
} from './case-search.js';
export {
  checkEventAgainstCase,
  EVENT_CASE_CHECKS,
} from './event/check-against-case.js';
export { EVENT_CHECKS } from './event/cross-checks.js';
export { type EventFields, eventSchema } from './event/event.js';
export { type EventMessage, parseEvent } from './event/parse-event.js';
export { EVENT_PARTS } from './event/parts.table.js';
export {
  ADVERSE_EVENTS,
  type AdverseEventKind,
  EVENT_KINDS,
  type EventKind,
} from './event/words.table.js';
export {
  checkExaminationAgainstCase,
  EXAMINATION_CASE_CHECKS,
} from './examination/check-against-case.js';
export { EXAMINATION_CHECKS } from './examination/cross-checks.js';
export { type ExaminationFields, examinationSchema } from './examination/examination.js';
export { type ExaminationMessage, parseExamination } from './examination/parse-examination.js';
export { ROUTE_ORGANS, type Route } from './examination/words.table.js';
export { type FeedRequestFields, parseFeedRequest } from './feed-request.js';
export { WEEKDAYS, type Weekday } from './follow-up-choices.table.js';
export {
  DEFAULT_WITHIN_DAYS,
  type FollowUpQueryFields,
  parseFollowUpQuery,
} from './follow-up-query.js';
export {
  parseKeyList,
  ROLES,
  type Role,
  SOURCE_NAME,
  type StoredKey,
  writeKeyList,
} from './key-list.js';
export { type ChartAsked, type ChartName, parseChartQuery } from './outcome-chart-query.js';
export {
  type OutcomeCasesAsked,
  type OutcomeQueryFields,
  parseExportQuery,
  parseOutcomeQuery,
} from './outcome-query.js';
export { type AimsAsked, parseSeriesQuery, type SeriesAsked } from './outcome-series-query.js';
export * from './outcome-words.table.js';
export { type EsdCase, parseCase } from './parse-case.js';
export { type Message, readMessage } from './parse-message.js';
export { CASE_CHECKS, checkAgainstCase } from './pathology/check-against-case.js';
export { PATHOLOGY_CHECKS } from './pathology/cross-checks.js';
export { type PathologyMessage, parsePathology } from './pathology/parse-pathology.js';
export { type PathologyFields, pathologySchema } from './pathology/pathology.js';
export { readJson } from './read-json.js';
export type { Identifier } from './scalars.js';
export {
  DEFAULT_UNIT_SETTINGS,
  parseUnitSettings,
  type UnitSettings,
  unitSettingsSchema,
} from './unit-settings.js';
export { isUnreadable } from './unreadable.js';
export {
  checkWithdrawalAgainstCase,
  WITHDRAWAL_CASE_CHECKS,
} from './withdrawal/check-against-case.js';
export { WITHDRAWAL_CHECKS } from './withdrawal/cross-checks.js';
export { parseWithdrawal, type WithdrawalMessage } from './withdrawal/parse-withdrawal.js';
export { type WithdrawalFields, withdrawalSchema } from './withdrawal/withdrawal.js';
export * from './words.table.js';
