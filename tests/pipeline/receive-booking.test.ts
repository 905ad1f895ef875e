import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService } from '../../src/pipeline/index.js';
import { followUpIdOf } from '../../src/pipeline/naming.js';
import { readVersion } from '../../src/record/index.js';
import { type BookingDraft, book, bookingBytes, morningOf } from '../support/bookings.js';
import { altered, example, type Sent } from '../support/example-messages.js';
import { memoryStore } from '../support/memory-store.js';

/*
 * Oracle: project definition of bookings; the answers are those of every other message, README
 * "Promises".
 */

const NOW = '2027-06-01T12:00:00.000Z';
const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
const settings = { unit: DEFAULT_UNIT_SETTINGS, secret: SECRET, softwareVersion: '0' };

/** A service with the two lesions of one patient and one of another, as pushed. */
async function hospital() {
  const store = memoryStore(() => NOW);
  const service = createService({ store, settings, now: () => NOW });
  const push = async ({ kind, bytes }: Sent): Promise<string> => {
    const receipt = await service.receive(kind, bytes, {});
    if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
    return receipt.receipt.caseId;
  };
  const first = await push(example('case', 'stomach-two-lesions-first'));
  await push(example('pathology', 'stomach-ulcer-scar'));
  const second = await push(example('case', 'stomach-two-lesions-second'));
  await push(example('pathology', 'stomach-dysplasia'));
  const other = await push(example('case', 'stomach-differentiated'));
  await push(example('pathology', 'stomach-differentiated'));
  const planOf = async (caseId: string) => {
    const version = (await store.read(caseId))?.version;
    if (version === undefined) throw new Error('there is such a case');
    return readVersion(version).plan;
  };
  const openIn = async (caseId: string): Promise<string> => {
    const { items } = await planOf(caseId);
    const open = items.find(({ kind, state }) => kind === 'endoscopy' && state === 'open');
    if (open === undefined) throw new Error('an examination is due');
    return open.key;
  };
  const at = async (caseId: string) => ({ caseId, item: await openIn(caseId) });
  const idOf = ({ caseId, item }: { caseId: string; item: string }) =>
    followUpIdOf(SECRET, caseId, item);
  return {
    ...{ store, service, push, planOf, idOf },
    ...{ one: await at(first), two: await at(second), foreign: await at(other) },
  };
}

type Hospital = Awaited<ReturnType<typeof hospital>>;
type Place = Hospital['one'];

const say = ({ service }: Hospital, place: Place, draft: BookingDraft, source?: string) =>
  book(service, { ...place, ...(source === undefined ? {} : { source }) }, SECRET, draft);

const itemOf = async ({ planOf }: Hospital, { caseId, item }: Place) =>
  (await planOf(caseId)).items.find(({ key }) => key === item);

/** A day inside the window of an item. */
async function dayFor(house: Hospital, place: Place): Promise<string> {
  const due = (await itemOf(house, place))?.due;
  if (due === undefined) throw new Error('an examination has a window');
  return due.target;
}

const rulesOf = (receipt: Awaited<ReturnType<typeof say>>) =>
  'problems' in receipt ? receipt.problems.map(({ rule, pointer }) => `${rule} ${pointer}`) : [];

