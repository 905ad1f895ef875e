import type { Observation, ObservationComponent } from 'fhir/r4.js';
import type { ScoreFinding } from '../assessment/index.js';
import { invariant } from '../kernel/index.js';
import { ITEMS, SCORE_GROUPS, STRUCTURE } from '../terminology/index.js';
import { SCORES, type ScoreRow } from './answers.table.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { lowered } from './narrative.js';
import { type ObservationContent, toObservation } from './observation.js';
import { byRule, codeIn, notes, ruleName, shown, sourced } from './rule-answer.js';
import { computed } from './values.js';

type Outcome = ScoreFinding['outcome'];
type Total = Extract<Outcome, { kind: 'total' }>;
type Rate = NonNullable<Total['rate']>;

/**
 * The published scores of the case, one Observation each: points, group and published rate, or
 * why there are none.
 *
 * @param present keys of the Observations of the case
 */
export function toScores(
  context: MappingContext,
  scores: readonly ScoreFinding[],
  present: ReadonlySet<string>,
): readonly Draft<Observation>[] {
  return scores.map((score) => {
    const { item, inputs, ofReport } = rowOf(score.rule);
    const isOpen = ofReport === true && !context.hasFinalReport;
    return toObservation(context, {
      item,
      key: `${item}.${score.rule}`,
      about: 'lesion',
      category: 'survey',
      profile: 'dr-score',
      ...(ofReport ? { issuedAt: context.concludedAt } : {}),
      content: {
        ...(isOpen ? { status: 'preliminary' } : {}),
        ...contentOf(context, score.outcome, isOpen),
        ...byRule(context, score, inputs, present),
        ...notes([...inWords(score.outcome), ...shown(score.remarks)]),
      },
    });
  });
}

/** All scores that have an answer, in one sentence; none where no score has one. */
export function scoresSentence(scores: readonly ScoreFinding[]): readonly string[] {
  const parts = scores.flatMap(({ rule, outcome }) => shortly(ruleName(rule), outcome));
  return parts.length === 0 ? [] : [`Scores: ${parts.join('; ')}.`];
}

function shortly(name: string, outcome: Outcome): readonly string[] {
  switch (outcome.kind) {
    case 'total':
      return [`${name}: ${outcome.total}${groupText(outcome)}`];
    case 'indeterminate':
      return [`${name}: open, ${rangeText(outcome)}`];
    case 'refused':
      return [];
  }
}

function rowOf(rule: string): ScoreRow {
  const row = SCORES[rule];
  invariant(row !== undefined, `the score ${rule} has its row`);
  return row;
}

function contentOf(context: MappingContext, outcome: Outcome, isOpen: boolean): ObservationContent {
  switch (outcome.kind) {
    case 'total':
      return totalContent(context, outcome);
    case 'indeterminate':
      return {
        dataAbsentReason: isOpen ? STRUCTURE.absent.tempUnknown : STRUCTURE.absent.unknown,
      };
    case 'refused':
      return { dataAbsentReason: STRUCTURE.absent.notApplicable };
  }
}

function totalContent(context: MappingContext, { total, group, rate }: Total): ObservationContent {
  return {
    valueQuantity: computed(total, 0, 'score'),
    ...(group === undefined
      ? {}
      : { interpretation: [context.concept(codeIn(SCORE_GROUPS, group))] }),
    ...(rate === undefined ? {} : { component: rateParts(context, rate) }),
  };
}

function rateParts(context: MappingContext, { percent, interval }: Rate): ObservationComponent[] {
  const part = (
    item: 'published-rate' | 'published-rate-lower' | 'published-rate-upper',
    value: number,
  ): ObservationComponent => ({
    code: context.concept(ITEMS[item]),
    valueQuantity: computed(value, 1, 'percent'),
  });
  return [
    part('published-rate', percent),
    ...(interval === undefined
      ? []
      : [
          part('published-rate-lower', interval.lowerPercent),
          part('published-rate-upper', interval.upperPercent),
        ]),
  ];
}

function inWords(outcome: Outcome): readonly string[] {
  switch (outcome.kind) {
    case 'total':
      return [
        ...outcome.counted.map((item) => `Counted ${item.points}: ${sourced(item)}`),
        ...(outcome.rate === undefined ? [] : [rateText(outcome.rate)]),
        ...(outcome.figures ?? []).map(
          ({ says, value, unit }) => `Published of this group: ${says}, ${value} ${unit}.`,
        ),
      ];
    case 'indeterminate':
      return [`Not known: ${outcome.missing.join(', ')}; possible total: ${rangeText(outcome)}.`];
    case 'refused':
      return [outcome.because];
  }
}

const INTERVAL_METHODS = {
  'clopper-pearson': 'exact (Clopper-Pearson)',
  wilson: 'Wilson',
  'not stated': 'method not stated',
} as const;

function rateText({ says, percent, events, of, interval }: Rate): string {
  const counts = events === undefined || of === undefined ? [] : [`${events} of ${of}`];
  const limits =
    interval === undefined
      ? []
      : [
          `${interval.levelPercent} % interval ${interval.lowerPercent} to ` +
            `${interval.upperPercent} %, ${INTERVAL_METHODS[interval.method]}`,
        ];
  const detail = [...counts, ...limits].join('; ');
  return `Published of this group: ${says}, ${percent} %${detail === '' ? '' : ` (${detail})`}.`;
}

const rangeText = ({ lowest, highest }: Extract<Outcome, { kind: 'indeterminate' }>): string =>
  lowest === highest ? `${lowest}` : `${lowest} to ${highest}`;

const groupText = ({ group }: Total): string =>
  group === undefined ? '' : ` (${lowered(codeIn(SCORE_GROUPS, group).text)})`;
