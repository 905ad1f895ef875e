import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ATTEMPT_LIMITS,
  backoffMs,
  PATIENT_WAITS,
  POISON_LIMIT,
  patientWaitMs,
} from '../../src/delivery/backoff.js';

const HOUR = 3_600_000;
const chances = fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true });

describe('backoff with full jitter (project definition: base 2 s, factor 2, cap 15 min)', () => {
  it.each([
    [0, 1_000],
    [1, 2_000],
    [2, 4_000],
    [8, 256_000],
    [9, 450_000],
    [40, 450_000],
  ])('after %i failures waits %i ms at even chance', (failures, expected) => {
    expect(backoffMs(failures, 0.5)).toBe(expected);
  });

  it('waits anything from nothing up to the whole step, never more than the cap', () => {
    fc.assert(
      fc.property(fc.nat({ max: 2_000 }), chances, (failures, chance) => {
        const waitMs = backoffMs(failures, chance);
        expect(waitMs).toBeGreaterThanOrEqual(0);
        expect(waitMs).toBeLessThan(900_000);
        expect(waitMs).toBeLessThanOrEqual(2_000 * 2 ** Math.min(failures, 30));
      }),
    );
    expect(backoffMs(3, 0)).toBe(0);
  });
});

describe('waiting for a patient (project definition: minutes, then hours, then daily)', () => {
  it.each([
    ['at once', 0, 5 * 60_000],
    ['within the first hour', HOUR - 1, 5 * 60_000],
    ['after an hour', HOUR, HOUR],
    ['within the first day', 24 * HOUR - 1, HOUR],
    ['after a day', 24 * HOUR, 24 * HOUR],
    ['after a year', 365 * 24 * HOUR, 24 * HOUR],
  ])('%s', (_when, waitedMs, expected) => {
    expect(patientWaitMs(waitedMs, 0)).toBe(expected);
    expect(patientWaitMs(waitedMs, 0.999)).toBeLessThan(expected * 1.1);
  });

  it('leaves no time without a row, and only slows down', () => {
    expect(PATIENT_WAITS.at(-1)?.untilMs).toBe(Number.POSITIVE_INFINITY);
    for (const [index, row] of PATIENT_WAITS.slice(1).entries()) {
      expect(row.everyMs).toBeGreaterThan(PATIENT_WAITS[index]?.everyMs ?? Infinity);
    }
  });
});

it('no class reaches the limit that only a record which stops the program can reach', () => {
  for (const limit of Object.values(ATTEMPT_LIMITS)) expect(limit).toBeLessThan(POISON_LIMIT);
});
