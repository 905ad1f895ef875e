import { type DateRange, dateRange } from './date-range.js';
import { ID, targetOf } from './reference.js';
import { Refusal } from './refusal.js';
import { isResourceType } from './resource-types.js';
import type { SearchParameter } from './search-parameters.table.js';
import { fold } from './search-values.js';

/** `system` null: the value must have none; absent: any. `code` absent: any of the system. */
export interface TokenValue {
  readonly system?: string | null;
  readonly code?: string;
}

/** Prefixes of ordered values. Source: HL7 FHIR R4, Search, section "Prefixes", without `ap`. */
const PREFIXES = ['eq', 'ne', 'gt', 'lt', 'ge', 'le', 'sa', 'eb'] as const;
export type Prefix = (typeof PREFIXES)[number];

export interface DateValue {
  readonly prefix: Prefix;
  readonly range: DateRange;
}

/** One search parameter with its values, of which any may match. */
export type Condition =
  | { readonly kind: 'missing'; readonly missing: boolean }
  | { readonly kind: 'id'; readonly ids: readonly string[] }
  | { readonly kind: 'token'; readonly negated: boolean; readonly values: readonly TokenValue[] }
  | {
      readonly kind: 'target';
      readonly targets: readonly string[];
      readonly ids: readonly string[];
    }
  | { readonly kind: 'date'; readonly values: readonly DateValue[] }
  | {
      readonly kind: 'text';
      readonly match: 'starts' | 'contains' | 'exact';
      readonly values: readonly string[];
    };

/**
 * Reads one parameter of a search.
 *
 * Source: HL7 FHIR R4, Search, sections "Modifiers", "Escaping Search Parameters" and the types.
 *
 * @param modifier what stood after the colon, if anything
 * @param base address of this server
 * @throws Refusal 400 for a value of the wrong form or a modifier that is not supported
 */
export function conditionOf(
  parameter: SearchParameter,
  modifier: string | undefined,
  value: string,
  base: string,
): Condition {
  const values = value.split(/(?<!\\),/);
  if (values.includes('')) throw malformed(parameter, 'has an empty value');
  if (modifier === 'missing') return missing(parameter, value);
  if (parameter.code === '_id' && modifier === undefined) return { kind: 'id', ids: values };
  switch (parameter.kind) {
    case 'token':
      if (parameter.code === '_id' || (modifier !== undefined && modifier !== 'not')) break;
      return { kind: 'token', negated: modifier === 'not', values: values.map(tokenOf) };
    case 'reference':
      if (modifier === 'identifier') {
        return { kind: 'token', negated: false, values: values.map(tokenOf) };
      }
      if (modifier !== undefined && !isResourceType(modifier)) break;
      return referenceTo(parameter, modifier, values.map(unescaped), base);
    case 'date':
      if (modifier !== undefined) break;
      return { kind: 'date', values: values.map((text) => dateOf(parameter, text)) };
    case 'string':
      return textLike(parameter, modifier, values.map(unescaped));
    case 'uri':
      if (modifier !== undefined) break;
      return { kind: 'text', match: 'exact', values: values.map(unescaped) };
  }
  throw unsupportedModifier(parameter);
}

function missing(parameter: SearchParameter, value: string): Condition {
  if (parameter.code === '_id' || parameter.code === '_lastUpdated') {
    throw unsupportedModifier(parameter);
  }
  if (value !== 'true' && value !== 'false') throw malformed(parameter, 'needs true or false');
  return { kind: 'missing', missing: value === 'true' };
}

function tokenOf(text: string): TokenValue {
  const [first = '', ...rest] = text.split(/(?<!\\)\|/).map(unescaped);
  if (rest.length === 0) return { code: first };
  const code = rest.join('|');
  return { system: first === '' ? null : first, ...(code === '' ? {} : { code }) };
}

function referenceTo(
  parameter: SearchParameter,
  type: string | undefined,
  values: readonly string[],
  base: string,
): Condition {
  const targets: string[] = [];
  const ids: string[] = [];
  for (const value of values) {
    const target = targetOf(value, base);
    if (ID.test(value)) {
      if (type === undefined) ids.push(value);
      else targets.push(`${type}/${value}`);
    } else if (target.kind === 'ours') {
      if (type !== undefined && type !== target.type) {
        throw malformed(parameter, 'names another type than its modifier');
      }
      targets.push(`${target.type}/${target.id}`);
    } else {
      targets.push(value);
    }
  }
  return { kind: 'target', targets, ids };
}

function dateOf(parameter: SearchParameter, text: string): DateValue {
  const prefix = PREFIXES.find((each) => text.startsWith(each));
  const range = dateRange(prefix === undefined ? text : text.slice(2));
  if (range === undefined) throw malformed(parameter, 'needs a date, with one of its prefixes');
  return { prefix: prefix ?? 'eq', range };
}

function textLike(
  parameter: SearchParameter,
  modifier: string | undefined,
  values: readonly string[],
): Condition {
  if (modifier === 'exact') return { kind: 'text', match: 'exact', values };
  if (modifier !== undefined && modifier !== 'contains') throw unsupportedModifier(parameter);
  const match = modifier === 'contains' ? 'contains' : 'starts';
  return { kind: 'text', match, values: values.map(fold) };
}

const unescaped = (text: string) => text.replace(/\\([,|$\\])/g, '$1');

const malformed = (parameter: SearchParameter, what: string) =>
  new Refusal(400, 'value', `The search parameter ${parameter.code} ${what}.`);

const unsupportedModifier = (parameter: SearchParameter) =>
  new Refusal(400, 'not-supported', `This modifier of ${parameter.code} is not supported.`);
