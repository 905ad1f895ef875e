import type { Dimension, Stratum } from '../outcomes/index.js';

/** A group of cases in words: `organ colon, fibrosis F1`, or all cases. */
export function stratumText(stratum: Stratum): string {
  const told = DIMENSION_TITLES.flatMap(([dimension, title]) => {
    const value = stratum[dimension];
    return value === undefined ? [] : [`${title} ${value.replaceAll('-', ' ')}`];
  });
  return told.length === 0 ? 'all cases' : told.join(', ');
}

const DIMENSION_TITLES: readonly (readonly [Dimension, string])[] = [
  ['organ', 'organ'],
  ['ruleSet', 'rule set'],
  ['sizeBand', 'size'],
  ['fibrosis', 'fibrosis'],
  ['technique', 'technique'],
  ['operator', 'operator'],
  ['traineeBand', 'trainee’s share'],
];
