import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { toMessage } from '../../src/pipeline/parse-record-message.js';
import { foldRecord, type RecordMessage, viewRecord } from '../../src/record/index.js';
import { altered, example, type Sent } from '../support/example-messages.js';

/*
 * Source: project definition, DEVELOPERS "Decisions": the record is a fold over a set, a message
 * that contradicts the case as it is known is set aside, a case never moves to another patient.
 */

const read = ({ kind, bytes }: Sent): RecordMessage =>
  toMessage({
    ...{ caseId: 'c', kind, bytes, source: '', naturalKey: '', revision: 1 },
    ...{ sentAt: '', hash: '', receivedAt: '' },
  });

function folded(...sent: readonly Sent[]) {
  const version = foldRecord('c', sent.map(read), DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the messages hold their case');
  return { version, view: viewRecord(version, DEFAULT_UNIT_SETTINGS) };
}

const CASE = example('case', 'stomach-dual-antiplatelet');
const REPORT = example('pathology', 'stomach-high-risk');
const BLEEDING = example('event', 'stomach-bleeding');
const OTHER_PATIENT = { system: 'urn:oid:2.999.1.1', value: 'EX-P-0001' };
const OTHER_REPORT = { accession: { system: 'urn:oid:2.999.1.11', value: 'EX-A-2026-0900' } };
const later = { sentAt: '2026-09-01T08:00:00Z' };

describe('a message that contradicts its case', () => {
  const stray = altered(REPORT, { patient: OTHER_PATIENT });

  it.each([
    ['after it', [CASE, stray]],
    ['before it', [stray, CASE]],
  ])('is set aside, with the rule that it breaks, when it came %s', (_, sent) => {
    const { version, view } = folded(...sent);
    expect(version.setAside).toEqual([
      {
        ...{ kind: 'pathology', source: 'example-notes', key: REPORT.document.accession },
        revision: 1,
        problems: [expect.objectContaining({ rule: 'patient-differs', pointer: '/patient' })],
      },
    ]);
    expect(view.now.reports).toEqual([]);
    expect(version.state).toBe(2);
  });

  it('is applied once it is put right', () => {
    const { version, view } = folded(stray, CASE, altered(REPORT, { revision: 2 }));
    expect(version.setAside).toEqual([]);
    expect(view.now.reports.map(({ fields }) => fields.revision)).toEqual([2]);
  });

  it('takes the sound revision before it out of force: its sender has replaced that', () => {
    const { view } = folded(CASE, REPORT, altered(stray, { revision: 2 }));
    expect(view.now.reports).toEqual([]);
  });

  it('is set aside when another source sent it, and does not replace what the own one says', () => {
    const foreign = altered(REPORT, { source: 'other-notes', revision: 7 });
    const { version, view } = folded(foreign, CASE, REPORT);
    expect(version.setAside).toMatchObject([
      { source: 'other-notes', problems: [{ rule: 'case-of-another-source' }] },
    ]);
    expect(view.now.reports.map(({ fields }) => fields.source)).toEqual(['example-notes']);
  });
});

describe('the report in force', () => {
  const inForce = (...sent: readonly Sent[]) =>
    folded(CASE, ...sent).view.now.reports.map(({ fields }) => fields.accession.value);
  const own = REPORT.document.accession.value;

  it('is the later one of two final ones', () => {
    const report = { ...REPORT.document.report, reportedAt: '2026-08-30T08:00:00Z' };
    const second = altered(REPORT, { ...OTHER_REPORT, ...later, report });
    expect(inForce(REPORT, second)).toEqual(['EX-A-2026-0900', own]);
    expect(inForce(second, REPORT)).toEqual(['EX-A-2026-0900', own]);
  });

  it('is a final one before a later interim one', () => {
    const report = { status: 'interim', version: 1, reportedAt: '2026-08-30T08:00:00Z' };
    const interim = altered(REPORT, { ...OTHER_REPORT, ...later, report });
    expect(inForce(interim, REPORT)).toEqual([own, 'EX-A-2026-0900']);
  });
});

describe('what a message changed', () => {
  const verdict = { from: expect.stringContaining('indeterminate'), to: expect.anything() };

  it('is the verdict, for the report that was sent last', () => {
    expect(folded(CASE, REPORT).version.change).toMatchObject({
      by: { kind: 'pathology', revision: 1 },
      verdict,
    });
  });

  it('is no verdict for an event that is sent after it', () => {
    const { change } = folded(CASE, REPORT, altered(BLEEDING, later)).version;
    expect(change).toEqual({ by: { kind: 'event', revision: 1 } });
  });

  it('is nothing for the first message, and for a case that its report has waited for', () => {
    expect(folded(CASE).version.change).toBeUndefined();
    expect(folded(altered(CASE, later), REPORT).version.change).toBeUndefined();
  });
});

describe('what may have been said before', () => {
  const revisionsOf = (...sent: readonly Sent[]) =>
    folded(...sent).view.before.map(({ esdCase, reports, events }) =>
      [esdCase, reports[0], events[0]].map((message) => message?.fields.revision ?? '-').join(),
    );
  const case2 = altered(CASE, { revision: 2 });
  const report2 = altered(REPORT, { revision: 2 });

  it('is every pair of lower revisions of case and report: the two may have moved at once', () => {
    const all = ['1,-,-', '1,1,-', '1,2,-', '2,-,-', '2,1,-'];
    expect(revisionsOf(CASE, case2, REPORT, report2).sort()).toEqual(all);
  });

  it('is of each event every beginning, together with those of the case', () => {
    const event2 = altered(BLEEDING, { revision: 2 });
    const all = ['1,-,-', '1,-,1', '1,-,2', '2,-,-', '2,-,1'];
    expect(revisionsOf(CASE, case2, BLEEDING, event2).sort()).toEqual(all);
  });

  it('is never a case of another patient, whose revision came too late', () => {
    const moved = altered(CASE, { patient: OTHER_PATIENT });
    expect(revisionsOf(moved, case2)).toEqual([]);
    expect(revisionsOf(CASE, case2)).toEqual(['1,-,-']);
  });
});
