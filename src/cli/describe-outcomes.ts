import { CAUTION, fixedText } from '../kernel/index.js';
import type { IndicatorId, IndicatorResult, OutcomeReport, QuantityId } from '../outcomes/index.js';
import { stratumText } from '../pages/index.js';
import { tableOf } from './table.js';
import { wrap } from './wrap.js';

/** Short names, for a table that fits on a screen. */
const NAMES: { readonly [Id in IndicatorId]: string } = {
  enBloc: 'en bloc',
  r0: 'R0',
  curative: 'curative',
  intraproceduralPerforation: 'perforation, procedure',
  delayedPerforation: 'perforation, delayed',
  bleeding28d: 'bleeding, 28 d',
  bleeding6h30d: 'bleeding, 6 h to 30 d',
  bleeding30dCsdb: 'significant bleeding, 30 d',
  stricture: 'stricture',
  conversionToSurgery: 'emergency surgery',
  death30d: 'death, 30 d',
  readmission30d: 'readmission, 30 d',
  adverseEvent30d: 'any adverse event, 30 d',
  residualOrRecurrence: 'residual or recurrent',
};

const QUANTITIES: { readonly [Id in QuantityId]: string } = {
  speedCm2PerH: 'speed, cm2/h',
  sizeMm: 'lesion, mm',
  procedureMin: 'procedure, min',
  pathologyDays: 'pathology, days',
};

/** Shown of each group; the others stand in the JSON and in the printed report. */
const OF_GROUPS: readonly IndicatorId[] = [
  ...(['enBloc', 'r0', 'curative', 'intraproceduralPerforation', 'adverseEvent30d'] as const),
];

const METHODS = { wilson: 'Wilson score', 'clopper-pearson': 'Clopper-Pearson' } as const;

/** A report as a table for a screen. */
export function describeOutcomes(report: OutcomeReport): string {
  const { query, cells } = report;
  const [all, ...groups] = cells;
  const period = `${query.from ?? 'the first'} to ${query.to ?? 'the last'}`;
  const cases = all?.cases === undefined ? HIDDEN : String(all.cases);
  return [
    `Resections ${period}, ${stratumText(query.filters)}, n = ${cases}; as of ${query.asOf}.`,
    '',
    ...(groups.length === 0 ? [indicatorTable(report)] : groupTables(report)),
    '',
    quantityTable(report),
    wrap('Curative by: ', rulesText(report)),
    wrap('First check: ', followUpText(report)),
    wrap(
      'Intervals: ',
      `95 %, ${METHODS[query.interval]}. n: events and the others; missing: nobody told; open: the ` +
        `days are not over. Neither is in n; speeds are counted to 0.1, times to a minute.${groups.length === 0 ? BOUNDS : ''}${smallText(report)}`,
    ),
    ...report.cautions.map((caution) => wrap('- ', caution)),
    wrap('- ', CAUTION),
  ].join('\n');
}

const BOUNDS = ' no to yes: the rate, had all missing been no, or yes.';

const smallText = ({ policy: { smallCells, threshold } }: OutcomeReport): string =>
  smallCells === 'show' ? ` !: events or others are from 1 to ${threshold - 1}.` : '';

const HIDDEN = 'hidden';
const RESULT_COLUMNS = ['rate', '95 % interval', 'events', 'n', 'missing', 'open'];
const ON_THE_RIGHT = [1, 2, 3, 4, 5, 6];

const indicatorTable = ({ cells: [all] }: OutcomeReport): string =>
  tableOf(
    ['outcome', ...RESULT_COLUMNS, 'no to yes'],
    (all?.indicators ?? []).map((result) => [
      NAMES[result.id],
      ...resultCells(result),
      boundsText(result),
    ]),
    [...ON_THE_RIGHT, ON_THE_RIGHT.length + 1],
  );

/** One table an outcome: the groups beside each other, all of them first. */
const groupTables = ({ cells }: OutcomeReport): readonly string[] =>
  OF_GROUPS.flatMap((id, i) => [
    ...(i === 0 ? [] : ['']),
    tableOf(
      [NAMES[id], ...RESULT_COLUMNS],
      cells.map(({ stratum, indicators }) => {
        const result = indicators.find((each) => each.id === id);
        return [stratumText(stratum), ...(result === undefined ? [] : resultCells(result))];
      }),
      ON_THE_RIGHT,
    ),
  ]);

function resultCells(result: IndicatorResult): readonly string[] {
  switch (result.kind) {
    case 'suppressed':
      return [HIDDEN, '', '', '', '', ''];
    case 'no-rate':
      return ['-', '', '', '0', String(result.missing), String(result.windowOpen)];
    case 'rate': {
      const { rate, interval, numerator, denominator, missing, windowOpen, isSmall } = result;
      const counts = [numerator, denominator, missing, windowOpen].map(String);
      const ends = `${percent(interval.lower)} to ${percent(interval.upper)}`;
      return [`${percent(rate)} %${isSmall ? ' !' : ''}`, ends, ...counts];
    }
  }
}

/** Nothing where nothing is missing: both ends are the rate. */
function boundsText(result: IndicatorResult): string {
  if (result.kind !== 'rate' || result.missing === 0) return '';
  const { ifNo, ifYes } = result.bounds;
  return `${percent(ifNo)} to ${percent(ifYes)}`;
}

const percent = (share: number): string => fixedText(100 * share, 1);

const quantityTable = ({ cells: [all] }: OutcomeReport): string =>
  tableOf(
    ['quartiles', 'lower', 'median', 'upper', 'n', 'missing'],
    (all?.quantities ?? []).map((result) => {
      const name = QUANTITIES[result.id];
      if (result.kind === 'suppressed') return [name, HIDDEN];
      if (result.kind === 'no-value') return [name, '', '', '', '0', String(result.missing)];
      const values = [result.q1, result.median, result.q3].map((value) => fixedText(value, 1));
      return [name, ...values, String(result.n), String(result.missing)];
    }),
    [1, 2, 3, 4, 5],
  );

/** The rule sets behind the rate of curative resections, of each organ. */
function rulesText({ judgedBy, policy }: OutcomeReport): string {
  const isHiding = policy.smallCells === 'hide';
  if (judgedBy.length === 0) return isHiding ? HIDDEN : 'no case has a verdict.';
  const organs = [...new Set(judgedBy.map(({ organ }) => organ))];
  const each = organs.map((organ) => {
    const sets = judgedBy.filter((one) => one.organ === organ);
    const told = sets.map(({ ruleSet, judged }) => `${ruleSet} ${judged ?? ''}`.trim());
    return `${organ} ${told.join(', ')}`;
  });
  return `${each.join('; ')}${isHiding ? ', of all kept cases' : ''}.`;
}

function followUpText({ followUp }: OutcomeReport): string {
  if (followUp === undefined) return HIDDEN;
  const { onTime, late, notYetDue, overdue, lost, ended, unplanned, notPlanned } = followUp;
  return (
    `on time ${onTime}, late ${late}, not yet due ${notYetDue}, overdue ${overdue}, ` +
    `lost ${lost}, not wanted any more ${ended}, looked at without a plan ${unplanned}, ` +
    `no day planned ${notPlanned}.`
  );
}
