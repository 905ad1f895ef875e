import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService, tellTime } from '../../src/pipeline/index.js';
import { readVersion } from '../../src/record/index.js';
import { type BookingDraft, book, morningOf } from '../support/bookings.js';
import {
  aboutCase,
  altered,
  CASE_NUMBERS,
  isSound,
  type Sent,
  sent,
} from '../support/example-messages.js';
import { memoryStore } from '../support/memory-store.js';

/*
 * Oracle: laws of a set. The order in which messages come, and how often, is no part of what they
 * say together. Source: project definition, README "Promises" 2 and 3.
 */

const SETTINGS = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};
const NOW = '2027-06-01T12:00:00.000Z';
const now = () => NOW;

/** What a scheduler says of an item of the plan. */
interface Booked {
  readonly item: string;
  readonly source: string;
  readonly draft: BookingDraft;
}

/**
 * What stands when all has come: the version and the Bundle, as text. A scheduler that names a
 * follow-up which is not there yet says it again when all else has come.
 */
async function arrived(messages: readonly (Sent | Booked)[]) {
  const store = memoryStore(now);
  const service = createService({ store, settings: SETTINGS, now });
  const answers: string[] = [];
  let caseId = '';
  const again: Booked[] = [];
  const say = async ({ item, source, draft }: Booked) => {
    const { kind } = await book(service, { caseId, item, source }, SETTINGS.secret, draft);
    answers.push(kind);
    return kind;
  };
  for (const message of messages) {
    if ('item' in message) {
      if ((await say(message)) === 'not-found') again.push(message);
      continue;
    }
    const receipt = await service.receive(message.kind, message.bytes, {});
    answers.push('problem' in receipt ? receipt.problem.rule : receipt.kind);
    if ('receipt' in receipt) caseId = receipt.receipt.caseId;
  }
  for (const booking of again) {
    if ((await say(booking)) === 'not-found') throw new Error('the follow-up is there by now');
  }
  await tellTime({ store, settings: SETTINGS, now });
  const version = (await store.read(caseId))?.version;
  return { answers, version, bundle: JSON.stringify(await service.readBundle(caseId, {})) };
}

const REQUIRED = ['schema', 'source', 'case', 'patient', 'revision', 'sentAt'];

/** A later revision: sent later, and without one of its parts where the contract allows that. */
function revised(first: Sent, revision: number, without: number): Sent {
  const sentAt = later(first.document.sentAt, revision);
  const parts = Object.keys(first.document).filter((key) => !REQUIRED.includes(key));
  const { [parts[without % parts.length] ?? '']: _left, ...rest } = first.document;
  const shorter = sent(first.kind, { ...rest, revision, sentAt });
  return isSound(shorter) ? shorter : altered(first, { revision, sentAt });
}

const later = (at: string, hours: number): string =>
  new Date(Date.parse(at) + hours * 3_600_000).toISOString();

/** A report on the same specimen under another number of the laboratory. */
const secondReport = ({ kind, document }: Sent): readonly Sent[] =>
  kind === 'pathology' && document.revision === 1
    ? [
        sent(kind, {
          ...document,
          accession: { ...document.accession, value: 'EX-A-2026-0999' },
          sentAt: later(document.sentAt, 30),
        }),
      ]
    : [];

const kindOf = ({ kind, document }: Sent): string =>
  [kind, document.accession, document.event, document.examination].map((k) => k?.value ?? k).join();

/** All that is sent about a case: examples, a second report, and higher revisions of some. */
const aboutOne = fc
  .record({
    number: fc.constantFrom(...CASE_NUMBERS),
    more: fc.array(fc.tuple(fc.nat(), fc.integer({ min: 1, max: 3 }), fc.nat()), { maxLength: 4 }),
    isTwice: fc.boolean(),
  })
  .map(({ number, more, isTwice }) => {
    const examples = aboutCase(number);
    const all = isTwice ? [...examples, ...examples.flatMap(secondReport)] : examples;
    const higher = more.map(([which, plus, without]) => {
      const first = all[which % all.length] ?? never();
      return revised(first, first.document.revision + plus, without);
    });
    const byRevision = new Map(
      [...higher, ...all].map((one) => [`${kindOf(one)}|${one.document.revision}`, one] as const),
    );
    return [...byRevision.values()];
  });

function never(): never {
  throw new Error('there is an example of every case');
}

