import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  CASE_CHECKS,
  caseSchema,
  checkAgainstCase,
  pathologySchema,
} from '../../../src/contract/index.js';
import { InvariantError } from '../../../src/kernel/index.js';
import { changed, type Fields } from './sound-report.js';

const sentCase: object = JSON.parse(readFileSync('examples/cases/colon-caecum.json', 'utf8'));

interface Edge {
  readonly rule: string;
  readonly says: string;
  readonly last: Fields;
  readonly beyond: Fields;
  /** Fields of the case, where it must be another one. */
  readonly esd?: Fields;
  readonly esdBeyond?: Fields;
}

/** CC rows: common practice, no source. The others are project rules. */
const EDGES: readonly Edge[] = [
  {
    rule: 'patient-differs',
    says: 'the number alone is not the patient',
    last: {},
    beyond: { 'patient.system': 'urn:oid:2.999.1.99' },
  },
  {
    rule: 'CC-14',
    says: 'a report is signed after the scope is out, by instant',
    last: {
      'report.reportedAt': '2026-03-03T12:02:01Z',
      'specimen.receivedAt': undefined,
    },
    beyond: {
      'report.reportedAt': '2026-03-03T12:02:00Z',
      'specimen.receivedAt': undefined,
    },
  },
  {
    rule: 'CC-14',
    says: 'a specimen may be received while the wound is still closed',
    last: { 'specimen.receivedAt': '2026-03-03T12:44:00+01:00' },
    beyond: { 'specimen.receivedAt': '2026-03-03T12:43:59+01:00' },
    esd: { 'times.dissectionEndAt': '2026-03-03T12:44:00+01:00' },
  },
  {
    rule: 'CC-14',
    says: 'without an end of the dissection the start counts',
    last: { 'specimen.receivedAt': '2026-03-03T10:45:00+01:00' },
    beyond: { 'specimen.receivedAt': '2026-03-03T10:44:59+01:00' },
    esd: { 'times.dissectionEndAt': undefined },
  },
  {
    rule: 'no-specimen',
    says: 'nobody says whether it was retrieved, or says that it was not',
    last: {},
    beyond: {},
    esd: { specimen: undefined },
    esdBeyond: { specimen: { retrieved: false } },
  },
  {
    rule: 'no-specimen',
    says: 'an abandoned dissection may yield one, one that never began does not',
    last: { 'findings.resectionStatus': undefined },
    beyond: { 'findings.resectionStatus': undefined },
    esd: { resection: { outcome: 'abandoned' } },
    esdBeyond: { resection: { outcome: 'not-started' } },
  },
  {
    rule: 'tumour-of-another-organ',
    says: 'any organ may hold another tumour',
    last: { findings: { histology: 'carcinoma', tumour: 'other' } },
    beyond: { findings: { histology: 'carcinoma', tumour: 'duodenal' } },
  },
  {
    rule: 'tumour-of-another-organ',
    says: 'a gastric one lies in the oesophagus at the junction alone',
    last: { findings: { histology: 'carcinoma', tumour: 'gastric' } },
    beyond: { findings: { histology: 'carcinoma', tumour: 'gastric' } },
    esd: { lesion: { organ: 'oesophagus', longAxisMm: 20 } },
    esdBeyond: {
      lesion: { organ: 'oesophagus', site: 'oesophagus-upper-third', longAxisMm: 20 },
    },
  },
  {
    rule: 'CC-12',
    says: 'the laboratory may count a lesion at the border to the other side',
    last: { 'findings.site': 'rectosigmoid-junction' },
    beyond: { 'findings.site': 'rectosigmoid-junction' },
    esd: { lesion: { organ: 'colon', site: 'sigmoid-colon', longAxisMm: 20 } },
    esdBeyond: { lesion: { organ: 'colon', site: 'caecum', longAxisMm: 20 } },
  },
  {
    rule: 'CC-12',
    says: 'also when the case names no site, but not from one end to the other',
    last: { 'findings.site': 'rectosigmoid-junction' },
    beyond: { 'findings.site': 'rectum-middle' },
    esd: { lesion: { organ: 'colon', longAxisMm: 20 } },
  },
  {
    rule: 'CC-02',
    says: 'en bloc is one piece in the laboratory, too',
    last: { 'specimen.piecesReceived': 1, 'specimen.pieces': [{}] },
    beyond: { 'specimen.piecesReceived': 2, 'findings.resectionStatus': undefined },
  },
  {
    rule: 'CC-02',
    says: 'of pieces nobody asks it',
    last: {
      'specimen.piecesReceived': undefined,
      'specimen.pieces': [{}, {}],
      'findings.resectionStatus': undefined,
    },
    beyond: {
      'specimen.piecesReceived': undefined,
      'specimen.pieces': [{}, {}],
      'findings.resectionStatus': undefined,
    },
    esd: { resection: { outcome: 'piecemeal', pieces: 3 } },
    esdBeyond: {},
  },
  {
    rule: 'CC-03',
    says: 'the tumour may fill the specimen of the case: 40 mm',
    last: { specimen: undefined, 'findings.sizeMm': 40 },
    beyond: { specimen: undefined, 'findings.sizeMm': 40.5 },
  },
  {
    rule: 'CC-03',
    says: 'and in the short axis: 33 mm; of pieces nobody asks it',
    last: {
      specimen: undefined,
      'findings.sizeMm': 35,
      'findings.shortSizeMm': 33.5,
      'findings.resectionStatus': undefined,
    },
    beyond: { specimen: undefined, 'findings.sizeMm': 35, 'findings.shortSizeMm': 33.5 },
    esd: { resection: { outcome: 'piecemeal' } },
    esdBeyond: {},
  },
  {
    rule: 'CC-06',
    says: 'R0 is stated of a lesion of which nothing was left',
    last: {},
    beyond: {},
    esd: { resection: { outcome: 'en-bloc' } },
    esdBeyond: { resection: { outcome: 'en-bloc', complete: false } },
  },
  {
    rule: 'CC-06',
    says: 'and not of pieces, whose margins may be free',
    last: { 'findings.resectionStatus': undefined },
    beyond: { 'findings.resectionStatus': 'R0' },
    esd: { resection: { outcome: 'piecemeal' } },
  },
];

describe('a report beside its case', () => {
  it.each(EDGES)('$rule: $says', ({ rule, last, beyond, esd = {}, esdBeyond = esd }) => {
    expect(rulesBeside(changed(last), changed(esd, sentCase))).toEqual([]);
    const rules = rulesBeside(changed(beyond), changed(esdBeyond, sentCase));
    expect(new Set(rules)).toEqual(new Set([rule]));
  });

  it('is tried by every rule', () => {
    expect(new Set(EDGES.map(({ rule }) => rule))).toEqual(
      new Set(CASE_CHECKS.map(({ rule }) => rule)),
    );
  });

  it('says nothing of an interim report without findings', () => {
    const told = { specimen: undefined, findings: undefined, ancillary: undefined };
    const interim = { ...told, report: { status: 'interim', version: 1 } };
    expect(rulesBeside(changed(interim), sentCase)).toEqual([]);
  });

  it('that is the case of another report is a bug of the caller', () => {
    const other = changed({ 'case.value': 'EX-C-2026-999' }, sentCase);
    expect(() => rulesBeside(changed({}), other)).toThrow(InvariantError);
  });
});

function rulesBeside(report: unknown, esd: unknown): readonly string[] {
  const problems = checkAgainstCase(pathologySchema.parse(report), caseSchema.parse(esd));
  return problems.map(({ rule }) => rule);
}
