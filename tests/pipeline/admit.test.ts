import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Admission, admit } from '../../src/pipeline/admit.js';
import type { JournalEntry } from '../../src/pipeline/index.js';

function entry(revision: number, hash = `hash ${revision}`, source = 'notes'): JournalEntry {
  return {
    caseId: 'c',
    kind: 'case',
    source,
    naturalKey: '',
    revision,
    sentAt: '2026-03-02T10:00:00+01:00',
    hash,
    bytes: new Uint8Array(),
    receivedAt: '2026-03-02T09:00:00.000Z',
  };
}

/** Plays arrivals one after the other, as the journal would keep them. */
function arrive(revisions: readonly number[]) {
  let kept: readonly JournalEntry[] = [];
  const answers: Admission['kind'][] = [];
  for (const revision of revisions) {
    const arriving = entry(revision);
    const { kind } = admit(kept, arriving);
    answers.push(kind);
    if (kind === 'new' || kind === 'stale') kept = [...kept, arriving];
  }
  return { answers, kept };
}

// Source: project definition, README "Promises" 2 and 3; HTTP status 409 per RFC 9110 15.5.10.
describe('what the journal says to a message', () => {
  it('takes rising revisions, whatever lies between them', () => {
    expect(arrive([1, 2, 7]).answers).toEqual(['new', 'new', 'new']);
  });

  it('keeps a lower revision and calls it stale', () => {
    expect(arrive([1, 3, 2]).answers).toEqual(['new', 'new', 'stale']);
    expect(arrive([3, 1]).answers).toEqual(['new', 'stale']);
  });

  it('answers the same bytes with the message that came first', () => {
    const first = entry(1);
    expect(admit([first], entry(1))).toEqual({ kind: 'repeat', first });
  });

  it('answers a stale message that comes again as stale, and one that was overtaken later not', () => {
    const [first, newer, stale] = [entry(2), entry(5), entry(3)];
    expect(admit([first, newer, stale], stale)).toMatchObject({
      kind: 'conflict',
      problem: { rule: 'revision-stale', expected: 'a revision above 5' },
    });
    expect(admit([first, newer, stale], first)).toEqual({ kind: 'repeat', first });
  });

  it('refuses other bytes under a used revision, even when it is stale', () => {
    expect(admit([entry(1), entry(2)], entry(1, 'other'))).toMatchObject({
      kind: 'conflict',
      problem: { rule: 'revision-used', pointer: '/revision' },
    });
  });

  it('refuses a case that another source has sent', () => {
    expect(admit([entry(1)], entry(2, 'h', 'stranger'))).toMatchObject({
      kind: 'conflict',
      problem: { rule: 'case-of-another-source', pointer: '/case' },
    });
  });

  it('keeps the same set for every order of arrival, with repetitions mixed in', () => {
    const revisions = fc.array(fc.integer({ min: 1, max: 6 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(revisions, (sent) => {
        const kept = arrive(sent).kept.map(({ revision }) => revision);
        expect([...kept].sort()).toEqual([...new Set(sent)].sort());
      }),
    );
  });
});
