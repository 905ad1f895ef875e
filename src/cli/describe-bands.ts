import type { Citation } from '../kernel/index.js';
import { type Band, describeCondition, type Fields, type Rate } from '../rules/index.js';
import { wrap } from './wrap.js';

/**
 * The groups of a score with their published rates.
 *
 * @param sources what to write behind a group for its works
 */
export function describeBands(
  bands: readonly Band[],
  fields: Fields,
  sources: (cites: readonly Citation[]) => string,
): readonly string[] {
  if (bands.length === 0) return ['', 'Groups: none were published.'];
  const width = Math.max(...bands.map(({ group }) => group.length));
  return [
    '',
    'Groups',
    ...bands.map((band) => {
      const about = [
        totalsOf(band),
        ...(band.when === undefined ? [] : [describeCondition(band.when, fields)]),
        ...(band.rate === undefined ? [] : [describeRate(band.rate)]),
        ...(band.figures ?? []).map(({ says, value, unit }) => `${says} ${value} ${unit}`),
      ];
      return wrap(`  ${band.group.padEnd(width)}  `, `${about.join('; ')}${sources(band.cites)}`);
    }),
  ];
}

function totalsOf({ from, to }: Band): string {
  if (from === to) return `total ${from}`;
  return Number.isFinite(to) ? `total ${from} to ${to}` : `total ${from} or more`;
}

const METHODS: Readonly<Record<NonNullable<Rate['interval']>['method'], string>> = {
  'clopper-pearson': 'by Clopper and Pearson',
  wilson: 'by Wilson',
  'not stated': 'method not stated',
};

/** A published rate with its counts, its interval and the method of that. */
export function describeRate({ says, percent, events, of, interval }: Rate): string {
  const counts = events === undefined || of === undefined ? [] : [`${events} of ${of}`];
  const range =
    interval === undefined
      ? []
      : [
          `${interval.levelPercent} % interval ${interval.lowerPercent} to ` +
            `${interval.upperPercent} %, ${METHODS[interval.method]}`,
        ];
  const more = [...counts, ...range];
  return `${says}: ${percent} %${more.length > 0 ? ` (${more.join('; ')})` : ''}`;
}
