import type { Quantity } from 'fhir/r4.js';
import { InvariantError, roundTo } from '../kernel/index.js';
import { UNITS } from '../terminology/index.js';
import type { MappingContext } from './context.js';

export type Unit = keyof typeof UNITS;

const PRECISION = 'http://hl7.org/fhir/StructureDefinition/quantity-precision';

/**
 * A value as the sender measured it, with the decimals that it was sent with.
 *
 * @param pointer JSON Pointer of the value in its message
 */
export function measured(
  context: Pick<MappingContext, 'decimals'>,
  pointer: string,
  value: number,
  unit: Unit,
): Quantity {
  const decimals = context.decimals[pointer];
  return {
    value,
    ...(decimals === undefined
      ? {}
      : { _value: { extension: [{ url: PRECISION, valueInteger: decimals }] } }),
    ...UNITS[unit],
  };
}

/** A value that we computed, rounded here and nowhere else. */
export function computed(value: number, decimals: number, unit: Unit): Quantity {
  return { value: roundTo(value, decimals), ...UNITS[unit] };
}

/**
 * What stands at a JSON Pointer of a parsed message.
 *
 * @returns undefined where the message does not tell
 */
export function valueAt(fields: object, pointer: string): unknown {
  return pointer
    .split('/')
    .slice(1)
    .reduce<unknown>(
      (node, key) =>
        node !== null && typeof node === 'object' ? Reflect.get(node, key) : undefined,
      fields,
    );
}

/** Narrows what the contract has already promised; anything else is our fault. */
export const asText = (value: unknown): string => {
  if (typeof value === 'string') return value;
  throw new InvariantError('the table of findings expects a text here');
};
export const asNumber = (value: unknown): number => {
  if (typeof value === 'number') return value;
  throw new InvariantError('the table of findings expects a number here');
};
export const asAnswer = (value: unknown): 'yes' | 'no' => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  throw new InvariantError('the table of findings expects true or false here');
};
export const asList = (value: unknown): readonly unknown[] => {
  if (Array.isArray(value)) return value;
  throw new InvariantError('the table of findings expects a list here');
};
