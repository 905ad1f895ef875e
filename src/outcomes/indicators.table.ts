import { cite } from '../references/index.js';
import { COLORECTAL } from './organs.js';
import type { Benchmark, Definition } from './report.js';
import { INDICATOR_IDS, type IndicatorId } from './words.js';

const KOREA = cite('korea2020', 'Table 1', 'published');
const ATTEMPTED = cite('esdPractice', 'attempted: also hybrid, converted, abandoned', 'derived');
const PROCEDURES = cite('esdPractice', 'per procedure in which dissection began', 'recalled');
const WINDOW_30 = cite(
  'agree2022',
  'within 30 days, whatever the likelihood of a link',
  'published',
);
const LEVEL = cite('colorectalLevel2020', 'abstract: expert level, colorectal', 'published');
const GROUP = cite('earlyCancerGroup', 'recommended rates', 'published');

const NEVER_STARTED = 'procedures in which the dissection never began';
const SILENT = 'outcomes that nobody told: they are missing, and never a "no"';
const TOO_YOUNG = 'procedures whose days are not over yet, whatever has happened in them';

/** Days after the procedure, the day of which is day 0. */
export const WINDOW_DAYS = { bleeding28d: 28, others: 30 } as const;

const COMPLICATIONS: readonly Benchmark[] = [
  {
    says: 'expert level, colorectal: complications in 5 % or fewer',
    organs: COLORECTAL,
    atMost: 0.05,
    cites: [LEVEL],
  },
  { says: 'European early-cancer group: adverse events below 5 %', atMost: 0.05, cites: [GROUP] },
];

const PERFORATION_SEEN: readonly Benchmark[] = [
  {
    says: 'experts of 590 colorectal dissections had 3.7 %',
    organs: COLORECTAL,
    atMost: 0.037,
    cites: [LEVEL],
  },
  {
    says: 'trainees of 590 colorectal dissections had 6.9 %',
    organs: COLORECTAL,
    atMost: 0.069,
    cites: [LEVEL],
  },
];

const BLEEDING_SEEN: readonly Benchmark[] = [
  {
    says: 'experts of 590 colorectal dissections had 2.9 %, by a definition of bleeding not noted',
    organs: COLORECTAL,
    atMost: 0.029,
    cites: [LEVEL],
  },
  {
    says: 'trainees of 590 colorectal dissections had 4.4 %, by a definition of bleeding not noted',
    organs: COLORECTAL,
    atMost: 0.044,
    cites: [LEVEL],
  },
];

type Row = Omit<Definition, 'id' | 'good' | 'benchmarks' | 'denominator' | 'exclusions'> &
  Partial<Pick<Definition, 'benchmarks' | 'denominator' | 'exclusions'>>;

/** An adverse outcome of procedures, within days. */
const adverse = (row: Row): Omit<Definition, 'id'> => ({
  denominator: 'procedures in which the dissection began',
  exclusions: [NEVER_STARTED, SILENT, ...(row.windowDays === undefined ? [] : [TOO_YOUNG])],
  benchmarks: [],
  good: 'low',
  ...row,
});

/**
 * What each indicator counts. The words that the facts of a record hold follow these definitions;
 * the conditions themselves stand where the record is read.
 */
