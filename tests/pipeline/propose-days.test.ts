import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Route, Session } from '../../src/capacity/index.js';
import type { FollowUp } from '../../src/pipeline/index.js';
import { type Proposal, proposeDays } from '../../src/pipeline/propose-days.js';
import { madeBooking, madeFollowUp } from '../support/made-follow-ups.js';

const session = (on: string, route: Route = 'upper', places = 1): Session => ({
  ...{ on, route, places },
});
const ids = (visits: readonly { readonly followUps: readonly FollowUp[] }[]): readonly string[] =>
  visits.map(({ followUps }) => followUps.map(({ id }) => id).join('+'));

function proposed(
  followUps: readonly FollowUp[],
  sessions: readonly Session[],
  fromOn = '2026-09-01',
): Proposal {
  const proposal = proposeDays(followUps, sessions, fromOn);
  if (proposal === undefined) throw new Error('there are sessions');
  return proposal;
}

describe('days that are proposed', () => {
  it('are one for two lesions of a patient whose windows meet, near the earlier target', () => {
    const proposal = proposed(
      [
        madeFollowUp('b', ['2026-10-01', '2026-11-20', '2026-12-20'], { patient: 'EX-P-1' }),
        madeFollowUp('a', ['2026-09-10', '2026-10-12', '2026-11-01'], { patient: 'EX-P-1' }),
      ],
      [session('2026-09-14'), session('2026-10-14', 'both'), session('2026-11-20')],
    );
    expect(ids(proposal.placed)).toEqual(['a+b']);
    expect(proposal.placed[0]).toMatchObject({
      ...{ on: '2026-10-14', session: 'both', targetOn: '2026-10-12', daysOff: 2 },
      ...{ earliestOn: '2026-10-01', latestOn: '2026-11-01', overdue: false },
    });
  });

  it('go to the urgent one when there is one place for two', () => {
    const days = ['2026-09-10', '2026-09-20', '2026-09-30'] as const;
    const { placed, unplaced, shortfall } = proposed(
      [madeFollowUp('a', days), madeFollowUp('b', days, { item: { urgency: 'urgent' } })],
      [session('2026-09-21')],
    );
    expect([ids(placed), ids(unplaced)]).toEqual([['b'], ['a']]);
    expect(unplaced[0]).toMatchObject({ why: 'full', runsOn: true });
    expect(unplaced[0]).not.toHaveProperty('nearest');
    expect(shortfall).toEqual([{ month: '2026-09', route: 'upper', places: 1 }]);
  });

  it('are soon where a window is over, and before a target that has not come', () => {
    const proposal = proposed(
      [
        madeFollowUp('late', ['2026-05-01', '2026-06-01', '2026-06-30']),
        madeFollowUp('due', ['2026-09-01', '2026-09-30', '2026-10-30']),
      ],
      [session('2026-09-08'), session('2026-09-29'), session('2026-10-10')],
    );
    expect(proposal.placed.map(({ on, overdue }) => [on, overdue])).toEqual([
      ['2026-09-08', true],
      ['2026-09-29', false],
    ]);
    expect(proposal.placed[0]).toMatchObject({
      ...{ targetOn: '2026-06-01', daysOff: 99, earliestOn: '2026-09-01', latestOn: '2026-10-10' },
      urgency: 'urgent',
    });
  });

  it('need no place where a booked visit of the patient answers it', () => {
    const patient = 'EX-P-1';
    const booking = madeBooking('2026-10-05');
    const { joined, placed } = proposed(
      [
        madeFollowUp('a', ['2026-09-01', '2026-10-01', '2026-10-30'], {
          patient,
          item: { booking },
        }),
        madeFollowUp('b', ['2026-10-01', '2026-10-20', '2026-12-01'], { patient }),
        madeFollowUp('c', ['2026-10-06', '2026-10-20', '2026-12-01'], { patient }),
      ],
      [session('2026-10-20', 'upper', 5)],
    );
    expect(joined.map(({ on }) => on)).toEqual(['2026-10-05']);
    expect([ids(joined), ids(placed)]).toEqual([['b'], ['c']]);
  });

  it.each([
    ['was missed', madeBooking('2026-08-20', 'did-not-attend')],
    ['was cancelled', madeBooking('2026-09-20', 'cancelled')],
    ['is over', madeBooking('2026-08-20')],
  ])('are for one whose appointment %s', (_, booking) => {
    const one = madeFollowUp('a', ['2026-08-01', '2026-09-01', '2026-10-01'], {
      item: { booking },
    });
    expect(ids(proposed([one], [session('2026-09-03')]).placed)).toEqual(['a']);
  });

  it('are not for what a person decides first, for tasks, for what is over, or booked', () => {
    const days = ['2026-09-01', '2026-09-10', '2026-10-01'] as const;
    const items: readonly Partial<FollowUp['item']>[] = [
      ...[{ state: 'provisional' as const }, { state: 'to-confirm' as const }],
      ...[{ state: 'done' as const }, { state: 'superseded' as const }],
      ...[{ kind: 'task' as const }, { booking: madeBooking('2026-09-09') }],
    ];
    const all = items.map((item, i) => madeFollowUp(`${i}`, days, { item }));
    const { joined, placed, unplaced, unsure } = proposed(all, [session('2026-09-10', 'both', 9)]);
    expect({ joined, placed, unplaced, unsure }).toEqual({
      ...{ joined: [], placed: [], unplaced: [], unsure: 2 },
    });
  });

  it('wait for later sessions when the target lies after the last one', () => {
    const one = madeFollowUp('a', ['2026-09-01', '2026-10-02', '2026-12-01']);
    const { placed, later } = proposed([one], [session('2026-10-01')]);
    expect([placed, later]).toEqual([[], 1]);
  });

  it('come with the nearest place outside of the window, each place for one', () => {
    const days = ['2026-09-15', '2026-09-15', '2026-09-15'] as const;
    const { unplaced } = proposed(
      [madeFollowUp('a', days), madeFollowUp('b', days), madeFollowUp('c', days)],
      [session('2026-09-13', 'lower'), session('2026-09-14'), session('2026-09-17', 'both')],
    );
    expect(unplaced.map(({ why, nearest }) => [why, nearest])).toEqual([
      ['no-session', { on: '2026-09-14', session: 'upper', daysOutside: -1 }],
      ['no-session', { on: '2026-09-17', session: 'both', daysOutside: 2 }],
      ['no-session', undefined],
    ]);
  });

  it('are none when every session is over or has no place', () => {
    const one = madeFollowUp('a', ['2026-09-01', '2026-10-02', '2026-12-01']);
    const sessions = [session('2026-08-31'), session('2026-09-10', 'upper', 0)];
    expect(proposeDays([one], sessions, '2026-09-01')).toBeUndefined();
  });
});

