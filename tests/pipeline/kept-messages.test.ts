import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { InvariantError } from '../../src/kernel/index.js';
import { createService, type JournalEntry, kindOf } from '../../src/pipeline/index.js';
import { caseIdOf } from '../../src/pipeline/naming.js';
import { parseRecordMessage, toMessage } from '../../src/pipeline/parse-record-message.js';
import { toEntry } from '../../src/pipeline/receive-message.js';
import { altered, EXAMPLES, sent } from '../support/example-messages.js';
import { memoryStore } from '../support/memory-store.js';

/*
 * The journal keeps what it took. Source: project definition, README "Promises" 1: what was
 * acknowledged stays, also when a later release takes less.
 */

const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
const NOW = '2027-01-01T12:00:00.000Z';
const store = memoryStore(() => NOW);
const service = createService({
  store,
  settings: {
    unit: DEFAULT_UNIT_SETTINGS,
    secret: SECRET,
    softwareVersion: '0',
  },
  now: () => NOW,
});

/** Breaks a rule across its fields; its form is sound. */
const FAULTY = JSON.parse(readFileSync('examples/faulty/hole-without-perforation.json', 'utf8'));
const faulty = sent('case', FAULTY);
const mended = altered(faulty, { revision: 2, safety: { ...FAULTY.safety, muscleInjury: '0' } });

const kept = (bytes: Uint8Array): JournalEntry => ({
  ...{ caseId: 'c', kind: 'case', source: 's', naturalKey: '', revision: 1 },
  ...{ sentAt: NOW, hash: '0'.repeat(64), bytes, receivedAt: NOW },
});

describe('a message that was taken before its rule became stricter', () => {
  it('breaks that rule now', () => {
    const parsed = parseRecordMessage('case', faulty.bytes);
    expect(parsed).toMatchObject({ ok: false, problems: [{ rule: 'CC-09' }] });
  });

  it('does not keep its case from being corrected', async () => {
    const caseId = await keptByEarlierRelease();
    expect(await service.receive('case', mended.bytes, {})).toMatchObject({
      kind: 'accepted',
      receipt: { caseId },
      view: { state: 2 },
    });
    expect(await service.readCase(caseId, {})).toMatchObject({ revision: 2 });
    expect(await service.readBundle(caseId, {})).toMatchObject({ type: 'transaction' });
  });

  it('would be a fault of ours if it had not even the form of its schema', () => {
    expect(() => toMessage(kept(new TextEncoder().encode('{"schema":"case/1"}')))).toThrow(
      InvariantError,
    );
  });
});

/** Puts the faulty message into the journal, as a release with the looser rule did. */
async function keptByEarlierRelease(): Promise<string> {
  const message = toMessage(kept(faulty.bytes));
  if (!('case' in message.fields)) throw new Error('the message names its case');
  const caseId = caseIdOf(SECRET, message.fields.case);
  const entry = toEntry(caseId, faulty.bytes, message, NOW);
  await store.inCase(caseId, (journal) => journal.append(entry));
  return caseId;
}

describe('what the journal gives back', () => {
  it.each(EXAMPLES.map((one) => [one.kind, one.document.case.value, one] as const))(
    'is what the contract made of it: %s of %s',
    (kind, _, { bytes }) => {
      const parsed = parseRecordMessage(kind, bytes);
      if (!parsed.ok) throw new Error('the example is good');
      expect(toMessage({ ...kept(bytes), kind })).toEqual(parsed.value);
    },
  );
});

describe('a message of our own', () => {
  const asOf = sent('case', {
    ...{ schema: 'as-of/1', source: 'example-notes', case: FAULTY.case, revision: 1 },
    ...{ sentAt: NOW, asOf: NOW, reason: 'time-passed' },
  });

  it('is taken from nobody, under whatever name', async () => {
    expect(kindOf(asOf.bytes)).toBe('case');
    for (const kind of ['case', 'pathology', 'event', 'examination', 'withdrawal'] as const) {
      expect(await service.receive(kind, asOf.bytes, {})).toMatchObject({
        kind: 'invalid',
        problems: expect.arrayContaining([expect.objectContaining({ pointer: '/schema' })]),
      });
    }
  });
});
