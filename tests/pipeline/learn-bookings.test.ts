import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS, type UnitSettings } from '../../src/contract/index.js';
import { createService, learnBookings, type ServerAppointment } from '../../src/pipeline/index.js';
import { readVersion } from '../../src/record/index.js';
import { type BookingDraft, book, morningOf } from '../support/bookings.js';
import { example, type Sent } from '../support/example-messages.js';
import { memoryStore } from '../support/memory-store.js';

/*
 * Appointments of the FHIR server beside what schedulers told us. Source: project definition: the
 * word that was said last counts, and a server shows what we wrote there only after a delivery.
 */

const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
const ITEM = 'GAS-1.1';
const [FIRST, SECOND] = ['2026-07-15', '2026-07-20'];

/** A case whose first examination is due; the clock stands where the test puts it. */
async function hospital(unit: UnitSettings = DEFAULT_UNIT_SETTINGS) {
  const settings = { unit, secret: SECRET, softwareVersion: '0' };
  let at = '2026-06-01T12:00:00.000Z';
  const now = () => at;
  const store = memoryStore(now);
  const service = createService({ store, settings, now });
  const push = async ({ kind, bytes }: Sent): Promise<string> => {
    const receipt = await service.receive(kind, bytes, {});
    if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
    return receipt.receipt.caseId;
  };
  const caseId = await push(example('case', 'stomach-differentiated'));
  await push(example('pathology', 'stomach-differentiated'));
  const appointment = (told: Partial<ServerAppointment>): ServerAppointment => ({
    ...{ caseId, itemKey: ITEM, isOurs: true, reference: 'Appointment/a1', status: 'booked' },
    ...told,
  });
  return {
    bookingIs: async () => {
      const version = (await store.read(caseId))?.version;
      if (version === undefined) throw new Error('there is such a case');
      return readVersion(version).plan.items.find(({ key }) => key === ITEM)?.booking;
    },
    say: (sentAt: string, draft: BookingDraft) => {
      at = sentAt;
      return book(service, { caseId, item: ITEM }, SECRET, { sentAt, ...draft });
    },
    see: (seenAt: string, ...told: readonly Partial<ServerAppointment>[]) => {
      at = seenAt;
      return learnBookings(told.map(appointment), { store, settings, now });
    },
  };
}

const on = (day: string) => {
  const { startsAt, endsAt } = morningOf(day);
  return { start: startsAt, end: endsAt };
};

// RFC 3339, 4.3: Z says the instant, and nothing of the place. Sydney is 10 h ahead in July.
describe('an Appointment of a server that keeps all times in UTC', () => {
  it.each([
    ['Australia/Sydney', '2026-07-15T08:00:00+10:00', FIRST],
    ['UTC', '2026-07-14T22:00:00Z', '2026-07-14'],
  ])('is on the day that it is at the unit: %s', async (timeZone, startsAt, day) => {
    const { see, bookingIs } = await hospital({ ...DEFAULT_UNIT_SETTINGS, timeZone });
    const start = '2026-07-14T22:00:00Z';
    const end = '2026-07-14T22:30:00Z';
    expect(await see('2026-06-02T09:30:00.000Z', { start, end })).toMatchObject({ learnt: 1 });
    expect(await bookingIs()).toMatchObject({ startsAt, on: day });
    expect(await see('2026-06-02T10:30:00.000Z', { start, end })).toMatchObject({ learnt: 0 });
  });

  it('has the day of its own offset where it says one', async () => {
    const { see, bookingIs } = await hospital({
      ...DEFAULT_UNIT_SETTINGS,
      timeZone: 'Australia/Sydney',
    });
    const start = '2026-07-15T23:30:00-05:00';
    await see('2026-06-02T09:30:00.000Z', { start, end: '2026-07-15T23:50:00-05:00' });
    expect(await bookingIs()).toMatchObject({ startsAt: start, on: FIRST });
  });
});