/** A day of an invented calendar that begins on 1 September 2026. */
const day = (n: number): string => new Date(Date.UTC(2026, 8, 1 + n)).toISOString().slice(0, 10);
const FROM = day(20);

const anyFollowUps = fc
  .array(
    fc.record({
      days: fc
        .tuple(fc.nat(100), fc.nat(100), fc.nat(100))
        .map((d) => d.sort((a, b) => a - b).map(day) as [string, string, string]),
      patient: fc.constantFrom('EX-P-1', 'EX-P-2', 'EX-P-3'),
      item: fc.record({
        route: fc.constantFrom('upper' as const, 'lower' as const),
        urgency: fc.constantFrom('routine' as const, 'urgent' as const),
        state: fc.constantFrom('open' as const, 'open' as const, 'to-confirm' as const),
      }),
      bookedOn: fc.option(fc.nat(100), { freq: 6 }),
    }),
    { maxLength: 12 },
  )
  .map((list) =>
    list.map(({ days, patient, item, bookedOn }, i) => {
      const booking = bookedOn === null ? {} : { booking: madeBooking(day(bookedOn)) };
      return madeFollowUp(`${i}`, days, { patient, item: { ...item, ...booking } });
    }),
  );
const anySessions = fc.array(
  fc.record({
    on: fc.nat(100).map(day),
    route: fc.constantFrom<Route>('upper', 'lower', 'both'),
    places: fc.nat(2),
  }),
  { minLength: 1, maxLength: 12 },
);

