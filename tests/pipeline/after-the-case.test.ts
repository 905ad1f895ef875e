import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { createService } from '../../src/pipeline/index.js';
import { createRecordStore } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { altered, example, type Sent } from '../support/example-messages.js';

/*
 * Messages that come after a case, or before it, on a real database. Source: project definition,
 * README "Promises"; status codes of conflicts and refusals in tests/http.
 */

const test = await testDatabase();
const database = await test.open();
const store = createRecordStore(database);
let clock = '2027-01-01T12:00:00.000Z';
const service = createService({
  store,
  settings: {
    unit: { ...DEFAULT_UNIT_SETTINGS, waitingCaseDays: 10 },
    secret: 'a-secret-of-the-tests-that-is-long-enough',
    softwareVersion: '0',
  },
  now: () => clock,
});

const push = ({ kind, bytes }: Sent, source?: string) =>
  service.receive(kind, bytes, source === undefined ? {} : { source });
const check = ({ kind, bytes }: Sent) => service.check(kind, bytes, {});

async function pushed(message: Sent): Promise<string> {
  const receipt = await push(message);
  if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
  return receipt.receipt.caseId;
}

async function viewed(caseId: string, source?: string) {
  const view = await service.readCase(caseId, source === undefined ? {} : { source });
  if (view === undefined) throw new Error('there is such a case');
  return view;
}

const standings = async (caseId: string) =>
  (await viewed(caseId)).messages.map(({ kind, revision, standing }) =>
    [kind, revision, standing].join(' '),
  );

/** Invented messages about one case under another number, so that each test has its own. */
function own(n: number) {
  const identifier = { system: 'urn:oid:2.999.1.2', value: `EX-C-9${n}` };
  const about = (message: Sent) => altered(message, { case: identifier });
  const esdCase = about(example('case', 'stomach-dual-antiplatelet'));
  const { system, value } = esdCase.document.patient;
  const of = { patient: { system, value }, sentAt: '2026-12-01T08:00:00Z' };
  return {
    identifier,
    esdCase,
    report: about(example('pathology', 'stomach-high-risk')),
    bleeding: about(example('event', 'stomach-bleeding')),
    withdrawal: about(altered(example('withdrawal', 'minimal-wrong-patient'), of)),
  };
}

describe('a pathology report that comes before its case', () => {
  const { identifier, esdCase, report } = own(1);
  let caseId = '';

  it('is accepted, and waits', async () => {
    const receipt = await push(report);
    expect(receipt).toMatchObject({ kind: 'accepted', view: { state: 1, waitingFor: 'case' } });
    caseId = receipt.kind === 'accepted' ? receipt.receipt.caseId : '';
    const again = await push(report);
    expect(again).toMatchObject({ kind: 'repeated', view: { waitingFor: 'case' } });
  });

  it('is seen with what is known of it, and found by the numbers that it names', async () => {
    const view = await viewed(caseId);
    expect(view).toMatchObject({ waitingFor: 'case', delivery: { name: 'waiting-case' } });
    expect(view.messages).toMatchObject([
      { kind: 'pathology', key: report.document.accession, revision: 1, standing: 'waiting' },
    ]);
    expect(view.timeline.map(({ event, state }) => `${event} ${state}`)).toEqual([
      ...['received 1', 'waiting-case 1'],
    ]);
    const { patient } = report.document;
    for (const named of [{ case: identifier }, { patient }]) {
      const hits = await service.searchCases({ ...named, limit: 50 }, {});
      expect(hits).toMatchObject([{ caseId, delivery: 'waiting-case' }]);
    }
    const waiting = await service.searchCases({ delivery: 'waiting-case', limit: 50 }, {});
    expect(waiting.map((hit) => hit.caseId)).toContain(caseId);
  });

  it('is overdue when its case has not come in the days that the unit sets, no moment earlier', async () => {
    const { since } = (await viewed(caseId)).delivery;
    const at = (days: number) => new Date(Date.parse(since) + days * 86_400_000).toISOString();
    const before = clock;
    clock = at(9.999);
    expect(await viewed(caseId)).not.toHaveProperty('overdue');
    clock = at(10);
    expect(await viewed(caseId)).toMatchObject({ overdue: true });
    clock = before;
  });

  it('is part of a dry run of the case, as it would be of the push', async () => {
    const dry = await check(esdCase);
    expect(dry).toMatchObject({ kind: 'valid', view: { state: 2 } });
    expect(JSON.stringify(dry)).toContain('DiagnosticReport');
    expect((await viewed(caseId)).state).toBe(1);
  });

  it('joins the case when that comes', async () => {
    const dry = await check(esdCase);
    expect(await push(esdCase)).toMatchObject({ kind: 'accepted', view: { state: 2 } });
    const view = await viewed(caseId);
    if ('waitingFor' in view || dry.kind !== 'valid') throw new Error('the case has come');
    expect(view.assessment.curability.verdict.outcome.kind).toBe('decided');
    expect(view.delivery).toMatchObject({ name: 'queued', state: 2 });
    expect(await standings(caseId)).toEqual(['pathology 1 applied', 'case 1 applied']);
    expect(await service.readBundle(caseId, {})).toEqual(dry.bundle);
  });
});

