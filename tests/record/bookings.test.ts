import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bookingSchema, DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { sha256 } from '../../src/kernel/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import {
  type BookingMessage,
  foldRecord,
  knowledgeOf,
  type RecordMessage,
  viewRecord,
} from '../../src/record/index.js';
import { type BookingDraft, bookingBytes, morningOf } from '../support/bookings.js';
import { altered, example, type Sent } from '../support/example-messages.js';

/*
 * Oracle: laws of a set, and the project definition of lines: each sender counts its own
 * revisions, and the word that was said last counts.
 */

function message({ kind, bytes }: Sent): RecordMessage {
  const parsed = parseRecordMessage(kind, bytes);
  if (!parsed.ok) throw new Error('an example is sound');
  return parsed.value;
}

function said(draft: BookingDraft, source = 'scheduler', item = 'GAS-1.1'): BookingMessage {
  const bytes = bookingBytes(draft);
  const fields = bookingSchema.parse(JSON.parse(new TextDecoder().decode(bytes)));
  return {
    kind: 'booking',
    fields: { ...fields, source, item },
    decimals: {},
    sha256: sha256(bytes),
  };
}

function folded(messages: readonly RecordMessage[]) {
  const version = foldRecord('c', messages, DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the messages hold their case');
  return version;
}

const itemIn = (messages: readonly RecordMessage[], key: string) =>
  folded(messages).plan.items.find((item) => item.key === key);

const ESD = message(example('case', 'stomach-differentiated'));
const REPORT = example('pathology', 'stomach-differentiated');
const CLINICAL = [
  ESD,
  message(REPORT),
  message(altered(REPORT, { revision: 2, sentAt: '2026-03-20T08:00:00Z' })),
  message(example('examination', 'stomach-first')),
];
const at = (on: string) => ({ sentAt: `${on}T08:00:00Z` });
const BOOKINGS = [
  said({ ...at('2026-02-05'), ...morningOf('2026-06-01') }, 'scheduler', 'provisional.1'),
  said({ ...at('2026-03-01'), ...morningOf('2026-07-01') }),
  said({ ...at('2026-03-03'), revision: 2, status: 'moved', ...morningOf('2026-07-28') }),
  said({ ...at('2026-03-02'), ...morningOf('2026-09-28') }, 'other-scheduler'),
  said({ ...at('2026-08-01'), ...morningOf('2027-07-28') }, 'scheduler', 'GAS-1.2'),
  said({ ...at('2027-07-28'), revision: 2, status: 'did-not-attend' }, 'scheduler', 'GAS-1.2'),
];
const ALL = [...CLINICAL, ...BOOKINGS];

describe('bookings in a record', () => {
  it('say the same in every order of arrival', () => {
    const expected = folded(ALL);
    fc.assert(
      fc.property(fc.shuffledSubarray(ALL, { minLength: ALL.length }), (shuffled) => {
        expect(folded(shuffled)).toEqual(expected);
      }),
      { numRuns: 30 },
    );
    expect(expected.state).toBe(ALL.length);
    expect(JSON.parse(JSON.stringify(expected))).toEqual(expected);
  });

  it('stand on the items that they are about, also on one that is gone', () => {
    expect(itemIn(ALL, 'provisional.1')).toMatchObject({
      state: 'superseded',
      booking: { status: 'booked', on: '2026-06-01' },
    });
    expect(itemIn(ALL, 'GAS-1.1')?.booking).toMatchObject({ on: '2026-07-28', moved: true });
    expect(itemIn(ALL, 'GAS-1.2')).toMatchObject({
      state: 'open',
      urgency: 'urgent',
      booking: { status: 'did-not-attend', on: '2027-07-28' },
    });
    const checks = folded(ALL).plan.items.filter(({ task }) => task === 'booking-check');
    expect(checks.filter(({ state }) => state === 'open').map(({ about }) => about)).toEqual([
      'provisional.1',
    ]);
  });

  it('leave the verdict, its windows and the date of the plan as they are', () => {
    const [with_, without] = [folded(ALL), folded(CLINICAL)];
    expect(with_.assessment).toEqual(without.assessment);
    expect(with_.plan.calculatedAt).toBe(without.plan.calculatedAt);
    const dueOf = ({ plan }: typeof with_) =>
      plan.items.filter(({ task }) => task !== 'booking-check').map(({ key, due }) => [key, due]);
    expect(dueOf(with_)).toEqual(dueOf(without));
  });

  it('of one sender count by revision, whatever its clock says', () => {
    const late = said({ ...at('2026-05-01'), ...morningOf('2026-07-01') });
    const next = said({
      ...at('2026-04-01'),
      revision: 2,
      status: 'moved',
      ...morningOf('2026-07-08'),
    });
    expect(itemIn([...CLINICAL, late, next], 'GAS-1.1')?.booking?.on).toBe('2026-07-08');
  });

  it('of two senders count by time, and a revision is never older than those before it', () => {
    const one = said({ ...at('2026-05-03'), ...morningOf('2026-07-01') });
    const other = said({ ...at('2026-05-02'), ...morningOf('2026-07-08') }, 'other-scheduler');
    expect(itemIn([...CLINICAL, one, other], 'GAS-1.1')?.booking?.on).toBe('2026-07-01');
    const next = said({
      ...at('2026-05-01'),
      revision: 2,
      status: 'moved',
      ...morningOf('2026-07-02'),
    });
    expect(itemIn([...CLINICAL, one, next, other], 'GAS-1.1')?.booking?.on).toBe('2026-07-02');
    const third = said(
      { ...at('2026-05-04'), revision: 2, status: 'cancelled' },
      'other-scheduler',
    );
    expect(itemIn([...CLINICAL, one, other, third], 'GAS-1.1')?.booking?.status).toBe('cancelled');
  });

  it('are never set aside, even before a case that was corrected to a later day', () => {
    const early = said({ ...at('2026-02-01'), ...morningOf('2025-12-01') });
    const known = knowledgeOf([...CLINICAL, early]);
    expect(known?.setAside).toEqual([]);
    expect(known?.bookings).toEqual([early]);
    expect(itemIn([...CLINICAL.slice(0, 3), early], 'booking-check-GAS-1.1')?.state).toBe('open');
  });

  it('say nothing while the case has not come', () => {
    expect(foldRecord('c', BOOKINGS, DEFAULT_UNIT_SETTINGS)).toBeUndefined();
  });
});

describe('what was known before', () => {
  const view = viewRecord(folded(ALL), DEFAULT_UNIT_SETTINGS);

  it('holds every booking, or those that had been said by then', () => {
    for (const { bookings, stood } of view.before) {
      if (!stood) expect(bookings).toHaveLength(BOOKINGS.length);
    }
    const counts = view.before.filter(({ stood }) => stood).map(({ bookings }) => bookings.length);
    // Before report, amended report and examination: sent on days between the bookings.
    expect(new Set(counts)).toEqual(new Set([1, 4]));
  });

  it('asks about no booking only because a supposed plan lacks its item', () => {
    const supposed = view.before.filter(({ stood }) => !stood);
    expect(supposed.length).toBeGreaterThan(2);
    for (const { plan } of supposed) {
      expect(
        plan.items.filter(({ reasons }) => reasons.some(({ code }) => code === 'not-planned-now')),
      ).toEqual([]);
    }
    const plain = folded([...CLINICAL, said({ ...at('2026-03-25'), ...morningOf('2026-07-28') })]);
    expect(plain.plan.items.filter(({ task }) => task === 'booking-check')).toEqual([]);
  });
});

// Whatever was sent of a plan is taken back by a later one, so that it must still be there.
describe('the task to look at a booking', () => {
  const { report } = REPORT.document;
  const { reportedAt: _at, ...undated } = report;
  const turns = [
    ...ALL,
    message(
      altered(example('case', 'stomach-differentiated'), {
        revision: 2,
        sentAt: '2026-02-06T08:00:00Z',
        lesionsInSession: 2,
      }),
    ),
    message(
      altered(REPORT, {
        revision: 3,
        sentAt: '2026-04-20T08:00:00Z',
        report: { ...undated, status: 'interim' },
      }),
    ),
    message(altered(REPORT, { revision: 4, sentAt: '2026-05-20T08:00:00Z' })),
    said({ ...at('2026-05-01'), revision: 2, status: 'cancelled' }, 'scheduler', 'provisional.1'),
    said({ ...at('2026-05-21'), revision: 3, ...morningOf('2027-01-04') }),
  ];
  const itemsIn = (messages: readonly RecordMessage[]) =>
    foldRecord('c', messages, DEFAULT_UNIT_SETTINGS)?.plan.items ?? [];

  /** Nobody can book what is not in the list yet: such a word comes once more, later. */
  function states(messages: readonly RecordMessage[]) {
    const found: ReturnType<typeof itemsIn>[] = [];
    let come: readonly RecordMessage[] = [];
    let items: ReturnType<typeof itemsIn> = [];
    for (const next of [...messages, ...messages, ...messages]) {
      const isKnown = 'item' in next.fields ? isIn(items, next.fields.item) : true;
      if (!isKnown || come.includes(next)) continue;
      come = [...come, next];
      items = itemsIn(come);
      found.push(items);
    }
    expect(come).toHaveLength(messages.length);
    return found;
  }
  const isIn = (items: ReturnType<typeof itemsIn>, wanted: string): boolean =>
    items.some(({ key }) => key === wanted);

  it('is never forgotten once it was open, in whatever order messages come', () => {
    let opened = 0;
    fc.assert(
      fc.property(fc.shuffledSubarray(turns, { minLength: turns.length }), (messages) => {
        const open = new Set<string>();
        for (const items of states(messages)) {
          expect([...open].filter((key) => !isIn(items, key))).toEqual([]);
          for (const { task, state, key } of items) {
            if (task === 'booking-check' && state === 'open') open.add(key);
          }
        }
        opened += open.size;
      }),
      { numRuns: 12, seed: 20260301 },
    );
    expect(opened).toBeGreaterThan(10);
  });
});
