import { DEFAULT_WITHIN_DAYS } from '../contract/index.js';
import { addDays, type Problem } from '../kernel/index.js';
import { readPlace, readPoint, writePlace, writePoint } from './follow-up-cursor.js';
import type { FollowUpListing, FollowUpStore, Place, StoredFollowUp } from './follow-up-ports.js';
import type { FollowUp, FollowUpQuery, FoundFollowUps } from './follow-ups.js';
import { toFollowUps } from './to-follow-ups.js';
import { type DayDeps, todayAt } from './today.js';

/** What listing needs of the world. */
export interface FollowUpDeps extends DayDeps {
  readonly store: { readonly followUps: FollowUpStore };
}

/** Somebody still has to do something about them. */
const TO_COME = ['provisional', 'open', 'to-confirm'] as const;
/** An appointment that no plan asks for any more is one until somebody cancels it. */
const BOOKED = [...TO_COME, 'superseded', 'revoked'] as const;

/** Follow-ups by target day and id, or what has changed since a cursor. Today is the day in UTC. */
export async function listFollowUps(
  query: FollowUpQuery,
  deps: FollowUpDeps,
): Promise<FoundFollowUps> {
  return query.since === undefined ? listPage(query, deps) : listChanges(query.since, query, deps);
}

/** @returns undefined when there is no such follow-up */
export async function readFollowUp(id: string, deps: FollowUpDeps): Promise<FollowUp | undefined> {
  const stored = await deps.store.followUps.find(id);
  if (stored === undefined) return undefined;
  return (await toFollowUps([stored], deps.store.followUps, todayAt(deps)))[0];
}

async function listPage(query: FollowUpQuery, deps: FollowUpDeps): Promise<FoundFollowUps> {
  const { followUps } = deps.store;
  const after = query.after === undefined ? undefined : readPlace(query.after);
  if (query.after !== undefined && after === undefined) return notATokenOf('after', 'next');
  const today = todayAt(deps);
  // Asked before the list is read: what changes from here on is among the changes.
  const point = after?.point ?? (await followUps.now());
  const { followUps: stored, next } = await followUps.list(toListing(query, today, after?.place));
  return {
    kind: 'found',
    page: {
      followUps: await toFollowUps(stored, followUps, today),
      ...(next === undefined ? {} : { next: writePlace({ place: next, point }) }),
      cursor: writePoint(point),
    },
  };
}

function toListing(query: FollowUpQuery, today: string, after?: Place): FollowUpListing {
  const { states, due, withinDays = DEFAULT_WITHIN_DAYS, limit } = query;
  const { from, to, kind, route, booked } = query;
  const asked = states ?? (booked ? BOOKED : TO_COME);
  const until = due === 'unbooked-soon' ? { until: addDays(today, withinDays) } : {};
  return {
    states: due === undefined ? asked : asked.filter(isToCome),
    limit,
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(kind === undefined ? {} : { kind }),
    ...(route === undefined ? {} : { route }),
    ...(booked === undefined ? {} : { booked }),
    ...(due === undefined ? {} : { due: { today, ...until } }),
    ...(after === undefined ? {} : { after }),
  };
}

const isToCome = (state: StoredFollowUp['itemState']): boolean =>
  TO_COME.some((each) => each === state);

async function listChanges(
  since: string,
  { limit }: FollowUpQuery,
  deps: FollowUpDeps,
): Promise<FoundFollowUps> {
  const point = readPoint(since);
  if (point === undefined) return notATokenOf('since', 'cursor');
  const changes = await deps.store.followUps.changes(point, limit);
  if (changes === undefined) return { kind: 'gone' };
  const followUps = await toFollowUps(changes.followUps, deps.store.followUps, todayAt(deps));
  return { kind: 'found', page: { followUps, cursor: writePoint(changes.until) } };
}

function notATokenOf(parameter: string, field: string): FoundFollowUps {
  const problem: Problem = {
    rule: 'bad-format',
    pointer: `/${parameter}`,
    message: 'This value is not written as expected.',
    expected: `the value of \`${field}\` of an answer`,
  };
  return { kind: 'invalid', problems: [problem] };
}
