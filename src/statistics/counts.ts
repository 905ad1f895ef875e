import { invariant } from '../kernel/index.js';

/** Events among observations, as 4 perforations of 96 procedures. */
export interface Counts {
  readonly events: number;
  readonly of: number;
}

/** Two ends of a proportion, 0 to 1. */
export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

/** @throws InvariantError unless both are whole and 0 <= events <= of */
export function checkCounts({ events, of }: Counts): void {
  const whole = Number.isSafeInteger(events) && Number.isSafeInteger(of);
  invariant(whole && 0 <= events && events <= of, 'events are whole, and no more than there are');
}

/** @throws InvariantError unless the value lies between 0 and 1, ends excluded */
export function checkShare(name: string, value: number): void {
  invariant(0 < value && value < 1, `${name} lies between 0 and 1`);
}
