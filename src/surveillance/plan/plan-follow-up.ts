import type { UnitSettings } from '../../contract/index.js';
import { offClosedDays } from './closed-days.js';
import { ended } from './endings.js';
import type { FollowUpPlan, PlanItem } from './follow-up-plan.js';
import { joinOverlaps } from './overlaps.js';
import { ownKeys } from './own-keys.js';
import type { ExaminationFacts, PlanFacts } from './plan-facts.js';
import { seriesItems } from './series.js';
import { stopRule } from './stop.js';
import { strictureItems } from './stricture.js';
import { supersededItems } from './superseded.js';
import { notesOf, timedItems } from './timed-items.js';

/**
 * Plans what comes after a case. A pure function of what is known: the order of messages plays no
 * part, and what was done stays.
 *
 * Source: each row of the tables; the plan logic of follow-up (derived).
 * Indeterminate: where a class or a fact is not known, an item says so and asks a person.
 *
 * @param before what was or could have been known before; items that only those plans have are
 * superseded in this one
 */
export function planFollowUp(
  facts: PlanFacts,
  unit: UnitSettings,
  before: readonly PlanFacts[] = [],
): FollowUpPlan {
  const now = { facts: inOrder(facts), items: itemsOf(facts, unit) };
  const earlier = before.map((was) => ({ facts: inOrder(was), items: itemsOf(was, unit) }));
  const items = [...now.items, ...supersededItems(now, earlier)].sort(byDate);
  const named = items.flatMap(({ doneBy }) => (doneBy === undefined ? [] : [textOf(doneBy.id)]));
  return {
    calculatedAt: facts.calculatedAt,
    settingsVersion: unit.version,
    items,
    unplanned: now.facts.examinations
      .filter(({ id }) => !named.includes(textOf(id)))
      .map(({ id, on }) => ({ id, on })),
    notes: notesOf(facts),
  };
}

function itemsOf(told: PlanFacts, unit: UnitSettings): readonly PlanItem[] {
  const facts = inOrder(told);
  const { examinations } = facts;
  const series = seriesItems(facts, examinations, unit);
  const local = facts.outcome === 'piecemeal' || facts.verdict.group === 'local-risk';
  const asked = joinOverlaps(series).map((item) => stopRule(item, facts, local));
  const others = [
    ...timedItems(facts, examinations, series),
    ...strictureItems(facts, examinations, unit),
  ];
  const items = ended(facts, [...asked, ...others]).map((item) => offClosedDays(item, unit));
  return ownKeys(items.sort(byDate));
}

function inOrder(facts: PlanFacts): PlanFacts {
  const byTime = (a: ExaminationFacts, b: ExaminationFacts) =>
    compare(`${a.on}|${textOf(a.id)}`, `${b.on}|${textOf(b.id)}`);
  return { ...facts, examinations: [...facts.examinations].sort(byTime) };
}

const byDate = (a: PlanItem, b: PlanItem): number =>
  compare(`${a.due?.earliest ?? '~'}|${a.key}`, `${b.due?.earliest ?? '~'}|${b.key}`);

const compare = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

const textOf = ({ system, value }: ExaminationFacts['id']): string => `${system}|${value}`;
