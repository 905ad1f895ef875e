import type { Citation } from './citation.js';

/**
 * An answer with the works it rests on, or the fields without which there is none.
 * A missing field is never read as "no".
 */
export type Finding<T> =
  | { readonly kind: 'determined'; readonly value: T; readonly cites: readonly Citation[] }
  | { readonly kind: 'indeterminate'; readonly missing: readonly string[] };

export const determined = <T>(value: T, cites: readonly Citation[]): Finding<T> => ({
  kind: 'determined',
  value,
  cites,
});

/** @param missing dotted paths of the fields that would have been needed */
export const indeterminate = <T>(missing: readonly string[]): Finding<T> => ({
  kind: 'indeterminate',
  missing,
});
