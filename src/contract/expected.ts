import { z } from 'zod';
import type { Path } from './pointer.js';

/**
 * What would have been accepted at a place, for the person who has to put it right: the words,
 * both ends of the range and the unit, or the way of writing.
 *
 * @returns undefined where the schema has no words for it
 */
export function expectedAt(schema: z.ZodType, path: Path): string | undefined {
  const found = schemaAt(schema, path);
  return found === undefined ? undefined : describe(found);
}

/** The fields that the object at the place may have. */
export function allowedFields(schema: z.ZodType, path: Path): string {
  const found = schemaAt(schema, path);
  return found instanceof z.ZodObject
    ? `only the fields: ${Object.keys(found.shape).join(', ')}`
    : 'only the fields of the published schema';
}

function describe(schema: z.ZodType): string | undefined {
  const title = schema.meta()?.title;
  if (title !== undefined) return title;
  if (schema instanceof z.ZodEnum) return oneOf(schema.options);
  if (schema instanceof z.ZodLiteral) return oneOf([...schema.values]);
  if (schema instanceof z.ZodBoolean) return 'true or false';
  if (schema instanceof z.ZodNumber) return numberOf(schema);
  if (schema instanceof z.ZodArray) return 'a list';
  return schema instanceof z.ZodObject ? objectWith(schema) : undefined;
}

const numberOf = ({ format, minValue, maxValue }: z.ZodNumber): string =>
  `a ${format === 'safeint' ? 'whole ' : ''}number from ${minValue} to ${maxValue}`;

const oneOf = (words: readonly unknown[]): string =>
  words.length === 1 ? String(words[0]) : `one of: ${words.join(', ')}`;

function objectWith(schema: z.ZodObject): string {
  const required = Object.entries(schema.shape)
    .filter(([, field]) => !(field instanceof z.ZodOptional || field instanceof z.ZodDefault))
    .map(([key]) => key);
  return required.length === 0 ? 'an object' : `an object with ${required.join(', ')}`;
}

/** The schema of a place; lists and optional values are looked into. */
function schemaAt(schema: unknown, path: Path): z.ZodType | undefined {
  const [first, ...rest] = path;
  if (isWrapper(schema)) return schemaAt(schema.unwrap(), path);
  if (!(schema instanceof z.ZodType) || first === undefined) {
    return schema instanceof z.ZodType ? schema : undefined;
  }
  if (schema instanceof z.ZodObject) return schemaAt(schema.shape[String(first)], rest);
  return schema instanceof z.ZodArray ? schemaAt(schema.element, rest) : undefined;
}

const isWrapper = (schema: unknown) =>
  schema instanceof z.ZodOptional ||
  schema instanceof z.ZodDefault ||
  schema instanceof z.ZodReadonly;
