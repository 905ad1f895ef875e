import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type FollowUpPlan,
  type PlanFacts,
  type PlanItem,
  planFollowUp,
} from '../../../src/surveillance/index.js';
import { ALWAYS_OPEN, happened, itemOf, looked, NO_EVENTS, resected } from './plan-samples.js';

/*
 * Oracle: project definition of bookings and their mismatches; windows are those of the row GAS-1
 * (3, 6 and 6 months from 15 March 2024).
 */

type Word = NonNullable<PlanFacts['bookings']>[number];

const FIRST = 'GAS-1.1';
const CHECK = 'booking-check-GAS-1.1';
const [EARLIEST, TARGET, LATEST] = ['2024-06-15', '2024-09-15', '2024-09-15'];

const booked = (on: string, more: Partial<Word> = {}): Word => ({
  item: FIRST,
  status: 'booked',
  startsAt: `${on}T09:00:00+02:00`,
  endsAt: `${on}T09:30:00+02:00`,
  toldAt: '2024-04-02T10:00:00+02:00',
  ...more,
});
const told = (status: Word['status'], more: Partial<Word> = {}): Word => ({
  item: FIRST,
  status,
  toldAt: '2024-05-02T10:00:00+02:00',
  ...more,
});

const STOMACH = resected('stomach', 'low-risk');
const COLON = resected('colon', 'low-risk');
const DAY = '2025-03-15';
const planned = (bookings: readonly Word[], more: Partial<PlanFacts> = {}): FollowUpPlan =>
  planFollowUp({ ...STOMACH, ...more, bookings }, ALWAYS_OPEN);

const codesOf = (item: PlanItem | undefined) => item?.reasons.map(({ code }) => code);

