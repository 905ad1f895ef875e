import { answer, coded, eachOrNone, type FindingRow, measured, part } from './finding-row.js';

const lesion = { about: 'lesion', category: 'laboratory', onSpecimen: true } as const;
/** What is not of the lesion, and so never counted with it: the mucosa around, a single piece. */
const around = { about: 'session', category: 'laboratory', onSpecimen: true } as const;

/** Every field of a report that becomes an Observation; a pointer stands in one row only. */
export const PATHOLOGY_FINDINGS: readonly FindingRow[] = [
  {
    item: 'specimen-handling',
    ...around,
    parts: [
      part('specimen-procedure', coded('/specimen/procedure', 'specimenProcedure')),
      part('pieces-received', measured('/specimen/piecesReceived', 'piece')),
      part('slice-interval', measured('/specimen/sliceIntervalMm', 'mm')),
    ],
  },
  {
    item: 'fixed-specimen-dimensions',
    ...around,
    parts: [
      part('specimen-length', measured('/specimen/longAxisMm', 'mm')),
      part('specimen-width', measured('/specimen/shortAxisMm', 'mm')),
      part('specimen-height', measured('/specimen/thicknessMm', 'mm')),
    ],
  },
  { item: 'specimen-tumour-kind', ...lesion, value: coded('/findings/tumour', 'tumour') },
  { item: 'specimen-site', ...lesion, value: coded('/findings/site', 'site') },
  { item: 'specimen-paris-type', ...lesion, value: coded('/findings/paris', 'paris') },
  {
    item: 'tumour-dimensions',
    ...lesion,
    parts: [
      part('tumour-length', measured('/findings/sizeMm', 'mm')),
      part('tumour-width', measured('/findings/shortSizeMm', 'mm')),
    ],
  },
  { item: 'histology', ...lesion, value: coded('/findings/histology', 'histology') },
  {
    item: 'histologic-type',
    ...lesion,
    value: coded('/findings/histologicalType', 'histologicalType'),
  },
  { item: 'polyp-type', ...lesion, value: coded('/findings/polypType', 'polypType') },
  {
    item: 'differentiation',
    ...lesion,
    value: coded('/findings/differentiation', 'differentiation'),
  },
  {
    item: 'gastric-type',
    ...lesion,
    value: coded('/findings/gastricType', 'gastricType'),
    parts: [
      part('undifferentiated-length', measured('/findings/undiffLengthMm', 'mm')),
      part('undifferentiated-in-submucosa', answer('/findings/undiffInSm')),
    ],
  },
  {
    item: 'invasion-depth',
    ...lesion,
    value: coded('/findings/depth', 'depth'),
    parts: [
      part('barrett-layer', coded('/findings/barrettDepth', 'barrettDepth')),
      part('submucosal-invasion-depth', measured('/findings/smDepthUm', 'um')),
      part('submucosal-invasion-width', measured('/findings/smWidthUm', 'um')),
    ],
  },
  { item: 'lymphatic-invasion', ...lesion, value: coded('/findings/ly', 'state') },
  { item: 'venous-invasion', ...lesion, value: coded('/findings/v', 'state') },
  { item: 'perineural-invasion', ...lesion, value: coded('/findings/perineural', 'state') },
  {
    item: 'tumour-budding',
    ...lesion,
    value: coded('/findings/budding/grade', 'buddingGrade'),
    parts: [part('bud-count', measured('/findings/budding/count', 'one'))],
  },
  { item: 'ulceration', ...lesion, value: coded('/findings/ulcer', 'ulcer') },
  {
    item: 'lateral-margin',
    ...lesion,
    counted: true,
    value: coded('/findings/hm/state', 'horizontalMargin'),
    parts: [
      part('margin-carcinoma', coded('/findings/hm/carcinoma', 'state')),
      part('margin-dysplasia', coded('/findings/hm/dysplasia', 'state')),
      part('margin-distance', measured('/findings/hm/distanceMm', 'mm')),
    ],
  },
  {
    item: 'vertical-margin',
    ...lesion,
    counted: true,
    value: coded('/findings/vm/state', 'verticalMargin'),
    parts: [
      part('margin-carcinoma', coded('/findings/vm/carcinoma', 'state')),
      part('margin-dysplasia', coded('/findings/vm/dysplasia', 'state')),
      part('margin-distance', measured('/findings/vm/distanceUm', 'um')),
    ],
  },
  {
    item: 'stated-resection-status',
    ...lesion,
    value: coded('/findings/resectionStatus', 'resectionStatus'),
  },
  {
    item: 'pathological-t',
    ...lesion,
    value: coded('/findings/pT', 'pT'),
    parts: [part('tnm-edition', coded('/findings/tnmEdition', 'tnmEdition'))],
  },
  { item: 'barrett-mucosa', ...around, value: answer('/background/barrett') },
  {
    item: 'intestinal-metaplasia',
    ...around,
    value: coded('/background/intestinalMetaplasia', 'intestinalMetaplasia'),
    parts: [eachOrNone('metaplasia-site', '/background/metaplasiaIn', 'stomachPart')],
  },
  {
    item: 'gastric-atrophy',
    ...around,
    value: coded('/background/atrophy', 'atrophy'),
    parts: [eachOrNone('atrophy-site', '/background/atrophyIn', 'stomachPart')],
  },
  { item: 'olga-stage', ...around, value: coded('/background/olga', 'gastritisStage') },
  { item: 'olgim-stage', ...around, value: coded('/background/olgim', 'gastritisStage') },
  {
    item: 'helicobacter-histology',
    ...around,
    value: coded('/background/helicobacterPylori', 'helicobacterFinding'),
  },
  { item: 'autoimmune-gastritis', ...around, value: answer('/background/autoimmuneGastritis') },
  { item: 'special-stains', ...around, list: { at: '/ancillary/stains', words: 'stain' } },
  { item: 'p53-pattern', ...lesion, value: coded('/ancillary/p53', 'p53') },
  {
    item: 'mismatch-repair',
    ...lesion,
    value: coded('/ancillary/mismatchRepair', 'mismatchRepair'),
  },
  {
    item: 'microsatellites',
    ...lesion,
    value: coded('/ancillary/microsatellites', 'microsatellites'),
  },
  {
    item: 'her2-score',
    ...lesion,
    value: coded('/ancillary/her2', 'her2'),
    parts: [part('her2-amplified', answer('/ancillary/her2Amplified'))],
  },
  { item: 'ki-67-share', ...lesion, value: measured('/ancillary/ki67Percent', 'percent') },
];

