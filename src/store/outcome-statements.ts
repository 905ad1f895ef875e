import type { Asked, Dimension, IndicatorId, QuantityId } from '../outcomes/index.js';

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

/** Columns of words, in the order in which they are counted. */
const WORD_COLUMNS: readonly (readonly [IndicatorId, string])[] = [
  ['enBloc', 'en_bloc'],
  ['r0', 'r0'],
  ['curative', 'curative'],
  ['intraproceduralPerforation', 'intraprocedural_perforation'],
  ['delayedPerforation', 'delayed_perforation'],
  ['bleeding28d', 'bleeding28d'],
  ['bleeding6h30d', 'bleeding6h30d'],
  ['bleeding30dCsdb', 'bleeding30d_csdb'],
  ['stricture', 'stricture'],
  ['conversionToSurgery', 'conversion_to_surgery'],
  ['death30d', 'death30d'],
  ['readmission30d', 'readmission30d'],
  ['adverseEvent30d', 'adverse_event30d'],
  ['residualOrRecurrence', 'residual_or_recurrence'],
];

/** Words that are counted one by one; what is left of the cases is `not-applicable`. */
export const COUNTED_WORDS = ['yes', 'no', 'missing', 'window-open'] as const;

export const COUNTED_INDICATORS: readonly IndicatorId[] = WORD_COLUMNS.map(([id]) => id);

/** The value, and the word by which a case is in the denominator of it. */
const QUANTITY_SQL: readonly (readonly [QuantityId, string, string])[] = [
  ['speedCm2PerH', 'speed_cm2_per_h', 'en_bloc'],
  ['sizeMm', 'lesion_long_axis_mm', 'en_bloc'],
  ['procedureMin', 'procedure_min', 'en_bloc'],
  ['pathologyDays', 'pathology_days', 'r0'],
];

export const MEASURED_QUANTITIES: readonly QuantityId[] = QUANTITY_SQL.map(([id]) => id);

/** Columns: the dimensions, the year where it is told apart, cases, and four words an indicator. */
export function cellsStatement(asked: Asked, by: readonly Dimension[], byYear: boolean): Statement {
  const groups = [...by.map((each) => DIMENSION_SQL[each]), ...(byYear ? [YEAR] : [])];
  const counts = WORD_COLUMNS.flatMap(([, column]) =>
    COUNTED_WORDS.map((word) => `count(*) filter (where ${column} = '${word}')`),
  );
  const { where, values } = conditionOf(asked);
  return {
    text: `select ${[...groups, 'count(*)', ...counts].join(', ')} from facts where ${where}
      ${groups.length === 0 ? '' : `group by ${placesOf(groups)}`}`,
    values,
  };
}

const YEAR = 'substr(resected_on, 1, 4)';

/** By their place in the list of columns. */
const placesOf = (groups: readonly string[]): string => groups.map((_, i) => i + 1).join(', ');

/**
 * Columns: whether it is the row of all together, the dimensions, and for each quantity how many
 * values there are, how many are missing, and three quartiles: by linear interpolation between
 * ranks (https://www.postgresql.org/docs/18/functions-aggregate.html, percentile_cont).
 */
export function quartilesStatement(asked: Asked, by: readonly Dimension[]): Statement {
  const groups = by.map((each) => DIMENSION_SQL[each]);
  const isAll = by.length === 0 ? '1' : `grouping(${by.map((_, i) => `d${i}`).join(', ')})`;
  const counted = QUANTITY_SQL.flatMap((_quantity, i) => [
    `count(q${i})`,
    `count(*) filter (where m${i})`,
    `percentile_cont(array[0.25, 0.5, 0.75]) within group (order by q${i})`,
  ]);
  const read = QUANTITY_SQL.flatMap(([, value, word], i) => [
    `case when ${word} <> 'not-applicable' then ${value} end as q${i}`,
    `${word} <> 'not-applicable' and ${value} is null as m${i}`,
  ]);
  const { where, values } = conditionOf(asked);
  const named = groups.map((sql, i) => `${sql} as d${i}`);
  const sets = by.length === 0 ? '' : `, (${by.map((_, i) => `d${i}`).join(', ')})`;
  return {
    text: `select ${[isAll, ...by.map((_, i) => `d${i}`), ...counted].join(', ')}
      from (select ${[...named, ...read].join(', ')} from facts where ${where}) as asked
      group by grouping sets (()${sets})`,
    values,
  };
}

export function firstChecksStatement(asked: Asked): Statement {
  const { where, values } = conditionOf(asked);
  return {
    text: `select first_check_state, first_check_timing,
        case when first_check_state = 'open' then first_check_latest_on end, count(*)
      from facts where ${where} group by 1, 2, 3`,
    values,
  };
}

/** A check before the resection, which no record should tell, watches nothing. */
export function watchedStatement(asked: Asked): Statement {
  const { where, values } = conditionOf(asked);
  return {
    text: `select coalesce(recurrence_on, last_check_on)::date - resected_on::date,
        recurrence_on is not null, count(*)
      from facts where ${where} and coalesce(recurrence_on, last_check_on) >= resected_on
      group by 1, 2 order by 1, 2`,
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
  for (const dimension of Object.keys(DIMENSION_SQL) as readonly Dimension[]) {
    add(`${DIMENSION_SQL[dimension]} =`, filters[dimension]);
  }
  return { where: terms.join(' and '), values };
}
