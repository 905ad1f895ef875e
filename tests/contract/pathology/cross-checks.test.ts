import { describe, expect, it } from 'vitest';
import { PATHOLOGY_CHECKS } from '../../../src/contract/index.js';
import { changed, type Fields, rulesOf } from './sound-report.js';

interface Edge {
  readonly rule: string;
  readonly says: string;
  readonly last: Fields;
  readonly beyond: Fields;
}

const AS_GASTRIC: Fields = {
  'findings.tumour': 'gastric',
  'findings.site': 'stomach-antrum',
  'findings.pT': 'pT1b',
  'findings.polypType': undefined,
};
const AS_SQUAMOUS: Fields = {
  'findings.tumour': 'squamous',
  'findings.site': 'oesophagus-middle-third',
  'findings.histologicalType': 'squamous-cell-carcinoma',
  'findings.polypType': undefined,
  'findings.pT': undefined,
};
const AS_BARRETT: Fields = {
  'findings.tumour': 'barrett',
  'findings.site': 'oesophagus-lower-third',
  'findings.polypType': undefined,
  'findings.pT': 'pT1a',
  'findings.depth': 'm',
  'findings.smDepthUm': undefined,
  'findings.smWidthUm': undefined,
};
const AS_ADENOMA: Fields = {
  'findings.histology': 'high-grade-dysplasia',
  'findings.histologicalType': 'tubular-adenoma',
  'findings.depth': 'm',
  'findings.smDepthUm': undefined,
  'findings.smWidthUm': undefined,
  'findings.pT': 'pTis',
};
/** Nothing is said of the whole, so that a piece contradicts nothing else. */
const ONE_PIECE: Fields = { 'specimen.piecesReceived': undefined };

