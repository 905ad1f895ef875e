/** Stands beside everything that is said of a case, for people and for machines. */
export const CAUTION =
  'Decision support, not a verdict. Confirm against the guideline and local policy; ' +
  'licensed clinicians decide.';
