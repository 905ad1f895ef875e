import { type DateRange, dateRange, FOREVER } from './date-range.js';
import { type ElementPath, elementPath } from './element-path.js';
import { isList, isObject, type Json, type JsonObject, textOf } from './json.js';
import { targetOf } from './reference.js';
import { parametersOf, RESOURCE_TYPES, type ResourceType } from './resource-types.js';
import type { SearchKind } from './search-parameters.table.js';

/** One row of the search index, but for the resource that it belongs to. */
export interface SearchValue {
  readonly param: string;
  readonly system?: string;
  readonly code?: string;
  readonly target?: string;
  readonly target_id?: string;
  readonly low_ms?: number;
  readonly high_ms?: number;
  readonly exact?: string;
  readonly folded?: string;
}

type Found = Omit<SearchValue, 'param'>;

/** Columns of the resource itself, not of the index. */
const OWN_COLUMNS: readonly string[] = ['_id', '_lastUpdated'];

interface Reader {
  readonly param: string;
  readonly kind: SearchKind;
  readonly read: ElementPath;
}

const readersOf = (type: ResourceType): readonly Reader[] =>
  parametersOf(type)
    .filter(({ code }) => !OWN_COLUMNS.includes(code))
    .map(({ code, kind, expression }) => ({ param: code, kind, read: elementPath(expression) }));

const READERS = new Map(RESOURCE_TYPES.map((type) => [type, readersOf(type)]));

/**
 * Everything that a resource can be found by.
 *
 * @param base address of this server, so that its own absolute references are known as such
 */
export function searchValues(
  type: ResourceType,
  resource: JsonObject,
  base: string,
): readonly SearchValue[] {
  return (READERS.get(type) ?? []).flatMap(({ param, kind, read }) =>
    read(resource)
      .flatMap((value) => valuesOf(kind, value, base))
      .map((found) => ({ param, ...found })),
  );
}

function valuesOf(kind: SearchKind, value: Json, base: string): readonly Found[] {
  switch (kind) {
    case 'token':
      return tokens(value);
    case 'reference':
      return references(value, base);
    case 'date':
      return dates(value);
    case 'string':
      return strings(value).map((exact) => ({ exact, folded: fold(exact) }));
    case 'uri':
      return typeof value === 'string' ? [{ exact: value }] : [];
  }
}

/**
 * Source: HL7 FHIR R4, Search, section "token", table of data types. Where the case of a code may
 * not matter the page advises to pass over it; here it always counts, so that an identifier
 * names one resource.
 */
function tokens(value: Json): readonly Found[] {
  if (typeof value === 'string') return [{ code: value }];
  if (typeof value === 'boolean') return [{ code: String(value) }];
  if (!isObject(value)) return [];
  const { coding } = value;
  if (isList(coding)) return coding.flatMap(tokens);
  const system = textOf(value, 'system');
  const code = textOf(value, 'value') ?? textOf(value, 'code');
  if (code === undefined) return [];
  return [system === undefined ? { code } : { system, code }];
}

function references(value: Json, base: string): readonly Found[] {
  if (typeof value === 'string') return [{ target: value }];
  if (!isObject(value)) return [];
  const text = textOf(value, 'reference');
  const { identifier } = value;
  const token = identifier === undefined ? undefined : tokens(identifier)[0];
  if (text === undefined) return token === undefined ? [] : [token];
  const target = targetOf(text, base);
  if (target.kind !== 'ours') return [{ ...token, target: text }];
  return [{ ...token, target: `${target.type}/${target.id}`, target_id: target.id }];
}

/** Source: HL7 FHIR R4, Search, section "date": a Timing counts by its outer limits. */
function dates(value: Json): readonly Found[] {
  const range = typeof value === 'string' ? dateRange(value) : isObject(value) ? span(value) : null;
  return range ? [{ low_ms: range.lowMs, high_ms: range.highMs }] : [];
}

function span(value: JsonObject): DateRange | undefined {
  const { event, repeat } = value;
  if (isList(event)) {
    const ranges = event.flatMap((at) => (typeof at === 'string' ? (dateRange(at) ?? []) : []));
    if (ranges.length === 0) return undefined;
    const lowMs = Math.min(...ranges.map((range) => range.lowMs));
    return { lowMs, highMs: Math.max(...ranges.map((range) => range.highMs)) };
  }
  if (isObject(repeat)) return isObject(repeat.boundsPeriod) ? span(repeat.boundsPeriod) : FOREVER;
  const start = dateRange(textOf(value, 'start') ?? '');
  const end = dateRange(textOf(value, 'end') ?? '');
  if (start === undefined && end === undefined) return undefined;
  return { lowMs: start?.lowMs ?? FOREVER.lowMs, highMs: end?.highMs ?? FOREVER.highMs };
}

/** A text, or every part of a name. Source: HL7 FHIR R4, Search, section "string". */
function strings(value: Json): readonly string[] {
  if (typeof value === 'string') return [value];
  if (!isObject(value)) return [];
  return ['text', 'family', 'given', 'prefix', 'suffix'].flatMap((part) => {
    const inner = value[part];
    return isList(inner) ? inner.flatMap(strings) : inner === undefined ? [] : strings(inner);
  });
}

/** Without case and accents. */
export const fold = (text: string): string =>
  text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
