import type { Bundle } from 'fhir/r4.js';
import type { Answer, LostFault, NotSentFault } from './answer.js';
import { outcomeClause, type ScrubbedOutcome, scrubOutcome } from './outcome.js';
import { retryAfterMs } from './retry-after.js';
import { REFERENCE_STATUSES, statusRow } from './status.table.js';
import { readTransactionResponse } from './transaction-response.js';
import type { Failure, Verdict } from './verdict.js';

/**
 * Judges what came back from a transaction.
 *
 * Source: project definition, the table of status classes; `status.table.ts` has its rows.
 *
 * @param sent the Bundle as it was sent
 * @param now milliseconds since 1970, to read Retry-After
 */
export function classifyTransaction(answer: Answer, sent: Bundle, now: number): Verdict {
  if (answer.kind === 'not-sent') return notSent(answer.fault);
  if (answer.kind === 'lost') return lost(answer.fault, answer.status);
  if (answer.status >= 200 && answer.status <= 299) return classifySuccess(answer, sent);
  return classifyRefusal(answer, now);
}

/**
 * Judges the answer to a request that changes nothing, such as a search. Its refusal says
 * nothing about the case, so a class `case` becomes `bounded`; and when it is cut or too slow
 * the outcome is not unknown, since there was none: that is the destination's fault.
 *
 * @param answer any answer but one with a status of 2xx and a body of JSON
 */
export function classifyReading(answer: Answer, now: number): Failure {
  if (answer.kind === 'not-sent') return notSent(answer.fault);
  if (answer.kind === 'lost') return lostReading(answer.fault, answer.status);
  if (answer.status >= 200 && answer.status <= 299) return lostReading('unreadable', answer.status);
  const failure = byStatus(answer, scrubOutcome(undefined), now);
  return failure.failureClass === 'case' ? { ...failure, failureClass: 'bounded' } : failure;
}

type Answered = Extract<Answer, { readonly kind: 'answered' }>;

const NOT_SENT_SAYS = {
  refused: 'The FHIR server refuses the connection.',
  dns: 'The host name of the FHIR server cannot be resolved.',
  tls: 'No secure connection to the FHIR server could be made.',
  'connect-timeout': 'The FHIR server does not accept the connection in time.',
  unreachable: 'The FHIR server cannot be reached over the network.',
  'address-refused': 'The FHIR server resolves to an address that is not allowed.',
  'no-authorization': 'No credentials for the FHIR server could be obtained.',
} as const satisfies Record<NotSentFault, string>;

const LOST_SAYS = {
  cut: 'The connection was cut before the answer was complete.',
  timeout: 'The answer was not complete before the deadline.',
  oversized: 'The answer was larger than is accepted.',
  unreadable: 'The answer was not FHIR JSON.',
  stopped: 'The attempt was stopped from our side.',
} as const satisfies Record<LostFault, string>;

function notSent(fault: NotSentFault): Failure {
  const hold = fault === 'address-refused';
  return {
    kind: 'failed',
    failureClass: 'destination',
    fault,
    reason: NOT_SENT_SAYS[fault],
    hold,
  };
}

function lost(fault: LostFault, status: number | undefined): Failure {
  const reason = `${LOST_SAYS[fault]} Whether the server kept the record is unknown.`;
  const known = status === undefined ? {} : { status };
  return { kind: 'failed', failureClass: 'unknown', fault, ...known, reason, hold: false };
}

function lostReading(fault: LostFault, status: number | undefined): Failure {
  const slow = fault === 'cut' || fault === 'timeout' || fault === 'stopped';
  const failureClass = slow ? 'destination' : 'unknown';
  return { ...lost(fault, status), failureClass, reason: LOST_SAYS[fault] };
}

function classifySuccess(answer: Answered, sent: Bundle): Verdict {
  if (answer.body.kind === 'other') return lost('unreadable', answer.status);
  const body = answer.body.kind === 'json' ? answer.body.resource : undefined;
  const reading = readTransactionResponse(body, sent);
  switch (reading.kind) {
    case 'done': {
      const detail = `${reading.created} created, ${reading.updated} updated`;
      return { kind: 'delivered', detail, locations: reading.locations };
    }
    case 'patient-missing':
      return { kind: 'waiting-patient', reason: reading.reason };
    case 'entry-refused':
      return {
        kind: 'failed',
        failureClass: 'case',
        fault: `entry-${reading.status}`,
        status: answer.status,
        reason: reading.reason,
        hold: false,
      };
    case 'not-conformant':
      return {
        kind: 'failed',
        failureClass: 'non-conformant-server',
        fault: reading.fault,
        status: answer.status,
        reason: reading.reason,
        hold: false,
      };
  }
}

function classifyRefusal(answer: Answered, now: number): Verdict {
  const { body, status } = answer;
  const outcome = scrubOutcome(body.kind === 'json' ? body.resource : undefined);
  const failure = byStatus(answer, outcome, now);
  if (REFERENCE_STATUSES.includes(status)) {
    if (outcome.words.includes('patient-missing')) {
      return { kind: 'waiting-patient', reason: 'The FHIR server does not know the patient.' };
    }
    if (outcome.words.includes('several-patients')) {
      const reason = 'The FHIR server has several patients with the identifier of this one.';
      return { ...failure, failureClass: 'ambiguous', hold: false, reason };
    }
    if (outcome.words.includes('several-matches')) {
      return { ...failure, failureClass: 'ambiguous', hold: false, reason: severalReason(outcome) };
    }
  }
  const proxySpoke = body.kind === 'other' && failure.failureClass === 'case';
  return proxySpoke && status !== 413 && status !== 415 ? lost('unreadable', status) : failure;
}

function byStatus(answer: Answered, outcome: ScrubbedOutcome, now: number): Failure {
  const row = statusRow(answer.status);
  const clause = outcomeClause(outcome);
  const waitMs = retryAfterMs(answer.retryAfter, now);
  return {
    kind: 'failed',
    failureClass: row.means === 'read-body' ? 'unknown' : row.means,
    fault: `status-${answer.status}`,
    status: answer.status,
    reason: `The FHIR server ${row.says} (${answer.status})${clause === '' ? '' : `: ${clause}`}.`,
    hold: row.hold,
    ...(waitMs === undefined ? {} : { waitMs }),
  };
}

function severalReason(outcome: ScrubbedOutcome): string {
  const clause = outcomeClause(outcome);
  const says = 'The FHIR server has several resources with the same identifier';
  return `${says}${clause === '' ? '' : ` (${clause})`}; a person must choose.`;
}
