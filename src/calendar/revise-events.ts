import type { CalendarEvent, EventStatus } from './event.js';

/** What the calendar should show of a follow-up now. */
export interface WantedEvent extends Omit<CalendarEvent, 'sequence' | 'status' | 'changedAt'> {
  readonly status: Exclude<EventStatus, 'cancelled'>;
}

/**
 * The events of a feed after a change of the plan. What stays as it was is not touched; what
 * changed has a higher sequence; what is no longer wanted stays as cancelled, with a higher
 * sequence, because a calendar does not learn of an event that is only left out; and what is
 * wanted again after that comes back with a higher one still.
 *
 * Source: RFC 5545, 3.8.7.4 and 3.8.1.11.
 *
 * @param published the events up to now, of any status
 * @param changedAt the instant of the change, with offset
 */
export function reviseEvents(
  published: readonly CalendarEvent[],
  wanted: readonly WantedEvent[],
  changedAt: string,
): readonly CalendarEvent[] {
  const known = new Set(published.map(({ id }) => id));
  const wantedById = new Map(wanted.map((event) => [event.id, event]));
  return [
    ...published.map((event) =>
      revised(event, wantedById.get(event.id) ?? { ...event, status: 'cancelled' }, changedAt),
    ),
    ...wanted
      .filter(({ id }) => !known.has(id))
      .map((event) => ({ ...event, sequence: 0, changedAt })),
  ];
}

function revised(
  event: CalendarEvent,
  { caseId, status, firstOn, lastOn }: Omit<CalendarEvent, 'sequence' | 'changedAt'>,
  changedAt: string,
): CalendarEvent {
  const same =
    event.caseId === caseId &&
    event.status === status &&
    event.firstOn === firstOn &&
    event.lastOn === lastOn;
  const sequence = event.sequence + 1;
  return same ? event : { id: event.id, caseId, status, firstOn, lastOn, sequence, changedAt };
}
