import type { UnitSettings } from '../../contract/index.js';
import { compareTexts } from '../../kernel/index.js';
import { BACKGROUND_MUCOSA } from '../background-mucosa.table.js';
import type { PlanItem } from './follow-up-plan.js';
import { isToCome, revoked, taskItem, toConfirm } from './item.js';
import { afterMeeting } from './meeting.js';
import type { ExaminationFacts, PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';
import { askTrack, type Track } from './track.js';
import { shortestTracks, unmet } from './tracks-of.js';
import { walkTrack } from './walk.js';

/**
 * The examinations that a case asks for, those done and the one to come of each series, and the
 * tasks that stand instead of them or beside them.
 *
 * Source: the plan logic of follow-up (surveillance table, derived).
 */
export function seriesItems(
  facts: PlanFacts,
  examinations: readonly ExaminationFacts[],
  unit: UnitSettings,
): readonly PlanItem[] {
  const { tracks, tasks, ended } = courseOf(facts, unit);
  const walked = [...tracks, ...backgroundTracks(facts)].flatMap((track) =>
    walkTrack(track, examinations, facts.route),
  );
  const last = examinations.filter(({ route }) => route === facts.route).at(-1);
  const looked = walked.map((item) => afterLast(item, last));
  const wanted = ended === undefined ? looked : looked.map((item) => revoked(item, ended));
  return [...wanted, ...tasks];
}

type Course = ReturnType<typeof afterMeeting>;

function courseOf(facts: PlanFacts, unit: UnitSettings): Course {
  const { pathology } = facts;
  if (pathology === undefined) return withoutReport(facts, unit);
  const open = unmet(facts);
  const isInterim = pathology.status === 'interim';
  if (open !== undefined) {
    const early = isInterim ? provisional(facts, unit, ['report-interim']) : [];
    const waits = isInterim && open === 'no-class';
    return { tracks: early, tasks: waits ? [] : [clinician(facts, 'no-class', [open])] };
  }
  const { tracks, tasks, ended } = afterMeeting(facts, unit);
  return {
    tracks: isInterim ? tracks.map(asProvisional) : tracks,
    tasks: [...tasks, ...weighed(facts, tasks)],
    ...(ended === undefined ? {} : { ended }),
  };
}

/** As long as pathology may come, the shortest plausible date; where it never will, to confirm. */
function withoutReport(facts: PlanFacts, unit: UnitSettings): Course {
  const left = facts.verdict.class === 'incomplete';
  const tasks = left ? [clinician(facts, 'no-class', ['part-left'])] : [];
  if (facts.outcome === 'not-started' || facts.outcome === 'abandoned') {
    return { tracks: [], tasks: left ? tasks : [clinician(facts, 'no-class', ['no-pathology'])] };
  }
  if (facts.specimenRetrieved === false) {
    const tracks = provisional(facts, unit, ['no-pathology']).map(
      (track): Track => ({ ...track, state: 'to-confirm' }),
    );
    return { tracks, tasks: [clinician(facts, 'no-class', [left ? 'part-left' : 'no-pathology'])] };
  }
  return { tracks: provisional(facts, unit, ['pathology-awaited']), tasks };
}

/** Of the series that could follow, the one whose first examination comes first. */
function provisional(
  facts: PlanFacts,
  unit: UnitSettings,
  reasons: readonly ReasonCode[],
): readonly Track[] {
  const firsts = shortestTracks(facts, unit).flatMap((track) => {
    const [item] = walkTrack(track, [], facts.route);
    return item?.due === undefined || item.kind === 'task' ? [] : [{ track, due: item.due }];
  });
  const [first] = firsts.sort(
    (a, b) =>
      compareTexts(a.due.target, b.due.target) || compareTexts(a.due.earliest, b.due.earliest),
  );
  if (first === undefined) return [];
  return [{ ...first.track, named: 'provisional', state: 'provisional', reasons }];
}

const asProvisional = (track: Track): Track => ({
  ...track,
  state: 'provisional',
  reasons: [...track.reasons, 'report-interim'],
});

/** Classes that leave it open whether treatment goes on: a person weighs it beside the series. */
function weighed(facts: PlanFacts, tasks: readonly PlanItem[]): readonly PlanItem[] {
  const { group } = facts.verdict;
  if (group !== 'open' || facts.organ === 'duodenum' || tasks.length > 0) return [];
  return [clinician(facts, 'treatment', ['treatment-weighed'])];
}

const clinician = (facts: PlanFacts, row: string, reasons: readonly ReasonCode[]): PlanItem =>
  taskItem({
    task: 'clinician-decision',
    row,
    route: facts.route,
    countsFrom: facts.pathology?.reportedOn ?? facts.esdOn,
    says: `class by ${facts.verdict.rule}: ${facts.verdict.class ?? 'indeterminate'}`,
    reasons,
  });

function backgroundTracks({ organ, esdOn, pathology }: PlanFacts): readonly Track[] {
  if (organ !== 'stomach' || pathology?.background === undefined) return [];
  const { staged, ...told } = pathology.background;
  const track = askTrack({
    rule: BACKGROUND_MUCOSA,
    told: { examDate: esdOn, ...told },
    anchorOn: esdOn,
    local: false,
    turns: false,
  });
  if (track.row === 'MUCOSA-none') return [];
  return track.row === 'MUCOSA-limited'
    ? [{ ...track, state: 'to-confirm', reasons: ['considered'] }]
    : [track];
}

/** What the last examination says of the next one. */
function afterLast(item: PlanItem, last: ExaminationFacts | undefined): PlanItem {
  if (last === undefined || !isToCome(item) || item.kind === 'task') return item;
  if (last.next?.step === 'stop') return revoked(item, 'stopped');
  const doubts: readonly (readonly [boolean, ReasonCode])[] = [
    [last.next?.step === 'sooner' && last.next.on === undefined, 'sooner-without-day'],
    [last.incomplete, 'last-incomplete'],
    [last.recurrence === 'open', 'last-open'],
    [item.row === 'COL-1-clear' && last.findings !== 'none', 'last-open'],
  ];
  return doubts.reduce((sofar, [holds, code]) => (holds ? toConfirm(sofar, code) : sofar), item);
}