describe('a booking that a scheduler sends', () => {
  it('is kept with its bytes in the journal of its case, and shown on its item', async () => {
    const house = await hospital();
    const { one, idOf, store } = house;
    const draft = morningOf(await dayFor(house, one));
    const receipt = await say(house, one, draft, 'list-office');
    expect(receipt).toMatchObject({
      kind: 'accepted',
      kept: [{ followUpId: idOf(one), kind: 'accepted', revision: 1, receivedAt: NOW, fits: true }],
    });
    const entry = (await store.entries(one.caseId)).at(-1);
    expect(entry).toMatchObject({ kind: 'booking', source: 'list-office', naturalKey: one.item });
    expect(entry?.bytes).toEqual(bookingBytes(draft));
    expect((await itemOf(house, one))?.booking).toMatchObject({ status: 'booked', ...draft });
    const view = await house.service.readCase(one.caseId, {});
    expect(view?.messages.at(-1)).toMatchObject({
      ...{ kind: 'booking', item: one.item, standing: 'applied' },
    });
  });

  it('is one of the scheduler where the key names no source', async () => {
    const house = await hospital();
    await say(house, house.one, morningOf(await dayFor(house, house.one)));
    const entries = await house.store.entries(house.one.caseId);
    expect(entries.at(-1)?.source).toBe('scheduler');
  });

  it('gets the first answer again when it comes again, and changes nothing', async () => {
    const house = await hospital();
    const draft = morningOf(await dayFor(house, house.one));
    const [first, again] = [await say(house, house.one, draft), await say(house, house.one, draft)];
    expect(again.kind).toBe('repeated');
    const plain = (receipt: typeof first) =>
      'kept' in receipt ? receipt.kept.map(({ kind: _, ...same }) => same) : [];
    expect(plain(again)).toEqual(plain(first));
    expect(await house.store.entries(house.one.caseId)).toHaveLength(3);
  });

  it('is a conflict when its revision came with other content, or a higher one came', async () => {
    const house = await hospital();
    const { one } = house;
    const day = await dayFor(house, one);
    await say(house, one, { revision: 2, ...morningOf(day) });
    expect(await say(house, one, { revision: 2, status: 'cancelled' })).toMatchObject({
      kind: 'conflict',
      problem: { rule: 'revision-used' },
    });
    expect(await house.store.entries(one.caseId)).toHaveLength(3);
    expect(await say(house, one, { revision: 1, status: 'cancelled' })).toMatchObject({
      kind: 'conflict',
      problem: { rule: 'revision-stale' },
    });
    expect(await house.store.entries(one.caseId)).toHaveLength(4);
    expect((await itemOf(house, one))?.booking?.status).toBe('booked');
  });

  it('is unknown, unreadable or wrong before anything is kept', async () => {
    const house = await hospital();
    const { service, one, idOf } = house;
    expect(await say(house, { ...one, item: 'GAS-9.9' }, {})).toEqual({ kind: 'not-found' });
    const bytes = new TextEncoder().encode('{');
    expect((await service.receiveBooking(idOf(one), bytes, {})).kind).toBe('unreadable');
    expect(rulesOf(await say(house, one, {}))).toEqual([
      'booked-without-time /startsAt',
      'booked-without-time /endsAt',
    ]);
    expect(await house.store.entries(one.caseId)).toHaveLength(2);
  });

  it('is refused for all that is wrong with it at once', async () => {
    const house = await hospital();
    const { one, foreign, idOf } = house;
    const receipt = await say(house, one, {
      sentAt: '2027-06-01T12:05:01Z',
      ...morningOf('2020-01-07'),
      alsoFor: [idOf(one), idOf(foreign), '00000000-0000-8000-8000-000000000000'],
    });
    expect(rulesOf(receipt).sort()).toEqual([
      'before-procedure /startsAt',
      'follow-up-of-another-patient /alsoFor/1',
      'repeated-follow-up /alsoFor/0',
      'sent-in-future /sentAt',
      'unknown-follow-up /alsoFor/2',
    ]);
    expect(await house.store.entries(one.caseId)).toHaveLength(2);
    expect(await house.store.entries(foreign.caseId)).toHaveLength(2);
  });

  it('may be of the past, and a cancellation of what nobody told us', async () => {
    const house = await hospital();
    const day = await dayFor(house, house.one);
    const past = { sentAt: '2027-05-01T08:00:00Z', ...morningOf(day) };
    expect((await say(house, house.one, past)).kind).toBe('accepted');
    expect((await say(house, house.two, { status: 'cancelled' })).kind).toBe('accepted');
    expect((await itemOf(house, house.two))?.booking).toBeUndefined();
  });

  it('that does not fit says so, and is kept', async () => {
    const house = await hospital();
    const { one, planOf } = house;
    const due = (await itemOf(house, one))?.due;
    const receipt = await say(house, one, morningOf('2027-12-24'));
    expect(due !== undefined && due.latest < '2027-12-24').toBe(true);
    expect(receipt).toMatchObject({ kind: 'accepted', kept: [{ fits: false }] });
    const key = `booking-check-${one.item}`;
    const task = (await planOf(one.caseId)).items.find((item) => item.key === key);
    expect(task).toMatchObject({ state: 'open', about: one.item });
    const check = await say(house, { ...one, item: key }, morningOf('2027-12-24'));
    expect(rulesOf(check)).toEqual(['not-to-be-booked ']);
  });

  it('stays on an item that a later message revokes', async () => {
    const house = await hospital();
    const { one, push, planOf } = house;
    await say(house, one, morningOf(await dayFor(house, one)));
    const { document } = example('case', 'stomach-two-lesions-first');
    const { source, case: own, patient } = document;
    const { system, value } = patient;
    await push(
      altered(example('withdrawal', 'minimal-wrong-patient'), {
        ...{ source, case: own, patient: { system, value }, sentAt: '2027-01-02T08:00:00Z' },
      }),
    );
    expect(await itemOf(house, one)).toMatchObject({
      state: 'revoked',
      booking: { status: 'booked' },
    });
    const { items } = await planOf(one.caseId);
    expect(items.some(({ about, state }) => about === one.item && state === 'open')).toBe(true);
    const cancelled = { revision: 2, status: 'cancelled', sentAt: '2027-01-03T08:00:00Z' };
    expect(await say(house, one, cancelled)).toMatchObject({ kept: [{ fits: true }] });
  });
});

