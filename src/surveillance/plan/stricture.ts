import type { UnitSettings } from '../../contract/index.js';
import type { DoneBy, PlanItem } from './follow-up-plan.js';
import { daysAfter, reason, TIMED_RULE, taskItem, timingOf, weakestOf } from './item.js';
import type { ExaminationFacts, PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import {
  DILATATION,
  STRICTURE_CHECK,
  type TimedItem,
  WIDE_DEFECT_PERCENT,
} from './timed-items.table.js';

/**
 * Call and look after a wide wound of the oesophagus, and looks while the scar is dilated.
 *
 * Source: kim2014 and jes2022 for the share; the days are common practice.
 */
export function strictureItems(
  facts: PlanFacts,
  examinations: readonly ExaminationFacts[],
  unit: UnitSettings,
): readonly PlanItem[] {
  if (facts.organ !== 'oesophagus') return [];
  const seen = answersOf(facts, examinations);
  const wide = isWide(facts, unit) ? [call(facts, seen), check(facts, seen)] : [];
  return [...wide, ...dilatations(facts, examinations)];
}

function isWide({ defectPercent = 0 }: PlanFacts, unit: UnitSettings): boolean {
  switch (unit.strictureProphylaxis) {
    case 'above-three-quarters':
      return defectPercent > WIDE_DEFECT_PERCENT;
    case 'from-three-quarters':
      return defectPercent >= WIDE_DEFECT_PERCENT;
  }
}

type Answer = Pick<DoneBy, 'kind' | 'id' | 'on'>;

/** Whatever told how wide the scar is, in the order in which it happened. */
function answersOf(
  { events, route, esdOn }: PlanFacts,
  examinations: readonly ExaminationFacts[],
): readonly Answer[] {
  const looks = examinations
    .filter((each) => each.route === route)
    .map(({ id, on }) => ({ kind: 'examination' as const, id, on }));
  const told = [...events.strictures, ...events.dilatations].map(({ id, on }) => ({
    kind: 'event' as const,
    id,
    on,
  }));
  return [...looks, ...told].filter(({ on }) => on > esdOn).sort(byDay);
}

/** A status that somebody asked for is a call, too. */
function call(facts: PlanFacts, seen: readonly Answer[]): PlanItem {
  const asked = facts.events.statuses.map(({ id, on }) => ({ kind: 'event' as const, id, on }));
  const item = taskItem({
    task: 'stricture-call',
    row: 'stricture-call',
    route: facts.route,
    countsFrom: facts.esdOn,
    says: 'wide wound of the oesophagus',
    reasons: [],
  });
  return answered(item, [...seen, ...asked].sort(byDay)[0]);
}

const check = (facts: PlanFacts, seen: readonly Answer[]): PlanItem =>
  answered(endoscopy('stricture-check', 1, facts, facts.esdOn, STRICTURE_CHECK, []), seen[0]);

/** After each dilatation another look, until an endoscope passed without one. */
function dilatations(
  facts: PlanFacts,
  examinations: readonly ExaminationFacts[],
): readonly PlanItem[] {
  const dilated = [
    ...facts.events.dilatations,
    ...examinations.filter(({ passage }) => passage?.dilated),
  ].sort(byDay);
  const days = [...new Set(dilated.map(({ on }) => on))];
  const seen = answersOf(facts, examinations);
  return days.map((on, i) => {
    const item = endoscopy('dilatation', i + 1, facts, on, DILATATION, ['while-dilating']);
    return answered(
      { ...item, state: 'to-confirm' },
      seen.find((each) => each.on > on),
    );
  });
}

function endoscopy(
  row: string,
  sequence: number,
  { route, defectPercent }: PlanFacts,
  countsFrom: string,
  { days, look, cites }: TimedItem,
  reasons: readonly ReasonCode[],
): PlanItem {
  return {
    key: `${row}.${sequence}`,
    kind: 'endoscopy',
    row,
    sequence,
    first: sequence === 1,
    ...TIMED_RULE,
    route,
    look,
    says: [row === 'dilatation' ? 'the scar was dilated' : 'wide wound of the oesophagus'],
    cites,
    basis: weakestOf(cites),
    inputs: { ...(defectPercent === undefined ? {} : { defectPercent }) },
    anchorOn: countsFrom,
    countsFrom,
    due: daysAfter(countsFrom, days),
    follows: '',
    urgency: 'routine',
    state: 'open',
    reasons: reasons.map(reason),
    overlaps: [],
  };
}

function answered(item: PlanItem, by: Answer | undefined): PlanItem {
  if (by === undefined || item.due === undefined) return item;
  return {
    ...item,
    state: 'done',
    reasons: by.kind === 'event' ? [reason('answered-by-event')] : [],
    doneBy: { kind: by.kind, id: by.id, on: by.on, timing: timingOf(by.on, item.due) },
  };
}

function byDay(
  a: { readonly on: string; readonly id: DoneBy['id'] },
  b: { readonly on: string; readonly id: DoneBy['id'] },
): number {
  const key = ({ on, id }: typeof a) => `${on}|${id.system}|${id.value}`;
  return key(a) < key(b) ? -1 : 1;
}
