import {
  type Expression,
  type ExpressionBuilder,
  type OrderByItemBuilder,
  type SqlBool,
  sql,
} from 'kysely';
import type { Condition, DateValue, TokenValue } from './condition.js';
import type { DateRange } from './date-range.js';
import type { Criterion, Query, Sort } from './query.js';
import type { SandboxDatabase, SandboxTables } from './tables.js';

type OfResource = ExpressionBuilder<SandboxTables, 'resource'>;
type OfValue = ExpressionBuilder<SandboxTables, 'search_value'>;

/** Asks for the ids of all resources that meet the criteria, in the order that was asked for. */
export function matchingIds(db: SandboxDatabase, query: Query) {
  const { type, criteria, sort } = query;
  let select = db
    .selectFrom('resource')
    .select('resource.id')
    .where('resource.type', '=', type)
    .where((eb) => eb.and(criteria.map((criterion) => holds(eb, criterion))));
  for (const each of sort) select = select.orderBy(sortKey(each), sortOrder(each));
  return select.orderBy('resource.id');
}

function holds(eb: OfResource, { param, condition }: Criterion): Expression<SqlBool> {
  if (condition.kind === 'id') return eb('resource.id', 'in', condition.ids);
  if (param === '_lastUpdated' && condition.kind === 'date') {
    return eb.or(condition.values.map((value) => compares(eb.ref('resource.updated_ms'), value)));
  }
  const exists = eb.exists(
    eb
      .selectFrom('search_value')
      .select(sql`1`.as('one'))
      .whereRef('search_value.type', '=', 'resource.type')
      .whereRef('search_value.id', '=', 'resource.id')
      .where('search_value.param', '=', param)
      .where((inner) => matches(inner, condition)),
  );
  const negated =
    (condition.kind === 'missing' && condition.missing) ||
    (condition.kind === 'token' && condition.negated);
  return negated ? eb.not(exists) : exists;
}

function matches(eb: OfValue, condition: Exclude<Condition, { kind: 'id' }>): Expression<SqlBool> {
  switch (condition.kind) {
    case 'missing':
      return eb.val(true);
    case 'token':
      return eb.or(condition.values.map((value) => hasToken(eb, value)));
    case 'target':
      return eb.or([
        ...condition.targets.map((target) => eb('target', '=', target)),
        ...condition.ids.map((id) => eb('target_id', '=', id)),
      ]);
    case 'date':
      return eb.or(condition.values.map((value) => overlaps(eb, value)));
    case 'text':
      return eb.or(condition.values.map((value) => hasText(eb, condition.match, value)));
  }
}

function hasToken(eb: OfValue, { system, code }: TokenValue): Expression<SqlBool> {
  const ofSystem = system === null ? eb('system', 'is', null) : eb('system', '=', system ?? '');
  return eb.and([
    ...(code === undefined ? [] : [eb('code', '=', code)]),
    ...(system === undefined ? [] : [ofSystem]),
    eb('code', 'is not', null),
  ]);
}

function hasText(eb: OfValue, match: 'starts' | 'contains' | 'exact', value: string) {
  switch (match) {
    case 'exact':
      return eb('exact', '=', value);
    case 'starts':
      return eb(eb.fn<boolean>('starts_with', ['folded', eb.val(value)]), '=', true);
    case 'contains':
      return eb(eb.fn<number>('strpos', ['folded', eb.val(value)]), '>', 0);
  }
}

const overlaps = (eb: OfValue, value: DateValue) =>
  inRange(sql<number>`${eb.ref('low_ms')}`, sql<number>`${eb.ref('high_ms')}`, value);

/** The instant of an update is a millisecond wide. */
const compares = (at: Expression<number>, value: DateValue) =>
  inRange(sql<number>`${at}`, sql<number>`${at} + 1`, value);

/**
 * Source: HL7 FHIR R4, Search, section "Prefixes": the ranges of the search value and of the
 * target value, compared. A range above or below begins where the search value ends or begins.
 */
function inRange(low: Expression<number>, high: Expression<number>, value: DateValue) {
  const { lowMs, highMs }: DateRange = value.range;
  switch (value.prefix) {
    case 'eq':
      return sql<SqlBool>`(${low} >= ${lowMs} and ${high} <= ${highMs})`;
    case 'ne':
      return sql<SqlBool>`not (${low} >= ${lowMs} and ${high} <= ${highMs})`;
    case 'gt':
      return sql<SqlBool>`${high} > ${highMs}`;
    case 'lt':
      return sql<SqlBool>`${low} < ${lowMs}`;
    case 'ge':
      return sql<SqlBool>`(${low} >= ${lowMs} or ${high} > ${highMs})`;
    case 'le':
      return sql<SqlBool>`(${high} <= ${highMs} or ${low} < ${lowMs})`;
    case 'sa':
      return sql<SqlBool>`${low} >= ${highMs}`;
    case 'eb':
      return sql<SqlBool>`${high} <= ${lowMs}`;
  }
}

/** A resource with several dates stands by its earliest, or from the end by its latest. */
function sortKey({ param, descending }: Sort) {
  if (param === '_id') return sql`resource.id`;
  if (param === '_lastUpdated') return sql`resource.updated_ms`;
  const key = descending ? sql`max(high_ms)` : sql`min(low_ms)`;
  return sql`(select ${key} from sandbox.search_value as of_sort where of_sort.type = resource.type
    and of_sort.id = resource.id and of_sort.param = ${param})`;
}

const sortOrder =
  ({ descending }: Sort) =>
  (order: OrderByItemBuilder) =>
    (descending ? order.desc() : order.asc()).nullsLast();
