import type { UnitSettings } from '../../contract/index.js';
import type { DoneBy, PlanItem, PlanTask } from './follow-up-plan.js';
import { daysAfter, taskItem, timingOf } from './item.js';
import type { PlanEvents, PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { TASK_DAYS } from './timed-items.table.js';
import type { Track } from './track.js';
import { tracksByClass, tracksWithoutSurgery } from './tracks-of.js';

/** What a meeting leaves to do, and the series that it leaves to follow. */
export interface AfterMeeting {
  readonly tracks: readonly Track[];
  readonly tasks: readonly PlanItem[];
  /** Why the examinations are not wanted any more. */
  readonly ended?: ReasonCode;
}

type Meeting = PlanEvents['meetings'][number];

/**
 * High risk: nothing is planned before a meeting has said that nobody operates. A meeting on a
 * resection of lower risk changes the plan only if it decides for something else.
 *
 * Source: the plan logic of follow-up; the days of the meeting are common practice.
 */
export function afterMeeting(facts: PlanFacts, unit: UnitSettings): AfterMeeting {
  const meetings = [...facts.events.meetings].sort(byDay);
  const last = meetings.at(-1);
  const byClass = tracksByClass(facts, unit);
  const isHigh =
    facts.verdict.group === 'non-curative' || byClass.some(({ row }) => row === 'meeting');
  if (!isHigh && (last === undefined || last.decision === 'no-surgery')) {
    return { tracks: byClass, tasks: [] };
  }
  const tasks = meetingItems(facts, meetings);
  if (last === undefined) return { tracks: [], tasks };
  const series = isHigh ? tracksWithoutSurgery(facts, unit) : byClass;
  const isStale = last.on < (facts.pathology?.reportedOn ?? last.on);
  const tracks = isStale ? doubted(series, 'report-newer-than-decision') : series;
  return afterDecision(facts, last, { tracks, tasks });
}

function afterDecision(
  facts: PlanFacts,
  { decision, on }: Meeting,
  { tracks, tasks }: AfterMeeting,
): AfterMeeting {
  const then = (task: PlanTask) =>
    taskItem({
      task,
      row: task,
      route: facts.route,
      countsFrom: on,
      says: 'as the meeting decided',
      reasons: ['meeting-decided'],
    });
  switch (decision) {
    case 'no-surgery':
      return { tracks, tasks };
    case 'surgery':
      return { tracks: [], tasks: [...tasks, then('surgery-referral')] };
    case 'further-endoscopic-treatment':
    case 'chemoradiotherapy':
      return {
        tracks: doubted(tracks, 'other-treatment-first'),
        tasks: [...tasks, then('additional-treatment')],
      };
    case 'best-supportive-care':
      return { tracks, tasks, ended: 'supportive-care' };
    case 'further-staging':
      return { tracks: [], tasks };
  }
}

/** One meeting, and another one after each that asked for more staging. */
function meetingItems(facts: PlanFacts, meetings: readonly Meeting[]): readonly PlanItem[] {
  const [only] = meetings;
  const asked = facts.pathology?.reportedOn ?? facts.esdOn;
  if (only === undefined) return [meetingItem(facts, 1, asked)];
  const items: PlanItem[] = [];
  let sequence = 1;
  let from = asked;
  for (const [i, meeting] of meetings.entries()) {
    const again = meeting.decision === 'further-staging';
    const isLast = i === meetings.length - 1;
    if (!again && !isLast) continue;
    items.push(meetingItem(facts, sequence, from, meeting));
    if (!again) continue;
    sequence += 1;
    from = meeting.on;
    if (isLast) items.push(meetingItem(facts, sequence, from));
  }
  return items;
}

function meetingItem(
  facts: PlanFacts,
  sequence: number,
  countsFrom: string,
  held?: Meeting,
): PlanItem {
  const task = 'multidisciplinary-meeting';
  return taskItem({
    task,
    row: 'meeting',
    sequence,
    route: facts.route,
    countsFrom,
    says: 'high-risk resection',
    reasons: held ? ['meeting-decided'] : [sequence > 1 ? 'meeting-again' : 'high-risk'],
    ...(held === undefined ? {} : { state: 'done' as const, doneBy: byMeeting(held, countsFrom) }),
  });
}

function byMeeting({ id, on }: Meeting, countsFrom: string): DoneBy {
  const due = daysAfter(countsFrom, TASK_DAYS['multidisciplinary-meeting'].days);
  return { kind: 'event', id, on, timing: timingOf(on, due) };
}

const doubted = (tracks: readonly Track[], code: ReasonCode): readonly Track[] =>
  tracks.map((track) => ({ ...track, state: 'to-confirm', reasons: [...track.reasons, code] }));

function byDay(a: Meeting, b: Meeting): number {
  const key = ({ on, id }: Meeting) => `${on}|${id.system}|${id.value}`;
  return key(a) < key(b) ? -1 : 1;
}
