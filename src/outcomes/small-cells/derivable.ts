import { type CubeEntry, isWithin } from './cube.js';

/** A prime below 2^26: products of two residues stay exact. */
const PRIME = 67_108_859;

/** Over which finest cells a published or hidden number is a sum: 1 or 0 a cell. */
export type Sum = readonly number[];

export function sumOver(atoms: readonly CubeEntry[], outer: CubeEntry): Sum {
  return atoms.map(({ place }) => Number(isWithin(place, outer.place)));
}

/** Published sums, brought to a form in which others are looked for. */
export interface Published {
  /** Row with its first column that is not 0; that entry is 1. */
  readonly rows: readonly { readonly lead: number; readonly row: readonly number[] }[];
}

/**
 * Gathers published sums. What adding and subtracting them can give is their span; it is found
 * in whole numbers modulo a prime, so that no rounding decides. A span over the fractions that
 * holds a sum also does so modulo the prime, so nothing that can be derived is overlooked unless
 * the prime divides a denominator, which small tables of ones and zeros do not have.
 *
 * Source: linear algebra; that sums and differences are what must be looked at: Cox LH, J Am Stat
 * Assoc 1980;75:377-385 (from memory).
 */
export function publish(sums: readonly Sum[]): Published {
  const rows: { lead: number; row: readonly number[] }[] = [];
  for (const sum of sums) {
    const rest = reduced(sum, { rows });
    const lead = rest.findIndex((value) => value !== 0);
    if (lead === -1) continue;
    const scale = inverse(rest[lead] ?? 1);
    rows.push({ lead, row: rest.map((value) => (value * scale) % PRIME) });
  }
  return { rows };
}

/** Whether adding and subtracting published sums gives this one. */
export const isDerivable = (sum: Sum, published: Published): boolean =>
  reduced(sum, published).every((value) => value === 0);

function reduced(sum: Sum, { rows }: Published): readonly number[] {
  const rest = [...sum];
  for (const { lead, row } of rows) {
    const factor = rest[lead] ?? 0;
    if (factor === 0) continue;
    for (let i = lead; i < rest.length; i += 1) {
      rest[i] = ((rest[i] ?? 0) + (PRIME - factor) * (row[i] ?? 0)) % PRIME;
    }
  }
  return rest;
}

/** By the little theorem of Fermat. */
function inverse(value: number): number {
  let [result, base, power] = [1, value, PRIME - 2];
  while (power > 0) {
    if (power % 2 === 1) result = (result * base) % PRIME;
    base = (base * base) % PRIME;
    power = Math.floor(power / 2);
  }
  return result;
}