/** The last value that is no contradiction, and the first that is one. */
const EDGES: readonly Edge[] = [
  // Project rules.
  {
    rule: 'final-undated',
    says: 'an interim report may be undated',
    last: { 'report.status': 'interim', 'report.reportedAt': undefined },
    beyond: { 'report.reportedAt': undefined },
  },
  {
    rule: 'final-without-histology',
    says: 'that nothing can be said is an answer, and an interim report may wait',
    last: { 'findings.histology': 'not-assessable' },
    beyond: { 'findings.histology': undefined },
  },
  {
    rule: 'final-without-histology',
    says: 'a final report without any finding says nothing',
    last: { findings: { histology: 'none' } },
    beyond: { findings: undefined },
  },
  {
    rule: 'amendment-reason',
    says: 'an interim report before the first final one amends nothing',
    last: { 'report.status': 'interim' },
    beyond: { 'report.status': 'interim', 'report.version': 2 },
  },
  {
    rule: 'amendment-reason',
    says: 'a second version has a reason, a first one has none',
    last: { 'report.version': 2, 'report.amendmentReason': 'second-opinion' },
    beyond: { 'report.amendmentReason': 'second-opinion' },
  },
  {
    rule: 'reported-before-received',
    says: 'received and signed may be one instant, in two offsets',
    last: { 'specimen.receivedAt': '2026-03-11T14:20:00Z' },
    beyond: { 'specimen.receivedAt': '2026-03-11T14:20:01Z' },
  },
  {
    rule: 'sent-before-report',
    says: 'a report may be sent as it is signed',
    last: { sentAt: '2026-03-11T14:20:00Z' },
    beyond: { sentAt: '2026-03-11T14:19:59Z' },
  },
  {
    rule: 'sent-before-report',
    says: 'an undated one not before its specimen came',
    last: {
      'report.status': 'interim',
      'report.reportedAt': undefined,
      sentAt: '2026-03-03T15:10:00Z',
    },
    beyond: {
      'report.status': 'interim',
      'report.reportedAt': undefined,
      sentAt: '2026-03-03T15:09:59Z',
    },
  },
  // Axes and area: the refusals of quality section 3 (short above long, above 400 cm2).
  {
    rule: 'axes-order',
    says: 'both axes of the specimen may be equal',
    last: { 'specimen.longAxisMm': 39, 'specimen.shortAxisMm': 39 },
    beyond: { 'specimen.longAxisMm': 39, 'specimen.shortAxisMm': 39.1 },
  },
  {
    rule: 'axes-order',
    says: 'both axes of the tumour may be equal',
    last: { 'findings.sizeMm': 25 },
    beyond: { 'findings.sizeMm': 24.9 },
  },
  {
    rule: 'axes-order',
    says: 'and those of a piece',
    last: { ...ONE_PIECE, 'specimen.pieces': [{ longAxisMm: 9, shortAxisMm: 9 }] },
    beyond: { ...ONE_PIECE, 'specimen.pieces': [{ longAxisMm: 9, shortAxisMm: 9.5 }] },
  },
  {
    rule: 'area-limit',
    says: '225 x 226 mm are 399.4 cm2, 226 x 226 mm are 401.1 cm2',
    last: { 'specimen.longAxisMm': 226, 'specimen.shortAxisMm': 225 },
    beyond: { 'specimen.longAxisMm': 226, 'specimen.shortAxisMm': 226 },
  },
  {
    rule: 'area-limit',
    says: 'a piece is bounded as a specimen is',
    last: { ...ONE_PIECE, 'specimen.pieces': [{ longAxisMm: 226, shortAxisMm: 225 }] },
    beyond: { ...ONE_PIECE, 'specimen.pieces': [{ longAxisMm: 226, shortAxisMm: 226 }] },
  },
  // CC rows: common practice, no source.
  {
    rule: 'CC-02',
    says: 'a piece may go undescribed, none may come out of nothing',
    last: { 'specimen.pieces': [{}] },
    beyond: { 'specimen.pieces': [{}, {}], 'findings.resectionStatus': undefined },
  },
  {
    rule: 'CC-03',
    says: 'a tumour may fill its specimen',
    last: { 'findings.sizeMm': 39, 'findings.shortSizeMm': 32 },
    beyond: { 'findings.sizeMm': 39.5, 'findings.shortSizeMm': 32 },
  },
  {
    rule: 'CC-03',
    says: 'and in the short axis; of several pieces nobody asks it',
    last: {
      'findings.shortSizeMm': 32.5,
      'findings.sizeMm': 33,
      'specimen.piecesReceived': 2,
      'findings.resectionStatus': undefined,
    },
    beyond: { 'findings.shortSizeMm': 32.5, 'findings.sizeMm': 33 },
  },
  {
    rule: 'piece-beyond-whole',
    says: 'a piece may be as bad as the whole',
    last: { 'specimen.pieces': [{ histology: 'carcinoma', depth: 'sm', vm: { state: '0' } }] },
    beyond: { 'specimen.pieces': [{ histology: 'carcinoma', depth: 'mp' }] },
  },
  {
    rule: 'piece-beyond-whole',
    says: 'its deep margin is one of the whole, its edge is not: pieces were cut apart',
    last: { 'specimen.pieces': [{ hm: { state: '1' }, vm: { state: 'X' } }] },
    beyond: { 'specimen.pieces': [{ hm: { state: '1' }, vm: { state: '1' } }] },
  },
  {
    rule: 'piece-beyond-whole',
    says: 'and its histology is no worse; what has no rank is not compared',
    last: { ...AS_ADENOMA, 'specimen.pieces': [{ histology: 'not-assessable', depth: 'X' }] },
    beyond: { ...AS_ADENOMA, 'specimen.pieces': [{ histology: 'carcinoma', depth: 'X' }] },
  },
  {
    rule: 'tumour-of-another-organ',
    says: 'Barrett and gastric tumours meet at the cardia, and no further',
    last: { ...AS_BARRETT, 'findings.site': 'stomach-cardia' },
    beyond: { ...AS_BARRETT, 'findings.site': 'stomach-fundus' },
  },
  {
    rule: 'tumour-of-another-organ',
    says: 'a squamous carcinoma of the anal canal is another tumour',
    last: { ...AS_SQUAMOUS, 'findings.tumour': 'other', 'findings.site': 'anal-canal' },
    beyond: { ...AS_SQUAMOUS, 'findings.site': 'anal-canal' },
  },
  {
    rule: 'depth-of-another-tumour',
    says: 'the muscularis mucosae is a layer of squamous tumours alone',
    last: {
      ...AS_SQUAMOUS,
      'findings.depth': 'mm',
      'findings.smDepthUm': undefined,
      'findings.smWidthUm': undefined,
    },
    beyond: {
      'findings.depth': 'mm',
      'findings.smDepthUm': undefined,
      'findings.smWidthUm': undefined,
      'findings.pT': undefined,
    },
  },
  {
    rule: 'depth-of-another-tumour',
    says: 'and for a piece',
    last: { ...ONE_PIECE, 'specimen.pieces': [{ depth: 'm' }] },
    beyond: { ...ONE_PIECE, 'specimen.pieces': [{ depth: 'ep' }] },
  },
  {
    rule: 'barrett-depth',
    says: 'the outer muscularis mucosae is still the mucosa',
    last: { ...AS_BARRETT, 'findings.barrettDepth': 'm4' },
    beyond: {
      ...AS_BARRETT,
      'findings.barrettDepth': 'm4',
      'findings.depth': 'sm',
      'findings.pT': 'pT1b',
    },
  },
  {
    rule: 'barrett-depth',
    says: 'and of Barrett tumours alone',
    last: { ...AS_BARRETT, 'findings.barrettDepth': 'm1', 'findings.tumour': undefined },
    beyond: {
      ...AS_BARRETT,
      'findings.barrettDepth': 'm1',
      'findings.tumour': 'gastric',
      'findings.site': 'stomach-cardia',
    },
  },
  {
    rule: 'gastric-type',
    says: 'the type belongs to gastric tumours',
    last: { ...AS_GASTRIC, 'findings.gastricType': 'undifferentiated' },
    beyond: { 'findings.gastricType': 'undifferentiated' },
  },
  {
    rule: 'gastric-type',
    says: 'that there is no undifferentiated part can be said of all',
    last: { 'findings.undiffLengthMm': 0, 'findings.undiffInSm': false },
    beyond: { 'findings.undiffLengthMm': 0.5, 'findings.undiffInSm': false },
  },
  {
    rule: 'gastric-type',
    says: 'that there is one cannot',
    last: { ...AS_GASTRIC, 'findings.undiffInSm': true },
    beyond: { 'findings.undiffInSm': true },
  },
  {
    rule: 'histology-of-another-tumour',
    says: 'a neuroendocrine tumour of the caecum is other',
    last: {
      'findings.tumour': 'other',
      'findings.histology': 'neuroendocrine-tumour',
      'findings.histologicalType': 'neuroendocrine-tumour-g1',
    },
    beyond: {
      'findings.histology': 'neuroendocrine-tumour',
      'findings.histologicalType': undefined,
    },
  },
  {
    rule: 'histological-type',
    says: 'an adenoma is a dysplasia',
    last: AS_ADENOMA,
    beyond: { ...AS_ADENOMA, 'findings.histology': 'carcinoma' },
  },
  {
    rule: 'histological-type',
    says: 'an adenoma-like adenocarcinoma is one of the bowel',
    last: { 'findings.histologicalType': 'adenoma-like-adenocarcinoma' },
    beyond: { ...AS_GASTRIC, 'findings.histologicalType': 'adenoma-like-adenocarcinoma' },
  },
  {
    rule: 'polyp-type',
    says: 'a carcinoma may have begun in any polyp, an adenoma is one',
    last: { 'findings.polypType': 'sessile-serrated' },
    beyond: { ...AS_ADENOMA, 'findings.polypType': 'sessile-serrated' },
  },
  {
    rule: 'CC-04',
    says: 'a depth in um is one of the submucosa',
    last: { 'findings.smDepthUm': 0 },
    beyond: { 'findings.depth': 'mp', 'findings.smWidthUm': undefined, 'findings.pT': 'pT2' },
  },
  {
    rule: 'CC-04',
    says: 'so is a width, and an undifferentiated part in it',
    last: {
      ...AS_GASTRIC,
      'findings.undiffInSm': false,
      'findings.depth': 'm',
      'findings.smDepthUm': undefined,
      'findings.smWidthUm': undefined,
      'findings.pT': 'pT1a',
    },
    beyond: {
      ...AS_GASTRIC,
      'findings.undiffInSm': true,
      'findings.depth': 'm',
      'findings.smDepthUm': undefined,
      'findings.smWidthUm': undefined,
      'findings.pT': 'pT1a',
    },
  },
  {
    rule: 'CC-05',
    says: 'a colorectal carcinoma of the submucosa is pT1 and not in situ',
    last: { 'findings.pT': 'pT1' },
    beyond: { 'findings.pT': 'pTis' },
  },
  {
    rule: 'CC-05',
    says: 'what cannot be assessed contradicts nothing',
    last: { 'findings.pT': 'pTX' },
    beyond: { 'findings.pT': 'pT2' },
  },
  {
    rule: 'CC-06',
    says: 'R0 asks for both margins',
    last: { 'findings.hm': undefined, 'findings.vm': undefined },
    beyond: { 'findings.hm': { state: 'X' } },
  },
  {
    rule: 'CC-06',
    says: 'and for one piece',
    last: { 'specimen.piecesReceived': 1 },
    beyond: { 'specimen.piecesReceived': 2 },
  },
  {
    rule: 'CC-06',
    says: 'R1 of one piece asks for a margin that is not free',
    last: { 'findings.resectionStatus': 'R1', 'findings.hm': { state: '1' } },
    beyond: { 'findings.resectionStatus': 'R1' },
  },
  // Inputs of the curability rules: no vessels and no submucosal depth with a pure dysplasia.
  {
    rule: 'dysplasia-invades',
    says: 'a dysplasia has free vessels',
    last: { ...AS_ADENOMA, 'findings.ly': '0', 'findings.v': 'X' },
    beyond: { ...AS_ADENOMA, 'findings.v': '1' },
  },
  {
    rule: 'dysplasia-invades',
    says: 'and lies within the epithelium',
    last: { ...AS_ADENOMA, 'findings.depth': 'X' },
    beyond: { ...AS_ADENOMA, 'findings.depth': 'sm', 'findings.pT': undefined },
  },
  {
    rule: 'dysplasia-invades',
    says: 'squamous, that is ep and not lpm',
    last: {
      ...AS_ADENOMA,
      ...AS_SQUAMOUS,
      'findings.histologicalType': 'squamous-intraepithelial-neoplasia',
      'findings.depth': 'ep',
    },
    beyond: {
      ...AS_ADENOMA,
      ...AS_SQUAMOUS,
      'findings.histologicalType': 'squamous-intraepithelial-neoplasia',
      'findings.depth': 'lpm',
    },
  },
  {
    rule: 'dysplasia-invades',
    says: 'dysplasia may reach a margin, carcinoma cannot come from nowhere',
    last: {
      ...AS_ADENOMA,
      'findings.hm': { state: '1', dysplasia: '1' },
      'findings.resectionStatus': 'R1',
    },
    beyond: {
      ...AS_ADENOMA,
      'findings.hm': { state: '1', carcinoma: '1' },
      'findings.resectionStatus': 'R1',
    },
  },
  // ITBCC 2016: BD1 0 to 4, BD2 5 to 9, BD3 10 or more.
  {
    rule: 'budding-grade',
    says: 'four buds are grade 1, five are not',
    last: { 'findings.budding': { grade: '1', count: 4 } },
    beyond: { 'findings.budding': { grade: '1', count: 5 } },
  },
  {
    rule: 'budding-grade',
    says: 'nine buds are grade 2, ten are not',
    last: { 'findings.budding': { grade: '2', count: 9 } },
    beyond: { 'findings.budding': { grade: '2', count: 10 } },
  },
  {
    rule: 'budding-grade',
    says: 'what was counted could be assessed',
    last: { 'findings.budding': { grade: 'X' } },
    beyond: { 'findings.budding': { grade: 'X', count: 0 } },
  },
  // Project rules.
  {
    rule: 'margin-parts',
    says: 'a margin is as bad as the worst that is known of it',
    last: {
      'findings.hm': { state: '1', carcinoma: 'X' },
      'findings.resectionStatus': undefined,
    },
    beyond: {
      'findings.hm': { state: '1', carcinoma: 'X', dysplasia: '0' },
      'findings.resectionStatus': undefined,
    },
  },
  {
    rule: 'margin-parts',
    says: 'at the deep surface of a piece, too',
    last: { ...ONE_PIECE, 'specimen.pieces': [{ vm: { state: 'X', dysplasia: '0' } }] },
    beyond: { ...ONE_PIECE, 'specimen.pieces': [{ vm: { state: '0', dysplasia: 'X' } }] },
  },
  // FHIR invariant of the project: a positive horizontal margin carries no distance above zero.
  {
    rule: 'margin-distance',
    says: 'an involved margin has no distance',
    last: {
      'findings.hm': { state: '1', distanceMm: 0 },
      'findings.resectionStatus': undefined,
    },
    beyond: {
      'findings.hm': { state: '1', distanceMm: 0.1 },
      'findings.resectionStatus': undefined,
    },
  },
  {
    rule: 'margin-distance',
    says: 'a free one has some, one that cannot be assessed none that is known',
    last: { 'findings.vm': { state: '0', distanceUm: 1 } },
    beyond: {
      'findings.vm': { state: 'X', distanceUm: 0 },
      'findings.resectionStatus': undefined,
    },
  },
  // OLGA 2007, OLGIM 2010: stage 0 is none at all (from memory).
  {
    rule: 'background-none',
    says: 'no atrophy is stage 0',
    last: { background: { atrophy: 'none', atrophyIn: [], olga: '0', olgim: 'II' } },
    beyond: { background: { atrophy: 'none', olga: 'I' } },
  },
  {
    rule: 'background-none',
    says: 'no metaplasia is nowhere',
    last: { background: { intestinalMetaplasia: 'none', atrophyIn: ['antrum'], olgim: '0' } },
    beyond: { background: { intestinalMetaplasia: 'none', metaplasiaIn: ['antrum'] } },
  },
];