describe('whose a case is', () => {
  const { esdCase, report } = own(2);
  const foreign = altered(report, { source: 'other-notes' });

  it('shows when it comes: what another source sent before is set aside, and seen no more', async () => {
    const caseId = await pushed(foreign);
    expect(await viewed(caseId, 'other-notes')).toMatchObject({ waitingFor: 'case' });
    expect(await service.readCase(caseId, { source: 'example-notes' })).toBeUndefined();
    await pushed(report);
    expect(await viewed(caseId, 'example-notes')).toMatchObject({ state: 2 });
    await pushed(esdCase);
    const standing = [...['pathology 1 set-aside', 'pathology 1 applied', 'case 1 applied']];
    expect(await standings(caseId)).toEqual(standing);
    expect(await viewed(caseId)).toMatchObject({
      setAside: [{ source: 'other-notes', problems: [{ rule: 'case-of-another-source' }] }],
    });
    expect(await service.readCase(caseId, { source: 'other-notes' })).toBeUndefined();
    const told = (await viewed(caseId)).timeline.map(({ detail }) => detail);
    expect(told).toContain('set aside: pathology revision 1 (case-of-another-source)');
  });

  it('is refused to another source from then on, in the dry run too', async () => {
    const problem = { rule: 'case-of-another-source' };
    const next = altered(foreign, { revision: 2 });
    expect(await push(next)).toMatchObject({ kind: 'conflict', problem });
    expect(await check(next)).toMatchObject({ kind: 'invalid', problems: [problem] });
  });
});

describe('a line of revisions', () => {
  const { esdCase, report } = own(3);
  const second = altered(report, {
    accession: { ...report.document.accession, value: 'EX-A-2026-0901' },
  });

  it('is one for each number of the laboratory', async () => {
    await pushed(esdCase);
    await pushed(altered(report, { revision: 4 }));
    const caseId = await pushed(second);
    expect(await standings(caseId)).toEqual([
      ...['case 1 applied', 'pathology 4 applied', 'pathology 1 applied'],
    ]);
  });

  it.each([
    ['a lower revision', altered(report, { revision: 3 }), 'revision-stale'],
    ['other content', altered(report, { revision: 4, laboratory: undefined }), 'revision-used'],
  ])('refuses %s, and says so in a dry run', async (_, message, rule) => {
    expect(await check(message)).toMatchObject({ kind: 'invalid', problems: [{ rule }] });
    expect(await push(message)).toMatchObject({ kind: 'conflict', problem: { rule } });
  });

  it('keeps what came too late, as superseded', async () => {
    const stale = await push(altered(report, { revision: 3 }));
    expect(stale).toMatchObject({ kind: 'conflict', problem: { rule: 'revision-stale' } });
    const [hit] = await service.searchCases({ case: own(3).identifier, limit: 1 }, {});
    expect(await standings(hit?.caseId ?? '')).toContain('pathology 3 superseded');
  });
});

