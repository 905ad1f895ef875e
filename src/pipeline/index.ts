export { SENT_TYPES } from '../mapping/index.js';
export type { MessageKind, SentKind } from '../record/index.js';
export type { ServerAppointment } from './appointment-words.js';
export { type TimeTold, tellTime } from './as-of.js';
export { type AssessedRecord, assessRecord } from './assess-record.js';
export type { BookingReceipt, KeptBooking } from './bookings.js';
export { checkMessage } from './check-message.js';
export type { ComputedChange } from './computed-change.js';
export { createOutcomesService } from './create-outcomes-service.js';
export { createService } from './create-service.js';
export type { DeliveryState } from './delivery-state.js';
export { type ExpectedLoad, expectedLoad } from './expected-load.js';
export {
  type DataDictionary,
  dataDictionary,
  type ExportRow,
  exportColumnNames,
} from './export-rows.js';
export type { FeedText, FeedWish } from './feeds.js';
export { fillFollowUps } from './fill-follow-ups.js';
export type * from './follow-up-ports.js';
export type * from './follow-ups.js';
export { type BookingsLearnt, learnBookings } from './learn-bookings.js';
export { listFollowUps, readFollowUp } from './list-follow-ups.js';
export { caseIdOf, siteMarkOf } from './naming.js';
export type * from './outcomes-service.js';
export { kindOf } from './parse-record-message.js';
export type * from './ports.js';
export { prepareStored } from './prepare.js';
export {
  type PlacedVisit,
  type Proposal,
  proposeDays,
  type UnplacedVisit,
} from './propose-days.js';
export { type Published, readPublication } from './read-publication.js';
export { type Reassessed, type ReassessOptions, reassess } from './reassess.js';
export {
  type FactsChecked,
  type FactsStore,
  recomputeFacts,
  type StoredFacts,
} from './recompute-facts.js';
export { allRules } from './rules.js';
export type * from './service.js';
export type { PipelineSettings } from './settings.js';
export { type CaseToStore, takeIn } from './take-in.js';
export { todayAt } from './today.js';
