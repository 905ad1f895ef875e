import {
  checkAgainstCase,
  checkEventAgainstCase,
  checkExaminationAgainstCase,
  checkWithdrawalAgainstCase,
} from '../contract/index.js';
import { compareInstants, type Problem } from '../kernel/index.js';
import { inOrderOfSaying, lineOf, newestOf } from './lines.js';
import type {
  BookingMessage,
  CaseMessage,
  EventMessage,
  ExaminationMessage,
  RecordMessage,
  ReportMessage,
  WithdrawalMessage,
} from './message.js';

/** What is known of a case: of each message its highest revision, as far as it fits the case. */
export interface Knowledge {
  readonly esdCase: CaseMessage;
  /** Reports on the specimen; the one in force comes first. */
  readonly reports: readonly ReportMessage[];
  readonly events: readonly EventMessage[];
  readonly examinations: readonly ExaminationMessage[];
  readonly withdrawal?: WithdrawalMessage;
  /** All that was said of appointments, lower revisions included, in the order of saying. */
  readonly bookings: readonly BookingMessage[];
  /** How late the record knows it to be, the greatest of its own words; an instant, UTC. */
  readonly asOf?: string;
  /** Messages that contradict the case as it is known now; they are kept and not applied. */
  readonly setAside: readonly SetAside[];
}

export interface SetAside {
  readonly message: RecordMessage;
  readonly problems: readonly Problem[];
}

/**
 * Reads a set of messages; their order plays no part.
 *
 * @returns undefined while the case itself has not come
 */
export function knowledgeOf(messages: readonly RecordMessage[]): Knowledge | undefined {
  const newest = newestOf(messages);
  const esdCase = newest.find((message) => message.kind === 'case');
  if (esdCase === undefined) return undefined;
  const held = newest.map((message) => ({ message, problems: problemsOf(message, esdCase) }));
  const fitting = held.filter(({ problems }) => problems.length === 0);
  const applied = fitting.map(({ message }) => message);
  const withdrawal = applied.find((message) => message.kind === 'withdrawal');
  const asOf = asOfIn(messages);
  return {
    esdCase,
    reports: applied.filter((message) => message.kind === 'pathology').sort(byForce),
    events: applied.filter((message) => message.kind === 'event'),
    examinations: applied.filter((message) => message.kind === 'examination'),
    ...(withdrawal === undefined ? {} : { withdrawal }),
    bookings: inOrderOfSaying(messages.filter((message) => message.kind === 'booking')),
    ...(asOf === undefined ? {} : { asOf }),
    setAside: held.filter(({ problems }) => problems.length > 0),
  };
}

function asOfIn(messages: readonly RecordMessage[]): string | undefined {
  const told = messages.flatMap(({ fields }) => ('asOf' in fields ? [fields.asOf] : []));
  return [...told].sort(compareInstants).at(-1);
}

/**
 * Contradictions between a message and the case that it is about. A booking has none once it is
 * kept: it stands until a scheduler says otherwise, and the plan shows where it does not fit.
 */
export function problemsOf(message: RecordMessage, esdCase: CaseMessage): readonly Problem[] {
  const { fields } = esdCase;
  if (message.kind === 'as-of' || message.kind === 'booking') return [];
  if (message.fields.source !== fields.source) return [SOURCE_OF_ANOTHER];
  switch (message.kind) {
    case 'case':
      return isOfPatient(message, esdCase) ? [] : [CASE_MOVED];
    case 'pathology':
      return checkAgainstCase(message.fields, fields);
    case 'event':
      return checkEventAgainstCase(message.fields, fields);
    case 'examination':
      return checkExaminationAgainstCase(message.fields, fields);
    case 'withdrawal':
      return checkWithdrawalAgainstCase(message.fields, fields);
  }
}

/** Whether two revisions of a case are about the same patient. */
export function isOfPatient(one: CaseMessage, other: CaseMessage): boolean {
  const [a, b] = [one.fields.patient, other.fields.patient];
  return a.system === b.system && a.value === b.value;
}

const CASE_MOVED: Problem = {
  rule: 'patient-differs',
  pointer: '/patient',
  message: 'A case never moves to another patient.',
  expected: 'the patient of the case; else withdraw it and send it under another case identifier',
};

const SOURCE_OF_ANOTHER: Problem = {
  rule: 'case-of-another-source',
  pointer: '/source',
  message: 'Another source has sent this case.',
  expected: 'the source of the case',
};

/** A final report before an interim one, then the later one; the accession decides a tie. */
function byForce(a: ReportMessage, b: ReportMessage): number {
  return (
    Number(isFinal(b)) - Number(isFinal(a)) ||
    compareInstants(timeOf(b), timeOf(a)) ||
    (lineOf(a) < lineOf(b) ? -1 : 1)
  );
}

const isFinal = ({ fields }: ReportMessage): boolean => fields.report.status === 'final';

const timeOf = ({ fields }: ReportMessage): string => fields.report.reportedAt ?? fields.sentAt;
