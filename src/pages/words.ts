import { fixedText } from '../kernel/index.js';
import type { RanOver } from '../outcomes/index.js';

/** A share of 0 to 1 as a percentage with one decimal: `91.2 %`. */
export const percentText = (share: number): string => `${fixedText(100 * share, 1)} %`;

/** Both ends of an interval: `82.3 to 95.8 %`. */
export const rangeText = (ends: { readonly lower: number; readonly upper: number }): string =>
  `${fixedText(100 * ends.lower, 1)} to ${percentText(ends.upper)}`;

/** `1 case`, `2 cases`. */
export const counted = (number: number, one: string, more = `${one}s`): string =>
  `${number} ${number === 1 ? one : more}`;

/** `colon and rectum`, or `all organs together`. */
export const organsText = (organs: readonly string[] | undefined): string =>
  organs === undefined ? 'all organs together' : organs.join(' and ');

/** Over whose cases something runs: `colon and rectum, all operators together`. */
export const overText = ({ organs, operator }: RanOver): string =>
  `${organsText(organs)}, ${operator === undefined ? 'all operators together' : 'one operator'}`;
