import { describe, expect, it } from 'vitest';
import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';
import { askClass } from '../../../src/rules/index.js';
import {
  ALL_SETS,
  EUROPE_2022,
  HARMLESS,
  JAPAN_COLORECTUM,
  JAPAN_OESOPHAGUS,
  JAPAN_STOMACH,
  type Known,
  KOREA_OESOPHAGUS,
} from './spaces.js';

type Change = Partial<CurabilityQuestion>;

const remarksOf = ({ rule }: Known, change: Change) =>
  askClass(rule, { ...HARMLESS, ...change }).remarks.map(({ remark }) => remark);
const saidBy = ({ rule }: Known, change: Change) =>
  askClass(rule, { ...HARMLESS, ...change })
    .remarks.map(({ says }) => says)
    .join(' ');

const SM: Change = { depth: 'sm', smDepthUm: 300 };
const COLORECTAL: Change = { tumour: 'colorectal' };
const SQUAMOUS: Change = { tumour: 'squamous', depth: 'mm' };
const UNDIFF: Change = { gastricType: 'undifferentiated' };

interface Shown {
  readonly remark: string;
  readonly of: Known;
  readonly beside: Change;
  /** One step away, where it is not shown. */
  readonly not: readonly Change[];
}

const SHOWN: readonly Shown[] = [
  {
    // Endoscopy 2025;57:504-554 (program) and Dig Endosc 2021;33:4-20 (second source): 20 mm.
    remark: 'undifferentiated-small-elsewhere',
    of: EUROPE_2022,
    beside: { ...UNDIFF, sizeMm: 20 },
    not: [
      { ...UNDIFF, sizeMm: 21 },
      { ...UNDIFF, ulcer: 'UL1' },
      { ...UNDIFF, ...SM },
      {},
      { ...UNDIFF, endoscopicallyComplete: false },
    ],
  },
  {
    // Criteria of 2015, World J Gastrointest Surg 2021;13:1180: 500 um, 30 mm.
    remark: 'ulcerated-submucosal-second-reading',
    of: EUROPE_2022,
    beside: { depth: 'sm', smDepthUm: 500, sizeMm: 30, ulcer: 'UL1' },
    not: [
      { depth: 'sm', smDepthUm: 501, sizeMm: 30, ulcer: 'UL1' },
      { depth: 'sm', smDepthUm: 500, sizeMm: 31, ulcer: 'UL1' },
      { ...SM, ulcer: 'UL0' },
      { ...SM, ...UNDIFF, ulcer: 'UL1' },
    ],
  },
  {
    // Criteria of 2015, PMC6314977: Barrett lesions below 3 cm.
    remark: 'barrett-size-2015',
    of: EUROPE_2022,
    beside: { ...SM, tumour: 'barrett', sizeMm: 30 },
    not: [
      { ...SM, tumour: 'barrett', sizeMm: 29 },
      { tumour: 'barrett', sizeMm: 30 },
      { ...SM, tumour: 'barrett', sizeMm: 30, ly: '1' },
    ],
  },
  {
    // Endoscopy 2022;54:591-622, abstract: no ulceration, for all organs.
    remark: 'ulcer-outside-stomach',
    of: EUROPE_2022,
    beside: { ...COLORECTAL, ulcer: 'UL1' },
    not: [COLORECTAL, { ulcer: 'UL1' }, { ...COLORECTAL, ulcer: 'UL1', hm: '1' }],
  },
  {
    remark: 'recurrence-after-hm1',
    of: EUROPE_2022,
    beside: { ...COLORECTAL, hm: '1' },
    not: [
      COLORECTAL,
      { ...COLORECTAL, hm: 'X' },
      { ...COLORECTAL, hm: '1', enBloc: false },
      { ...COLORECTAL, hm: '1', endoscopicallyComplete: false },
      { hm: '1' },
    ],
  },
  {
    remark: 'recurrence-after-hm1-invasive',
    of: JAPAN_COLORECTUM,
    beside: { ...COLORECTAL, ...SM, hm: '1' },
    not: [
      { ...COLORECTAL, ...SM },
      { ...COLORECTAL, ...SM, hm: '1', enBloc: false },
      { ...COLORECTAL, ...SM, hm: '1', endoscopicallyComplete: false },
      { ...COLORECTAL, hm: '1' },
      { ...SM, hm: '1' },
    ],
  },
  {
    // The JSCCR sentence names the vertical margin alone; the other reading by second source.
    remark: 'horizontal-margin-second-reading',
    of: JAPAN_COLORECTUM,
    beside: { ...COLORECTAL, ...SM, hm: 'X' },
    not: [
      { ...COLORECTAL, ...SM },
      { ...SM, hm: '1' },
      { ...COLORECTAL, hm: '1' },
    ],
  },
  {
    // Dig Endosc 2021;33:4-20, figures 2 and 3 (program).
    remark: 'surgery-advised',
    of: JAPAN_STOMACH,
    beside: { ulcer: 'UL1', hm: '1' },
    not: [{ hm: '1' }, { ulcer: 'UL1' }, { ulcer: 'UL1', hm: '1', vm: '1' }],
  },
  {
    remark: 'surgery-advised',
    of: JAPAN_STOMACH,
    beside: { ...SM, enBloc: false },
    not: [SM, { enBloc: false }, { ...SM, enBloc: false, ly: '1' }],
  },
  {
    remark: 'more-local-recurrence',
    of: JAPAN_STOMACH,
    beside: { enBloc: false, sizeMm: 20 },
    not: [{ enBloc: false, sizeMm: 19 }, { sizeMm: 20 }],
  },
  {
    // Dig Endosc 2021;33:4-20, figure 6 (program): 20 mm, in the mucosa.
    remark: 'undifferentiated-limit-of-mucosa',
    of: JAPAN_STOMACH,
    beside: { ...SM, undiffLengthMm: 21 },
    not: [{ ...SM, undiffLengthMm: 20 }, { undiffLengthMm: 21 }],
  },
  {
    remark: 'seventh-edition',
    of: JAPAN_STOMACH,
    beside: SM,
    not: [{}, { ...SM, smDepthUm: 500 }, { ...SM, hm: '1' }],
  },
  {
    // Am J Gastroenterol 2013;108:544, second source.
    remark: 'metastasis-by-depth',
    of: EUROPE_2022,
    beside: SQUAMOUS,
    not: [{ ...SQUAMOUS, depth: 'lpm' }, SM],
  },
  {
    remark: 'metastasis-by-depth',
    of: KOREA_OESOPHAGUS,
    beside: { ...SQUAMOUS, depth: 'sm' },
    not: [{ ...SQUAMOUS, depth: 'mp' }],
  },
  {
    // Esophagus 2023;20:343, as quoted.
    remark: 'jes-2022-on-mm',
    of: JAPAN_OESOPHAGUS,
    beside: SQUAMOUS,
    not: [
      { ...SQUAMOUS, depth: 'lpm' },
      { ...SQUAMOUS, depth: 'lpm', hm: '1' },
      { ...SQUAMOUS, ly: '1' },
    ],
  },
];

