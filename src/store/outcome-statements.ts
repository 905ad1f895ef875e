import { invariant } from '../kernel/index.js';
import {
  type Asked,
  type Dimension,
  FIRST_CHECKS,
  type FirstCheckCount,
  type IndicatorId,
  type IndicatorWord,
  MEASURED_WHERE,
  QUANTITY_IDS,
  type QuantityId,
  type ToldApart,
} from '../outcomes/index.js';

/** A statement with its values, ready for the driver. */
export interface Statement {
  readonly text: string;
  readonly values: readonly string[];
}

/** How each dimension reads in the facts; a fact that is open has a word of its own. */
const DIMENSION_SQL: { readonly [D in Dimension]: string } = {
  organ: 'organ',
  ruleSet: 'curability_rule',
  sizeBand: 'size_band',
  fibrosis: "coalesce(fibrosis, 'not-told')",
  technique: "coalesce(technique, 'not-told')",
  operator: 'operator',
  traineeBand: 'trainee_band',
};

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

/** The words of a case out of its number. */
export const wordsIn = (number: number): readonly (readonly [IndicatorId, IndicatorWord])[] =>
  WORD_DIGITS.map((id, place) => {
    const word = DIGIT_WORDS[digitOf(number, place)];
    invariant(word !== undefined, 'every digit of the words is one of a word');
    return [id, word];
  });

/** Where the first check stands: the digit after those of the words. */
export function checkIn(number: number): FirstCheckCount['check'] {
  const check = FIRST_CHECKS[digitOf(number, WORD_DIGITS.length) - 1];
  invariant(check !== undefined, 'every digit of the first check is one of a state');
  return check;
}

const digitOf = (number: number, place: number): number => Math.floor(number / 10 ** place) % 10;

const QUANTITY_COLUMNS: { readonly [Id in QuantityId]: string } = {
  speedCm2PerH: 'speed_cm2_per_h',
  sizeMm: 'lesion_long_axis_mm',
  procedureMin: 'procedure_min',
  pathologyDays: 'pathology_days',
};

/** Columns: the dimensions, the year where it is told apart, the words, and cases. */
export function cellsStatement(asked: Asked, by: readonly Dimension[], byYear: boolean): Statement {
  const groups = [...by.map((each) => DIMENSION_SQL[each]), ...(byYear ? [YEAR] : []), 'words'];
  const { where, values } = conditionOf(asked);
  return {
    text: `select ${groups.join(', ')}, count(*) from facts where ${where}
      group by ${groups.map((_, i) => i + 1).join(', ')}`,
    values,
  };
}

const YEAR = 'substr(resected_on, 1, 4)';

/** What a row of `tallyStatement` is about, in the order of the bits of its first column. */
export const TALLIED = [...QUANTITY_IDS, 'words', 'watched', 'openUntil'] as const;

/**
 * Columns: which sort of row it is, as the bit of its place in `TALLIED`; the dimensions of the
 * cells; what is told apart in this sort of row, in the order of `TALLIED`; and cases. All sorts
 * come out of one reading
 * (https://www.postgresql.org/docs/18/queries-table-expressions.html#QUERIES-GROUPING-SETS).
 */
export function tallyStatement(asked: Asked, by: ToldApart): Statement {
  const dimensions = by.cells.map((each, i) => `${DIMENSION_SQL[each]} as d${i}`);
  const quantities = QUANTITY_IDS.map((id) => {
    const place = WORD_DIGITS.indexOf(MEASURED_WHERE[id]);
    const isMeasured = `words / ${10 ** place} % 10 <> 0`;
    return `case when ${isMeasured} then ${QUANTITY_COLUMNS[id]} end as ${named(id)}`;
  });
  const ofCells = by.cells.map((_, i) => `d${i}`);
  const ofValues = by.values.map((each) => `d${by.cells.indexOf(each)}`);
  const sets = [
    ...QUANTITY_IDS.map((id) => [...ofValues, named(id)]),
    [...ofCells, 'words'],
    ['recurred_days', 'seen_days'],
    ['check_open_until'],
  ];
  const told = [...QUANTITY_IDS.map(named), 'words', 'seen_days', 'check_open_until'];
  const columns = [`grouping(${told.join(', ')})`, ...ofCells, ...told, 'recurred_days'];
  const { where, values } = conditionOf(asked);
  return {
    text: `select ${columns.join(', ')}, count(*)
      from (select ${[...dimensions, ...quantities].join(', ')},
          words, recurred_days, seen_days, check_open_until
        from facts where ${where}) as asked
      group by grouping sets (${sets.map((set) => `(${set.join(', ')})`).join(', ')})`,
    values,
  };
}

/** A name of the statement for a quantity. */
const named = (id: QuantityId): string => `q_${QUANTITY_COLUMNS[id]}`;

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
  for (const dimension of Object.keys(DIMENSION_SQL) as readonly Dimension[]) {
    add(`${DIMENSION_SQL[dimension]} =`, filters[dimension]);
  }
  return { where: terms.join(' and '), values };
}
