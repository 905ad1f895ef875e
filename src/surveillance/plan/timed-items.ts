import type { DoneBy, PlanItem, PlanNote } from './follow-up-plan.js';
import { reason, taskItem, timingOf, weakestOf } from './item.js';
import type { ExaminationFacts, PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { COLONOSCOPY_ONCE, SECOND_LOOK, STAGE_UNKNOWN } from './timed-items.table.js';

/** The other timed items: pathology, Helicobacter pylori, colonoscopy after a duodenal lesion. */
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

/** What is said beside a plan. */
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
    countsFrom: esdOn,
    due,
    follows: '',
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

/** Neoplasia at the scar that was not treated in the same examination. */
function recurrences(
  { route }: PlanFacts,
  examinations: readonly ExaminationFacts[],
): readonly PlanItem[] {
  const found = examinations.filter(({ recurrence }) => recurrence === 'found');
  return found.flatMap((each, i) => {
    const isGrave = each.carcinoma || each.toSurgery;
    if (each.treated && !isGrave) return [];
    const later = examinations.find(({ on, route: by }) => by === each.route && on > each.on);
    return [
      taskItem({
        task: isGrave ? 'multidisciplinary-meeting' : 'recurrence-treatment',
        row: 'recurrence',
        sequence: i + 1,
        route,
        countsFrom: each.on,
        says: 'neoplasia at the scar',
        reasons: later === undefined ? ['recurrence'] : ['examined-again'],
        ...(later === undefined ? {} : doneBy(later)),
      }),
    ];
  });
}

function newLesions(
  { route }: PlanFacts,
  examinations: readonly ExaminationFacts[],
): readonly PlanItem[] {
  const found = examinations.filter(({ newNeoplasia }) => newNeoplasia);
  return found.map((each, i) => {
    const later = examinations.find(({ on, route: by }) => by === each.route && on > each.on);
    return taskItem({
      task: 'clinician-decision',
      row: 'new-lesion',
      sequence: i + 1,
      route,
      countsFrom: each.on,
      says: 'a new lesion elsewhere',
      reasons: later === undefined ? ['new-lesion'] : ['examined-again'],
      ...(later === undefined ? {} : doneBy(later)),
    });
  });
}

const doneBy = ({ id, on }: ExaminationFacts) => ({
  state: 'done' as const,
  doneBy: { kind: 'examination', id, on, timing: 'in-window' } as const,
});
