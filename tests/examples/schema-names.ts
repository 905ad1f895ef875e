import type { SchemaNode } from '../support/from-json-schema.js';

/** Every name of the schema as a pattern of pointers; the entries of a list are `*`. */
export function namesOf(node: SchemaNode, at = ''): readonly string[] {
  if (node.items !== undefined) return namesOf(node.items, `${at}/*`);
  const fields = Object.entries(node.properties ?? {});
  return [at, ...fields.flatMap(([key, field]) => namesOf(field, `${at}/${key}`))];
}

/** The names that a message uses, in the same way. */
export function namesIn(value: unknown, at = ''): readonly string[] {
  if (Array.isArray(value)) return [at, ...value.flatMap((entry) => namesIn(entry, `${at}/*`))];
  if (value === null || typeof value !== 'object') return [at];
  return [at, ...Object.entries(value).flatMap(([key, field]) => namesIn(field, `${at}/${key}`))];
}
