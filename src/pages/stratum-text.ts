import type { FunnelPlace } from '../outcomes/index.js';

/** A group of cases in words: `organ colon, fibrosis F1`, or all cases. */
export const stratumText = (stratum: FunnelPlace): string =>
  joined(told(stratum).map(({ title, words }) => `${title} ${words}`));

/** The same without the names of the dimensions: `colon, F1`. */
export const shortText = (stratum: FunnelPlace): string =>
  joined(told(stratum).map(({ words }) => words));

const told = (stratum: FunnelPlace) =>
  DIMENSION_TITLES.flatMap(([dimension, title]) => {
    const value = stratum[dimension];
    if (value === undefined) return [];
    // Pseudonyms are names and stay as they are; the other values are words.
    const isName = dimension === 'operator' || dimension === 'unit';
    return [{ title, words: isName ? value : value.replaceAll('-', ' ') }];
  });

const joined = (parts: readonly string[]): string =>
  parts.length === 0 ? 'all cases' : parts.join(', ');

const DIMENSION_TITLES: readonly (readonly [keyof FunnelPlace, string])[] = [
  ['unit', 'unit'],
  ['organ', 'organ'],
  ['ruleSet', 'rule set'],
  ['sizeBand', 'size'],
  ['fibrosis', 'fibrosis'],
  ['technique', 'technique'],
  ['operator', 'operator'],
  ['traineeBand', 'trainee’s share'],
];
