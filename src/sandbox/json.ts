/** A value as JSON knows it, not to be changed. */
export type Json = string | number | boolean | null | readonly Json[] | JsonObject;

export type JsonObject = { readonly [key: string]: Json };

export function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === 'object' && value !== null && !isList(value);
}

export function isList(value: Json | undefined): value is readonly Json[] {
  return Array.isArray(value);
}

/** @returns the member when it is a text, else undefined */
export function textOf(object: JsonObject, key: string): string | undefined {
  const value = object[key];
  return typeof value === 'string' ? value : undefined;
}

/** The value with the members of every object in one order, so that equal content is equal text. */
export function canonicalText(value: Json): string {
  return JSON.stringify(value, (_key, inner: Json) =>
    isObject(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}