describe('a remark beside an answer', () => {
  it.each(SHOWN)('is shown where it belongs and nowhere else: $remark', (shown) => {
    expect(remarksOf(shown.of, shown.beside)).toContain(shown.remark);
    for (const change of shown.not) {
      expect(remarksOf(shown.of, change)).not.toContain(shown.remark);
    }
  });

  it('has an example here, each one', () => {
    const known = new Set(SHOWN.map(({ remark }) => remark));
    const all = ALL_SETS.flatMap(({ rule }) => rule.remarks.map(({ remark }) => remark));
    expect(all.filter((remark) => !known.has(remark))).toEqual([]);
  });

  it('never changes the class or the reasons', () => {
    for (const { of, beside } of SHOWN) {
      const asked = { ...HARMLESS, ...beside };
      const silent = { ...of.rule, remarks: [] };
      expect(askClass(silent, asked).decision).toEqual(askClass(of.rule, asked).decision);
    }
  });

  // R-ESD study, Endoscopy 2022/23, doi 10.1055/a-1960-3552, abstract; Am J Gastroenterol
  // 2013;108:544 by second source.
  it('says the published figures', () => {
    expect(saidBy(EUROPE_2022, { ...COLORECTAL, hm: '1' })).toMatch(/2 of 96.*1 of 212/);
    expect(saidBy(JAPAN_COLORECTUM, { ...COLORECTAL, ...SM, hm: '1' })).toMatch(/2 of 8.*1 of 38/);
    expect(saidBy(JAPAN_OESOPHAGUS, SQUAMOUS)).toMatch(/0\.4 %.*8\.7 %.*7\.7 %.*36\.2 %/);
  });
});
