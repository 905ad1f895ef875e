import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS, type UnitSettings } from '../../src/contract/index.js';
import { createService, type RecordStore } from '../../src/pipeline/index.js';

const never = () => Promise.reject(new Error('nothing may be stored'));
const nothing = () => Promise.resolve(undefined);
const STORE: RecordStore = {
  ...{ inCase: never, read: nothing, search: never, ready: never, entries: async () => [] },
  ...{ pastDeadline: never, countWaiting: never, alone: never, dailyTurn: never },
  followUps: {
    ...{ find: nothing, list: never, now: never, changes: never, toCome: never, events: never },
    unfilled: never,
  },
  feeds: { create: never, list: never, revoke: never, findByHash: never },
  outcomes: { read: never },
  facts: () => {
    throw new Error('nothing may be read');
  },
};

const service = (now: string, change: Partial<UnitSettings> = {}) =>
  createService({
    store: STORE,
    settings: {
      unit: { ...DEFAULT_UNIT_SETTINGS, ...change },
      secret: 'a-secret-of-the-tests-that-is-long-enough',
      softwareVersion: '0',
    },
    now: () => now,
  });

const sent = JSON.parse(readFileSync('examples/cases/minimal.json', 'utf8'));
const bytes = (change: object) => new TextEncoder().encode(JSON.stringify({ ...sent, ...change }));

describe('a message that is refused before anything is stored', () => {
  const now = '2027-01-01T12:00:00.000Z';

  it('is one from the future, beyond what two clocks may differ', async () => {
    const early = await service(now).receive(
      'case',
      bytes({ sentAt: '2027-01-01T13:05:01+01:00' }),
      {},
    );
    expect(early).toMatchObject({
      kind: 'invalid',
      problems: [{ rule: 'sent-in-future', pointer: '/sentAt' }],
    });
    // Five minutes ahead is within the tolerance: the store is asked, and refuses in this test.
    const within = service(now).receive('case', bytes({ sentAt: '2027-01-01T13:05:00+01:00' }), {});
    await expect(within).rejects.toThrow('nothing may be stored');
  });

  it('is one of another source than the caller', async () => {
    const answer = await service(now).receive('case', bytes({}), { source: 'other-notes' });
    expect(answer).toMatchObject({
      kind: 'forbidden',
      problem: { rule: 'source-of-another', pointer: '/source' },
    });
  });

  it('is one that is no JSON, and one that breaks the contract, each by its kind', async () => {
    const unreadable = await service(now).receive('case', new TextEncoder().encode('{'), {});
    expect(unreadable).toMatchObject({ kind: 'unreadable', problems: [{ rule: 'not-json' }] });
    const invalid = await service(now).receive('case', bytes({ revision: 0 }), {});
    expect(invalid).toMatchObject({ kind: 'invalid', problems: [{ pointer: '/revision' }] });
  });

  it('keeps nothing in a dry run, whatever is asked', async () => {
    expect((await service(now).check('case', bytes({}), {})).kind).toBe('valid');
    expect(await service(now).check('case', bytes({ team: {} }), {})).toMatchObject({
      kind: 'invalid',
      problems: [{ rule: 'missing-field', pointer: '/team/operator' }],
    });
  });
});

// Source: FHIR R4, code system diagnostic-report-status: final is complete and verified.
describe('the report of a case whose pathology is awaited', () => {
  const example = readFileSync('examples/cases/rectum.json');
  const statusUnder = async (endoscopyReport: UnitSettings['endoscopyReport']) => {
    const asked = service('2027-01-01T12:00:00.000Z', { endoscopyReport });
    const dry = await asked.check('case', example, {});
    if (dry.kind !== 'valid') throw new Error('the example is a good case');
    return dry.bundle?.entry?.flatMap(({ resource }) =>
      resource?.resourceType === 'DiagnosticReport' && 'status' in resource
        ? [resource.status]
        : [],
    );
  };

  it('is preliminary, or final where the unit signs it at once', async () => {
    expect(await statusUnder('wait')).toEqual(['preliminary']);
    expect(await statusUnder('sign-at-once')).toEqual(['final']);
  });
});
