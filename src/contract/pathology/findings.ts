import { z } from 'zod';
import { lengthMm, numberIn, oneOf, percent, someOf, wholeIn } from '../scalars.js';
import { PARIS_TYPES, SITES, TUMOURS } from '../words.table.js';
import { HISTOLOGICAL_TYPES } from './histological-types.table.js';
import * as words from './words.table.js';

const state = oneOf(words.STATES);
const LARGEST_UM = 50_000;
const lengthUm = wholeIn({ from: 0, to: LARGEST_UM, unit: 'um' });

const margin = {
  state: state.describe('any tumour at this margin: 0 free, 1 involved, X not assessable'),
  carcinoma: state.optional().describe('carcinoma at this margin'),
  dysplasia: state.optional().describe('dysplasia at this margin'),
};

/** The edge of the mucosa around the lesion. */
export const horizontalMargin = z.strictObject({
  ...margin,
  distanceMm: numberIn({ from: 0, to: 200, unit: 'mm' })
    .optional()
    .describe('from the tumour to the nearest edge'),
});

/** The deep surface of the specimen. */
export const verticalMargin = z.strictObject({
  ...margin,
  distanceUm: lengthUm.optional().describe('from the tumour to the deep surface'),
});

/**
 * What was found in the lesion as a whole; of a piecemeal resection, the worst of all pieces.
 *
 * Fields of a question to a rule set, one to one: tumour (`duodenal` asks as `other`), histology,
 * depth, smDepthUm, differentiation, gastricType, undiffLengthMm, undiffInSm, sizeMm, ulcer, ly, v
 * and polypType by their own names; hm is `hm.state`, vm is `vm.state`, budding is
 * `budding.grade`. Whether the resection was en bloc and complete is told by the case. A `depth`
 * of X and the histologies beyond none, dysplasia and carcinoma answer nothing. Absent: not told.
 */
export const findings = z.strictObject({
  tumour: oneOf(TUMOURS)
    .optional()
    .describe('lineage; `other` also for anal squamous, neuroendocrine and wall tumours'),
  site: oneOf(SITES).optional(),
  paris: oneOf(PARIS_TYPES).optional().describe('macroscopic type on the specimen'),
  sizeMm: lengthMm.optional().describe('long axis of the tumour on the fixed specimen'),
  shortSizeMm: lengthMm.optional().describe('at right angles to the long axis'),
  histology: oneOf(words.HISTOLOGIES)
    .optional()
    .describe('the most advanced part; none = no dysplasia'),
  histologicalType: oneOf(HISTOLOGICAL_TYPES).optional().describe('type by the WHO'),
  polypType: oneOf(words.POLYP_TYPES).optional(),
  differentiation: oneOf(words.DIFFERENTIATIONS).optional(),
  gastricType: oneOf(words.GASTRIC_TYPES)
    .optional()
    .describe('predominant type of a gastric tumour'),
  undiffLengthMm: numberIn({ from: 0, to: 1000, unit: 'mm' })
    .optional()
    .describe('undifferentiated part, lengths of several areas added up'),
  undiffInSm: z
    .boolean()
    .optional()
    .describe('undifferentiated or mucinous part within the submucosal invasion'),
  depth: oneOf(words.DEPTHS)
    .optional()
    .describe('squamous: ep, lpm, mm, sm, mp; others: m, sm, mp; X not assessable'),
  barrettDepth: oneOf(words.BARRETT_DEPTHS)
    .optional()
    .describe('layer of a mucosa with double muscularis; depth is m'),
  smDepthUm: lengthUm
    .optional()
    .describe('submucosal invasion from the lower edge of the muscularis mucosae'),
  smWidthUm: lengthUm.optional().describe('width of the submucosal invasion'),
  ly: state.optional().describe('invasion of lymphatic vessels'),
  v: state.optional().describe('invasion of veins'),
  perineural: state.optional().describe('invasion along nerves'),
  budding: z
    .strictObject({
      grade: oneOf(words.BUDDING_GRADES).optional(),
      count: wholeIn({ from: 0, to: 1000 }).optional().describe('buds in the hot spot, 0.785 mm2'),
    })
    .optional(),
  ulcer: oneOf(words.ULCERS).optional().describe('ulcer or ulcer scar within the lesion'),
  hm: horizontalMargin.optional().describe('horizontal margin'),
  vm: verticalMargin.optional().describe('vertical margin'),
  resectionStatus: oneOf(words.RESECTION_STATUSES)
    .optional()
    .describe('as the report states it; the record derives its own from margins and pieces'),
  pT: oneOf(words.PRIMARY_TUMOURS).optional(),
  tnmEdition: oneOf(words.TNM_EDITIONS).optional().describe('edition of the UICC TNM of pT'),
});

/** What the mucosa around the lesion shows. */
export const background = z.strictObject({
  barrett: z.boolean().optional().describe('Barrett mucosa on the specimen'),
  intestinalMetaplasia: oneOf(words.INTESTINAL_METAPLASIAS).optional(),
  metaplasiaIn: someOf(words.BACKGROUND_SITES).optional(),
  atrophy: oneOf(words.ATROPHIES).optional(),
  atrophyIn: someOf(words.BACKGROUND_SITES).optional(),
  olga: oneOf(words.GASTRITIS_STAGES).optional().describe('stage of atrophy'),
  olgim: oneOf(words.GASTRITIS_STAGES).optional().describe('stage of intestinal metaplasia'),
  helicobacterPylori: oneOf(words.HELICOBACTER_FINDINGS).optional(),
  autoimmuneGastritis: z.boolean().optional(),
});

/** Stains and tests beyond the sections. */
export const ancillary = z.strictObject({
  stains: someOf(words.STAINS).optional().describe('an empty list says that none was used'),
  p53: oneOf(words.P53_PATTERNS).optional(),
  mismatchRepair: oneOf(words.MISMATCH_REPAIRS).optional(),
  microsatellites: oneOf(words.MICROSATELLITES).optional(),
  her2: oneOf(words.HER2_SCORES).optional().describe('immunohistochemical score'),
  her2Amplified: z.boolean().optional().describe('by in situ hybridisation'),
  ki67Percent: percent.optional(),
});
