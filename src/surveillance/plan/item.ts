import type { Route } from '../../contract/index.js';
import { addDays, addMonths, type Basis, type Citation } from '../../kernel/index.js';
import type { PlanItem, PlanReason, PlanTask, Window } from './follow-up-plan.js';
import { REASONS, type ReasonCode } from './reasons.table.js';
import { type Days, TASK_DAYS, type TimedItem } from './timed-items.table.js';

/** A reason with its sentence. */
export const reason = (code: ReasonCode): PlanReason => ({ code, says: REASONS[code] });

/**
 * An item with one more reason, each at most once.
 *
 * Source: the rule of the item.
 */
export function withReasons(item: PlanItem, ...codes: readonly ReasonCode[]): PlanItem {
  const fresh = codes.filter((code) => item.reasons.every((told) => told.code !== code));
  return { ...item, reasons: [...item.reasons, ...fresh.map(reason)] };
}

/** Whether somebody still has to do something about it. */
export const isToCome = ({ state }: PlanItem): boolean =>
  state === 'open' || state === 'provisional' || state === 'to-confirm';

/**
 * An item that is still to come as one that a person confirms first.
 *
 * Source: the rule of the item.
 */
export function toConfirm(item: PlanItem, code: ReasonCode): PlanItem {
  if (item.state !== 'open' && item.state !== 'to-confirm') return item;
  return withReasons({ ...item, state: 'to-confirm' }, code);
}

/** An item that is still to come as one that is not wanted any more. */
export const revoked = (item: PlanItem, code: ReasonCode): PlanItem =>
  isToCome(item) ? withReasons({ ...item, state: 'revoked' }, code) : item;

const WEAKNESS: readonly Basis[] = ['published', 'derived', 'recalled', 'practice'];

/**
 * The weakest of the sources.
 *
 * Source: the rule of the item.
 */
export function weakestOf(cites: readonly Citation[]): Basis {
  return WEAKNESS[Math.max(0, ...cites.map(({ basis }) => WEAKNESS.indexOf(basis)))] ?? 'practice';
}

/** A window in days after a day. */
export const daysAfter = (day: string, { earliest, target, latest }: Days): Window => ({
  earliest: addDays(day, earliest),
  target: addDays(day, target),
  latest: addDays(day, latest),
});

/** A window in months after a day. */
export const monthsAfter = (day: string, min: number, target: number, max: number): Window => ({
  earliest: addMonths(day, min),
  target: addMonths(day, target),
  latest: addMonths(day, max),
});

/** What the rules of this folder go by, where no rule set asks. */
export const TIMED_RULE = { rule: 'timed-items', version: 1, ruleSet: 'local' } as const;

export interface TaskSpec {
  readonly task: PlanTask;
  readonly row: string;
  readonly sequence?: number;
  readonly route: Route;
  readonly countsFrom: string;
  readonly says: string;
  readonly reasons: readonly ReasonCode[];
  readonly state?: PlanItem['state'];
  readonly rule?: Pick<PlanItem, 'rule' | 'version' | 'ruleSet' | 'inputs' | 'cites'>;
  readonly doneBy?: PlanItem['doneBy'];
}

/**
 * A task for a person, with its days by the table.
 *
 * Source: the rule of the item.
 */
export function taskItem(spec: TaskSpec): PlanItem {
  const { task, row, sequence = 1, route, countsFrom, says, reasons, state = 'open' } = spec;
  const timed: TimedItem | undefined = task === 'return-to-screening' ? undefined : TASK_DAYS[task];
  const cites = [...(spec.rule?.cites ?? []), ...(timed?.cites ?? [])];
  return {
    key: `${row}.${sequence}`,
    kind: 'task',
    task,
    row,
    sequence,
    first: sequence === 1,
    ...(spec.rule ?? { ...TIMED_RULE, inputs: {} }),
    route,
    look: timed?.look ?? 'No follow-up of this place: back to screening.',
    says: [says],
    cites,
    basis: weakestOf(cites),
    anchorOn: countsFrom,
    countsFrom,
    ...(timed === undefined ? {} : { due: daysAfter(countsFrom, timed.days) }),
    follows: '',
    urgency: 'routine',
    state,
    reasons: reasons.map(reason),
    ...(spec.doneBy === undefined ? {} : { doneBy: spec.doneBy }),
    overlaps: [],
  };
}

/**
 * How an event or examination lies to the window that it answers.
 *
 * Source: the rule of the item.
 */
export function timingOf(on: string, due: Window): 'early' | 'in-window' | 'late' {
  if (on < due.earliest) return 'early';
  return on > due.latest ? 'late' : 'in-window';
}
