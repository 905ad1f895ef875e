import type { Chance } from './chance.js';
import type { LeftOut } from './missing.table.js';

/**
 * The message without the parts that chance leaves out.
 *
 * @returns a new object; plain JSON
 */
export function leaveOut(
  message: object,
  parts: readonly LeftOut[],
  chance: Pick<Chance, 'happens'>,
): object {
  return parts.reduce(
    (rest: object, { at, percent }) =>
      chance.happens(percent) ? without(rest, at.slice(1).split('/')) : rest,
    message,
  );
}

function without(holder: object, [key = '', ...deeper]: readonly string[]): object {
  const entries = Object.entries(holder).flatMap(([name, value]) => {
    if (name !== key) return [[name, value]];
    if (deeper.length === 0) return [];
    return [[name, typeof value === 'object' && value !== null ? without(value, deeper) : value]];
  });
  return Object.fromEntries(entries);
}
