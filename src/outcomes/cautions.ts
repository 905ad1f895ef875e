/** What rates of any question cannot say. */
export const NOT_ADJUSTED =
  'Rates are not adjusted for how difficult the cases were: a difference is a question.';

export const MISSING_IN_NO_RATE =
  'Missing outcomes are in no rate; where they are many, the rate speaks of those who were reached.';
