import { compareInstants } from '../kernel/index.js';

/** Comparisons of fields that may be absent: what was not told is neither less nor the same. */
export const isLess = (a: number | undefined, b: number | undefined): boolean =>
  a !== undefined && b !== undefined && a < b;

export const isBefore = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && compareInstants(a, b) < 0;

export const isSame = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && compareInstants(a, b) === 0;
