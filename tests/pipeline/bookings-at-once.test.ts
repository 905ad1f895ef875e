import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService, type Service } from '../../src/pipeline/index.js';
import { followUpIdOf } from '../../src/pipeline/naming.js';
import { readVersion } from '../../src/record/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { bookingBytes, morningOf } from '../support/bookings.js';
import { testDatabase } from '../support/database.js';
import { altered, example } from '../support/example-messages.js';

/*
 * Two programs over one database take what two schedulers say at the same time. Source: project
 * definition, README "Promises".
 */

const test = await testDatabase();
const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
const settings = { unit: DEFAULT_UNIT_SETTINGS, secret: SECRET, softwareVersion: '0' };
const now = () => '2027-06-01T12:00:00.000Z';
const stores = [createRecordStore(await test.open()), createRecordStore(await test.open())];
const [one, other] = stores.map((store) => createService({ store, settings, now }));
const [store] = stores;

function need<T>(value: T | undefined): T {
  if (value === undefined) throw new Error('it is there');
  return value;
}

/** A case of its own with its report. @returns id of the case, and of the follow-up that is due */
async function planned(n: number) {
  const own = { case: { system: 'urn:oid:2.999.1.2', value: `EX-C-8${n}` } };
  const messages = [
    altered(example('case', 'stomach-differentiated'), own),
    altered(example('pathology', 'stomach-differentiated'), own),
  ];
  let caseId = '';
  for (const { kind, bytes } of messages) {
    const receipt = await need(one).receive(kind, bytes, {});
    if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
    caseId = receipt.receipt.caseId;
  }
  return { caseId, id: followUpIdOf(SECRET, caseId, 'GAS-1.1') };
}

const bookingIn = async (caseId: string) => {
  const version = (await need(store).read(caseId))?.version;
  return readVersion(need(version)).plan.items.find(({ key }) => key === 'GAS-1.1')?.booking;
};

const say = (service: Service | undefined, id: string, draft: object, source?: string) =>
  need(service).receiveBooking(id, bookingBytes(draft), source === undefined ? {} : { source });

describe('two services over one database', () => {
  it('keep a booking that comes to both at once only one time', async () => {
    const { caseId, id } = await planned(1);
    const draft = morningOf('2026-07-20');
    const receipts = await Promise.all(
      [one, other, one, other].map((service) => say(service, id, draft)),
    );
    expect(receipts.map(({ kind }) => kind).sort()).toEqual([
      ...['accepted', 'repeated', 'repeated', 'repeated'],
    ]);
    expect(await need(store).entries(caseId)).toHaveLength(3);
    expect(await bookingIn(caseId)).toMatchObject({ status: 'booked', on: '2026-07-20' });
  });

  it('end in the same record, whichever of two revisions comes first', async () => {
    const records = [];
    for (const n of [2, 3, 4]) {
      const { caseId, id } = await planned(n);
      await Promise.all([
        say(one, id, { revision: 2, status: 'moved', ...morningOf('2026-07-27') }),
        say(other, id, { revision: 1, ...morningOf('2026-07-20') }),
        say(other, id, { revision: 1, ...morningOf('2026-07-13') }, 'other-scheduler'),
      ]);
      expect(await need(store).entries(caseId)).toHaveLength(5);
      records.push(await bookingIn(caseId));
    }
    // Said at one instant: the order of the record decides, by source and revision.
    expect(records[0]).toMatchObject({ on: '2026-07-27', moved: true });
    expect(new Set(records.map((record) => JSON.stringify(record))).size).toBe(1);
  });

  it('show it in the list of follow-ups, from the commit that kept it', async () => {
    const { id } = await planned(5);
    await say(other, id, morningOf('2026-07-20'));
    const found = await need(one).readFollowUp(id, { role: 'records-team' });
    expect(found?.item.booking).toMatchObject({ status: 'booked', on: '2026-07-20' });
    expect((await say(one, 'no-such-follow-up', morningOf('2026-07-20'))).kind).toBe('not-found');
  });
});
