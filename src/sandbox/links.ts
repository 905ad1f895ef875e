import { isList, isObject, type Json, type JsonObject } from './json.js';

/** A reference inside a resource, and where it stands. */
export interface Link {
  readonly reference: string;
  /** FHIRPath to the element that holds it. */
  readonly expression: string;
}

/** Elements of type uri, url, oid and uuid that can hold the address of another entry. */
const ADDRESSES = ['reference', 'url', 'uri', 'valueUri', 'valueUrl', 'valueOid', 'valueUuid'];

/** @param place FHIRPath to the resource */
export function linksIn(value: Json, place: string): readonly Link[] {
  if (isList(value)) return value.flatMap((each, index) => linksIn(each, `${place}[${index}]`));
  if (!isObject(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'reference' && typeof inner === 'string'
      ? [{ reference: inner, expression: place }]
      : linksIn(inner, `${place}.${key}`),
  );
}

/**
 * Puts other addresses in the place of those that `rename` knows.
 *
 * Source: HL7 FHIR R4, RESTful API, "transaction": links are replaced in references, in elements
 * of type uri, url, oid and uuid, and in the links and images of a narrative.
 *
 * @param rename gives the new address, or undefined to keep the old
 */
export function relink(
  resource: JsonObject,
  rename: (address: string) => string | undefined,
): JsonObject {
  const entries = Object.entries(resource).map(([key, value]): readonly [string, Json] => {
    if (typeof value !== 'string') return [key, relinkInner(value, rename)];
    if (ADDRESSES.includes(key)) return [key, rename(value) ?? value];
    return [key, key === 'div' ? relinkNarrative(value, rename) : value];
  });
  return Object.fromEntries(entries);
}

function relinkInner(value: Json, rename: (address: string) => string | undefined): Json {
  if (isList(value)) return value.map((each) => relinkInner(each, rename));
  return isObject(value) ? relink(value, rename) : value;
}

function relinkNarrative(div: string, rename: (address: string) => string | undefined): string {
  return div.replace(
    /(<(?:a|img)\s[^>]*?(?:href|src)=)(["'])(.*?)\2/g,
    (_all, start: string, quote: string, address: string) =>
      `${start}${quote}${rename(address) ?? address}${quote}`,
  );
}
