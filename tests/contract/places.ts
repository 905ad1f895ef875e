import type { SchemaNode } from '../support/from-json-schema.js';

/** What sort of field it is, as far as mistakes go. */
export type FieldKind =
  | 'object'
  | 'list'
  | 'list of words'
  | 'word'
  | 'literal'
  | 'whole number'
  | 'number from'
  | 'number above'
  | 'yes or no'
  | 'instant'
  | 'date'
  | 'other text';

export interface Place {
  readonly path: readonly (string | number)[];
  readonly kind: FieldKind;
  readonly node: SchemaNode;
  readonly required: boolean;
}

/** Every place of the document with the part of the schema that governs it, outermost first. */
export function placesOf(
  schema: SchemaNode,
  value: unknown,
  path: Place['path'] = [],
  required = true,
): readonly Place[] {
  const here: Place = { path, kind: kindOf(schema), node: schema, required };
  if (Array.isArray(value)) {
    const items = schema.items ?? {};
    return [here, ...value.flatMap((entry, i) => placesOf(items, entry, [...path, i], false))];
  }
  if (value === null || typeof value !== 'object') return [here];
  const inner = Object.entries(value).flatMap(([key, field]) =>
    placesOf(
      schema.properties?.[key] ?? {},
      field,
      [...path, key],
      schema.required?.includes(key) === true,
    ),
  );
  return [here, ...inner];
}

function kindOf({ type, format, ...node }: SchemaNode): FieldKind {
  if (node.const !== undefined) return 'literal';
  if (node.enum !== undefined) return 'word';
  switch (type) {
    case 'object':
      return 'object';
    case 'array':
      return node.uniqueItems === true ? 'list of words' : 'list';
    case 'integer':
      return 'whole number';
    case 'number':
      return node.exclusiveMinimum === undefined ? 'number from' : 'number above';
    case 'boolean':
      return 'yes or no';
    default:
      if (format === 'date-time') return 'instant';
      return format === 'date' ? 'date' : 'other text';
  }
}

/** @returns a copy of the document with another value at the place; `undefined` takes it away */
export function withValue(document: unknown, path: Place['path'], value: unknown): unknown {
  const [first, ...rest] = path;
  if (first === undefined) return value;
  if (Array.isArray(document)) {
    return document.map((entry, i) => (i === first ? withValue(entry, rest, value) : entry));
  }
  const fields: object = document !== null && typeof document === 'object' ? document : {};
  const changed = { ...fields, [first]: withValue(Reflect.get(fields, first), rest, value) };
  return Object.fromEntries(Object.entries(changed).filter(([, field]) => field !== undefined));
}

export function valueAt(document: unknown, path: Place['path']): unknown {
  return path.reduce<unknown>(
    (node, key) => (node !== null && typeof node === 'object' ? Reflect.get(node, key) : undefined),
    document,
  );
}
