/**
 * The one rounding rule: half away from zero at the given number of decimals.
 *
 * @param decimals digits kept after the point, 0 to 6
 */
export function roundTo(value: number, decimals: number): number {
  const factor = 10 ** decimals;
  const scaled = Math.abs(value) * factor;
  // A tie that binary fractions missed by less than one part in 10^12 counts as a tie.
  return (Math.sign(value) * Math.floor(scaled + 0.5 + scaled * 1e-12)) / factor;
}

/** Rounded, with all decimals written out: 0 with four is `0.0000`. */
export const fixedText = (value: number, decimals: number): string =>
  roundTo(value, decimals).toFixed(decimals);

/** Rounded, without zeros at the end: 26.180 is `26.18`. */
export const trimmedText = (value: number, decimals: number): string =>
  String(roundTo(value, decimals));
