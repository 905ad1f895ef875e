import { compareInstants, type Problem } from '../kernel/index.js';
import type { RecordMessage } from '../record/index.js';
import type { Caller } from './service.js';

/** Clocks of two systems may differ by so much. */
const CLOCK_TOLERANCE_MS = 5 * 60_000;

/** Whether the message names a source that is not the caller's. */
export function isOfAnother(message: RecordMessage, caller: Caller): boolean {
  return caller.source !== undefined && caller.source !== message.fields.source;
}

/** @param now UTC instant */
export function isFromFuture(
  { fields }: { readonly fields: Pick<RecordMessage['fields'], 'sentAt'> },
  now: string,
): boolean {
  const limit = new Date(Date.parse(now) + CLOCK_TOLERANCE_MS).toISOString();
  return compareInstants(fields.sentAt, limit) > 0;
}

export const SENT_IN_FUTURE: Problem = {
  rule: 'sent-in-future',
  pointer: '/sentAt',
  message: 'The message claims to be sent in the future.',
  expected: 'an instant of at most five minutes from now',
};

export const SOURCE_OF_ANOTHER: Problem = {
  rule: 'source-of-another',
  pointer: '/source',
  message: 'The key of this call belongs to another source.',
  expected: 'the source that the key was given to',
};
