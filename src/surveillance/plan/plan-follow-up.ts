import type { UnitSettings } from '../../contract/index.js';
import { compareTexts } from '../../kernel/index.js';
import { bookedItems } from './booked-items.js';
import { bookingChecks } from './booking-checks.js';
import { offClosedDays } from './closed-days.js';
import { ended } from './endings.js';
import type { FollowUpPlan, PlanItem } from './follow-up-plan.js';
import { joinOverlaps } from './overlaps.js';
import { ownKeys } from './own-keys.js';
import type { ExaminationFacts, PlanFacts } from './plan-facts.js';
import { seriesItems } from './series.js';
import { stopRule } from './stop.js';
import { strictureItems } from './stricture.js';
import { type EarlierPlan, supersededItems } from './superseded.js';
import { notesOf, timedItems } from './timed-items.js';
import { withUrgency } from './urgency.js';

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
  const now = planOf(inOrder(facts), unit);
  const earlier = distinct(before).map((was) => planOf(was, unit));
  const items = withBookings(now, earlier, unit).map(withUrgency).sort(byDate);
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

/** Each once and by content: most messages of a case change nothing that a plan rests on. */
function distinct(facts: readonly PlanFacts[]): readonly PlanFacts[] {
  const ordered = facts.map(inOrder);
  const byContent = new Map(ordered.map((each) => [JSON.stringify(each), each] as const));
  return [...byContent].sort(([a], [b]) => compareTexts(a, b)).map(([, each]) => each);
}

const planOf = (facts: PlanFacts, unit: UnitSettings): EarlierPlan => ({
  facts,
  items: itemsOf(facts, unit),
});

/** All that was ever asked for, with its bookings, and tasks for those that do not fit. */
function withBookings(
  now: EarlierPlan,
  earlier: readonly EarlierPlan[],
  unit: UnitSettings,
): readonly PlanItem[] {
  const items = bookedItems(now.facts, [...now.items, ...supersededItems(now, earlier)]);
  const checks = bookingChecks(now.facts, items, unit);
  const checked = earlier.map(({ facts, items: asked }) => ({
    facts,
    items: bookingChecks(facts, bookedItems(facts, asked), unit),
  }));
  return [...items, ...checks, ...supersededItems({ ...now, items: checks }, checked)];
}

function itemsOf(facts: PlanFacts, unit: UnitSettings): readonly PlanItem[] {
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
    compareTexts(`${a.on}|${textOf(a.id)}`, `${b.on}|${textOf(b.id)}`);
  return { ...facts, examinations: [...facts.examinations].sort(byTime) };
}

const byDate = (a: PlanItem, b: PlanItem): number =>
  compareTexts(`${a.due?.earliest ?? '~'}|${a.key}`, `${b.due?.earliest ?? '~'}|${b.key}`);

const textOf = ({ system, value }: ExaminationFacts['id']): string => `${system}|${value}`;
