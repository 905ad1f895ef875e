import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CalendarEvent, reviseEvents, type WantedEvent } from '../../src/calendar/index.js';

const WANTED: WantedEvent = {
  id: 'a',
  caseId: 'c1',
  status: 'tentative',
  firstOn: '2026-03-30',
  lastOn: '2026-06-30',
};
const AT = ['2026-01-01T08:00:00Z', '2026-02-01T08:00:00Z', '2026-03-01T08:00:00Z'] as const;

describe('events of a feed are revised', () => {
  const first = reviseEvents([], [WANTED], AT[0]);

  // RFC 5545, 3.8.7.4: a component that is created has the sequence 0.
  it('from a sequence of 0', () => {
    expect(first).toEqual([{ ...WANTED, sequence: 0, changedAt: AT[0] }]);
  });

  it('and not touched while nothing changes', () => {
    expect(reviseEvents(first, [WANTED], AT[1])).toEqual(first);
  });

  // RFC 5546, 2.1.4 (second-hand): a change of DTSTART, DTEND or STATUS raises the sequence.
  it.each<Partial<WantedEvent>>([
    { firstOn: '2026-04-01' },
    { lastOn: '2026-07-01' },
    { status: 'confirmed' },
    { caseId: 'c2' },
  ])('with a higher sequence for %o', (change) => {
    expect(reviseEvents(first, [{ ...WANTED, ...change }], AT[1])).toEqual([
      { ...WANTED, ...change, sequence: 1, changedAt: AT[1] },
    ]);
  });

  it('stay as cancelled with a higher sequence, once, and come back with a higher one still', () => {
    const gone = reviseEvents(first, [], AT[1]);
    expect(gone).toEqual([{ ...WANTED, status: 'cancelled', sequence: 1, changedAt: AT[1] }]);
    expect(reviseEvents(gone, [], AT[2])).toEqual(gone);
    expect(reviseEvents(gone, [WANTED], AT[2])).toEqual([
      { ...WANTED, sequence: 2, changedAt: AT[2] },
    ]);
  });
});

/** What is wrong with a revision, for any history; nothing for a sound one. */
function faultsOf(before: readonly CalendarEvent[], after: readonly CalendarEvent[]) {
  return before.flatMap((old) => {
    const now = after.find(({ id }) => id === old.id);
    if (now === undefined) return ['an event was lost'];
    const { sequence: _a, changedAt: _b, ...then } = old;
    const { sequence: _c, changedAt: _d, ...today } = now;
    const same =
      JSON.stringify(Object.entries(then).sort()) === JSON.stringify(Object.entries(today).sort());
    if (same) return now.sequence === old.sequence ? [] : ['a sequence rose for nothing'];
    return now.sequence > old.sequence ? [] : ['a sequence did not rise'];
  });
}

describe('laws of revising', () => {
  const wanted = fc.uniqueArray(
    fc.record({
      id: fc.constantFrom('a', 'b', 'c', 'd'),
      caseId: fc.constantFrom('c1', 'c2'),
      status: fc.constantFrom('tentative', 'confirmed'),
      firstOn: fc.constantFrom('2026-03-30', '2026-04-01'),
      lastOn: fc.constantFrom('2026-06-30', '2026-07-01'),
    }),
    { selector: ({ id }) => id },
  );

  it('no event is lost, and each change raises its sequence, through any history', () => {
    fc.assert(
      fc.property(fc.array(wanted, { maxLength: 8 }), (history) => {
        let events: readonly CalendarEvent[] = [];
        for (const [i, now] of history.entries()) {
          const after = reviseEvents(events, now, `2026-01-0${i + 1}T08:00:00Z`);
          expect(faultsOf(events, after)).toEqual([]);
          const shown = after.filter(({ status }) => status !== 'cancelled').map(({ id }) => id);
          expect(shown.sort()).toEqual(now.map(({ id }) => id).sort());
          events = after;
        }
      }),
      { seed: 203, numRuns: 500 },
    );
  });

  it('would name what breaks them', () => {
    const [event] = reviseEvents([], [WANTED], AT[0]);
    if (event === undefined) throw new Error('no event');
    expect(faultsOf([event], [])).toEqual(['an event was lost']);
    expect(faultsOf([event], [{ ...event, sequence: 1 }])).toEqual(['a sequence rose for nothing']);
    expect(faultsOf([event], [{ ...event, status: 'cancelled' }])).toEqual([
      'a sequence did not rise',
    ]);
  });
});
