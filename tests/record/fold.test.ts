import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS, parseCase, type UnitSettings } from '../../src/contract/index.js';
import { InvariantError, sha256 } from '../../src/kernel/index.js';
import {
  type CaseMessage,
  foldRecord,
  type RecordMessage,
  toFacts,
  viewRecord,
} from '../../src/record/index.js';

const EXAMPLE = JSON.parse(readFileSync('examples/cases/stomach-differentiated.json', 'utf8'));

/** The example in a revision, with what else it says then. */
function message(revision: number, change: object = {}): CaseMessage {
  const bytes = new TextEncoder().encode(JSON.stringify({ ...EXAMPLE, ...change, revision }));
  const parsed = parseCase(bytes);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return { kind: 'case', ...parsed.value, sha256: sha256(bytes) };
}

function folded(messages: readonly RecordMessage[], unit: UnitSettings) {
  const version = foldRecord('c', messages, unit);
  if (version === undefined) throw new Error('the messages hold their case');
  return version;
}

const MESSAGES = [
  message(1),
  message(2, { lesionsInSession: 2 }),
  message(3, { sentAt: '2026-06-30T12:00:00+02:00' }),
  message(5, { sentAt: '2026-06-30T10:00:00Z', lesionsInSession: 3 }),
];

describe('the record is a fold over a set of messages', () => {
  it('is the same for every order of arrival', () => {
    const expected = folded(MESSAGES, DEFAULT_UNIT_SETTINGS);
    fc.assert(
      fc.property(fc.shuffledSubarray(MESSAGES, { minLength: MESSAGES.length }), (shuffled) => {
        expect(folded(shuffled, DEFAULT_UNIT_SETTINGS)).toEqual(expected);
      }),
    );
  });

  it('follows the highest revision and counts every message', () => {
    const record = folded(MESSAGES, { ...DEFAULT_UNIT_SETTINGS, version: 7 });
    const view = viewRecord(record, DEFAULT_UNIT_SETTINGS);
    expect(view.now.esdCase.fields.revision).toBe(5);
    expect(view.before.map(({ esdCase }) => esdCase.fields.revision)).toEqual([1, 2, 3]);
    expect(record).toMatchObject({ state: 4, settingsVersion: 7 });
  });

  it('takes the greatest time by instant, not by text', () => {
    const late = message(2, { sentAt: '2026-07-01T01:00:00+14:00' });
    const later = message(3, { sentAt: '2026-06-30T23:00:00-01:00' });
    // 2026-06-30T11:00Z lies before 2026-07-01T00:00Z.
    expect(folded([late, later], DEFAULT_UNIT_SETTINGS).stateAt).toBe('2026-06-30T23:00:00-01:00');
  });

  it('refuses no message, and two of one revision, as faults of ours', () => {
    expect(() => folded([], DEFAULT_UNIT_SETTINGS)).toThrow(InvariantError);
    expect(() => folded([message(1), message(1)], DEFAULT_UNIT_SETTINGS)).toThrow(InvariantError);
  });

  it('survives being written and read', () => {
    const record = folded(MESSAGES, DEFAULT_UNIT_SETTINGS);
    expect(JSON.parse(JSON.stringify(record))).toEqual(record);
  });
});

describe('the flat facts of a record', () => {
  const facts = toFacts(
    viewRecord(folded([message(1)], DEFAULT_UNIT_SETTINGS), DEFAULT_UNIT_SETTINGS),
    ({ value }) => `p(${value})`,
  );

  it('say what the message says', () => {
    expect(facts).toMatchObject({
      organ: EXAMPLE.lesion.organ,
      resectionOutcome: EXAMPLE.resection.outcome,
      lesionLongAxisMm: EXAMPLE.lesion.longAxisMm,
      scopeInAt: EXAMPLE.times.scopeInAt,
      operator: `p(${EXAMPLE.team.operator.value})`,
    });
  });

  it('hold null, not a guess, for what is not told', () => {
    const { safety: _safety, ...silent } = EXAMPLE;
    const bytes = new TextEncoder().encode(JSON.stringify(silent));
    const parsed = parseCase(bytes);
    if (!parsed.ok) throw new Error('the example without safety is a good case');
    const record = folded(
      [{ kind: 'case', ...parsed.value, sha256: sha256(bytes) }],
      DEFAULT_UNIT_SETTINGS,
    );
    expect(toFacts(viewRecord(record, DEFAULT_UNIT_SETTINGS), () => 'p')).toMatchObject({
      perforation: null,
      muscleInjury: null,
    });
  });
});
