import { compareTexts } from '../kernel/index.js';
import type { PlanItem } from '../surveillance/index.js';
import type { CaseFacts } from './case-facts.js';
import type { Assessed } from './view.js';

type CheckFacts = Pick<
  CaseFacts,
  | 'firstCheckState'
  | 'firstCheckOn'
  | 'firstCheckTiming'
  | 'firstCheckLatestOn'
  | 'recurrenceOn'
  | 'lastCheckOn'
  | 'lastKnownAliveOn'
  | 'deathOn'
>;

/** What the examinations and the plan tell of looking again. */
export function checkFacts(known: Assessed): CheckFacts {
  const first = firstCheck(known);
  const checks = checksOf(known);
  const deaths = known.events.filter(({ fields }) => fields.kind === 'death');
  return {
    ...firstFacts(first, earliest(checks.map(({ on }) => on))),
    firstCheckTiming: first?.doneBy?.timing ?? null,
    firstCheckLatestOn: (first?.room ?? first?.due)?.latest ?? null,
    recurrenceOn: earliest(checks.filter(({ found }) => found).map(({ on }) => on)),
    lastCheckOn: latest(checks.map(({ on }) => on)),
    lastKnownAliveOn: latest(aliveOn(known)),
    deathOn: earliest(deaths.map(({ fields }) => fields.occurredOn)),
  };
}

/** The first examination for the lesion that the plan asks for; looks at a stricture are none. */
function firstCheck({ plan }: Assessed): PlanItem | undefined {
  return plan.items
    .filter(
      ({ kind, first, state, due, rule }) =>
        kind === 'endoscopy' &&
        first &&
        state !== 'superseded' &&
        due !== undefined &&
        rule !== 'timed-items',
    )
    .toSorted((a, b) => compareTexts(a.due?.target ?? '', b.due?.target ?? ''))[0];
}

/** @param lookedOn first day on which somebody looked, with a plan or without */
function firstFacts(
  first: PlanItem | undefined,
  lookedOn: string | null,
): Pick<CaseFacts, 'firstCheckState' | 'firstCheckOn'> {
  const state = stateOf(first);
  return state === 'not-planned' && lookedOn !== null
    ? { firstCheckState: 'unplanned', firstCheckOn: lookedOn }
    : { firstCheckState: state, firstCheckOn: first?.doneBy?.on ?? null };
}

function stateOf(first: PlanItem | undefined): CaseFacts['firstCheckState'] {
  switch (first?.state) {
    case undefined:
    case 'superseded':
      return 'not-planned';
    case 'done':
      return 'done';
    case 'revoked':
      return 'ended';
    case 'provisional':
      return 'provisional';
    case 'open':
    case 'to-confirm':
      return first.reasons.some(({ code }) => code === 'lost') ? 'lost' : 'open';
  }
}

/** Examinations that saw the scar and answer whether neoplasia is there, or doubt it. */
function checksOf({ examinations, afterwards }: Assessed) {
  return afterwards.recurrences.flatMap(({ examination, answer }) => {
    const sent = examinations.find(
      ({ fields }) =>
        fields.examination.system === examination.system &&
        fields.examination.value === examination.value,
    );
    return sent === undefined || answer.kind === 'indeterminate'
      ? []
      : [{ on: sent.fields.examinedOn, found: answer.value === 'yes' }];
  });
}

const aliveOn = ({ events, examinations }: Assessed): readonly string[] => [
  ...examinations.map(({ fields }) => fields.examinedOn),
  ...events.flatMap(({ fields: { status } }) => (status === undefined ? [] : [status.untilOn])),
];

const sorted = (days: readonly string[]): readonly string[] => days.toSorted(compareTexts);
const earliest = (days: readonly string[]): string | null => sorted(days)[0] ?? null;
const latest = (days: readonly string[]): string | null => sorted(days).at(-1) ?? null;