describe('one visit for two lesions', () => {
  it('is kept in both cases, each with an answer', async () => {
    const house = await hospital();
    const { one, two, idOf } = house;
    const draft = { ...morningOf(await dayFor(house, one)), alsoFor: [idOf(two)] };
    const receipt = await say(house, one, draft);
    expect(receipt).toMatchObject({
      kind: 'accepted',
      kept: [
        { followUpId: idOf(one), kind: 'accepted' },
        { followUpId: idOf(two), kind: 'accepted' },
      ],
    });
    for (const place of [one, two]) {
      expect((await house.store.entries(place.caseId)).at(-1)?.bytes).toEqual(bookingBytes(draft));
      expect((await itemOf(house, place))?.booking?.startsAt).toBe(draft.startsAt);
    }
    expect((await say(house, one, draft)).kind).toBe('repeated');
  });

  it('is completed by the same message when it was kept in one of them only', async () => {
    const house = await hospital();
    const { one, two, idOf, service } = house;
    const draft = { ...morningOf(await dayFor(house, one)), alsoFor: [idOf(two)] };
    let commits = 0;
    const failing: typeof house.store = {
      ...house.store,
      inCase: (caseId, work) => {
        commits += 1;
        if (commits > 1) return Promise.reject(new Error('the power went out'));
        return house.store.inCase(caseId, work);
      },
    };
    const broken = createService({ store: failing, settings, now: () => NOW });
    await expect(book(broken, one, SECRET, draft)).rejects.toThrow('the power went out');
    expect((await itemOf(house, two))?.booking).toBeUndefined();
    expect(await book(service, one, SECRET, draft)).toMatchObject({
      kind: 'accepted',
      kept: [{ kind: 'repeated' }, { kind: 'accepted' }],
    });
  });

  it('is kept in none of them when one of them has that revision already', async () => {
    const house = await hospital();
    const { one, two, idOf } = house;
    const day = await dayFor(house, one);
    await say(house, two, morningOf(day));
    expect(await say(house, one, { ...morningOf(day), alsoFor: [idOf(two)] })).toMatchObject({
      kind: 'conflict',
      problem: { rule: 'revision-used', pointer: '/alsoFor/0' },
    });
    expect(await house.store.entries(one.caseId)).toHaveLength(2);
  });
});
