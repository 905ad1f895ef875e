import ICAL from 'ical.js';
import { sync } from 'node-ical';

/** What a reader understands of an event. */
export interface ReadEvent {
  readonly uid: string;
  readonly summary: string;
  readonly sequence: number;
  readonly status: string;
  readonly class: string;
  /** YYYY-MM-DD; the end is the first day after. */
  readonly start: string;
  readonly end: string;
  readonly stampedAt: string;
  readonly changedAt: string;
}

/** By `ical.js`. */
export function readByIcalJs(stream: string): readonly ReadEvent[] {
  const calendar = new ICAL.Component(ICAL.parse(stream));
  return calendar.getAllSubcomponents('vevent').map((event) => {
    const text = (name: string): string => String(event.getFirstPropertyValue(name));
    return {
      uid: text('uid'),
      summary: text('summary'),
      sequence: Number(text('sequence')),
      status: text('status'),
      class: text('class'),
      start: text('dtstart'),
      end: text('dtend'),
      stampedAt: text('dtstamp'),
      changedAt: text('last-modified'),
    };
  });
}

/** By `node-ical`, which gives dates as midnight of the zone that the process runs in. */
export function readByNodeIcal(stream: string): readonly ReadEvent[] {
  return Object.values(sync.parseICS(stream)).flatMap((each) => {
    if (each === undefined || each.type !== 'VEVENT') return [];
    if (!each.start.dateOnly || !each.end?.dateOnly) throw new Error('a day was read as a time');
    return {
      uid: each.uid,
      summary: String(each.summary),
      sequence: Number(each.sequence),
      status: String(each.status),
      class: String(each.class),
      start: localDay(each.start),
      end: localDay(each.end),
      stampedAt: toTheSecond(each.dtstamp),
      changedAt: toTheSecond(each.lastmodified),
    };
  });
}

const two = (n: number): string => String(n).padStart(2, '0');
const localDay = (at: Date): string =>
  `${String(at.getFullYear()).padStart(4, '0')}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
const toTheSecond = (at: Date | undefined): string =>
  at === undefined ? '' : at.toISOString().replace('.000Z', 'Z');
