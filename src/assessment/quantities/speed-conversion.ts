const MM2_PER_CM2 = 100;
const MINUTES_PER_HOUR = 60;

/**
 * Speed in mm2/min of a speed in cm2/h: 9 cm2/h are 15 mm2/min.
 *
 * Source: arithmetic.
 */
export const toMm2PerMin = (cm2PerH: number): number => (cm2PerH * MM2_PER_CM2) / MINUTES_PER_HOUR;

/**
 * Speed in cm2/h of a speed in cm2/min.
 *
 * Source: arithmetic.
 */
export const fromCm2PerMin = (cm2PerMin: number): number => cm2PerMin * MINUTES_PER_HOUR;

/**
 * Speed in cm2/h of the minutes that each cm2 took.
 *
 * Source: arithmetic.
 */
export const fromMinPerCm2 = (minPerCm2: number): number => MINUTES_PER_HOUR / minPerCm2;