/**
 * One piece, as a panel whose parts are never counted: margins of a piece hold the cuts between
 * pieces too.
 *
 * @param at JSON Pointer of the piece in the report
 */
export function pieceRow(at: string): FindingRow {
  return {
    item: 'piece-findings',
    ...around,
    parts: [
      part('specimen-length', measured(`${at}/longAxisMm`, 'mm')),
      part('specimen-width', measured(`${at}/shortAxisMm`, 'mm')),
      part('specimen-height', measured(`${at}/thicknessMm`, 'mm')),
      part('histology', coded(`${at}/histology`, 'histology')),
      part('invasion-depth', coded(`${at}/depth`, 'depth')),
      part('lateral-margin', coded(`${at}/hm/state`, 'horizontalMargin')),
      part('piece-lateral-margin-carcinoma', coded(`${at}/hm/carcinoma`, 'state')),
      part('piece-lateral-margin-dysplasia', coded(`${at}/hm/dysplasia`, 'state')),
      part('piece-lateral-margin-distance', measured(`${at}/hm/distanceMm`, 'mm')),
      part('vertical-margin', coded(`${at}/vm/state`, 'verticalMargin')),
      part('piece-vertical-margin-carcinoma', coded(`${at}/vm/carcinoma`, 'state')),
      part('piece-vertical-margin-dysplasia', coded(`${at}/vm/dysplasia`, 'state')),
      part('piece-vertical-margin-distance', measured(`${at}/vm/distanceUm`, 'um')),
    ],
  };
}
