import type { SpeedSeries } from '../../outcomes/index.js';
import type { ChartText } from '../figure.js';
import type { Markup } from '../markup.js';
import { speedChart } from '../speed-chart.js';
import { overText } from '../words.js';
import { citationText } from './sources.js';

const NO_LEVEL =
  'No published speed is drawn: the one known here is of colon and rectum, and these cases are not of them alone.';

/** The speeds of single dissections by their size, told apart by organ. */
export const speedsOf = (
  { points, told, missing, level, over, cites }: SpeedSeries,
  id: ChartText['id'],
): Markup =>
  speedChart({
    id,
    title: 'Speed of the dissection by the area of its specimen',
    points: points.map(({ organ, ...point }) => ({ ...point, group: organ })),
    told,
    missing,
    ...(level === undefined
      ? {}
      : { threshold: { ...level, source: cites.map(citationText).join('; ') } }),
    caption: [`Cases: ${overText(over)}.`, ...(level === undefined ? [NO_LEVEL] : [])],
  });
