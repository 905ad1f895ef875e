import type { Dimension, FunnelPlace } from '../outcomes/index.js';

/** A group of cases in words: `organ colon, fibrosis F1`, or all cases. */
export const stratumText = (stratum: FunnelPlace): string =>
  joined(told(stratum).map(({ title, words }) => `${title} ${words}`));

/** The same without the names of the dimensions: `colon, F1`. */
export const shortText = (stratum: FunnelPlace): string =>
  joined(told(stratum).map(({ words }) => words));

/** What cases are told apart by, in the order of `shortText`: `organ and fibrosis`. */
export const dimensionsText = (by: readonly Dimension[]): string =>
  DIMENSION_TITLES.filter(([dimension]) => by.some((each) => each === dimension))
    .map(([, title]) => title)
    .join(' and ');

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