describe('what a scheduler told us is not undone by what the server shows of before', () => {
  it('is moved while our Appointment of before still stands there', async () => {
    const { say, see, bookingIs } = await hospital();
    await say('2026-06-02T08:00:00.000Z', morningOf(FIRST));
    await say('2026-06-02T09:00:00.000Z', { revision: 2, status: 'moved', ...morningOf(SECOND) });
    const stale = { ...on(FIRST), updatedAt: '2026-06-02T08:00:05.000Z' };
    expect(await see('2026-06-02T09:30:00.000Z', stale)).toMatchObject({ learnt: 0 });
    expect(await bookingIs()).toMatchObject({ status: 'booked', on: SECOND });
  });

  it('is booked while our proposal still stands there', async () => {
    const { say, see, bookingIs } = await hospital();
    await say('2026-06-02T09:00:00.000Z', morningOf(FIRST));
    const stale = { status: 'proposed', updatedAt: '2026-06-02T08:00:00.000Z' };
    expect(await see('2026-06-02T09:30:00.000Z', stale)).toMatchObject({ learnt: 0 });
    expect((await bookingIs())?.status).toBe('booked');
  });

  it('is booked again while the Appointment that was cancelled still stands there', async () => {
    const { say, see, bookingIs } = await hospital();
    await say('2026-06-02T08:00:00.000Z', morningOf(FIRST));
    await say('2026-06-02T08:10:00.000Z', { revision: 2, status: 'cancelled' });
    await say('2026-06-02T09:00:00.000Z', { revision: 3, ...morningOf(SECOND) });
    const stale = { ...on(FIRST), status: 'cancelled', updatedAt: '2026-06-02T08:10:05.000Z' };
    await see('2026-06-02T09:30:00.000Z', stale);
    expect(await bookingIs()).toMatchObject({ status: 'booked', on: SECOND });
  });

  it('came late: it was said before our Appointment was written, and heard after', async () => {
    const { say, see, bookingIs } = await hospital();
    await say('2026-06-02T08:30:00.000Z', morningOf(FIRST));
    const late = { revision: 2, sentAt: '2026-06-02T08:30:01.000Z', status: 'moved' };
    await say('2026-06-02T09:00:00.000Z', { ...late, ...morningOf(SECOND) });
    const stale = { ...on(FIRST), updatedAt: '2026-06-02T08:30:05.000Z' };
    await see('2026-06-02T09:30:00.000Z', stale);
    expect(await bookingIs()).toMatchObject({ status: 'booked', on: SECOND });
  });

  it('is told anew without an Appointment after one of theirs was cancelled: it is ours', async () => {
    const { say, see, bookingIs } = await hospital();
    const theirs = { isOurs: false, reference: 'Appointment/x9', ...on(FIRST) };
    await see('2026-06-02T08:10:00.000Z', { ...theirs, updatedAt: '2026-06-02T08:00:00.000Z' });
    expect(await bookingIs()).toMatchObject({ heldBy: 'server', appointment: 'Appointment/x9' });
    const gone = { ...theirs, status: 'cancelled', updatedAt: '2026-06-02T08:20:00.000Z' };
    await see('2026-06-02T08:30:00.000Z', gone);
    await say('2026-06-02T09:00:00.000Z', morningOf(SECOND));
    await see('2026-06-02T09:30:00.000Z', gone);
    const booking = await bookingIs();
    expect(booking).toMatchObject({ status: 'booked', on: SECOND, heldBy: 'service' });
    expect(booking).not.toHaveProperty('appointment');
  });
});

describe('what changed on the server after our last word is learnt', () => {
  it('also where it changed between the look and the word that we made of it', async () => {
    const { see, bookingIs } = await hospital();
    const theirs = { isOurs: false, reference: 'Appointment/x9' };
    const first = { ...theirs, ...on(FIRST), updatedAt: '2026-06-02T08:00:00.000Z' };
    await see('2026-06-02T08:00:10.000Z', first);
    const moved = { ...theirs, ...on(SECOND), updatedAt: '2026-06-02T08:00:05.000Z' };
    expect(await see('2026-06-02T09:00:10.000Z', moved)).toMatchObject({ learnt: 1 });
    expect(await bookingIs()).toMatchObject({ on: SECOND, toldAt: moved.updatedAt });
  });

  it.each([
    ['is moved', on(SECOND), { status: 'booked', on: SECOND }],
    ['is cancelled', { ...on(FIRST), status: 'cancelled' }, { status: 'cancelled' }],
    ['is missed', { ...on(FIRST), status: 'noshow' }, { status: 'did-not-attend' }],
  ])('our Appointment %s there', async (_what, told, expected) => {
    const { say, see, bookingIs } = await hospital();
    await say('2026-06-02T08:00:00.000Z', morningOf(FIRST));
    await see('2026-07-16T09:30:00.000Z', { ...told, updatedAt: '2026-07-16T09:00:00.000Z' });
    expect(await bookingIs()).toMatchObject(expected);
  });

  it('of a server that does not say when', async () => {
    const { say, see, bookingIs } = await hospital();
    await say('2026-06-02T08:00:00.000Z', morningOf(FIRST));
    expect(await see('2026-06-02T09:30:00.000Z', on(SECOND))).toMatchObject({ learnt: 1 });
    expect((await bookingIs())?.on).toBe(SECOND);
  });

  it('of a server that writes seven decimals of a second, and once', async () => {
    const { see, bookingIs } = await hospital();
    const told = { start: `${FIRST}T07:00:00.0000000Z`, end: `${FIRST}T07:30:00.0000000Z` };
    expect(await see('2026-06-02T09:30:00.000Z', told)).toMatchObject({ learnt: 1, senseless: 0 });
    expect((await bookingIs())?.startsAt).toBe(`${FIRST}T07:00:00.000000Z`);
    expect(await see('2026-06-02T10:30:00.000Z', told)).toMatchObject({ learnt: 0, senseless: 0 });
  });

  it('and what no visit can be is counted, not kept', async () => {
    const { see, bookingIs } = await hospital();
    const { start, end } = on(FIRST);
    const told = { start: end, end: start };
    const done = { learnt: 0, senseless: 1, failed: [] };
    expect(await see('2026-06-02T09:30:00.000Z', told)).toEqual(done);
    expect(await bookingIs()).toBeUndefined();
  });
});
