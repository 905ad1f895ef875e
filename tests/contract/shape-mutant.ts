import type { ErrorObject } from 'ajv/dist/2020.js';
import type { SchemaNode } from '../support/from-json-schema.js';
import { type FieldKind, placesOf, valueAt, withValue } from './places.js';
import { SHAPE_MUTATIONS, type ShapeMutation } from './shape-mutations.table.js';

/** A message with one mistake of shape, and where it was made. */
export interface ShapeMutant {
  readonly mutation: ShapeMutation;
  readonly kind: FieldKind;
  readonly pointer: string;
  readonly document: unknown;
}

/**
 * Makes one mistake in a sound message; turn by turn another mistake, kind of field and place.
 *
 * @returns undefined where the message has no field of the kind whose turn it is
 */
export function shapeMutant(
  schema: SchemaNode,
  sound: object,
  turn: number,
): ShapeMutant | undefined {
  const mutation = SHAPE_MUTATIONS[turn % SHAPE_MUTATIONS.length];
  if (mutation === undefined) return undefined;
  const round = Math.floor(turn / SHAPE_MUTATIONS.length);
  const kind = mutation.kinds[round % mutation.kinds.length];
  const places = placesOf(schema, sound).filter(
    (place) =>
      place.kind === kind &&
      (mutation.onlyRequired !== true || (place.required && place.path.length > 0)) &&
      (place.kind !== 'list' || mutation.rule !== 'wrong-length' || hasEntry(sound, place.path)),
  );
  const place = places[(round * 7919) % Math.max(places.length, 1)];
  if (place === undefined || kind === undefined) return undefined;
  const instead = mutation.instead(valueAt(sound, place.path), place);
  const pointer = place.path.map((key) => `/${key}`).join('');
  return { mutation, kind, pointer, document: withValue(sound, place.path, instead) };
}

function hasEntry(document: unknown, path: readonly (string | number)[]): boolean {
  const list = valueAt(document, path);
  return Array.isArray(list) && list.length > 0;
}

/** Where ajv found it, in the way of the service: the missing or the unknown field itself. */
export function pointerOf({ instancePath, params, keyword }: ErrorObject): string {
  if (keyword === 'required') return `${instancePath}/${params['missingProperty']}`;
  if (keyword === 'additionalProperties') return `${instancePath}/${params['additionalProperty']}`;
  return instancePath;
}
