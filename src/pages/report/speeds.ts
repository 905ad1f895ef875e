import type { SpeedSeries } from '../../outcomes/index.js';
import type { ChartText } from '../figure.js';
import type { Markup } from '../markup.js';
import { speedChart } from '../speed-chart.js';
import { citationText } from './sources.js';

/** The speeds of single dissections by their size, told apart by organ. */
export const speedsOf = (
  { points, told, missing, level, cites }: SpeedSeries,
  id: ChartText['id'],
): Markup =>
  speedChart({
    id,
    title: 'Speed of the dissection by the area of its specimen',
    points: points.map(({ organ, ...point }) => ({ ...point, group: organ })),
    told,
    missing,
    threshold: { ...level, source: cites.map(citationText).join('; ') },
  });
