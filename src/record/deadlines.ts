import { addDays, compareInstants } from '../kernel/index.js';
import type { Knowledge } from './knowledge.js';

/** A moment at which time alone changes what a record says. */
export interface Deadline {
  readonly what: 'pathology-overdue' | 'thirty-days-over';
  /** ISO 8601 instant, in the offset of the end of the procedure. */
  readonly at: string;
}

/**
 * Days after which a missing pathology report is asked for. Source: common practice, no source.
 */
const PATHOLOGY_DAYS = 14;
/**
 * Days within which an adverse event counts; the day of the procedure is day 0.
 * Source: the outcome window of ESD series (Limoges score: Albouys J et al.), 30 days.
 */
const WINDOW_DAYS = 30;

/** Whether a specimen waits for its final report; one that may be there counts as there. */
export function awaitsPathology({ esdCase, reports, withdrawal }: Knowledge): boolean {
  const { resection, specimen } = esdCase.fields;
  const hasNone =
    resection.outcome === 'abandoned' ||
    resection.outcome === 'not-started' ||
    specimen?.retrieved === false;
  const isReported = reports.some(({ fields }) => fields.report.status === 'final');
  return withdrawal === undefined && !hasNone && !isReported;
}

/** What the record still waits for, whether its time has come or not. */
function deadlinesOf(known: Knowledge): readonly Deadline[] {
  if (known.withdrawal !== undefined) return [];
  const { scopeOutAt } = known.esdCase.fields.times;
  const lastDay = addDays(dayOf(scopeOutAt), WINDOW_DAYS);
  const pathology: Deadline = {
    what: 'pathology-overdue',
    at: startOf(addDays(dayOf(scopeOutAt), PATHOLOGY_DAYS), scopeOutAt),
  };
  const window: Deadline = {
    what: 'thirty-days-over',
    at: startOf(addDays(lastDay, 1), scopeOutAt),
  };
  return [
    ...(awaitsPathology(known) ? [pathology] : []),
    ...(isToldUntil(known, lastDay) ? [] : [window]),
  ];
}

/** Whether somebody has said what happened until that day. */
const isToldUntil = ({ events }: Knowledge, lastDay: string): boolean =>
  events.some(({ fields }) => fields.status !== undefined && fields.status.untilOn >= lastDay);

/** Deadlines that the record knows to have passed. */
export function passedDeadlines(known: Knowledge): readonly Deadline[] {
  const { asOf } = known;
  if (asOf === undefined) return [];
  return deadlinesOf(known).filter(({ at }) => compareInstants(at, asOf) <= 0);
}

/**
 * When the record must be told how late it is, so that it says what time has changed.
 *
 * @returns the first deadline that it does not know to have passed; undefined: time changes nothing
 */
export function nextDeadline(known: Knowledge): Deadline | undefined {
  const { asOf } = known;
  const open = deadlinesOf(known).filter(
    ({ at }) => asOf === undefined || compareInstants(at, asOf) > 0,
  );
  return [...open].sort((a, b) => compareInstants(a.at, b.at))[0];
}

/** The calendar day of an instant in its own offset. */
const dayOf = (at: string): string => at.slice(0, 10);

/** The first moment of a day in the offset of an instant. */
const startOf = (on: string, like: string): string =>
  `${on}T00:00:00${/(Z|[+-]\d\d:\d\d)$/.exec(like)?.[0] ?? 'Z'}`;
