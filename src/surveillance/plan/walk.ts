import type { Route } from '../../contract/index.js';
import { addDays } from '../../kernel/index.js';
import { FOLLOW_UPS } from '../follow-ups.table.js';
import { thenText } from '../schedule.js';
import type { PlanItem } from './follow-up-plan.js';
import { reason, taskItem, timingOf, weakestOf } from './item.js';
import type { ExaminationFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { roomAround, toleratedDays } from './room.js';
import { SET_OF_ROW } from './row-sets.table.js';
import { type EndStep, type ExaminationStep, firstStep, nextStep, type Step } from './steps.js';
import type { Track } from './track.js';
import { turnOf } from './turns.js';

/**
 * Follows a series through the examinations that took place.
 *
 * Source: the row of the follow-up table.
 *
 * @param examinations of any route, in the order in which they took place
 * @returns what was done, then what is due or the task at the end of the series
 */
export function walkTrack(
  start: Track,
  examinations: readonly ExaminationFacts[],
  route: Route,
): readonly PlanItem[] {
  const seen = examinations.filter((each) => each.route === route && each.on > start.anchorOn);
  const done: PlanItem[] = [];
  let step: Step = firstStep(start);
  for (const each of seen) {
    if (step.kind === 'examination') {
      const item = toItem(step, done, route);
      if (answersItem(each, item)) {
        done.push(doneItem(item, each));
        step = nextStep(step, each);
      }
    }
    const turned: Track | undefined = turnOf(step.track, each);
    if (turned !== undefined) step = firstStep(turned);
    step = asExaminerWants(step, each);
  }
  const left = step.kind === 'end' ? toTask(step, done, route) : toItem(step, done, route);
  return left === undefined ? done : [...done, left];
}

/** The request that it names, or the window in which it falls; later ones answer what was due. */
function answersItem({ on, answers }: ExaminationFacts, { key, due, countsFrom }: PlanItem) {
  if (answers?.endsWith(`.${key}`)) return true;
  if (due === undefined) return false;
  return on >= addDays(due.earliest, -toleratedDays(countsFrom, due.earliest));
}

function doneItem(item: PlanItem, { id, on }: ExaminationFacts): PlanItem {
  const window = item.room ?? item.due;
  const timing = window === undefined ? 'in-window' : timingOf(on, window);
  return { ...item, state: 'done', reasons: [], doneBy: { kind: 'examination', id, on, timing } };
}

/** A day that the examiner named stands instead of a later one. */
function asExaminerWants(step: Step, { on, next }: ExaminationFacts): Step {
  if (step.kind === 'end' || next?.step !== 'sooner' || next.on === undefined) return step;
  const day = next.on;
  if (day >= step.due.target || day <= on) return step;
  const due = { earliest: day, target: day, latest: day };
  return { ...step, due, countsFrom: on, reasons: [...step.reasons, 'sooner'] };
}

const nameOf = ({ named, row }: Track): string => named ?? row;

const sequenceOf = (track: Track, done: readonly PlanItem[]): number =>
  1 + done.filter(({ key }) => key.startsWith(`${nameOf(track)}.`)).length;

function toItem(step: ExaminationStep, done: readonly PlanItem[], route: Route): PlanItem {
  const { track, due, countsFrom, thens, calendar, first } = step;
  const { look, cites } = FOLLOW_UPS[track.row];
  const sequence = sequenceOf(track, done);
  const room = roomAround(due, countsFrom);
  return {
    key: `${nameOf(track)}.${sequence}`,
    kind: 'endoscopy',
    row: track.row,
    sequence,
    first,
    rule: track.rule,
    version: track.version,
    ruleSet: SET_OF_ROW[track.row],
    route,
    look,
    says: track.says,
    cites,
    basis: weakestOf(cites),
    inputs: track.inputs,
    anchorOn: track.anchorOn,
    countsFrom,
    due,
    ...(room === undefined ? {} : { room }),
    follows: calendar.length > 0 ? calendar.join(',') : thens.map(thenText).join(','),
    urgency: 'routine',
    state: track.state ?? 'open',
    reasons: unique([...track.reasons, ...step.reasons]).map(reason),
    overlaps: [],
  };
}

function toTask(step: EndStep, done: readonly PlanItem[], route: Route): PlanItem | undefined {
  const { track, task, countsFrom } = step;
  if (track.row === 'MUCOSA-none') return undefined;
  const row = done.length === 0 ? nameOf(track) : `${nameOf(track)}-end`;
  return taskItem({
    task,
    row,
    route,
    countsFrom,
    says: track.says.join('; '),
    reasons: unique([...track.reasons, ...step.reasons]),
    rule: {
      rule: track.rule,
      version: track.version,
      ruleSet: SET_OF_ROW[track.row],
      inputs: track.inputs,
      cites: FOLLOW_UPS[track.row].cites,
    },
  });
}

const unique = (codes: readonly ReasonCode[]): readonly ReasonCode[] => [...new Set(codes)];
