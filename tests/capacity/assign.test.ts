import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Assignment, assignPlaces, type OpenItem } from '../../src/capacity/index.js';
import { InvariantError } from '../../src/kernel/index.js';
import { bestOfEveryPlan } from './every-plan.js';
import { dayNumber, type Instance, instances, itemOf, ROUTES, URGENCIES } from './instances.js';
import { bestByLinearProgramme } from './linear-programme.js';
import { compareRanks, faultsOf, type PlanRank, rankOf } from './plan-rank.js';

const planOf = ({ items, sessions }: Instance): Assignment => assignPlaces(items, sessions);
const rank = (instance: Instance): PlanRank => rankOf(planOf(instance).placed, instance);

const small = instances({ items: 6, sessions: 4, days: 6, places: 2 });
const crowded = instances({ items: 60, sessions: 25, days: 40, places: 3 });

/** Two urgent days fight for one place; the plan that is best is plain to see. */
const PLAIN: Instance = {
  items: [
    itemOf('a', 'upper', 'routine', [0, 2, 4]),
    itemOf('b', 'upper', 'urgent', [0, 2, 4]),
    itemOf('c', 'both', 'routine', [0, 2, 4]),
    itemOf('d', 'lower', 'routine', [0, 1, 2]),
  ],
  sessions: [
    { on: dayNumber(2), route: 'upper', places: 1 },
    { on: dayNumber(3), route: 'upper', places: 1 },
    { on: dayNumber(4), route: 'both', places: 1 },
  ],
};

describe('items are given to places', () => {
  it('the urgent one on its target, both routes where both are, and what lacks is named', () => {
    expect(planOf(PLAIN)).toEqual({
      placed: [
        { key: 'b', on: dayNumber(2), route: 'upper' },
        { key: 'a', on: dayNumber(3), route: 'upper' },
        { key: 'c', on: dayNumber(4), route: 'both' },
      ],
      unplaced: [{ key: 'd', route: 'lower', targetOn: dayNumber(1), why: 'no-session' }],
      shortfall: [{ month: '2027-12', route: 'lower', places: 1 }],
      weightedDays: 3,
    });
  });

  it('in no better way than the best of every plan there is, on thousands of small ones', () => {
    fc.assert(
      fc.property(small, (instance) => {
        expect(faultsOf(planOf(instance), instance)).toEqual([]);
        expect(rank(instance)).toEqual(bestOfEveryPlan(instance));
      }),
      { seed: 101, numRuns: 3000 },
    );
  });

  it('as the best of every plan for every two items and every set of places on two days', () => {
    const windows = [
      [0, 0, 0],
      [0, 0, 1],
      [0, 1, 1],
      [1, 1, 1],
    ] as const;
    const kinds = windows.flatMap((window) =>
      ROUTES.flatMap((route) =>
        (['routine', 'urgent'] as const).map((u) => ({ window, route, u })),
      ),
    );
    const all = ROUTES.flatMap((route) =>
      [0, 1].map((day) => ({ on: dayNumber(day), route, places: 1 })),
    );
    let seen = 0;
    for (const [i, a] of kinds.entries()) {
      for (const b of kinds.slice(i)) {
        const items = [itemOf('a', a.route, a.u, a.window), itemOf('b', b.route, b.u, b.window)];
        for (let set = 0; set < 2 ** all.length; set += 1) {
          const instance = { items, sessions: all.filter((_session, s) => (set >> s) & 1) };
          if (compareRanks(rank(instance), bestOfEveryPlan(instance)) !== 0) {
            expect({ instance, rank: rank(instance) }).toEqual('the best');
          }
          seen += 1;
        }
      }
    }
    expect(seen).toBe(300 * 64);
  });

  it('as well as linear programming says, with many items and too few places', () => {
    fc.assert(
      fc.property(crowded, (instance) => {
        expect(faultsOf(planOf(instance), instance)).toEqual([]);
        expect(rank(instance)).toEqual(bestByLinearProgramme(instance));
      }),
      { seed: 102, numRuns: 60 },
    );
  });

  it('and the two oracles say the same', () => {
    fc.assert(
      fc.property(small, (instance) => {
        expect(bestByLinearProgramme(instance)).toEqual(bestOfEveryPlan(instance));
      }),
      { seed: 103, numRuns: 100 },
    );
  });
});

describe('a wrong plan would be noticed', () => {
  const right = planOf(PLAIN);
  const moved = (key: string, on: string): Assignment => ({
    ...right,
    placed: right.placed.map((each) => (each.key === key ? { ...each, on } : each)),
  });
  const without = (key: string): Assignment => ({
    ...right,
    placed: right.placed.filter((each) => each.key !== key),
  });
  const swapped: Assignment = {
    ...right,
    placed: right.placed.map((each) => ({
      ...each,
      key: { a: 'b', b: 'a' }[each.key] ?? each.key,
    })),
  };

  it.each([
    ['one item too few', without('a')],
    ['the urgent one off its target instead of the other', swapped],
  ])('by every plan and by linear programming: %s', (_name, plan) => {
    const { placed } = plan;
    expect(compareRanks(rankOf(placed, PLAIN), bestOfEveryPlan(PLAIN))).toBeLessThan(0);
    expect(compareRanks(rankOf(placed, PLAIN), bestByLinearProgramme(PLAIN))).toBeLessThan(0);
  });

  it('by both: a routine item placed where an urgent one could be', () => {
    const items = [
      itemOf('a', 'upper', 'routine', [0, 0, 0]),
      itemOf('b', 'upper', 'urgent', [0, 0, 5]),
    ];
    const instance = {
      items,
      sessions: [{ on: dayNumber(0), route: 'upper', places: 1 }],
    } as const;
    const wrong = rankOf([{ key: 'a', on: dayNumber(0), route: 'upper' }], instance);
    expect(planOf(instance).placed.map(({ key }) => key)).toEqual(['b']);
    expect(compareRanks(wrong, bestOfEveryPlan(instance))).toBeLessThan(0);
    expect(compareRanks(wrong, bestByLinearProgramme(instance))).toBeLessThan(0);
  });

  it.each<[string, Assignment]>([
    ['not each item once', without('a')],
    ['outside the window or route', moved('a', dayNumber(5))],
    ['more items than places', moved('a', dayNumber(2))],
    ['the sum of days is not that of the plan', { ...right, weightedDays: 2 }],
    ['the shortfall is not what lacks', { ...right, shortfall: [] }],
    [
      'the reason is not true',
      { ...right, unplaced: right.unplaced.map((each) => ({ ...each, why: 'full' })) },
    ],
  ])('by the check of plans: %s', (fault, plan) => {
    expect(faultsOf(plan, PLAIN)).toContain(fault);
  });
});

