/** Decimals of areas and speeds in an answer. */
export const DECIMALS = 3;

/**
 * A length that was measured, in mm.
 *
 * Source: project definition (range of what is accepted).
 */
export const lengthMm = (says: string) =>
  ({ type: 'number', unit: 'mm', from: 0.1, to: 1000, says }) as const;
