import type { Citation } from '../kernel/index.js';
import type { IndicatorId, OutcomeReport, OutcomeSeries } from '../outcomes/index.js';
import { type CusumForm, cusumChart } from './cusum-chart.js';
import { emptyFigure } from './figure.js';
import { funnelChart } from './funnel-chart.js';
import { type LearningForm, learningChart } from './learning-chart.js';
import type { Markup } from './markup.js';
import { type PeriodCell, ratesOver } from './report/indicator-section.js';
import { recurrenceChart } from './report/other-sections.js';
import { citationText } from './report/sources.js';
import { speedsOf } from './report/speeds.js';
import { stratumText } from './stratum-text.js';

/** A chart by itself. */
export type SingleChart =
  | {
      readonly kind: 'series';
      readonly series: OutcomeSeries;
      /** Of a cumulative sum, or of a learning curve. */
      readonly form: CusumForm | LearningForm;
    }
  | { readonly kind: 'recurrence'; readonly report: OutcomeReport }
  /** The groups of a report, or all cases together where it has none. */
  | { readonly kind: 'rates'; readonly report: OutcomeReport; readonly indicator: IndicatorId }
  | {
      readonly kind: 'rates-by-period';
      readonly report: OutcomeReport;
      readonly periods: readonly PeriodCell[];
      readonly indicator: IndicatorId;
    };

/** One chart as an SVG document. */
export const drawChart = (chart: SingleChart): string => drawn(chart).markup;

function drawn(chart: SingleChart): Markup {
  switch (chart.kind) {
    case 'series':
      return curve(chart.series, chart.form);
    case 'recurrence': {
      const { recurrence } = chart.report;
      return recurrenceChart(recurrence === undefined ? [] : [recurrence]);
    }
    case 'rates': {
      const { report, indicator } = chart;
      const [all, ...groups] = report.cells;
      const shown = groups.length > 0 || all === undefined ? groups : [all];
      const cells = shown.map((cell) => ({ label: stratumText(cell.stratum), cell }));
      return rates(report, cells, indicator, 'groups');
    }
    case 'rates-by-period':
      return rates(chart.report, chart.periods, chart.indicator, 'periods');
  }
}

function rates(
  report: OutcomeReport,
  cells: readonly PeriodCell[],
  indicator: IndicatorId,
  are: 'periods' | 'groups',
): Markup {
  const definition = report.definitions.find(({ id }) => id === indicator);
  if (definition === undefined) {
    return emptyFigure({ id: 'rates', title: indicator }, 'This report does not hold it.');
  }
  return ratesOver(definition, cells, report, are);
}

function curve(series: OutcomeSeries, asked: CusumForm | LearningForm): Markup {
  switch (series.kind) {
    case 'cusum': {
      const form = asked === 'sequential' ? asked : 'simple';
      const words = form === 'simple' ? 'simple form' : 'sequential test';
      const about = { id: series.series, title: `${series.title}: ${words}` };
      return cusumChart({
        ...about,
        form,
        curve: series,
        ...(form === 'simple' ? {} : sourcesOf(series)),
      });
    }
    case 'funnel':
      return funnelChart({
        ...{ id: 'funnel', title: 'Rates of groups by size', funnel: series },
        ...sourcesOf(series),
      });
    case 'speed':
      return speedsOf(series, 'speed');
    case 'hidden':
      return emptyFigure({ id: 'curve', title: 'Not shown' }, series.because);
    case 'learning-curve':
      return learningChart({
        id: 'learning-curve',
        title: 'Learning curve',
        form: asked === 'speed' ? asked : 'rates',
        curve: series,
      });
  }
}

const sourcesOf = ({ cites }: { readonly cites: readonly Citation[] }) => ({
  caption: cites.map((cite) => `Source: ${citationText(cite)}.`),
});
