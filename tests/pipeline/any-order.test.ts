import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService, tellTime } from '../../src/pipeline/index.js';
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

/** What stands when all has come: the version and the Bundle, as text. */
async function arrived(messages: readonly Sent[]) {
  const store = memoryStore(now);
  const service = createService({ store, settings: SETTINGS, now });
  const answers: string[] = [];
  let caseId = '';
  for (const { kind, bytes } of messages) {
    const receipt = await service.receive(kind, bytes, {});
    answers.push('problem' in receipt ? receipt.problem.rule : receipt.kind);
    if ('receipt' in receipt) caseId = receipt.receipt.caseId;
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