const DEFINITIONS: { readonly [Id in IndicatorId]: Omit<Definition, 'id'> } = {
  enBloc: {
    title: 'En bloc resection',
    numerator: 'the lesion was removed in one piece, and nothing was told to be left',
    denominator:
      'lesions whose dissection was attempted: also hybrid, converted and abandoned ones',
    exclusions: [NEVER_STARTED],
    good: 'high',
    benchmarks: [
      {
        says: 'expert level, colorectal: 90 % or more',
        organs: COLORECTAL,
        atLeast: 0.9,
        cites: [LEVEL],
      },
      {
        says: 'rectum without severe fibrosis had 96.6 %, with it 86.4 %',
        organs: ['rectum'],
        atLeast: 0.966,
        cites: [cite('gePort2023', 'rectal dissections', 'published')],
      },
    ],
    cites: [KOREA, ATTEMPTED],
  },
  r0: {
    title: 'R0 (complete) resection',
    numerator: 'en bloc, and horizontal and vertical margin free',
    denominator: 'attempted dissections whose final pathology is back',
    exclusions: [
      NEVER_STARTED,
      'abandoned dissections without a report: there was nothing to examine',
      'reports that are not back: they are missing',
    ],
    good: 'high',
    benchmarks: [
      {
        says: 'rectum without severe fibrosis had 79.7 %, with it 61.4 %',
        organs: ['rectum'],
        atLeast: 0.797,
        cites: [cite('gePort2023', 'rectal dissections', 'published')],
      },
    ],
    cites: [KOREA, cite('esdPractice', 'a margin that cannot be assessed is not R0', 'derived')],
  },
  curative: {
    title: 'Curative resection',
    numerator: 'R0, and a class that the chosen rule set calls curative',
    denominator: 'attempted dissections of neoplastic lesions whose final pathology is back',
    exclusions: [
      NEVER_STARTED,
      'lesions without neoplasia',
      'lesions of which the rule set does not speak',
      'reports that are not back: they are missing',
    ],
    good: 'high',
    benchmarks: [
      { says: 'European early-cancer group: above 80 %', atLeast: 0.8, cites: [GROUP] },
      {
        says: 'rectum without severe fibrosis had 78.4 %, with it 54.5 %',
        organs: ['rectum'],
        atLeast: 0.784,
        cites: [cite('gePort2023', 'rectal dissections', 'published')],
      },
    ],
    cites: [KOREA],
  },
  intraproceduralPerforation: adverse({
    title: 'Perforation during the procedure',
    numerator: 'a visible hole, fat or free space during the dissection',
    benchmarks: PERFORATION_SEEN,
    cites: [PROCEDURES],
  }),
  delayedPerforation: adverse({
    title: 'Delayed perforation',
    numerator: 'a perforation found after the scope was out, and no hole seen at the end',
    windowDays: WINDOW_DAYS.others,
    cites: [PROCEDURES, cite('esdPractice', 'counted for 30 days', 'derived')],
  }),
  bleeding28d: adverse({
    title: 'Delayed bleeding within 28 days (bleed-28d)',
    numerator: 'clinical signs, confirmed at emergency endoscopy, up to day 28',
    windowDays: WINDOW_DAYS.bleeding28d,
    benchmarks: BLEEDING_SEEN,
    cites: [cite('bestJEurope2024', 'definition of delayed bleeding', 'published')],
  }),
  bleeding6h30d: adverse({
    title: 'Delayed bleeding from 6 hours to 30 days (bleed-6h-30d)',
    numerator: 'overt haematochezia with a bleeding spot at repeat colonoscopy, or transfusion',
    denominator: 'procedures in colon or rectum in which the dissection began',
    organs: COLORECTAL,
    windowDays: WINDOW_DAYS.others,
    benchmarks: BLEEDING_SEEN,
    cites: [cite('wjg2014', 'definition of delayed bleeding', 'published')],
  }),
  bleeding30dCsdb: adverse({
    title: 'Clinically significant delayed bleeding within 30 days (bleed-30d-csdb)',
    numerator:
      'bleeding with an emergency visit, readmission, transfusion, haemostasis or a fall of the haemoglobin by 2 g/dL or more',
    windowDays: WINDOW_DAYS.others,
    benchmarks: BLEEDING_SEEN,
    cites: [
      cite('albouys2024', 'window of 30 days', 'published'),
      cite('albouys2024', 'what makes a bleeding clinically significant', 'recalled'),
    ],
  }),
  stricture: adverse({
    title: 'Stricture',
    numerator: 'a standard gastroscope (9 to 10 mm) does not pass, or it was dilated; at any time',
    denominator:
      'procedures in oesophagus, cardia or pylorus, or in the rectum with a near-circular wound, in which the dissection began',
    windowDays: WINDOW_DAYS.others,
    cites: [
      PROCEDURES,
      cite('esdPractice', 'near-circular: three quarters of the circumference or more', 'derived'),
      cite('esdPractice', '"no" needs a passing scope or a status from day 30 on', 'practice'),
    ],
  }),
  conversionToSurgery: adverse({
    title: 'Emergency surgery for an adverse event',
    numerator:
      'an emergency operation for an adverse event; operations for the tumour do not count',
    windowDays: WINDOW_DAYS.others,
    cites: [PROCEDURES, cite('esdPractice', 'counted for 30 days', 'derived')],
  }),
  death30d: adverse({
    title: 'Death within 30 days',
    numerator: 'death of any cause up to day 30',
    windowDays: WINDOW_DAYS.others,
    cites: [cite('esdPractice', 'mortality within 30 days', 'practice')],
  }),
  readmission30d: adverse({
    title: 'Readmission within 30 days',
    numerator: 'an admission of its own, or one that an event led to, up to day 30',
    windowDays: WINDOW_DAYS.others,
    cites: [cite('esdPractice', 'readmission within 30 days', 'practice')],
  }),
  adverseEvent30d: adverse({
    title: 'Any adverse event within 30 days',
    numerator: 'any untoward event after the procedure up to day 30, however likely a link',
    windowDays: WINDOW_DAYS.others,
    benchmarks: COMPLICATIONS,
    cites: [WINDOW_30],
  }),
  residualOrRecurrence: {
    title: 'Residual or local recurrent neoplasia',
    numerator: 'neoplasia at the scar at any check',
    denominator: 'lesions with at least one check that saw the scar',
    exclusions: ['lesions whose scar nobody has looked at', 'checks that wait for their tissue'],
    good: 'low',
    benchmarks: [],
    cites: [cite('esdPractice', 'neoplasia at the scar: tissue before look', 'practice')],
  },
};

/** In the order in which they are reported. */
export const INDICATORS: readonly Definition[] = INDICATOR_IDS.map((id) => ({
  id,
  ...DEFINITIONS[id],
}));

/** The speed that marks an expert, in cm2/h, and other levels of it. */
export const SPEED_BENCHMARKS: readonly Benchmark[] = [
  {
    says: 'expert level, colorectal: 9 cm2/h or more',
    organs: COLORECTAL,
    atLeast: 9,
    cites: [LEVEL],
  },
];
