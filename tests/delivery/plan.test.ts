import { describe, expect, it } from 'vitest';
import { type PlanContext, planResult } from '../../src/delivery/plan.js';
import type { Failure } from '../../src/delivery/verdict.js';
import type { Claim, FailureClass } from '../../src/pipeline/index.js';

const claim: Claim = {
  caseId: 'c1',
  state: 1,
  version: '{}',
  attempts: 0,
  queuedAt: '2026-03-02T09:00:00Z',
  fence: 1,
};
const context: PlanContext = {
  now: Date.UTC(2026, 2, 2, 9, 0, 0),
  chance: 0.5,
  destinationWide: false,
  targetFailures: 1,
};
const failure = (failureClass: FailureClass, more: Partial<Failure> = {}): Failure => ({
  kind: 'failed',
  failureClass,
  fault: 'f',
  reason: 'Why.',
  hold: false,
  ...more,
});

/** Project definition: which class uses up attempts, and where each ends. */
describe('what follows from an attempt', () => {
  it('a delivery is kept as it is', () => {
    const verdict = { kind: 'delivered', detail: 'd', locations: ['A/1'] } as const;
    expect(planResult(verdict, claim, context)).toEqual(verdict);
  });

  it.each(['case', 'ambiguous'] as const)('%s is a dead letter at once', (failureClass) => {
    const result = planResult(failure(failureClass), claim, context);
    expect(result).toEqual({ kind: 'dead-letter', failureClass, reason: 'Why.' });
  });

  it('destination uses up no attempt, however many there were', () => {
    const tired = { ...claim, attempts: 14 };
    const result = planResult(failure('destination'), tired, context);
    expect(result).toMatchObject({ kind: 'retry', counts: false, afterMs: 2_000 });
  });

  it.each([
    ['bounded', 8],
    ['unknown', 12],
    ['non-conformant-server', 5],
  ] as const)('%s is tried %i times', (failureClass, limit) => {
    const planned = (attempts: number) =>
      planResult(failure(failureClass), { ...claim, attempts }, context);
    expect(planned(0)).toMatchObject({ kind: 'retry', counts: true, failureClass, afterMs: 1_000 });
    expect(planned(limit - 2)).toMatchObject({ kind: 'retry' });
    expect(planned(limit - 1)).toEqual({
      kind: 'dead-letter',
      failureClass,
      reason: `Given up after ${limit} attempts. Why.`,
    });
  });

  it.each(['bounded', 'unknown', 'non-conformant-server'] as const)(
    '%s uses up no attempt while cases fail alike',
    (failureClass) => {
      const wide = { ...context, destinationWide: true, targetFailures: 3 };
      const result = planResult(failure(failureClass), { ...claim, attempts: 14 }, wide);
      expect(result).toMatchObject({ kind: 'retry', failureClass: 'destination', counts: false });
      expect(result).toHaveProperty('afterMs', 8_000);
    },
  );

  it('the wish of the server wins over the backoff', () => {
    for (const failureClass of ['destination', 'bounded'] as const) {
      const result = planResult(failure(failureClass, { waitMs: 77_000 }), claim, context);
      expect(result).toHaveProperty('afterMs', 77_000);
    }
  });

  it('a case that waits for its patient is looked at more and more slowly', () => {
    const verdict = { kind: 'waiting-patient', reason: 'r' } as const;
    const planned = (hours: number) =>
      planResult(verdict, claim, { ...context, chance: 0, now: context.now + hours * 3_600_000 });
    expect(planned(0)).toMatchObject({ kind: 'waiting-patient', afterMs: 300_000 });
    expect(planned(2)).toHaveProperty('afterMs', 3_600_000);
    expect(planned(48)).toHaveProperty('afterMs', 86_400_000);
    expect(planned(-5)).toHaveProperty('afterMs', 300_000);
  });
});
