import type { ScoreFinding, Verdict } from '../../src/assessment/index.js';
import type { Citation } from '../../src/kernel/index.js';
import {
  type CodeRef,
  CURABILITY_CLASSES,
  CURABILITY_GROUPS,
  CURABILITY_REASONS,
  codeableConcept,
  RULES,
  SCORE_GROUPS,
  STRUCTURE,
  UNITS,
} from '../../src/terminology/index.js';
import type { FixedSource, Told } from './explain.js';
import { hasNothingToSee } from './nothing-to-see.js';
import { CAUTION } from './plain-words.js';
import { keyOf } from './records.js';

type Says = FixedSource['says'];
type Row = readonly [place: string, path: string, says: Says];

const VERDICT = 'Observation curability';
const RULE_CODES: Readonly<Record<string, CodeRef>> = RULES;
const GROUP_CODES: Readonly<Record<string, CodeRef>> = SCORE_GROUPS;
const REASON_CODES: Readonly<Record<string, CodeRef>> = CURABILITY_REASONS;

const verdictOf = ({ version }: Told): Verdict => version.now.assessment.curability.verdict;
const codingsOf = (ref: CodeRef | undefined, { settings }: Told) =>
  ref === undefined ? [] : (codeableConcept(ref, settings.licences).coding ?? []);

/** Whether the verdict is one that a pathologist will give. */
function isAwaited({ version }: Pick<Told, 'version'>): boolean {
  const { outcome } = version.now.assessment.curability.verdict;
  const awaits = outcome.kind === 'indeterminate' && outcome.awaits === 'pathology';
  return awaits && !hasNothingToSee({ version });
}

/** Class and coarse group in one concept. */
const verdictClass: Says = (_resource, told) => {
  const { rule, outcome } = verdictOf(told);
  if (outcome.kind !== 'decided') return [];
  const named = CURABILITY_CLASSES[rule]?.[outcome.class];
  const coding = [named, CURABILITY_GROUPS[outcome.group]].flatMap((ref) => codingsOf(ref, told));
  return [{ coding, text: named?.text }];
};

const verdictReasons: Says = (_resource, told) => {
  const { outcome } = verdictOf(told);
  const reasons = outcome.kind === 'decided' ? outcome.reasons : [];
  return reasons.flatMap(({ reason }) => {
    const ref = REASON_CODES[reason ?? ''];
    return ref === undefined ? [] : [codeableConcept(ref, told.settings.licences)];
  });
};

const verdictAbsence: Says = (_resource, told) => {
  if (verdictOf(told).outcome.kind === 'decided') return [];
  if (hasNothingToSee(told)) return [STRUCTURE.absent.notPerformed];
  return [isAwaited(told) ? STRUCTURE.absent.tempUnknown : STRUCTURE.absent.unknown];
};

const sourced = (says: string, cites: readonly Citation[]): string => {
  const sources = cites.map(({ work, place, basis }) => `${work}, ${place}: ${basis}`);
  return `${says} [${sources.join('; ')}]`;
};

/** How another rule set sees it. */
function otherView({ rule, outcome, unconfirmed }: Verdict): string {
  const name = RULE_CODES[rule]?.text ?? rule;
  const only = unconfirmed === undefined ? '' : ` (only for comparison: ${unconfirmed})`;
  if (outcome.kind !== 'decided') {
    return `${name} open, not known: ${outcome.missing.join(', ')}${only}`;
  }
  const word = CURABILITY_CLASSES[rule]?.[outcome.class]?.text ?? outcome.class;
  return `${name} says ${word}, group ${outcome.group.replace('local-', 'local ')}${only}`;
}

const verdictNotes: Says = (_resource, told) => {
  const { outcome, usually, remarks } = verdictOf(told);
  const { others } = told.version.now.assessment.curability;
  const missing = outcome.kind === 'indeterminate' ? outcome.missing.join(', ') : '';
  const reasons = outcome.kind === 'decided' ? outcome.reasons : [];
  return [
    ...(hasNothingToSee(told) ? ['No class, because there is no specimen.'] : []),
    ...(isAwaited(told) ? [`Pathology is awaited; not known: ${missing}.`] : []),
    ...reasons.map(({ says, cites }) => `Reason: ${sourced(says, cites)}`),
    ...remarks.map(({ says, cites }) => sourced(says, cites)),
    `Other rule sets: ${others.map(otherView).join('; ')}.`,
    `What usually follows: ${usually}`,
    CAUTION,
  ].map((text) => ({ text }));
};

const scoreOf: (resource: Parameters<Says>[0], told: Told) => ScoreFinding | undefined = (
  resource,
  { version },
) => version.now.assessment.scores.find(({ rule }) => keyOf(resource).endsWith(`.${rule}`));

