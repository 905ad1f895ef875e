export { assessMessages } from './assess-known.js';
export type { CaseFacts } from './case-facts.js';
export { type Change, verdictChange, verdictText } from './change.js';
export { type Deadline, nextDeadline, passedDeadlines } from './deadlines.js';
export { toFacts } from './facts.js';
export { foldRecord } from './fold.js';
export { knowledgeOf, problemsOf } from './knowledge.js';
export { isOfLine } from './lines.js';
export {
  type AsOfMessage,
  type BookingMessage,
  type CaseMessage,
  type EventMessage,
  type ExaminationMessage,
  type MessageKind,
  naturalKeyOf,
  type RecordMessage,
  type ReportMessage,
  SENT_KINDS,
  type SentKind,
  type SentMessage,
  type WithdrawalMessage,
} from './message.js';
export { type RecordVersion, readVersion } from './version.js';
export { type Assessed, presentOf, type RecordView, viewRecord } from './view.js';
