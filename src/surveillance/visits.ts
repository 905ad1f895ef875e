import type { Identifier, Route } from '../contract/index.js';
import { compareTexts, earlierOf, invariant, laterOf } from '../kernel/index.js';
import type { Window } from './plan/follow-up-plan.js';

/** An open examination of a plan, as far as a visit needs it. */
export interface VisitItem {
  /** Unlike that of any other item. */
  readonly id: string;
  readonly patient: Identifier;
  readonly route: Route;
  /** Calendar days, earliest <= target <= latest. */
  readonly window: Window;
  readonly urgency: VisitUrgency;
}

/** Words of FHIR R4 `request-priority` that a plan uses. */
export type VisitUrgency = 'routine' | 'urgent';

/** One day of one patient that answers every item in it. */
export interface Visit {
  /** In the order in which they joined: by target. One or more. */
  readonly ids: readonly string[];
  readonly patient: Identifier;
  readonly route: Route;
  /** The days that suit every item; its target is the earliest one, moved into them. */
  readonly window: Window;
  /** The highest of the items. */
  readonly urgency: VisitUrgency;
}

/**
 * Groups open examinations into visits: several of one patient and route whose windows have a day
 * in common are one. The item with the earliest target opens a visit; of the others, by target,
 * each joins that has a day in common with all that are in it. Then the same with what is left.
 *
 * Source: the plan logic of the follow-up table, "earliest due date wins; one visit covers all
 * lesions of the same route" (derived); that each item keeps its window is a decision of this
 * project.
 *
 * @returns by target and first id; each item is in one visit
 * @throws InvariantError when ids repeat or a window is out of order
 */
export function visitsOf(items: readonly VisitItem[]): readonly Visit[] {
  invariant(new Set(items.map(({ id }) => id)).size === items.length, 'each item has its own id');
  const groups = new Map<string, Visit[]>();
  for (const item of [...items].sort(byTarget)) {
    const { earliest, target, latest } = item.window;
    invariant(earliest <= target && target <= latest, 'a window is three dates in order');
    const group = `${item.route} ${item.patient.system} ${item.patient.value}`;
    const visits = groups.get(group) ?? [];
    const at = visits.findIndex(({ window }) => haveDayInCommon(window, item.window));
    const joined = visits[at];
    if (joined === undefined) visits.push(opened(item));
    else visits[at] = withItem(joined, item);
    groups.set(group, visits);
  }
  return [...groups.values()].flat().sort(byTargetOfVisit);
}

/** Ids decide last, so that the order is the same whatever order came in. */
const byTarget = (a: VisitItem, b: VisitItem): number =>
  compareTexts(a.window.target, b.window.target) ||
  compareTexts(a.window.latest, b.window.latest) ||
  compareTexts(a.id, b.id);

const byTargetOfVisit = (a: Visit, b: Visit): number =>
  compareTexts(a.window.target, b.window.target) || compareTexts(a.ids[0] ?? '', b.ids[0] ?? '');

const haveDayInCommon = (a: Window, b: Window): boolean =>
  a.earliest <= b.latest && b.earliest <= a.latest;

const opened = ({ id, patient, route, window, urgency }: VisitItem): Visit => ({
  ids: [id],
  patient,
  route,
  window,
  urgency,
});

/** Items join by target, so the first target is the earliest, and only ever moves later. */
function withItem(visit: Visit, { id, window, urgency }: VisitItem): Visit {
  const earliest = laterOf(visit.window.earliest, window.earliest);
  const latest = earlierOf(visit.window.latest, window.latest);
  const target = earlierOf(laterOf(visit.window.target, earliest), latest);
  return {
    ...visit,
    ids: [...visit.ids, id],
    window: { earliest, target, latest },
    urgency: urgency === 'urgent' ? urgency : visit.urgency,
  };
}
