import type { HiddenSeries } from './series.js';

/** Where small counts are hidden there is no curve of single cases. */
export const SMALL_COUNTS: HiddenSeries = {
  kind: 'hidden',
  because: 'A curve shows every single case; small counts are hidden here.',
};

/**
 * Where the aims of a curve are published for other organs, and the question brings none.
 *
 * @param isLevel whether a level in what fails is of these organs, which no aims can change
 */
export const aimsOfOthers = (organs: readonly string[], isLevel: boolean): HiddenSeries => ({
  kind: 'hidden',
  because: isLevel
    ? `A failure is below a level published for ${organs.join(' and ')}; these cases are of another organ.`
    : `The aims are published for ${organs.join(' and ')}, and these cases are of another organ: ask with acceptable and unacceptable of your own.`,
});

/** Where cases are too many to be read one by one. */
export const TOO_MANY_CASES: HiddenSeries = {
  kind: 'hidden',
  because: 'A curve shows every single case, and these are too many: ask for a shorter period.',
};
