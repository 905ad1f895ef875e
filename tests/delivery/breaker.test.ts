import { describe, expect, it } from 'vitest';
import {
  type BreakerEvent,
  type BreakerState,
  initialBreaker,
  stepBreaker,
} from '../../src/delivery/breaker.js';
import { addFailure, isDestinationWide, noSpread } from '../../src/delivery/spread.js';
import type { Failure } from '../../src/delivery/verdict.js';

/** Runs events one after another. @returns the last state and every alert */
function run(state: BreakerState, ...events: readonly BreakerEvent[]) {
  return events.reduce(
    (sofar, event) => {
      const { state: next, alert } = stepBreaker(sofar.state, event);
      return { state: next, alerts: alert === undefined ? sofar.alerts : [...sofar.alerts, alert] };
    },
    { state, alerts: [] as readonly string[] },
  );
}

const CLOSED: BreakerState = { kind: 'closed', failures: 0 };
const fault = (now: number): BreakerEvent => ({ kind: 'fault', now, hold: false, until: 0 });
const times = (count: number, event: BreakerEvent) => Array.from({ length: count }, () => event);

/** Project definition: opens after 5 in a row, probes every 30 s, one alert each way. */
describe('the breaker of a target', () => {
  it('starts by probing at once, and closes without a word when that succeeds', () => {
    expect(initialBreaker(7)).toMatchObject({ kind: 'starting', probeAt: 7 });
    expect(run(initialBreaker(7), { kind: 'probe-ok' })).toEqual({ state: CLOSED, alerts: [] });
  });

  it('tells once when it finds the target down at the start, and once when it comes', () => {
    const failed: BreakerEvent = { kind: 'probe-failed', now: 100 };
    const down = run(initialBreaker(0), failed, failed);
    expect(down).toMatchObject({ state: { probeAt: 30_100 }, alerts: ['down'] });
    expect(run(down.state, { kind: 'probe-ok' })).toEqual({ state: CLOSED, alerts: ['up'] });
  });

  it('opens at the fifth fault in a row, not at the fourth', () => {
    expect(run(CLOSED, ...times(4, fault(0))).state.kind).toBe('closed');
    const open = run(CLOSED, ...times(5, fault(1_000)));
    expect(open).toMatchObject({ state: { kind: 'open', probeAt: 31_000 }, alerts: ['down'] });
  });

  it('counts anew after an answer', () => {
    const events = [...times(4, fault(0)), { kind: 'answered' } as const, ...times(4, fault(0))];
    expect(run(CLOSED, ...events)).toMatchObject({ state: { kind: 'closed' }, alerts: [] });
  });

  it('opens at once when the target is wrongly set up', () => {
    const event: BreakerEvent = { kind: 'fault', now: 0, hold: true, until: 0 };
    expect(run(CLOSED, event)).toMatchObject({ state: { kind: 'open' }, alerts: ['down'] });
  });

  it('does not probe before the server wants to be asked again', () => {
    const event: BreakerEvent = { kind: 'fault', now: 0, hold: true, until: 90_000 };
    expect(run(CLOSED, event).state).toMatchObject({ probeAt: 90_000 });
  });

  it('tells of the return when a record arrives, not when the probe succeeds', () => {
    const open = run(CLOSED, ...times(5, fault(0))).state;
    const tried = run(open, { kind: 'probe-ok' });
    expect(tried).toMatchObject({ state: { kind: 'half-open' }, alerts: [] });
    expect(run(tried.state, { kind: 'answered' })).toEqual({ state: CLOSED, alerts: ['up'] });
  });

  it('stays silent while the target goes on failing', () => {
    const open = run(CLOSED, ...times(5, fault(0))).state;
    const more = run(
      open,
      { kind: 'probe-failed', now: 5 },
      { kind: 'probe-ok' },
      fault(9),
      fault(9),
    );
    expect(more).toMatchObject({ state: { kind: 'open', probeAt: 30_009 }, alerts: [] });
  });

  it('does not close by an answer that was on its way when it opened', () => {
    const open = run(CLOSED, ...times(5, fault(0))).state;
    expect(run(open, { kind: 'answered' })).toMatchObject({ state: { kind: 'open' }, alerts: [] });
  });
});

describe('several cases that fail alike (project definition: three)', () => {
  const failure = (word: string, failureClass: Failure['failureClass'] = 'bounded'): Failure => ({
    kind: 'failed',
    failureClass,
    fault: word,
    reason: '',
    hold: false,
  });
  const spread = (...failures: readonly (readonly [string, Failure])[]) =>
    failures.reduce((sofar, [caseId, one]) => addFailure(sofar, caseId, one), noSpread);

  it('are the fault of the destination', () => {
    const fault500 = failure('status-500');
    const cases = ['a', 'b', 'c'].map((caseId) => [caseId, fault500] as const);
    expect(isDestinationWide(spread(...cases))).toBe(true);
    expect(isDestinationWide(spread(...cases.slice(1)))).toBe(false);
  });

  it('are not one case that fails often', () => {
    const often = times(9, fault(0)).map(() => ['a', failure('status-500')] as const);
    expect(isDestinationWide(spread(...often))).toBe(false);
  });

  it('do not fail alike with different statuses', () => {
    const faults = ['status-500', 'status-409', 'status-500'].map((word) => failure(word));
    const cases = faults.map((one, index) => [String(index), one] as const);
    expect(isDestinationWide(spread(...cases))).toBe(false);
  });

  it('fail alike in all ways of not knowing the outcome', () => {
    const faults = ['cut', 'timeout', 'status-502'].map((word) => failure(word, 'unknown'));
    const cases = faults.map((one, index) => [String(index), one] as const);
    expect(isDestinationWide(spread(...cases))).toBe(true);
  });
});
