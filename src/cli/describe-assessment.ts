import type { CaseFields } from '../contract/index.js';
import type { Citation } from '../kernel/index.js';
import type { Answer } from '../pipeline/index.js';
import { describeRate } from './describe-bands.js';
import { describeComputed } from './describe-computed.js';
import { citesOfPlan, describePlan } from './describe-plan.js';
import { describeCitation, distinct, numbersOf } from './rule-sources.js';
import type { RuleBook } from './world.js';
import { wrap } from './wrap.js';

type Assessment = Answer['assessment'];
type Verdict = Assessment['curability']['verdict'];
type Score = Assessment['scores'][number];

/** A line or more under one label; none where there is nothing to say. */
type Part = readonly [label: string, texts: readonly string[]];

/** What a case means, on one screen: the verdict first, then why, what is missing, and the rest. */
export function describeAssessment(
  { assessment, plan }: Pick<Answer, 'assessment' | 'plan'>,
  { rules, caution }: RuleBook,
): string {
  const { verdict, others } = assessment.curability;
  const sources = distinct([
    ...citesOf(verdict),
    ...verdict.remarks.flatMap(({ cites }) => cites),
    ...assessment.review.flatMap(({ cites }) => cites),
    ...citesOfPlan(plan),
  ]);
  const parts: readonly Part[] = [
    ['Verdict', [headline(verdict)]],
    ['  why', reasons(verdict, sources)],
    ['  missing', missing(verdict, rules)],
    ['  usually', verdict.usually === '' ? [] : [verdict.usually]],
    ['  note', verdict.remarks.map(({ says, cites }) => `${says}${numbersOf(cites, sources)}`)],
    ['  others', others.map(otherView)],
    ['Follow-up', describePlan(plan, sources)],
    ['Scores', assessment.scores.map(scoreText)],
    ['Computed', describeComputed(assessment)],
    [
      'Review',
      assessment.review.map(
        ({ check, severity, says, cites }) =>
          `${severity} ${check}: ${says}${numbersOf(cites, sources)}`,
      ),
    ],
    ['Unrecorded', unrecorded(assessment)],
    ['Sources', sources.map((cited, i) => `[${i + 1}] ${describeCitation(cited)}`)],
  ];
  return [...parts.flatMap(lines), '', wrap('', caution)].join('\n');
}

/** The lesion and what was done, in one line. */
export function describeLesion({ lesion, resection, times }: CaseFields): string {
  const { organ, site, longAxisMm, shortAxisMm, paris, tumour } = lesion;
  const size = [longAxisMm, ...(shortAxisMm === undefined ? [] : [shortAxisMm])].join(' x ');
  return [
    site === undefined ? organ : `${organ} (${site})`,
    ...(tumour === undefined ? [] : [`tumour ${tumour}`]),
    ...(paris === undefined ? [] : [`Paris ${paris}`]),
    `${size} mm`,
    `${resection.outcome} on ${times.scopeInAt.slice(0, 10)}`,
  ].join(', ');
}

const LABEL_WIDTH = Math.max(...['Unrecorded', '  missing'].map(({ length }) => length)) + 2;

const lines = ([label, texts]: Part): readonly string[] =>
  texts.map((text, i) => wrap((i === 0 ? label : '').padEnd(LABEL_WIDTH), text));

const citesOf = ({ outcome }: Verdict): readonly Citation[] =>
  outcome.kind === 'decided' ? outcome.reasons.flatMap(({ cites }) => cites) : [];

function headline({ rule, version, outcome }: Verdict): string {
  const by = `by ${rule} version ${version}`;
  if (outcome.kind === 'decided') {
    return outcome.group === 'open'
      ? `${outcome.class}, ${by}`
      : `${outcome.class} (${outcome.group}), ${by}`;
  }
  return outcome.awaits === 'pathology'
    ? `open until pathology is back, ${by}`
    : `indeterminate, ${by}`;
}

function reasons({ outcome }: Verdict, sources: readonly Citation[]): readonly string[] {
  if (outcome.kind === 'indeterminate') return [];
  return outcome.reasons.map(
    ({ reason, says, cites }) =>
      `${says}${reason === undefined ? '' : ` (${reason})`}${numbersOf(cites, sources)}`,
  );
}

/** Missing fields; where they will not come by themselves, with what the rule set means by them. */
function missing({ rule, outcome }: Verdict, rules: RuleBook['rules']): readonly string[] {
  if (outcome.kind === 'decided') return [];
  if (outcome.awaits === 'pathology') return [outcome.missing.join(', ')];
  const fields = rules.find(({ id }) => id === rule)?.fields ?? {};
  const inWords = (name: string) => fields[name]?.says.split(';')[0] ?? name;
  return [outcome.missing.map((name) => `${name} (${inWords(name)})`).join(', ')];
}

function otherView({ rule, outcome, unconfirmed }: Verdict): string {
  const note = unconfirmed === undefined ? '' : '; for comparison only, not confirmed';
  if (outcome.kind === 'indeterminate') return `${rule}: indeterminate${note}`;
  const why = outcome.reasons.map(({ says }) => ` ${says}`).join('');
  return `${rule}: ${outcome.class} (${outcome.group})${note}.${why}`;
}

function scoreText({ rule, outcome }: Score): string {
  switch (outcome.kind) {
    case 'refused':
      return `${rule}: not asked. ${outcome.because}`;
    case 'indeterminate':
      return (
        `${rule}: between ${outcome.lowest} and ${outcome.highest}; ` +
        `not told: ${outcome.missing.join(', ')}`
      );
    case 'total': {
      const { total, group, rate, counted } = outcome;
      const items = counted.map(({ item, points }) => `${item} ${points}`).join(', ');
      return [
        `${rule}: ${total}${group === undefined ? '' : `, ${group}`}`,
        ...(rate === undefined ? [] : [describeRate(rate)]),
        ...(items === '' ? [] : [`counted: ${items}`]),
      ].join('; ');
    }
  }
}

function unrecorded({ missingElements }: Assessment): readonly string[] {
  if (missingElements.length === 0) return [];
  return [missingElements.map(({ element }) => element).join(', ')];
}
