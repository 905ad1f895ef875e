import type { DoneBy, PlanItem, PlanNote } from './follow-up-plan.js';
import { reason, type TaskSpec, taskItem, timingOf, weakestOf } from './item.js';
import type { ExaminationFacts, PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { COLONOSCOPY_ONCE, SECOND_LOOK, STAGE_UNKNOWN } from './timed-items.table.js';

/**
 * The other timed items: pathology, Helicobacter pylori, colonoscopy after a duodenal lesion.
 *
 * Source: each row of its table.
 */
export function timedItems(
  facts: PlanFacts,
  examinations: readonly ExaminationFacts[],
  series: readonly PlanItem[],
): readonly PlanItem[] {
  return [
    ...pathologyReminder(facts),
    ...helicobacter(facts),
    ...colonoscopyOnce(facts, examinations, series),
    ...recurrences(facts, examinations),
    ...newLesions(facts, examinations),
  ];
}

/**
 * What is said beside a plan.
 *
 * Source: each row of its table.
 */
export function notesOf({ organ, pathology }: PlanFacts): readonly PlanNote[] {
  if (organ !== 'stomach') return [];
  const unknown = pathology?.status === 'final' && pathology.background?.staged !== true;
  return unknown ? [SECOND_LOOK, STAGE_UNKNOWN] : [SECOND_LOOK];
}

function pathologyReminder(facts: PlanFacts): readonly PlanItem[] {
  const { pathology, outcome, specimenRetrieved, esdOn, route } = facts;
  const nothingSent =
    pathology === undefined &&
    (outcome === 'not-started' || outcome === 'abandoned' || specimenRetrieved === false);
  if (nothingSent) return [];
  const item = taskItem({
    task: 'await-pathology',
    row: 'pathology',
    route,
    countsFrom: esdOn,
    says: 'a specimen was sent',
    reasons: [reasonToWait(pathology)],
  });
  if (pathology?.status !== 'final') return [item];
  const { id, reportedOn: on } = pathology;
  const isLate = item.due !== undefined && on > item.due.latest;
  const timing = isLate ? 'late' : 'in-window';
  return [{ ...item, state: 'done', doneBy: { kind: 'report', id, on, timing } }];
}

function reasonToWait(pathology: PlanFacts['pathology']): ReasonCode {
  if (pathology === undefined) return 'pathology-awaited';
  return pathology.status === 'final' ? 'report-final' : 'report-interim';
}

function helicobacter({ organ, outcome, helicobacter: state, route, esdOn }: PlanFacts) {
  if (organ !== 'stomach' || outcome === 'not-started') return [];
  const task = (
    name: 'helicobacter-test' | 'helicobacter-treatment' | 'helicobacter-confirmation',
    says: string,
    reasons: readonly ReasonCode[],
  ) =>
    taskItem({
      task: name,
      row: name,
      route,
      countsFrom: esdOn,
      says,
      reasons,
      state: reasons.length > 0 ? 'to-confirm' : 'open',
    });
  switch (state) {
    case 'unknown':
      return [task('helicobacter-test', 'not known whether infected', [])];
    case 'positive':
      return [
        task('helicobacter-treatment', 'infected', []),
        task('helicobacter-confirmation', 'infected', ['day-not-known']),
      ];
    case 'negative':
    case 'eradicated':
      return [];
  }
}

/** Due with the first look at the duodenum; done by any colonoscopy since. */
function colonoscopyOnce(
  { organ, esdOn }: PlanFacts,
  examinations: readonly ExaminationFacts[],
  series: readonly PlanItem[],
): readonly PlanItem[] {
  const check = series.find(({ row, sequence }) => row === 'DUO-1' && sequence === 1);
  if (organ !== 'duodenum' || check?.due === undefined) return [];
  const done = examinations.find(({ route }) => route === 'lower');
  const { due, rule, version, ruleSet } = check;
  const item: PlanItem = {
    key: 'colonoscopy-once.1',
    kind: 'endoscopy',
    row: 'colonoscopy-once',
    sequence: 1,
    first: true,
    rule,
    version,
    ruleSet,
    route: 'lower',
    ...COLONOSCOPY_ONCE,
    says: ['adenoma of the duodenum'],
    basis: weakestOf(COLONOSCOPY_ONCE.cites),
    inputs: {},
    anchorOn: esdOn,
    countsFrom: esdOn,
    due,
    follows: '',
    urgency: 'routine',
    state: check.state === 'provisional' ? 'provisional' : 'to-confirm',
    reasons: [reason('ever-done')],
    overlaps: [],
  };
  if (done === undefined) return [item];
  const doneBy: DoneBy = {
    kind: 'examination',
    id: done.id,
    on: done.on,
    timing: timingOf(done.on, due),
  };
  return [{ ...item, state: 'done', reasons: [], doneBy }];
}

/** Neoplasia at the scar that was not treated at once, or that is more than a local matter. */
function recurrences(
  { route, events }: PlanFacts,
  examinations: readonly ExaminationFacts[],
): readonly PlanItem[] {
  const found = examinations.filter(({ recurrence }) => recurrence === 'found');
  return found.flatMap((each, i) => {
    const isGrave = each.carcinoma || each.toSurgery;
    if (each.treated && !isGrave) return [];
    const held = isGrave
      ? events.meetings.filter(({ on }) => on >= each.on).sort(byDay)[0]
      : undefined;
    return [
      taskItem({
        task: isGrave ? 'multidisciplinary-meeting' : 'recurrence-treatment',
        row: 'recurrence',
        sequence: i + 1,
        route,
        countsFrom: each.on,
        says: 'neoplasia at the scar',
        reasons: ['recurrence'],
        ...(held === undefined ? {} : answeredBy('event', held)),
        ...seenAgain(each, examinations),
      }),
    ];
  });
}

function newLesions(
  { route }: PlanFacts,
  examinations: readonly ExaminationFacts[],
): readonly PlanItem[] {
  const found = examinations.filter(({ newNeoplasia }) => newNeoplasia);
  return found.map((each, i) =>
    taskItem({
      task: 'clinician-decision',
      row: 'new-lesion',
      sequence: i + 1,
      route,
      countsFrom: each.on,
      says: 'a new lesion elsewhere',
      reasons: ['new-lesion'],
      ...seenAgain(each, examinations),
    }),
  );
}

/** A later look by the same route ends a task that waited for somebody. */
function seenAgain(
  { on, route }: ExaminationFacts,
  examinations: readonly ExaminationFacts[],
): Partial<TaskSpec> {
  const later = examinations.find((each) => each.route === route && each.on > on);
  if (later === undefined) return {};
  return { reasons: ['examined-again'], ...answeredBy('examination', later) };
}

const answeredBy = (kind: DoneBy['kind'], { id, on }: Pick<DoneBy, 'id' | 'on'>) => ({
  state: 'done' as const,
  doneBy: { kind, id, on, timing: 'in-window' } as const,
});

const byDay = (a: { readonly on: string }, b: { readonly on: string }): number =>
  a.on === b.on ? 0 : a.on < b.on ? -1 : 1;
