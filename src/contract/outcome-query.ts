import { z } from 'zod';
import { type Checked, passed } from '../kernel/index.js';
import { OUTCOME_DIMENSIONS, OUTCOME_FILTERS, OUTCOME_INTERVALS } from './outcome-words.table.js';
import { areDaysInOrder, DAYS_OUT_OF_ORDER, readQuery, wordsText } from './read-query.js';
import { date, oneOf } from './scalars.js';

type Dimension = (typeof OUTCOME_DIMENSIONS)[number];

/** Which cases are asked for; none of it can be about a patient. */
export interface OutcomeCasesAsked {
  /** Days of the resection, YYYY-MM-DD, both included. */
  readonly from?: string;
  readonly to?: string;
  readonly filters: { readonly [D in Dimension]?: string };
}

export interface OutcomeQueryFields extends OutcomeCasesAsked {
  readonly by: readonly Dimension[];
  readonly interval: (typeof OUTCOME_INTERVALS)[number];
}

/** Strata are told apart by so many dimensions at most. */
const MOST_STRATA = 2;

const pseudonym = z
  .string()
  .regex(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  .meta({ title: 'a pseudonym of an operator, as an answer by operator tells it' });

const words = (list: readonly string[]) => {
  const [first = '', ...rest] = list;
  return oneOf([first, ...rest]).optional();
};

/** Parameters that say which cases. */
export const CASES = {
  from: date.optional(),
  to: date.optional(),
  organ: words(OUTCOME_FILTERS.organ),
  ruleSet: words(OUTCOME_FILTERS.ruleSet),
  sizeBand: words(OUTCOME_FILTERS.sizeBand),
  fibrosis: words(OUTCOME_FILTERS.fibrosis),
  technique: words(OUTCOME_FILTERS.technique),
  operator: pseudonym.optional(),
  traineeBand: words(OUTCOME_FILTERS.traineeBand),
};
export const BY = wordsText(OUTCOME_DIMENSIONS, MOST_STRATA).optional();
export const INTERVAL = oneOf(OUTCOME_INTERVALS).optional();
const casesSchema = z.strictObject(CASES);
/** Rows of one operator of the outcomes would tell which pseudonym of an export is the same. */
const exportSchema = casesSchema.omit({ operator: true });
const outcomesSchema = z.strictObject({ ...CASES, by: BY, interval: INTERVAL });

/** @returns which cases are to be exported, or every problem at once */
export function parseExportQuery(search: string): Checked<OutcomeCasesAsked> {
  const read = readQuery(exportSchema, search, periodProblems);
  return read.ok ? passed(casesOf(read.value)) : read;
}

/** @returns what is asked of the outcomes, or every problem at once */
export function parseOutcomeQuery(search: string): Checked<OutcomeQueryFields> {
  const read = readQuery(outcomesSchema, search, periodProblems);
  if (!read.ok) return read;
  const { by = [], interval = 'wilson' } = read.value;
  return passed({ ...casesOf(read.value), by, interval });
}

export const periodProblems = (days: Pick<z.infer<typeof casesSchema>, 'from' | 'to'>) =>
  areDaysInOrder(days) ? [] : [DAYS_OUT_OF_ORDER];

/** The parameters that say which cases, apart from all others. */
export function casesOf(
  read: z.infer<typeof exportSchema> & { readonly operator?: string | undefined },
): OutcomeCasesAsked {
  const { from, to, organ, ruleSet, sizeBand, fibrosis, technique, operator, traineeBand } = read;
  return {
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    filters: {
      ...(organ === undefined ? {} : { organ }),
      ...(ruleSet === undefined ? {} : { ruleSet }),
      ...(sizeBand === undefined ? {} : { sizeBand }),
      ...(fibrosis === undefined ? {} : { fibrosis }),
      ...(technique === undefined ? {} : { technique }),
      ...(operator === undefined ? {} : { operator }),
      ...(traineeBand === undefined ? {} : { traineeBand }),
    },
  };
}
