import type { HiddenSeries } from './series.js';

/** Where small counts are hidden there is no curve of single cases. */
export const SMALL_COUNTS: HiddenSeries = {
  kind: 'hidden',
  because: 'A curve shows every single case; small counts are hidden here.',
};

/** Where cases are too many to be read one by one. */
export const TOO_MANY_CASES: HiddenSeries = {
  kind: 'hidden',
  because: 'A curve shows every single case, and these are too many: ask for a shorter period.',
};