describe('an appointment for an item', () => {
  it('stands on it, and changes neither its state nor its window', () => {
    const free = itemOf(planned([]), FIRST);
    expect(free?.due).toEqual({ earliest: EARLIEST, target: TARGET, latest: LATEST });
    expect(itemOf(planned([booked('2024-09-02')]), FIRST)).toEqual({
      ...free,
      booking: {
        status: 'booked',
        startsAt: '2024-09-02T09:00:00+02:00',
        endsAt: '2024-09-02T09:30:00+02:00',
        on: '2024-09-02',
        moved: false,
        toldAt: '2024-04-02T10:00:00+02:00',
        heldBy: 'service',
      },
    });
  });

  it.each([
    [EARLIEST, undefined],
    [LATEST, undefined],
    ['2024-06-14', 'booking-outside-window'],
    ['2024-09-16', 'booking-outside-window'],
  ])('on %s: %s', (on, code) => {
    const plan = planned([booked(on)]);
    expect(codesOf(itemOf(plan, FIRST))).toEqual(code === undefined ? [] : [code]);
    expect(itemOf(plan, CHECK)?.state).toBe(code === undefined ? undefined : 'open');
  });

  // COL-4 names one day: 12 months, 365 days from 15 March 2024. A tenth of them is 36 days.
  it.each([
    ['2025-02-06', 'booking-outside-window'],
    ['2025-02-07', undefined],
    ['2025-04-20', undefined],
    ['2025-04-21', 'booking-outside-window'],
  ])('for a rule that names 15 March 2025 on %s: %s', (on, code) => {
    const item = itemOf(
      planFollowUp({ ...COLON, bookings: [booked(on, { item: 'COL-4.1' })] }, ALWAYS_OPEN),
      'COL-4.1',
    );
    expect(item?.due).toEqual({ earliest: DAY, target: DAY, latest: DAY });
    expect(item?.room).toEqual({ earliest: '2025-02-07', target: DAY, latest: '2025-04-20' });
    expect(codesOf(item)).toEqual(code === undefined ? [] : [code]);
  });

  it('for a window of the rule has no room beside it', () => {
    expect(itemOf(planned([]), FIRST)).not.toHaveProperty('room');
  });

  it('falls on its day in its own offset', () => {
    const startsAt = '2024-09-15T23:30:00-05:00'; // 16 September in UTC
    const plan = planned([booked(LATEST, { startsAt, endsAt: '2024-09-15T23:50:00-05:00' })]);
    expect(itemOf(plan, FIRST)?.booking?.on).toBe(LATEST);
    expect(itemOf(plan, CHECK)).toBeUndefined();
  });

  it('is moved when it was booked at another time before, in whatever offset', () => {
    const same = booked(LATEST, {
      startsAt: '2024-09-15T07:00:00Z',
      toldAt: '2024-05-01T00:00:00Z',
    });
    const movedOf = (...words: readonly Word[]) => itemOf(planned(words), FIRST)?.booking?.moved;
    expect(movedOf(booked(LATEST), same)).toBe(false);
    expect(movedOf(booked('2024-09-02'), booked(LATEST))).toBe(true);
    expect(movedOf(booked('2024-09-02'), booked(LATEST), told('cancelled'))).toBe(true);
    expect(movedOf(booked(LATEST, { status: 'moved' }))).toBe(true); // we were not told the first
  });

  it('that was cancelled keeps when it was, and why', () => {
    const item = itemOf(planned([booked(LATEST), told('cancelled', { reason: 'patient' })]), FIRST);
    expect(item).toMatchObject({ state: 'open', urgency: 'routine' });
    expect(item?.booking).toMatchObject({ status: 'cancelled', on: LATEST, reason: 'patient' });
    expect(codesOf(item)).toEqual(['booking-cancelled']);
  });

  it('that was missed leaves the item open and makes it urgent, until it is booked again', () => {
    const missed = [booked(LATEST), told('did-not-attend')];
    expect(itemOf(planned(missed), FIRST)).toMatchObject({
      state: 'open',
      urgency: 'urgent',
      booking: { status: 'did-not-attend', on: LATEST },
      reasons: [{ code: 'did-not-attend' }],
    });
    const again = itemOf(planned([...missed, booked('2024-09-10')]), FIRST);
    expect(again).toMatchObject({ urgency: 'routine', reasons: [], booking: { moved: true } });
  });

  it.each(['cancelled', 'did-not-attend'] as const)(
    'of which nobody told a time is said in the reasons alone: %s',
    (status) => {
      const item = itemOf(planned([told(status)]), FIRST);
      expect(item?.booking).toBeUndefined();
      expect(codesOf(item)).toEqual([
        status === 'cancelled' ? 'booking-cancelled' : 'did-not-attend',
      ]);
    },
  );

  it('is held by the server from the first word that names an Appointment there', () => {
    const named = booked(LATEST, { appointment: 'Appointment/7' });
    expect(itemOf(planned([named, told('cancelled')]), FIRST)?.booking).toMatchObject({
      heldBy: 'server',
      appointment: 'Appointment/7',
    });
  });
});

/** Facts after which the plan does not ask for what was booked, by the reason that it gives. */
const UNWANTED: readonly (readonly [string, Partial<PlanFacts>])[] = [
  ['withdrawn', { withdrawn: true }],
  ['death', { events: { ...NO_EVENTS, deaths: [happened('2024-05-01')] } }],
  ['declined', { events: { ...NO_EVENTS, declines: [happened('2024-05-01')] } }],
  [
    'surgery-done',
    { events: { ...NO_EVENTS, surgeries: [{ ...happened('2024-05-01'), kind: 'resection' }] } },
  ],
];

