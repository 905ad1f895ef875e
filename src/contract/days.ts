import { compareInstants } from '../kernel/index.js';

/**
 * A calendar day held against an instant. A sender may write instants in another offset than
 * that of the place, so a day counts from its first moment anywhere to its last moment anywhere.
 * Offsets of civil time: UTC-12:00 to UTC+14:00 (FHIR R4 ends at +14:00, too).
 */
const beginsAt = (on: string): string => `${on}T00:00:00+14:00`;
const endsAt = (on: string): string => `${on}T23:59:59.999999-12:00`;

/** Whether the day had begun nowhere at the instant. */
export const isStillToCome = (on: string | undefined, at: string | undefined): boolean =>
  on !== undefined && at !== undefined && compareInstants(at, beginsAt(on)) < 0;

/** Whether the instant can fall on the day. */
export const mayFallOn = (at: string, on: string): boolean =>
  !isStillToCome(on, at) && compareInstants(at, endsAt(on)) <= 0;

/** Whether the day lies before that of the instant, by the calendar in the offset of the instant. */
export const isEarlierDay = (on: string | undefined, at: string): boolean =>
  on !== undefined && on < at.slice(0, 10);
