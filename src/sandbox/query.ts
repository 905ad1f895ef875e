import { type Condition, conditionOf } from './condition.js';
import { type Include, includeOf } from './include.js';
import { Refusal } from './refusal.js';
import { parameterOf, type ResourceType } from './resource-types.js';

export interface Criterion {
  readonly param: string;
  readonly condition: Condition;
}

export interface Sort {
  readonly param: string;
  readonly descending: boolean;
}

/** A search that was understood. All criteria must hold. */
export interface Query {
  readonly type: ResourceType;
  readonly criteria: readonly Criterion[];
  readonly includes: readonly Include[];
  readonly revIncludes: readonly Include[];
  readonly sort: readonly Sort[];
  readonly pageSize: number;
  readonly countOnly: boolean;
  /** The parameters that were understood, as they came: for the self link. */
  readonly applied: URLSearchParams;
}

export interface Reading {
  /** Address of this server without a slash at its end. */
  readonly base: string;
  /** Whether names that nobody knows are left out instead of refused. */
  readonly lenient: boolean;
}

/** Matches on a page when the client does not say, and the most it can ask for. */
const PAGE_SIZE = { usual: 100, most: 1_000 } as const;

/** About the form of the answer alone. */
const OF_THE_ANSWER: readonly string[] = ['_format', '_pretty', '_total'];

type Parts = {
  -readonly [K in keyof Query]: Query[K] extends readonly (infer T)[] ? T[] : Query[K];
};

/**
 * Reads the parameters of a search.
 *
 * A name that is not known is refused with 400, so that a slip of the pen is seen; under
 * `Prefer: handling=lenient` it is left out. HL7 FHIR R4 (Search, "Handling Errors") allows both.
 *
 * @throws Refusal 400, which names the parameter and never its value
 */
export function readQuery(type: ResourceType, params: URLSearchParams, reading: Reading): Query {
  const parts: Parts = {
    type,
    criteria: [],
    includes: [],
    revIncludes: [],
    sort: [],
    pageSize: PAGE_SIZE.usual,
    countOnly: false,
    applied: new URLSearchParams(),
  };
  for (const [name, value] of params) {
    if (readInto(parts, name, value, reading)) parts.applied.append(name, value);
    else if (!reading.lenient) throw unknown(type);
  }
  return parts;
}

/**
 * Reads the criteria of a conditional interaction or reference: always strict, because a
 * criterion left out would match what was never meant.
 *
 * @throws Refusal 400, or 412 where there is nothing to match by
 */
export function readCriteria(type: ResourceType, text: string, base: string): Query {
  const query = readQuery(type, new URLSearchParams(text), { base, lenient: false });
  if (query.criteria.length > 0) return query;
  throw new Refusal(412, 'invalid', 'A conditional request needs a criterion to match by.');
}

/** @returns false when the name is not known */
function readInto(parts: Parts, name: string, value: string, reading: Reading): boolean {
  if (OF_THE_ANSWER.includes(name)) return true;
  switch (name) {
    case '_count':
      readCount(parts, value);
      return true;
    case '_summary':
      parts.countOnly ||= readSummary(value);
      return true;
    case '_sort':
      parts.sort.push(...value.split(',').map((text) => sortOf(parts.type, text)));
      return true;
    case '_include':
      parts.includes.push(includeOf(value));
      return true;
    case '_revinclude':
      parts.revIncludes.push(includeOf(value));
      return true;
    default:
      return readCriterion(parts, name, value, reading);
  }
}

function readCriterion(parts: Parts, name: string, value: string, reading: Reading): boolean {
  const colon = name.indexOf(':');
  const code = colon < 0 ? name : name.slice(0, colon);
  const modifier = colon < 0 ? undefined : name.slice(colon + 1);
  const parameter = parameterOf(parts.type, code);
  if (parameter === undefined) return false;
  const condition = conditionOf(parameter, modifier, value, reading.base);
  parts.criteria.push({ param: code, condition });
  return true;
}

function readCount(parts: Parts, value: string): void {
  if (!/^\d{1,6}$/.test(value)) throw new Refusal(400, 'value', '_count needs a whole number.');
  const count = Number(value);
  if (count === 0) parts.countOnly = true;
  else parts.pageSize = Math.min(count, PAGE_SIZE.most);
}

function readSummary(value: string): boolean {
  if (value === 'count') return true;
  if (value === 'false') return false;
  throw new Refusal(400, 'not-supported', '_summary is supported with count and false alone.');
}

/** Dates alone give an order here, and the id. */
function sortOf(type: ResourceType, text: string): Sort {
  const descending = text.startsWith('-');
  const param = descending ? text.slice(1) : text;
  const known = param === '_id' || parameterOf(type, param)?.kind === 'date';
  if (!known) {
    throw new Refusal(400, 'not-supported', '_sort is supported for dates, _lastUpdated and _id.');
  }
  return { param, descending };
}

const unknown = (type: ResourceType) =>
  new Refusal(400, 'not-supported', `A search parameter is not known for ${type}.`);
