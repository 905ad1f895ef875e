/** Stands in every conclusion and beside every verdict. */
export const CAUTION =
  'Decision support, not a verdict: confirm against the guideline and local policy; ' +
  'a licensed clinician decides.';
