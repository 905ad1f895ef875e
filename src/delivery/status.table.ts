import type { FailureClass } from '../pipeline/index.js';

/** What a status of the FHIR server says about a transaction that was posted to its base. */
export interface StatusRow {
  readonly from: number;
  readonly to: number;
  /** `read-body`: only the body decides. */
  readonly means: FailureClass | 'read-body';
  /** The target is wrongly set up and is held at once. */
  readonly hold: boolean;
  readonly says: string;
}

const row = (
  from: number,
  to: number,
  means: StatusRow['means'],
  says: string,
  hold = false,
): StatusRow => ({ from, to, means, hold, says });

const heldRow = (from: number, to: number, says: string): StatusRow =>
  row(from, to, 'destination', says, true);

/**
 * Every status from 100 to 599 exactly once, ascending.
 *
 * Source: project definition for the classes; RFC 9110, 15 for the meaning of each status and
 * for statuses that are not assigned, which count as the x00 of their class; RFC 6585 (428,
 * 429, 431, 511); RFC 4918 (422 to 424, 507); RFC 8470 (425).
 */
export const STATUS_TABLE: readonly StatusRow[] = [
  row(100, 199, 'unknown', 'gave only an interim answer'),
  row(200, 299, 'read-body', 'answered'),
  heldRow(300, 399, 'sent us elsewhere; redirects are not followed'),
  row(400, 400, 'case', 'refused the record as malformed'),
  heldRow(401, 401, 'asked for other credentials'),
  heldRow(402, 402, 'refuses to serve this client'),
  heldRow(403, 403, 'does not allow this client to write'),
  heldRow(404, 404, 'does not know the base address'),
  heldRow(405, 405, 'does not accept transactions at the base address'),
  heldRow(406, 406, 'does not speak FHIR JSON'),
  heldRow(407, 407, 'is behind a proxy that asks for credentials'),
  row(408, 408, 'bounded', 'ran out of time while it read the record'),
  row(409, 409, 'bounded', 'reports a conflict with another write'),
  heldRow(410, 410, 'has given up the base address'),
  heldRow(411, 411, 'wants a length that this client always sends'),
  row(412, 412, 'bounded', 'reports a failed precondition'),
  row(413, 413, 'case', 'refused the record as too large'),
  heldRow(414, 414, 'refused the base address as too long'),
  row(415, 415, 'case', 'refused the media type of the record'),
  heldRow(416, 417, 'refused the form of the request'),
  row(418, 420, 'case', 'refused the record'),
  heldRow(421, 421, 'is not the server of this address'),
  row(422, 422, 'case', 'refused the content of the record'),
  row(423, 424, 'bounded', 'reports a lock or a failed dependency'),
  row(425, 425, 'bounded', 'asks to send again'),
  heldRow(426, 426, 'wants another protocol'),
  row(427, 427, 'case', 'refused the record'),
  heldRow(428, 428, 'accepts only conditional requests'),
  row(429, 429, 'destination', 'asks for fewer requests'),
  row(430, 430, 'case', 'refused the record'),
  heldRow(431, 431, 'refused the headers as too large'),
  row(432, 450, 'case', 'refused the record'),
  heldRow(451, 451, 'may not serve this client'),
  row(452, 499, 'case', 'refused the record'),
  row(500, 500, 'bounded', 'failed inside'),
  heldRow(501, 501, 'does not offer transactions'),
  row(502, 502, 'unknown', 'could not be reached by its gateway'),
  row(503, 503, 'destination', 'is not available'),
  row(504, 504, 'unknown', 'did not answer its gateway in time'),
  heldRow(505, 505, 'does not speak this HTTP version'),
  row(506, 506, 'bounded', 'failed inside'),
  row(507, 507, 'destination', 'has no storage left'),
  row(508, 510, 'bounded', 'failed inside'),
  heldRow(511, 511, 'is behind a network that asks for a login'),
  row(512, 599, 'bounded', 'failed inside'),
];

/** Statuses of one entry that would come again however often the record is sent. */
export const LASTING_ENTRY_STATUSES: readonly number[] = [400, 413, 415, 422];

/** Statuses with which servers say that a referenced resource is missing or not unique. */
export const REFERENCE_STATUSES: readonly number[] = [400, 404, 409, 410, 412, 422];

/** @returns the row of the status; one outside 100 to 599 counts as 500 */
export function statusRow(status: number): StatusRow {
  const found = STATUS_TABLE.find(({ from, to }) => from <= status && status <= to);
  return found ?? row(status, status, 'bounded', 'answered with no known status');
}