describe('an appointment that the plan does not ask for', () => {
  it.each(UNWANTED)('stays after %s, and somebody is to look at it', (code, more) => {
    const plan = planned([booked('2024-09-02')], more);
    const item = itemOf(plan, FIRST);
    expect(item).toMatchObject({ state: 'revoked', booking: { status: 'booked' } });
    expect(codesOf(item)).toEqual([code, 'booking-not-wanted']);
    expect(itemOf(plan, CHECK)).toMatchObject({
      kind: 'task',
      task: 'booking-check',
      about: FIRST,
      state: 'open',
      reasons: [{ code: 'booking-not-wanted' }],
    });
  });

  it('stays on a superseded item', () => {
    const { pathology: _none, ...rest } = STOMACH;
    const before: PlanFacts = { ...rest, verdict: { rule: 'esge-esd-2022' }, classes: {} };
    const bookings = [booked('2024-06-20', { item: 'provisional.1' })];
    const first = planFollowUp({ ...before, bookings }, ALWAYS_OPEN);
    expect(itemOf(first, 'provisional.1')?.booking?.on).toBe('2024-06-20');
    expect(itemOf(first, 'booking-check-provisional.1')).toBeUndefined();
    const plan = planFollowUp({ ...STOMACH, bookings }, ALWAYS_OPEN, [before]);
    expect(itemOf(plan, 'provisional.1')).toMatchObject({
      state: 'superseded',
      booking: { status: 'booked', on: '2024-06-20' },
      replacedBy: FIRST,
    });
    expect(itemOf(plan, 'booking-check-provisional.1')?.state).toBe('open');
  });

  it('is never lost, even where no plan has the item', () => {
    const plan = planned([booked('2024-09-02', { item: 'OLD-9.3' })]);
    const item = itemOf(plan, 'OLD-9.3');
    expect(item).toMatchObject({ state: 'superseded', sequence: 3, booking: { on: '2024-09-02' } });
    expect(codesOf(item)).toEqual(['not-planned-now', 'booking-not-wanted']);
    expect(itemOf(plan, 'booking-check-OLD-9.3')?.state).toBe('open');
    const supposed = planned([booked('2024-09-02', { item: 'OLD-9.3' })], { supposed: true });
    expect(itemOf(supposed, 'OLD-9.3')).toBeUndefined();
  });

  it('is asked about when the item was done before its day, and not when it was done on it', () => {
    const done = (on: string) => planned([booked('2024-09-10')], { examinations: [looked(on)] });
    expect(codesOf(itemOf(done('2024-09-02'), FIRST))).toEqual(['booking-after-done']);
    expect(itemOf(done('2024-09-02'), CHECK)?.state).toBe('open');
    expect(itemOf(done('2024-09-10'), FIRST)).toMatchObject({ state: 'done', reasons: [] });
    expect(itemOf(done('2024-09-10'), CHECK)).toBeUndefined();
  });
});

describe('the task to look at an appointment', () => {
  const outside = booked('2024-10-20');

  it.each([
    ['cancelled', told('cancelled')],
    ['moved inside', booked(LATEST, { status: 'moved' })],
    ['missed', told('did-not-attend')],
  ])('is done when it was %s', (_, word) => {
    expect(itemOf(planned([outside]), CHECK)?.state).toBe('open');
    expect(itemOf(planned([outside, word]), CHECK)).toMatchObject({
      state: 'done',
      reasons: [{ code: 'booking-settled' }],
    });
  });

  it('stays open when it was moved to another day outside', () => {
    const plan = planned([outside, booked('2024-10-27', { status: 'moved' })]);
    expect(itemOf(plan, CHECK)).toMatchObject({ state: 'open' });
  });

  it('is done when the patient was examined on that day', () => {
    const examinations = [looked('2024-09-02'), looked('2024-10-20')];
    const plan = planned([outside], { examinations });
    expect(itemOf(plan, CHECK)).toMatchObject({
      state: 'done',
      doneBy: { kind: 'examination', on: '2024-10-20' },
    });
  });

  const dueOf = (...words: readonly Word[]) => itemOf(planned(words), CHECK)?.due;

  it('ends the day before, at best two weeks before, and never begins before it was told', () => {
    const early = '2024-06-10'; // the window begins on 15 June
    expect(dueOf(booked(early))).toEqual({
      earliest: '2024-04-02',
      target: '2024-05-27',
      latest: '2024-06-09',
    });
    const late = '2024-06-09T08:00:00+02:00';
    expect(dueOf(booked(early, { toldAt: late }))).toEqual({
      earliest: '2024-06-09',
      target: '2024-06-09',
      latest: '2024-06-09',
    });
  });

  it('ends with the window where the day lies after it: a wrong year is not waited for', () => {
    const inWindow = { earliest: '2024-04-02', target: '2024-09-02', latest: LATEST };
    expect(dueOf(outside)).toEqual(inWindow);
    expect(dueOf(booked('2025-09-15'))).toEqual(inWindow);
  });

  it('ends two weeks after it was told, or the day before, where the window was over then', () => {
    const toldAt = '2024-10-01T08:00:00+02:00';
    expect(dueOf(booked('2025-09-15', { toldAt }))).toEqual({
      earliest: '2024-10-01',
      target: '2024-10-02',
      latest: '2024-10-15',
    });
    expect(dueOf(booked('2024-10-10', { toldAt }))).toEqual({
      earliest: '2024-10-01',
      target: '2024-10-01',
      latest: '2024-10-09',
    });
  });

  it('is superseded when a later plan asks for that day after all', () => {
    const bookings = [outside];
    const before = { ...STOMACH, esdOn: '2024-03-01', bookings };
    const now = { ...STOMACH, esdOn: '2024-05-15', bookings };
    const plan = planFollowUp(now, ALWAYS_OPEN, [before]);
    expect(itemOf(planFollowUp(before, ALWAYS_OPEN), CHECK)?.state).toBe('open');
    expect(itemOf(plan, CHECK)?.state).toBe('superseded');
    expect(codesOf(itemOf(plan, FIRST))).toEqual([]);
  });

  it('has no appointment of its own', () => {
    const plan = planned([outside, booked(LATEST, { item: CHECK })]);
    expect(itemOf(plan, CHECK)?.booking).toBeUndefined();
    expect(plan.items.filter(({ key }) => key.startsWith('booking-check'))).toHaveLength(1);
  });
});

