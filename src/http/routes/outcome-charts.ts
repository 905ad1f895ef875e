import { type ChartAsked, OUTCOME_CHARTS, parseChartQuery } from '../../contract/index.js';
import { drawChart } from '../../pages/index.js';
import type { Service } from '../../pipeline/index.js';
import { Refused } from '../problem-document.js';
import type { Route } from '../route.js';
import { asked, notAsked } from './outcomes.js';

/** One chart as a picture that holds everything it needs. */
export const readChart: Route = {
  method: 'GET',
  path: '/outcomes/charts/:name.svg',
  answer: async ({ param, query }, { service }) => {
    const name = OUTCOME_CHARTS.find((each) => each === param('name'));
    if (name === undefined) throw new Refused(NO_CHART);
    return {
      status: 200,
      body: await chartOf(asked(parseChartQuery(name, query())), service),
      mediaType: 'image/svg+xml; charset=utf-8',
    };
  },
};

async function chartOf(chart: ChartAsked, service: Service): Promise<string> {
  switch (chart.chart) {
    case 'series':
    case 'learning-curve':
    case 'speed':
    case 'funnel': {
      const found = await service.readSeries(chart.series);
      if (found.kind === 'invalid') throw new Refused(notAsked(found.problems));
      return drawChart({ kind: 'series', series: found.series, form: formOf(chart) });
    }
    case 'rates':
    case 'recurrence': {
      const found = await service.readOutcomes(chart.query);
      if (found.kind === 'invalid') throw new Refused(notAsked(found.problems));
      const { report } = found;
      return chart.chart === 'recurrence'
        ? drawChart({ kind: 'recurrence', report })
        : drawChart({ kind: 'rates', report, indicator: chart.indicator });
    }
    case 'rates-by-year': {
      const found = await service.readOutcomesAtLarge(chart.query);
      if (found.kind === 'invalid') throw new Refused(notAsked(found.problems));
      const { outcomes: report, periods } = found.report;
      return drawChart({ kind: 'rates-by-period', report, periods, indicator: chart.indicator });
    }
  }
}

const formOf = (chart: ChartAsked) => ('form' in chart ? chart.form : 'simple');

const NO_CHART = {
  problem: 'not-found',
  detail: `There is no such chart. There are: ${OUTCOME_CHARTS.join(', ')}.`,
} as const;