describe('laws of giving places', () => {
  const holds = (name: string, law: (instance: Instance, day: number) => void) =>
    it(name, () => {
      fc.assert(fc.property(crowded, fc.nat(39), law), { seed: 104, numRuns: 150 });
    });

  holds('one more place never makes a plan worse', (instance, day) => {
    for (const route of ROUTES) {
      const more = [...instance.sessions, { on: dayNumber(day), route, places: 1 }];
      const after = rank({ ...instance, sessions: more });
      expect(compareRanks(after, rank(instance))).toBeGreaterThanOrEqual(0);
    }
  });

  holds('the plan is the same whatever order items and sessions come in', (instance, day) => {
    const turned = <T>(list: readonly T[]) => [...list.slice(day), ...list.slice(0, day)].reverse();
    const { items, sessions } = instance;
    expect(assignPlaces(turned(items), turned(sessions))).toEqual(planOf(instance));
  });

  holds('other names for the items change no count and no sum of days', (instance, day) => {
    const items = instance.items.map((item, i) => ({ ...item, key: `n${(i * 41 + day) % 101}` }));
    expect(rank({ ...instance, items })).toEqual(rank(instance));
  });

  holds('a session of three places is three sessions of one', (instance) => {
    const sessions = instance.sessions.flatMap((session) =>
      Array.from({ length: session.places }, () => ({ ...session, places: 1 })),
    );
    expect(assignPlaces(instance.items, sessions)).toEqual(planOf(instance));
  });

  holds('time that runs backwards changes no count and no sum of days', ({ items, sessions }) => {
    const back = (on: string) =>
      dayNumber((Date.parse(dayNumber(39)) - Date.parse(on)) / 86_400_000);
    const mirrored = {
      items: items.map((item) => ({
        ...item,
        earliestOn: back(item.latestOn),
        targetOn: back(item.targetOn),
        latestOn: back(item.earliestOn),
      })),
      sessions: sessions.map((session) => ({ ...session, on: back(session.on) })),
    };
    expect(rank(mirrored)).toEqual(rank({ items, sessions }));
  });

  holds('with the places that lack, on the days asked for, nobody goes without', (instance) => {
    const { unplaced } = planOf(instance);
    const more = unplaced.map(({ targetOn: on, route }) => ({ on, route, places: 1 }));
    const after = assignPlaces(instance.items, [...instance.sessions, ...more]);
    expect(after.unplaced).toEqual([]);
    expect(after.shortfall).toEqual([]);
  });

  it('equal items get the same set of days whatever they are called', () => {
    const twins = (keys: readonly string[]) =>
      keys.map((key) => itemOf(key, 'upper', 'routine', [0, 3, 6]));
    const sessions = [1, 3, 4].map(
      (day) => ({ on: dayNumber(day), route: 'upper', places: 1 }) as const,
    );
    const days = (keys: readonly string[]) =>
      assignPlaces(twins(keys), sessions).placed.map(({ on }) => on);
    expect(days(['a', 'b', 'c', 'd'])).toEqual([1, 3, 4].map(dayNumber));
    expect(days(['z', 'q', 'k', 'b'])).toEqual(days(['a', 'b', 'c', 'd']));
  });
});

describe('what is no item or session is refused', () => {
  const item = itemOf('a', 'upper', 'routine', [0, 1, 2]);
  const session = { on: dayNumber(1), route: 'upper', places: 1 } as const;
  const odd = (change: object): OpenItem => ({ ...item, ...change });

  it.each([
    ['each item has its own key', [item, item], [session]],
    ['a window is three dates in order', [odd({ targetOn: dayNumber(3) })], [session]],
    ['a window is three dates in order', [odd({ earliestOn: '2026-02-30' })], [session]],
    ['an item has a route', [odd({ route: 'through' })], [session]],
    ['an item has an urgency', [odd({ urgency: 'soon' })], [session]],
    ['a session is on a date', [item], [{ ...session, on: '2026-2-3' }]],
    ['places are whole, 0 or more', [item], [{ ...session, places: -1 }]],
    ['places are whole, 0 or more', [item], [{ ...session, places: 1.5 }]],
  ])('%s', (message, items, sessions) => {
    expect(() => assignPlaces(items, sessions)).toThrow(new InvariantError(message));
  });

  it('no items and no sessions are a plan all the same', () => {
    expect(assignPlaces([], [session]).placed).toEqual([]);
    expect(assignPlaces([item], []).unplaced).toMatchObject([{ key: 'a', why: 'no-session' }]);
    expect(URGENCIES).toHaveLength(4);
  });
});