// Laws, whatever was said: nothing that is booked is lost, and nothing of a plan changes by it.
const word: fc.Arbitrary<Word> = fc
  .record({
    item: fc.constantFrom(FIRST, 'GAS-1.2', 'provisional.1', 'helicobacter-test.1', 'OLD-9.3'),
    status: fc.constantFrom('booked', 'moved', 'cancelled', 'did-not-attend'),
    days: fc.option(fc.integer({ min: 0, max: 400 }), { nil: undefined }),
  })
  .map(({ item, status, days }) => {
    const needs = status === 'booked' || status === 'moved';
    const after = days ?? (needs ? 0 : undefined);
    if (after === undefined) return told(status, { item });
    const on = new Date(Date.UTC(2024, 3, 1 + after)).toISOString().slice(0, 10);
    return booked(on, { item, status });
  });
const facts: fc.Arbitrary<PlanFacts> = fc.constantFrom(
  STOMACH,
  { ...STOMACH, examinations: [looked('2024-09-02')] },
  ...UNWANTED.map(([, more]) => ({ ...STOMACH, ...more })),
);

describe('whatever schedulers say', () => {
  it('no item is lost or changed but in its booking, its reasons and its urgency', () => {
    fc.assert(
      fc.property(facts, fc.array(word, { maxLength: 6 }), (known, bookings) => {
        const free = planFollowUp(known, ALWAYS_OPEN);
        const plan = planFollowUp({ ...known, bookings }, ALWAYS_OPEN);
        for (const item of free.items) {
          const { booking: _b, reasons, urgency: _u, ...same } = itemOf(plan, item.key) ?? item;
          const { reasons: own, urgency: _v, ...before } = item;
          expect(same).toEqual(before);
          expect(reasons.slice(0, own.length)).toEqual(own);
        }
        expect(new Set(plan.items.map(({ key }) => key)).size).toBe(plan.items.length);
      }),
    );
  });

  it('every appointment that holds is seen, and asked about exactly where it does not fit', () => {
    fc.assert(
      fc.property(facts, fc.array(word, { maxLength: 6 }), (known, bookings) => {
        const plan = planFollowUp({ ...known, bookings }, ALWAYS_OPEN);
        const keys = new Set(bookings.map(({ item }) => item));
        for (const key of keys) {
          const last = bookings.filter(({ item }) => item === key).at(-1);
          const item = itemOf(plan, key);
          expect(item).toBeDefined();
          const holds = last?.status === 'booked' || last?.status === 'moved';
          expect(item?.booking?.status === 'booked').toBe(holds);
          const isAsked = item?.reasons.some(({ code }) =>
            ['booking-not-wanted', 'booking-outside-window', 'booking-after-done'].includes(code),
          );
          const check = itemOf(plan, `booking-check-${key}`);
          const isOpen = check?.state === 'open';
          expect(isOpen || check?.doneBy !== undefined).toBe(isAsked);
        }
      }),
    );
  });
});
