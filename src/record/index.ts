export type { CaseFacts } from './case-facts.js';
export type { Change } from './change.js';
export { toFacts } from './facts.js';
export { type Assessed, foldRecord, type RecordView, viewRecord } from './fold.js';
export { knowledgeOf, problemsOf } from './knowledge.js';
export { isOfLine } from './lines.js';
export {
  type CaseMessage,
  type EventMessage,
  type ExaminationMessage,
  MESSAGE_KINDS,
  type MessageKind,
  naturalKeyOf,
  type RecordMessage,
  type ReportMessage,
  type WithdrawalMessage,
} from './message.js';
export { type RecordVersion, readVersion } from './version.js';
