import type { PathologyFields } from '../../src/contract/index.js';
import type { DrawnCase } from './drawn-case.js';
import { accessionOf, envelopeOf, laboratoryOf } from './identifiers.js';
import { DAY_MS, instantAt, MINUTE_MS } from './instants.js';
import {
  AMENDED,
  AMENDED_AFTER_DAYS,
  INTERIM_FIRST,
  NEVER_REPORTED,
  REPORT_DELAY,
  SHRINKAGE,
} from './pathology.table.js';

type Findings = NonNullable<PathologyFields['findings']>;

/** The reports on the specimen, revision by revision; none where there is none. */
export function writeReports(drawn: DrawnCase): readonly PathologyFields[] {
  const chance = drawn.chance('reports');
  const { specimen } = drawn.procedure;
  const { medianDays, spread, mostDays } = REPORT_DELAY;
  const days = Math.min(mostDays, Math.max(1, chance.logNormal(medianDays, spread)));
  const isNever = chance.happens(NEVER_REPORTED.percent);
  const isInterimFirst = chance.happens(INTERIM_FIRST.percent);
  const isAmended = chance.happens(AMENDED.percent);
  const laterDays = chance.whole(AMENDED_AFTER_DAYS.least, AMENDED_AFTER_DAYS.most);
  if (isNever || specimen === undefined) return [];

  const reportedMs = drawn.times.outMs + days * DAY_MS;
  const amendedMs = reportedMs + laterDays * DAY_MS;
  const first = { ...baseOf(drawn), specimen: receivedOf(drawn), findings: findingsOf(drawn) };
  const interim = signed(drawn, drawn.times.outMs + 1.5 * DAY_MS * Math.min(1, days / 2), {
    ...baseOf(drawn),
    specimen: receivedOf(drawn),
    report: { status: 'interim', version: 1 },
  });
  const final = signed(drawn, reportedMs, {
    ...first,
    report: { status: 'final', version: 1 },
  });
  const amended = signed(drawn, amendedMs, {
    ...first,
    report: { status: 'final', version: 2, amendmentReason: 'further-sections' },
  });
  return [...(isInterimFirst ? [interim] : []), final, ...(isAmended ? [amended] : [])].map(
    (report, i) => ({ ...report, revision: i + 1 }),
  );
}

type Unsigned = Omit<PathologyFields, 'sentAt' | 'revision'>;

function signed(
  { unit }: DrawnCase,
  ms: number,
  report: Unsigned,
): Omit<PathologyFields, 'revision'> {
  return {
    ...report,
    sentAt: instantAt(ms + 20 * MINUTE_MS, unit.offsetHours),
    report: { ...report.report, reportedAt: instantAt(ms, unit.offsetHours) },
  };
}

const baseOf = (drawn: DrawnCase) => ({
  schema: 'pathology/1' as const,
  ...envelopeOf(drawn),
  accession: accessionOf(drawn),
  laboratory: laboratoryOf(drawn),
});

function receivedOf({
  unit,
  times,
  procedure,
}: DrawnCase): NonNullable<PathologyFields['specimen']> {
  const { specimen, pieces, outcome, hybrid } = procedure;
  return {
    procedure: hybrid ? 'hybrid-esd' : 'esd',
    receivedAt: instantAt(times.outMs + 90 * MINUTE_MS, unit.offsetHours),
    piecesReceived: pieces,
    ...(outcome === 'en-bloc' && specimen !== undefined
      ? { longAxisMm: specimen.longMm, shortAxisMm: specimen.shortMm }
      : {}),
  };
}

function findingsOf(drawn: DrawnCase): Findings {
  const { lesion, tissue, chance } = drawn;
  const { least, most } = SHRINKAGE;
  const fixed = least + (most - least) * chance('shrinkage').unit();
  const { histology, depth, smDepthUm } = tissue;
  const isCarcinoma = histology === 'carcinoma';
  return {
    tumour: lesion.tumour,
    site: lesion.site,
    sizeMm: Math.max(1, Math.round(lesion.longMm * fixed)),
    histology,
    ...typeOf(drawn),
    depth,
    ...(smDepthUm === undefined ? {} : { smDepthUm }),
    ...(isCarcinoma ? carcinomaOf(drawn) : {}),
    ...ulcerOf(drawn),
    ...(isCarcinoma || histology === 'neuroendocrine-tumour' ? { ly: tissue.ly, v: tissue.v } : {}),
    ...marginsOf(drawn),
  };
}

/** The type of what is no carcinoma. */
function typeOf({ lesion, tissue }: DrawnCase): Partial<Findings> {
  const { histology, polyp } = tissue;
  if (histology === 'neuroendocrine-tumour') {
    return { histologicalType: 'neuroendocrine-tumour-g1' };
  }
  if (histology === 'carcinoma' || lesion.tumour !== 'colorectal') return {};
  const types = {
    adenoma: 'tubular-adenoma',
    'sessile-serrated': 'sessile-serrated-lesion',
    'traditional-serrated': 'traditional-serrated-adenoma',
  } as const;
  return { polypType: polyp, histologicalType: types[polyp] };
}

function carcinomaOf({ lesion, tissue }: DrawnCase): Partial<Findings> {
  const { differentiation, budding, depth } = tissue;
  const isGastric = lesion.tumour === 'gastric';
  const pT = pTOf(lesion.tumour === 'colorectal', depth);
  const isKnown = differentiation === 'well' || differentiation === 'moderate';
  return {
    ...(differentiation === undefined ? {} : { differentiation }),
    ...(isGastric
      ? { gastricType: isKnown ? ('differentiated' as const) : ('undifferentiated' as const) }
      : {}),
    ...(budding === undefined ? {} : { budding: { grade: budding } }),
    pT,
    tnmEdition: '8',
  };
}

/** Curability in the stomach asks for it, of a dysplasia too. */
function ulcerOf({ lesion, tissue }: DrawnCase): Pick<Findings, 'ulcer'> {
  const { histology, ulcer } = tissue;
  const isAsked = histology === 'carcinoma' || histology.endsWith('-dysplasia');
  if (lesion.tumour !== 'gastric' || !isAsked) return {};
  return { ulcer: ulcer ? 'UL1' : 'UL0' };
}

/** UICC TNM, 8th edition, from memory: the mucosa of the bowel is pTis, its submucosa pT1. */
function pTOf(isColorectal: boolean, depth: string) {
  if (depth === 'mp') return 'pT2';
  if (depth === 'sm') return isColorectal ? 'pT1' : 'pT1b';
  return isColorectal ? 'pTis' : 'pT1a';
}

function marginsOf({ tissue, chance }: DrawnCase): Partial<Findings> {
  const distance = chance('distance');
  const { hm, vm } = tissue;
  const hmAway = { '0': { distanceMm: distance.whole(1, 8) }, '1': { distanceMm: 0 }, X: {} }[hm];
  const vmAway = {
    '0': { distanceUm: 50 * distance.whole(2, 40) },
    '1': { distanceUm: 0 },
    X: {},
  }[vm];
  return { hm: { state: hm, ...hmAway }, vm: { state: vm, ...vmAway } };
}