const twoOrders = aboutOne.chain((messages) =>
  fc.tuple(
    fc.shuffledSubarray([...messages, ...messages], { minLength: 2 * messages.length }),
    fc.shuffledSubarray([...messages], { minLength: messages.length }),
  ),
);

/** Words of two schedulers on items of a plan, by their places in it; each revision once. */
const booking = fc.record({
  place: fc.nat(),
  source: fc.constantFrom('scheduler', 'other-scheduler'),
  revision: fc.integer({ min: 1, max: 3 }),
  status: fc.constantFrom('booked', 'booked', 'moved', 'cancelled', 'did-not-attend'),
  days: fc.integer({ min: 0, max: 400 }),
  sentDays: fc.integer({ min: 0, max: 300 }),
});

const FIRST_DAY = Date.UTC(2026, 6, 1);
const dayAfter = (days: number): string =>
  new Date(FIRST_DAY + days * 86_400_000).toISOString().slice(0, 10);

const bookings = fc
  .uniqueArray(booking, {
    minLength: 1,
    maxLength: 6,
    selector: ({ place, source, revision }) => `${place % 3} ${source} ${revision}`,
  })
  .map((drawn) => (keys: readonly string[]): readonly Booked[] => {
    const words = drawn.map(({ place, source, days, sentDays, ...draft }): Booked => {
      const item = keys[(place % 3) % keys.length] ?? never();
      const needs = draft.status === 'booked' || draft.status === 'moved';
      const sentAt = `${dayAfter(sentDays - 100)}T08:00:00Z`;
      return {
        ...{ item, source },
        draft: { ...draft, sentAt, ...(needs ? morningOf(dayAfter(days)) : {}) },
      };
    });
    const nameOf = ({ item, source, draft }: Booked) => `${item} ${source} ${draft.revision}`;
    return [...new Map(words.map((each) => [nameOf(each), each])).values()];
  });

/** Sorts by numbers that were drawn: a shuffle of what is known only later. */
const shuffled = <T>(all: readonly T[], by: readonly number[]): readonly T[] =>
  [...all.entries()]
    .sort(([a], [b]) => (by[a % by.length] ?? 0) - (by[b % by.length] ?? 0) || a - b)
    .map(([, one]) => one);

const examplesOfOne = fc.constantFrom(...CASE_NUMBERS).map(aboutCase);
const order = fc.array(fc.nat(), { minLength: 40, maxLength: 40 });

describe('everything that is said of appointments beside it', () => {
  it('makes the same record and the same Bundle in whatever order and however often it comes', async () => {
    let asked = 0;
    await fc.assert(
      fc.asyncProperty(
        examplesOfOne,
        bookings,
        order,
        order,
        async (messages, toBookings, a, b) => {
          const { version } = await arrived(messages);
          const items = version === undefined ? [] : readVersion(version).plan.items;
          const said = toBookings(items.map(({ key }) => key));
          const all = [...messages, ...said];
          const [first, second] = [
            await arrived(shuffled([...all, ...said], a)),
            await arrived(shuffled(all, b)),
          ];
          fc.pre(![...first.answers, ...second.answers].includes('invalid'));
          expect(second.version).toBe(first.version);
          expect(second.bundle).toBe(first.bundle);
          const plan = readVersion(first.version ?? never()).plan.items;
          asked += plan.filter(({ task }) => task === 'booking-check').length;
          for (const { item } of said) expect(plan.map(({ key }) => key)).toContain(item);
        },
      ),
      { numRuns: 8, seed: 20260301 },
    );
    expect(asked).toBeGreaterThan(0); // bookings that do not fit were among them
  });
});

describe('everything that is sent about a case', () => {
  it('makes the same record and the same Bundle, in whatever order and however often it comes', async () => {
    await fc.assert(
      fc.asyncProperty(twoOrders, async ([one, other]) => {
        const [first, second] = [await arrived(one), await arrived(other)];
        fc.pre(![...first.answers, ...second.answers].includes('invalid'));
        expect(second.version).toBe(first.version);
        expect(second.bundle).toBe(first.bundle);
        expect(first.version).toBeDefined();
      }),
      { numRuns: 15, seed: 20260301 },
    );
  });

  it('would be seen to differ: one message less is another record', async () => {
    const messages = aboutCase('EX-C-2026-008');
    const all = await arrived(messages);
    const fewer = await arrived(messages.slice(0, -1));
    expect(messages.length).toBeGreaterThan(3);
    expect(fewer.version).not.toBe(all.version);
    expect(fewer.bundle).not.toBe(all.bundle);
  });
});