/** What is wrong with a proposal, whatever it was asked. */
function faultsOf({ joined, placed, unplaced }: Proposal, sessions: readonly Session[]) {
  const shown = [...joined, ...placed, ...unplaced].flatMap((visit) => visit.followUps);
  const faults: string[] = [];
  if (new Set(shown.map(({ id }) => id)).size < shown.length) faults.push('answered twice');
  for (const { item } of shown) {
    const isBooked = item.booking !== undefined && item.booking.on >= FROM;
    if (item.state !== 'open' || isBooked) faults.push('wants no day');
  }
  for (const { followUps, on } of [...placed, ...joined]) {
    for (const { item } of followUps) {
      const { earliest = '', latest = '' } = item.due ?? {};
      const isLate = latest >= FROM && on > latest;
      if (on < FROM || on < earliest || isLate) faults.push('outside its window');
    }
  }
  for (const { on, session: route, followUps } of placed) {
    const taken = placed.filter((one) => one.on === on && one.session === route).length;
    const there = sessions.filter((one) => one.on === on && one.route === route);
    if (taken > there.reduce((sum, { places }) => sum + places, 0)) faults.push('no such place');
    const isServed = followUps.every(({ item }) => route === 'both' || route === item.route);
    if (!isServed) faults.push('another route');
  }
  return [...new Set(faults)];
}

describe('proposals, as laws of any follow-ups and sessions', () => {
  it('answer each open examination once, in its window, on a place that there is', () => {
    fc.assert(
      fc.property(anyFollowUps, anySessions, (followUps, sessions) => {
        const proposal = proposeDays(followUps, sessions, FROM);
        if (proposal !== undefined) expect(faultsOf(proposal, sessions)).toEqual([]);
      }),
    );
  });

  it('would be seen to break each of these laws', () => {
    const sessions = [session(day(30))];
    const one = madeFollowUp('a', [day(25), day(30), day(40)]);
    const good = proposed([one], sessions, FROM);
    const [visit] = good.placed;
    if (visit === undefined) throw new Error('it has a day');
    const broken = (change: Partial<typeof visit>) =>
      faultsOf({ ...good, placed: [{ ...visit, ...change }] }, sessions);
    expect(broken({})).toEqual([]);
    expect(broken({ on: day(41) })).toEqual(['outside its window', 'no such place']);
    expect(broken({ on: day(24) })).toContain('outside its window');
    expect(broken({ session: 'lower' })).toEqual(['no such place', 'another route']);
    const booked = { ...one, item: { ...one.item, booking: madeBooking(day(30)) } };
    expect(broken({ followUps: [booked] })).toEqual(['wants no day']);
    expect(faultsOf({ ...good, placed: [visit, visit] }, sessions)).toEqual([
      ...['answered twice', 'no such place'],
    ]);
  });

  it('leave out nobody who is due before the last session', () => {
    fc.assert(
      fc.property(anyFollowUps, anySessions, (followUps, sessions) => {
        const proposal = proposeDays(followUps, sessions, FROM);
        if (proposal === undefined) return;
        const { joined, placed, unplaced, untilOn, later } = proposal;
        const shown = [...joined, ...placed, ...unplaced].flatMap((visit) => visit.followUps);
        const open = followUps.filter(
          ({ item }) =>
            item.state === 'open' && (item.booking === undefined || item.booking.on < FROM),
        );
        const left = open.filter((one) => !shown.includes(one));
        expect(left.length > 0).toBe(later > 0);
        for (const { item } of left) expect((item.due?.latest ?? '') > untilOn).toBe(true);
      }),
    );
  });
});
