import { addDays, invariant, isCalendarDate, utcToTheSecond } from '../kernel/index.js';
import { contentLine, textValue } from './content-line.js';
import type { CalendarEvent, EventStatus } from './event.js';

const PRODUCT = '-//dissection-records//follow-ups//EN';

const STATUS: Readonly<Record<EventStatus, string>> = {
  tentative: 'TENTATIVE',
  confirmed: 'CONFIRMED',
  cancelled: 'CANCELLED',
};

/** Largest INTEGER of RFC 5545, 3.3.8. */
const LARGEST_INTEGER = 2_147_483_647;

/**
 * Events as an iCalendar stream that calendars subscribe to. No name, no diagnosis: a summary
 * says "Check endoscopy" and the opaque id of the case.
 *
 * It has no METHOD, and so no ORGANIZER: a subscribed feed is no message to which anybody is to
 * reply. DTSTAMP then means the last revision, so the same events are the same octets. Days of a
 * window do not make their reader busy (TRANSP). A cancelled event is written like any other.
 *
 * Source: RFC 5545, 3.4, 3.6.1, 3.8.2.7, 3.8.7.2.
 *
 * @param host of this service: the right-hand side of each UID
 * @returns octets to be sent as UTF-8, type `text/calendar`
 * @throws InvariantError when ids repeat, a date is none, a window is out of order or a sequence
 *   is no INTEGER; RangeError when `changedAt` is no instant
 */
export function writeCalendar(events: readonly CalendarEvent[], host: string): string {
  const ids = new Set(events.map(({ id }) => id));
  invariant(ids.size === events.length, 'each event of a feed has its own id');
  return [
    'BEGIN:VCALENDAR',
    `PRODID:${PRODUCT}`,
    'VERSION:2.0',
    ...(events.length === 0 ? NOTHING_YET : events.flatMap((event) => eventLines(event, host))),
    'END:VCALENDAR',
  ]
    .map(contentLine)
    .join('');
}

function eventLines(event: CalendarEvent, host: string): readonly string[] {
  const { id, caseId, sequence, status, firstOn, lastOn, changedAt } = event;
  invariant([firstOn, lastOn].every(isCalendarDate), 'an event has a first and a last day');
  invariant(firstOn <= lastOn, 'an event does not end before it begins');
  invariant(
    Number.isInteger(sequence) && sequence >= 0 && sequence <= LARGEST_INTEGER,
    'a sequence is an INTEGER, 0 or more',
  );
  const changed = basic(utcToTheSecond(changedAt));
  return [
    'BEGIN:VEVENT',
    `UID:${textValue(`${id}@${host}`)}`,
    `DTSTAMP:${changed}`,
    `LAST-MODIFIED:${changed}`,
    `SEQUENCE:${sequence}`,
    `STATUS:${STATUS[status]}`,
    'CLASS:CONFIDENTIAL',
    'TRANSP:TRANSPARENT',
    `DTSTART;VALUE=DATE:${basic(firstOn)}`,
    `DTEND;VALUE=DATE:${basic(addDays(lastOn, 1))}`,
    `SUMMARY:${textValue(`Check endoscopy, case ${caseId}`)}`,
    'END:VEVENT',
  ];
}

/** ISO 8601 without its hyphens and colons. */
const basic = (text: string): string => text.replace(/[-:]/g, '');

/** RFC 5545, 3.6: a calendar has at least one component. A time zone shows nothing. */
const NOTHING_YET = [
  'BEGIN:VTIMEZONE',
  'TZID:Etc/UTC',
  'BEGIN:STANDARD',
  'DTSTART:19700101T000000',
  'TZOFFSETFROM:+0000',
  'TZOFFSETTO:+0000',
  'END:STANDARD',
  'END:VTIMEZONE',
];