describe('a message that contradicts the case as it is stored', () => {
  const { esdCase, report, bleeding, withdrawal } = own(4);
  const stranger = { system: 'urn:oid:2.999.1.1', value: 'EX-P-0001' };

  it.each([
    ['another patient', altered(report, { patient: stranger }), 'patient-differs', '/patient'],
    [
      'an event before the procedure',
      altered(bleeding, { occurredOn: '2020-01-01', occurredAt: undefined }),
      ...['before-procedure', '/occurredOn'],
    ],
    [
      'the case itself, moved to another patient',
      altered(esdCase, { revision: 2, patient: stranger }),
      ...['patient-differs', '/patient'],
    ],
  ])('is refused: %s', async (_, message, rule, pointer) => {
    await push(esdCase);
    const problems = [expect.objectContaining({ rule, pointer })];
    expect(await push(message)).toEqual({ kind: 'invalid', problems });
    expect(await check(message)).toEqual({ kind: 'invalid', problems });
  });

  it('is set aside, visibly, where it was the case that changed', async () => {
    await push(esdCase);
    const caseId = await pushed(bleeding);
    const { specimen: _s, safety: _f, dissection: _d, ...rest } = esdCase.document;
    const inOctober = JSON.parse(JSON.stringify(rest.times).replaceAll('2026-05', '2026-10'));
    const correction = { revision: 2, times: inOctober, sentAt: '2026-11-30T08:00:00Z' };
    await pushed(altered({ ...esdCase, document: rest }, correction));
    expect(await standings(caseId)).toEqual([
      ...['case 1 superseded', 'event 1 set-aside', 'case 2 applied'],
    ]);
  });

  it('is no withdrawal of the very case, which is then shown as withdrawn', async () => {
    const caseId = await pushed(withdrawal);
    expect(await viewed(caseId)).toMatchObject({ withdrawn: 'wrong-patient' });
  });
});

describe('the list of cases that wait for pathology', () => {
  const waiting = async (): Promise<readonly (number | undefined)[]> =>
    (
      await service.searchCases({ awaiting: 'pathology', case: own(5).identifier, limit: 9 }, {})
    ).map(({ awaitsPathologyDays }) => awaitsPathologyDays);
  const { esdCase, report, withdrawal } = own(5);
  const days = (from: string, to: string) =>
    Math.floor((Date.parse(to) - Date.parse(from)) / 864e5);

  it('has a case with a specimen, with its age in whole days', async () => {
    await pushed(esdCase);
    expect(await waiting()).toEqual([days(esdCase.document.times.scopeInAt, clock)]);
    const others = await service.searchCases({ awaiting: 'pathology', limit: 50 }, {});
    expect(others.every((hit) => hit.awaitsPathologyDays !== undefined)).toBe(true);
  });

  it('keeps it with an interim report, and lets it go with the final one', async () => {
    const interim = { ...report.document.report, status: 'interim' };
    await pushed(altered(report, { report: interim }));
    expect(await waiting()).toHaveLength(1);
    await pushed(altered(report, { revision: 2 }));
    expect(await waiting()).toEqual([]);
  });

  it('has no case without a specimen, and none that was withdrawn', async () => {
    const lost = altered(example('case', 'colon-specimen-not-retrieved'), {
      case: own(6).identifier,
    });
    await pushed(lost);
    const of = (n: number) =>
      service.searchCases({ awaiting: 'pathology', case: own(n).identifier, limit: 9 }, {});
    expect(await of(6)).toEqual([]);
    await pushed(own(7).esdCase);
    expect(await of(7)).toHaveLength(1);
    await pushed(altered(withdrawal, { case: own(7).identifier }));
    expect(await of(7)).toEqual([]);
  });
});
