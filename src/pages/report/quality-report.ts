import { CAUTION } from '../../kernel/index.js';
import type { OutcomeReport } from '../../outcomes/index.js';
import { type Content, element, type Markup, together } from '../markup.js';
import { stratumText } from '../stratum-text.js';
import { definitionsTable } from './definitions-table.js';
import { documentOf, type Page } from './document.js';
import { indicatorSection, type PeriodCell, summaryTable } from './indicator-section.js';
import { intervalText } from './indicator-words.js';
import { leftOutList } from './left-out.js';
import { followUpTable, quantityTables, recurrenceFigure } from './other-sections.js';
import { seriesSection, type TitledSeries } from './series-section.js';
import { sourcesOf } from './sources.js';

/** Everything that one printed report shows. */
export interface QualityReport {
  readonly title: string;
  /** Whose cases these are: what people call it, and the base of its identifiers. */
  readonly unit: { readonly name?: string | undefined; readonly identifier: string };
  /** Calendar day on which the report was made. */
  readonly madeOn: string;
  /** Rule set by which the unit judges curability, by organ. */
  readonly curabilityRules: Readonly<Record<string, string>>;
  readonly outcomes: OutcomeReport;
  /** The same question asked for each period, in their order; empty: no charts over time. */
  readonly periods: readonly PeriodCell[];
  readonly series: readonly TitledSeries[];
}

/**
 * The quality report as a whole HTML document for screen and paper. It works without scripts and
 * needs nothing from elsewhere.
 */
export function renderQualityReport(report: QualityReport): Page {
  const { outcomes } = report;
  const { definitions } = outcomes;
  const sources = sourcesOf([
    ...definitions.flatMap(({ cites, benchmarks }) => [
      ...cites,
      ...benchmarks.flatMap((benchmark) => benchmark.cites),
    ]),
    ...outcomes.sources,
  ]);
  return documentOf({
    title: report.title,
    foot: `${report.title}, resections ${periodText(outcomes)}, ${unitText(report)}`,
    header: headOf(report),
    nav: contents(),
    content: [
      part('reading', [cautions(outcomes)]),
      part('summary', [summaryTable(outcomes)]),
      part(
        'indicators',
        definitions.map((definition) => indicatorSection(definition, outcomes, report.periods)),
      ),
      part('quantities', [element('div', { class: 'pairs' }, ...quantityTables(outcomes))]),
      part('follow-up', [
        element(
          'div',
          { class: 'beside whole' },
          followUpTable(outcomes),
          recurrenceFigure(outcomes),
        ),
      ]),
      part('curves', [element('div', { class: 'pairs' }, ...curves(report))]),
      part('left-out', [leftOutList(report)]),
      part('definitions', [
        definitionsTable(definitions, sources),
        ...(outcomes.sources.length === 0
          ? []
          : [
              element(
                'p',
                {},
                'Intervals, bounds of what is missing, and curve: ',
                ...sources.mention(outcomes.sources),
                '.',
              ),
            ]),
      ]),
      part('sources', [sources.list]),
    ],
  });
}

/** Parts of the report in their order. */
const PARTS = {
  reading: 'How to read this report',
  summary: 'Summary',
  indicators: 'Indicators one by one',
  quantities: 'Times, sizes and speed',
  'follow-up': 'Checks and recurrence',
  curves: 'Curves',
  'left-out': 'What was left out',
  definitions: 'Sources of definitions and published values',
  sources: 'Works',
} as const;

const part = (id: keyof typeof PARTS, content: readonly Content[]): Markup =>
  element('section', { 'aria-labelledby': id }, element('h2', { id }, PARTS[id]), ...content);

const contents = (): Markup =>
  element(
    'nav',
    { 'aria-label': 'Parts of the report' },
    element(
      'ul',
      {},
      ...Object.entries(PARTS).map(([id, title]) =>
        element('li', {}, element('a', { href: `#${id}` }, title)),
      ),
    ),
  );

function headOf(report: QualityReport): Markup {
  const { title, unit, madeOn, curabilityRules, outcomes } = report;
  const { filters, by, asOf } = outcomes.query;
  const facts: readonly (readonly [string, Content])[] = [
    [
      'Unit',
      unit.name === undefined
        ? unit.identifier
        : together([`${unit.name} `, element('small', {}, unit.identifier)]),
    ],
    ['Resections', `${periodText(outcomes)}, both included`],
    ['Cases', stratumText(filters)],
    ['Groups', by.length === 0 ? 'none' : by.map(dimensionWords).join(' and ')],
    ['Judged as of', asOf],
    ['Curability', `${rulesText(curabilityRules)}, in the settings of the day of this report`],
    ['Intervals', intervalText(outcomes)],
    ['Made on', madeOn],
  ];
  return element(
    'header',
    {},
    element('h1', {}, title),
    element(
      'dl',
      {},
      ...facts.flatMap(([term, said]) => [element('dt', {}, term), element('dd', {}, said)]),
    ),
  );
}

const periodText = ({ query: { from, to } }: OutcomeReport): string =>
  `${from ?? 'the first case'} to ${to ?? 'the last case'}`;

const unitText = ({ unit }: QualityReport): string => unit.name ?? unit.identifier;

/** `oesophagus, stomach: esge-esd-2022; colon: jsccr-2019`. */
function rulesText(rules: QualityReport['curabilityRules']): string {
  const organsBy = new Map<string, readonly string[]>();
  for (const [organ, set] of Object.entries(rules)) {
    organsBy.set(set, [...(organsBy.get(set) ?? []), organ]);
  }
  return [...organsBy].map(([set, organs]) => `${organs.join(', ')}: ${set}`).join('; ');
}

/** `sizeBand` as `size band`. */
const dimensionWords = (dimension: string): string =>
  dimension.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

function cautions({ cautions, policy }: OutcomeReport): Markup {
  const small =
    policy.smallCells === 'show'
      ? [
          `For internal use only: counts from 1 to ${policy.threshold - 1} are shown, and a ! beside a rate marks them.`,
        ]
      : [`Counts below ${policy.threshold}, and what would give them away, are not shown.`];
  const sentences = [
    CAUTION,
    ...cautions,
    ...small,
    'Missing: nobody told the outcome. Window open: its time is not over. Both are left out of ' +
      'rate and n, and never count as no. In brackets beside what is missing: the rate had all of ' +
      'it been no, and had all of it been yes.',
    'Published values are lines to compare with, from other places and other patients; they are ' +
      'no limits. One of some organs is drawn beside cases of these organs alone.',
  ];
  return element(
    'div',
    { class: 'note' },
    element('ul', {}, ...[...new Set(sentences)].map((sentence) => element('li', {}, sentence))),
  );
}

function curves({ series, outcomes }: QualityReport): readonly Markup[] {
  if (series.length === 0) return [element('p', {}, 'None was asked for.')];
  return series.map((one, i) => seriesSection(one, i, outcomes.definitions));
}
