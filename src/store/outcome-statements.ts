import { invariant } from '../kernel/index.js';
import type {
  Asked,
  Dimension,
  FirstCheckCount,
  IndicatorId,
  IndicatorWord,
  QuantityId,
  ToldApart,
} from '../outcomes/index.js';

/** A statement with its values, ready for the driver. */
export interface Statement {
  readonly text: string;
  readonly values: readonly string[];
}

const DIMENSION_COLUMNS: { readonly [D in Dimension]: string } = {
  organ: 'organ',
  ruleSet: 'curability_rule',
  sizeBand: 'size_band',
  fibrosis: 'fibrosis',
  technique: 'technique',
  operator: 'operator',
  traineeBand: 'trainee_band',
};
/** A case may leave these open: null in its facts, a word of its own in an answer. */
const OPEN_DIMENSIONS: readonly Dimension[] = ['fibrosis', 'technique'];
export const NOT_TOLD = 'not-told';

/** The number `words` of a case holds a digit for each, the last digit first. */
const WORD_DIGITS: readonly IndicatorId[] = [
  ...(['enBloc', 'r0', 'curative', 'intraproceduralPerforation', 'delayedPerforation'] as const),
  ...(['bleeding28d', 'bleeding6h30d', 'bleeding30dCsdb', 'stricture'] as const),
  ...(['conversionToSurgery', 'death30d', 'readmission30d', 'adverseEvent30d'] as const),
  'residualOrRecurrence',
];
/** What a digit says by its value. */
const DIGIT_WORDS: readonly IndicatorWord[] = [
  ...(['not-applicable', 'yes', 'no', 'missing', 'window-open'] as const),
];

/** And what the digit of the first check says, from 1 on. */
const CHECK_STATES: readonly FirstCheckCount['check'][] = [
  ...(['done', 'late', 'open', 'provisional'] as const),
  ...(['lost', 'ended', 'not-planned', 'unplanned'] as const),
];

/** Tells the words of a case out of its number. */
export function eachWord(
  number: number,
  tell: (id: IndicatorId, word: IndicatorWord) => void,
): void {
  for (const [place, id] of WORD_DIGITS.entries()) {
    const word = DIGIT_WORDS[digitOf(number, place)];
    invariant(word !== undefined, 'every digit of the words is one of a word');
    tell(id, word);
  }
}

/** Where the first check stands: the digit after those of the words. */
export function checkIn(number: number): FirstCheckCount['check'] {
  const check = CHECK_STATES[digitOf(number, WORD_DIGITS.length) - 1];
  invariant(check !== undefined, 'every digit of the first check is one of a state');
  return check;
}

const digitOf = (number: number, place: number): number => Math.floor(number / 10 ** place) % 10;

/** Columns of the values of the cases in the denominator of each. */
const QUANTITIES = {
  speedCm2PerH: 'measured_speed',
  sizeMm: 'measured_size',
  procedureMin: 'measured_min',
  pathologyDays: 'measured_pathology_days',
} as const satisfies { readonly [Id in QuantityId]: string };

/** Columns: the dimensions, the year where it is told apart, the words, and cases. */
export function cellsStatement(asked: Asked, by: readonly Dimension[], byYear: boolean): Statement {
  const groups = [...by.map((each) => DIMENSION_COLUMNS[each]), ...(byYear ? [YEAR] : []), 'words'];
  const { where, values } = conditionOf(asked);
  return {
    text: `select ${groups.join(', ')}, count(*) from facts where ${where}
      group by ${groups.map((_, i) => i + 1).join(', ')}`,
    values,
  };
}

const YEAR = 'substr(resected_on, 1, 4)';

const UNTIL = "to_char(check_open_until, 'YYYY-MM-DD')";

/** What a row of `tallyStatement` is about, in the order of the bits of its first column. */
export const TALLIED = [
  ...(['speedCm2PerH', 'sizeMm', 'procedureMin', 'pathologyDays'] as const),
  ...(['words', 'watched', 'openUntil'] as const),
] as const;
const TALLIED_COLUMNS: { readonly [T in (typeof TALLIED)[number]]: string } = {
  ...QUANTITIES,
  ...{ words: 'words', watched: 'watched', openUntil: 'check_open_until' },
};

/**
 * Columns: which sort of row it is, as the bit of its place in `TALLIED`; the dimensions of the
 * cells; the value of a quantity or the number `watched`; the words; the day until which a check
 * is open; and cases. All sorts come out of one reading
 * (https://www.postgresql.org/docs/18/queries-table-expressions.html#QUERIES-GROUPING-SETS).
 */
export function tallyStatement(asked: Asked, by: ToldApart): Statement {
  const dimensions = by.cells.map((each, i) => `${DIMENSION_COLUMNS[each]} as d${i}`);
  const quantities = Object.values(QUANTITIES);
  const ofCells = by.cells.map((_, i) => `d${i}`);
  const ofValues = by.values.map((each) => `d${by.cells.indexOf(each)}`);
  const sets = [
    ...quantities.map((quantity) => [...ofValues, quantity]),
    [...ofCells, 'words'],
    ['watched'],
    ['check_open_until'],
  ];
  const told = TALLIED.map((sort) => TALLIED_COLUMNS[sort]);
  // What a sort of row is not told apart by is null in it.
  const value = `coalesce(${quantities.join(', ')}, watched)`;
  const columns = [value, 'words', UNTIL, 'count(*)'];
  const { where, values } = conditionOf(asked);
  return {
    text: `select grouping(${told.join(', ')}), ${[...ofCells, ...columns].join(', ')}
      from (select ${[...dimensions, ...told].join(', ')}
        from facts where ${where}) as asked
      group by grouping sets (${sets.map((set) => `(${set.join(', ')})`).join(', ')})`,
    values,
  };
}

/** The last value is the limit. */
export function inOrderStatement(asked: Asked, limit: number): Statement {
  const { where, values } = conditionOf(asked);
  return {
    text: `select resected_on, operator, en_bloc, r0, curative, intraprocedural_perforation,
        speed_cm2_per_h, organ, specimen_area_cm2
      from facts where ${where}
      order by resected_on, scope_in_at::timestamptz, case_id collate "C"
      limit $${values.length + 1}`,
    values: [...values, String(limit)],
  };
}

/** Rows of before the words were computed have no day, and are in no count. */
export function conditionOf({ filters, from, to }: Asked): {
  readonly where: string;
  readonly values: readonly string[];
} {
  const terms: string[] = ['not withdrawn', "resected_on > ''"];
  const values: string[] = [];
  const add = (sql: string, value: string | undefined): void => {
    if (value === undefined) return;
    values.push(value);
    terms.push(`${sql} $${values.length}`);
  };
  add('resected_on >=', from);
  add('resected_on <=', to);
  for (const dimension of Object.keys(DIMENSION_COLUMNS) as readonly Dimension[]) {
    const column = DIMENSION_COLUMNS[dimension];
    const isOpen = OPEN_DIMENSIONS.includes(dimension) && filters[dimension] === NOT_TOLD;
    if (isOpen) terms.push(`${column} is null`);
    else add(`${column} =`, filters[dimension]);
  }
  return { where: terms.join(' and '), values };
}