/** The rule that an answer names, with its version. */
const answeredBy: Says = (resource, told) => {
  const answer = keyOf(resource) === 'curability' ? verdictOf(told) : scoreOf(resource, told);
  if (answer === undefined) return [];
  const version = String(answer.version);
  const ref = RULE_CODES[answer.rule];
  const coding = codingsOf(ref, told).map((one) => ({ ...one, version }));
  return [{ coding, text: `${ref?.text}, version ${version}` }];
};

const total: Says = (resource, told) => {
  const outcome = scoreOf(resource, told)?.outcome;
  return outcome?.kind === 'total' ? [{ value: outcome.total, ...UNITS.score }] : [];
};

const group: Says = (resource, told) => {
  const outcome = scoreOf(resource, told)?.outcome;
  const ref = outcome?.kind === 'total' ? GROUP_CODES[outcome.group ?? ''] : undefined;
  return ref === undefined ? [] : [codeableConcept(ref, told.settings.licences)];
};

const rates: (
  part: (rate: NonNullable<Extract<ScoreFinding['outcome'], { kind: 'total' }>['rate']>) => unknown,
) => Says = (part) => (resource, told) => {
  const outcome = scoreOf(resource, told)?.outcome;
  const rate = outcome?.kind === 'total' ? outcome.rate : undefined;
  return rate === undefined ? [] : [{ value: part(rate), ...UNITS.percent }];
};

const scoreAbsence: Says = (resource, told) => {
  const kind = scoreOf(resource, told)?.outcome.kind;
  return [kind === 'refused' ? STRUCTURE.absent.notApplicable : STRUCTURE.absent.unknown];
};

const scoreNotes: Says = (resource, told) => {
  const score = scoreOf(resource, told);
  return [
    ...(score === undefined ? [] : outcomeTexts(score.outcome)),
    ...(score?.remarks ?? []).map(({ says, cites }) => sourced(says, cites)),
  ].map((text) => ({ text }));
};

const METHODS = {
  'clopper-pearson': 'exact (Clopper-Pearson)',
  wilson: 'Wilson',
  'not stated': 'method not stated',
};

function outcomeTexts(outcome: ScoreFinding['outcome']): readonly string[] {
  if (outcome.kind === 'refused') return [outcome.because];
  if (outcome.kind === 'indeterminate') {
    const { missing, lowest, highest } = outcome;
    const range = lowest === highest ? String(lowest) : `${lowest} to ${highest}`;
    return [`Not known: ${missing.join(', ')}; possible total: ${range}.`];
  }
  const { counted, rate, figures = [] } = outcome;
  const lead = 'Published of this group: ';
  const interval = rate?.interval;
  const details =
    interval === undefined
      ? ''
      : ` (${rate?.events} of ${rate?.of}; 95 % interval ${interval.lowerPercent} to ` +
        `${interval.upperPercent} %, ${METHODS[interval.method]})`;
  return [
    ...counted.map(({ points, says, cites }) => `Counted ${points}: ${sourced(says, cites)}`),
    ...(rate === undefined ? [] : [`${lead}${rate.says}, ${rate.percent} %${details}.`]),
    ...figures.map(({ says, value, unit }) => `${lead}${says}, ${value} ${unit}.`),
  ];
}

const SCORE_ITEMS = ['bleeding-risk-score', 'node-risk', 'difficulty-score'];

/** What stands in verdicts and scores. */
export const ANSWER_ROWS: readonly Row[] = [
  [VERDICT, 'status', (_resource, told) => [isAwaited(told) ? 'preliminary' : 'final']],
  [VERDICT, 'valueCodeableConcept', verdictClass],
  [VERDICT, 'component[].valueCodeableConcept', verdictReasons],
  [VERDICT, 'dataAbsentReason', verdictAbsence],
  [VERDICT, 'note[]', verdictNotes],
  [VERDICT, 'method', answeredBy],
  ['DiagnosticReport *', 'conclusionCode[]', verdictClass],
  ...SCORE_ITEMS.map((item) => `Observation ${item}.*`).flatMap((place): readonly Row[] => [
    [place, 'valueQuantity', total],
    [place, 'interpretation[]', group],
    [place, 'component[published-rate].valueQuantity', rates(({ percent }) => percent)],
    [
      place,
      'component[published-rate-lower].valueQuantity',
      rates(({ interval }) => interval?.lowerPercent),
    ],
    [
      place,
      'component[published-rate-upper].valueQuantity',
      rates(({ interval }) => interval?.upperPercent),
    ],
    [place, 'dataAbsentReason', scoreAbsence],
    [place, 'note[]', scoreNotes],
    [place, 'method', answeredBy],
  ]),
];