describe('the edges of the rules across the fields of a report', () => {
  it.each(EDGES)('$rule: $says', ({ rule, last, beyond }) => {
    expect(rulesOf(changed(last))).toEqual([]);
    expect(new Set(rulesOf(changed(beyond)))).toEqual(new Set([rule]));
  });

  it('are known for every rule', () => {
    expect(new Set(EDGES.map(({ rule }) => rule))).toEqual(
      new Set(PATHOLOGY_CHECKS.map(({ rule }) => rule)),
    );
  });
});

/** These rules ask for a field; all others may read nothing out of one that is absent. */
const ASKING = ['final-undated', 'final-without-histology', 'amendment-reason'];
const REQUIRED = /^(sentAt|report\.(status|version))$/;

/** A field that is absent was not told: no rule may read it as a "no". */
describe('the rules across the fields of a report, where fields are missing', () => {
  it.each(
    EDGES.flatMap(({ rule, says, beyond }) =>
      Object.keys(beyond).map((field) => ({ rule, says, field, beyond })),
    ).filter(({ field, beyond }) => beyond[field] !== undefined && !REQUIRED.test(field)),
  )('$rule ($says): no other rule speaks without $field', ({ rule, field, beyond }) => {
    const rules = rulesOf(changed({ ...beyond, [field]: undefined }));
    expect(rules.filter((named) => named !== rule && !ASKING.includes(named))).toEqual([]);
  });

  it('say nothing of a report with required fields alone', () => {
    expect(PATHOLOGY_CHECKS.flatMap(({ broken }) => broken({}))).toEqual([]);
  });
});
