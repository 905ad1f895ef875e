import { isBefore } from './compare-told.js';
import type { CrossCheck } from './cross-check.js';
import { isEarlierDay, isStillToCome, mayFallOn } from './days.js';

/** When something happened: its day, its time where that is known, and where both stand. */
export interface Occurrence {
  readonly on: string | undefined;
  readonly onAt: string;
  readonly at: string | undefined;
  readonly atAt: string;
}

interface Sent {
  readonly sentAt?: string | undefined;
}

/** The day and the time of the same occurrence agree. */
export const dayOfTime = <T>(occurrenceOf: (sent: T) => Occurrence): CrossCheck<T> => ({
  rule: 'day-of-time',
  message: 'The time does not fall on the day.',
  expected: 'an instant on the day that stands beside it, or no instant',
  broken: (sent) => {
    const { on, at, atAt } = occurrenceOf(sent);
    return on !== undefined && at !== undefined && !mayFallOn(at, on) ? [atAt] : [];
  },
});

/** A message tells what has happened, not what will. */
export const sentAfter = <T extends Sent>(
  occurrenceOf: (sent: T) => Occurrence,
): CrossCheck<T> => ({
  rule: 'sent-before-it-happened',
  message: 'The message was sent before that of which it tells.',
  expected: 'sentAt at or after the day and the time of what happened',
  broken: (sent) => {
    const { on, at } = occurrenceOf(sent);
    return isStillToCome(on, sent.sentAt) || isBefore(sent.sentAt, at) ? ['/sentAt'] : [];
  },
});

/** @returns the places where the occurrence lies before the instant */
export function placesBefore(occurrence: Occurrence, instant: string): readonly string[] {
  return [
    ...(isEarlierDay(occurrence.on, instant) ? [occurrence.onAt] : []),
    ...(isBefore(occurrence.at, instant) ? [occurrence.atAt] : []),
  ];
}
