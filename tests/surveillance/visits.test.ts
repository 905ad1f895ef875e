import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { type Visit, type VisitItem, visitsOf } from '../../src/surveillance/index.js';

/** A day of an invented calendar that begins on 20 December 2027: year's end and a leap day. */
const day = (n: number): string => new Date(Date.UTC(2027, 11, 20 + n)).toISOString().slice(0, 10);
const SYSTEM = 'urn:oid:2.999.1.1';

function item(
  id: string,
  [earliest, target, latest]: readonly [number, number, number],
  more: Partial<VisitItem> & { readonly who?: string } = {},
): VisitItem {
  const { who = 'EX-P-1', ...rest } = more;
  return {
    id,
    patient: { system: SYSTEM, value: who },
    route: 'upper',
    window: { earliest: day(earliest), target: day(target), latest: day(latest) },
    urgency: 'routine',
    ...rest,
  };
}

const DAYS = 90;
const anyDay = fc.nat(DAYS - 1);
const anyItems: fc.Arbitrary<readonly VisitItem[]> = fc
  .array(
    fc.record({
      window: fc
        .tuple(anyDay, anyDay, anyDay)
        .map((d): [number, number, number] => d.sort((a, b) => a - b) as [number, number, number]),
      who: fc.constantFrom('EX-P-1', 'EX-P-2'),
      route: fc.constantFrom('upper' as const, 'lower' as const),
      urgency: fc.constantFrom('routine' as const, 'urgent' as const),
    }),
    { maxLength: 12 },
  )
  .map((list) => list.map(({ window, ...more }, i) => item(`item-${i}`, window, more)));

/** Every day of a window, one by one. */
function daysOf({ window }: Pick<VisitItem, 'window'>): ReadonlySet<string> {
  const all = Array.from({ length: DAYS }, (_, n) => day(n));
  return new Set(all.filter((on) => on >= window.earliest && on <= window.latest));
}

const common = (a: ReadonlySet<string>, b: ReadonlySet<string>): ReadonlySet<string> =>
  new Set([...a].filter((on) => b.has(on)));

/**
 * The rule in its words, over sets of days: the earliest target opens a visit, the others by
 * target join while a day is left for all; then the same with the rest. Decision 10 of the plan
 * logic, written a second time.
 */
function byDefinition(items: readonly VisitItem[]): readonly string[] {
  const visits: string[] = [];
  for (const { patient, route } of items) {
    let left = items
      .filter((one) => one.patient.value === patient.value && one.route === route)
      .toSorted((a, b) => (sortKey(a) < sortKey(b) ? -1 : 1));
    while (left[0] !== undefined) {
      const [first, ...others] = left;
      let days = daysOf(first);
      const ids = [first.id];
      for (const other of others) {
        const both = common(days, daysOf(other));
        if (both.size === 0) continue;
        days = both;
        ids.push(other.id);
      }
      const sorted = [...days].sort();
      visits.push(`${ids.join('+')} ${sorted[0]} ${sorted.at(-1)}`);
      left = left.filter(({ id }) => !ids.includes(id));
    }
  }
  return [...new Set(visits)].sort();
}

const sortKey = ({ window, id }: VisitItem): string => `${window.target} ${window.latest} ${id}`;

const said = (visits: readonly Visit[]): readonly string[] =>
  visits.map(({ ids, window }) => `${ids.join('+')} ${window.earliest} ${window.latest}`).sort();

describe('visits, against the rule written a second time over sets of days', () => {
  it('are the same', () => {
    fc.assert(
      fc.property(anyItems, (items) => {
        expect(said(visitsOf(items))).toEqual(byDefinition(items));
      }),
    );
  });

  it('would see visits that are opened from the latest target', () => {
    const items = [item('a', [0, 2, 10]), item('b', [8, 9, 20]), item('c', [15, 18, 30])];
    const wrong = [`a ${day(0)} ${day(10)}`, `c+b ${day(15)} ${day(20)}`];
    expect(byDefinition(items)).toEqual([`a+b ${day(8)} ${day(10)}`, `c ${day(15)} ${day(30)}`]);
    expect(byDefinition(items)).not.toEqual(wrong);
    expect(said(visitsOf(items))).not.toEqual(wrong);
  });
});

describe('visits, as laws of any items', () => {
  it('lose no item and have none twice', () => {
    fc.assert(
      fc.property(anyItems, (items) => {
        const ids = visitsOf(items).flatMap((visit) => visit.ids);
        expect(ids.toSorted()).toEqual(items.map(({ id }) => id).toSorted());
      }),
    );
  });

  it('have exactly the days that suit every item, its target among them, and its urgency', () => {
    fc.assert(
      fc.property(anyItems, (items) => {
        for (const visit of visitsOf(items)) {
          const own = items.filter(({ id }) => visit.ids.includes(id));
          expect(daysOf(visit)).toEqual(own.map(daysOf).reduce(common));
          expect(daysOf(visit).has(visit.window.target)).toBe(true);
          const targets = own.map(({ window }) => window.target).sort();
          if (daysOf(visit).has(targets[0] ?? '')) expect(visit.window.target).toBe(targets[0]);
          const isUrgent = own.some(({ urgency }) => urgency === 'urgent');
          expect(visit.urgency).toBe(isUrgent ? 'urgent' : 'routine');
          const whose = new Set(own.map(({ patient, route }) => `${patient.value} ${route}`));
          expect([...whose]).toEqual([`${visit.patient.value} ${visit.route}`]);
        }
      }),
    );
  });

  it('do not depend on the order in which items come', () => {
    const turned = anyItems.chain((items) =>
      fc.tuple(
        fc.constant(items),
        fc.shuffledSubarray([...items], { minLength: items.length, maxLength: items.length }),
      ),
    );
    fc.assert(
      fc.property(turned, ([items, shuffled]) => {
        expect(visitsOf(shuffled)).toEqual(visitsOf(items));
      }),
    );
  });
});

describe('a visit', () => {
  it('answers two lesions of one route, on the earliest target that suits both', () => {
    const [first, second] = [item('a', [0, 5, 40]), item('b', [20, 60, 80])];
    expect(visitsOf([second, first])).toEqual([
      {
        ids: ['a', 'b'],
        patient: { system: SYSTEM, value: 'EX-P-1' },
        route: 'upper',
        window: { earliest: day(20), target: day(20), latest: day(40) },
        urgency: 'routine',
      },
    ]);
  });

  it('may have one day', () => {
    const visits = visitsOf([item('a', [0, 5, 40]), item('b', [40, 60, 80])]);
    expect(said(visits)).toEqual([`a+b ${day(40)} ${day(40)}`]);
  });

  it.each([
    ['another patient', { who: 'EX-P-2' }],
    ['another route', { route: 'lower' as const }],
    ['a number of another system', { patient: { system: 'urn:oid:2.999.9', value: 'EX-P-1' } }],
  ])('is not shared with %s', (_, other) => {
    const visits = visitsOf([item('a', [0, 5, 40]), item('b', [0, 5, 40], other)]);
    expect(visits).toHaveLength(2);
  });

  it('join where one day alone is left, whichever begins on it', () => {
    const visits = visitsOf([item('a', [10, 10, 10]), item('b', [5, 10, 10])]);
    expect(said(visits)).toEqual([`a+b ${day(10)} ${day(10)}`]);
  });

  it('refuses items of one id, and a window out of order', () => {
    expect(() => visitsOf([item('a', [0, 1, 2]), item('a', [5, 6, 7])])).toThrow(InvariantError);
    expect(() => visitsOf([item('a', [3, 1, 2])])).toThrow(InvariantError);
  });
});
