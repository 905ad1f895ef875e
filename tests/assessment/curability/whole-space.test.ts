import { describe, expect, it } from 'vitest';
import { JGES_JES_2020_INDICATION } from '../../../src/assessment/curability/jges-jes-2020-indication.table.js';
import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';
import { askClass, type ClassRule, classRule } from '../../../src/rules/index.js';
import type { Answered } from './second-writing.js';
import { ALL_SETS, allQuestions, EUROPE_2022, type Known } from './spaces.js';

function ask(rule: ClassRule, asked: object): Answered & { readonly rows: readonly string[] } {
  const { decision } = askClass(rule, { ...asked });
  if (decision.kind === 'indeterminate') return { class: 'indeterminate', reasons: [], rows: [] };
  return { ...decision, rows: decision.rows.map(({ row }) => row) };
}

/** Questions that a table and its second writing answer in different ways; the first five. */
function disagreements(
  known: Known,
  rule = known.rule,
  see: (rows: readonly string[]) => unknown = () => undefined,
): readonly object[] {
  const found: object[] = [];
  for (const asked of allQuestions(known)) {
    const table = ask(rule, asked);
    const second = known.writing(asked);
    see(table.rows);
    const same = table.class === second.class && table.reasons.join() === second.reasons.join();
    if (!same && found.push({ asked, table, second }) === 5) break;
  }
  return found;
}

/** The same rule with another table. */
const withRows = (rule: ClassRule, change: (row: ClassRule['table'][number][number]) => object) =>
  classRule({
    ...rule,
    table: rule.table.map((step) => step.map((row) => ({ ...row, ...change(row) }))),
  });

describe.each(ALL_SETS)('the table of $rule.id', (known) => {
  const { rule, order } = known;

  it('answers every question as its second writing does, with no dead row and no overlap', () => {
    const silent = rule.table
      .flat()
      .filter((row) => row.reason === undefined && row.class !== 'no-rule')
      .map(({ row }) => row);
    const alone = new Set<string>();
    const overlaps: (readonly string[])[] = [];
    const see = (rows: readonly string[]) => {
      if (rows.length === 1) alone.add(rows.join());
      else if (rows.some((row) => silent.includes(row))) overlaps.push(rows);
    };
    expect(disagreements(known, rule, see)).toEqual([]);
    expect(overlaps).toEqual([]);
    const rows = rule.table.flat().map(({ row }) => row);
    expect(rows.filter((row) => !alone.has(row))).toEqual([]);
    expect(new Set(rows).size).toBe(rows.length);
  }, 60_000);

  it('gives rows of one step one class, so that no two rows contradict each other', () => {
    for (const step of rule.table) {
      expect(new Set(step.map((row) => row.class)).size).toBe(1);
    }
  });

  it('never gives a better class for a graver finding', () => {
    expect(betterForWorse(rule, order, known)).toEqual([]);
  }, 60_000);
});

describe('the second writing', () => {
  it('notices a row that is left out', () => {
    const deaf = withRows(EUROPE_2022.rule, ({ row }) =>
      row === 'lymphatic-invasion' ? { when: { ly: { is: [] } } } : {},
    );
    expect(disagreements(EUROPE_2022, deaf)).not.toEqual([]);
  });

  it.each([199, 201])('notices a squamous limit of %i um', (limit) => {
    const moved = withRows(EUROPE_2022.rule, ({ row, when }) =>
      row === 'squamous-deeper-than-sm1' ? { when: { ...when, smDepthUm: { above: limit } } } : {},
    );
    expect(disagreements(EUROPE_2022, moved)).not.toEqual([]);
  });
});

it('notices a class that gets better for a graver finding', () => {
  const { rule, order } = EUROPE_2022;
  expect(betterForWorse(rule, [...order].reverse(), EUROPE_2022)).not.toEqual([]);
});

/** Findings from the mildest to the gravest; a lesion of the stomach has no layer in between. */
const GRAVER = {
  histology: ['high-grade-dysplasia', 'carcinoma'],
  depth: ['ep', 'lpm', 'mm', 'sm', 'mp'],
  smDepthUm: [0, 200, 201, 499, 500, 501, 999, 1000, 1001],
  differentiation: ['well', 'moderate', 'poor'],
  undiffLengthMm: [0, 20, 21],
  undiffInSm: [false, true],
  sizeMm: [10, 20, 21, 30, 31, 90],
  ulcer: ['UL0', 'UL1'],
  ly: ['0', '1'],
  v: ['0', '1'],
  hm: ['0', 'X', '1'],
  vm: ['0', 'X', '1'],
  enBloc: [true, false],
  budding: [1, 2, 3],
} as const satisfies {
  readonly [F in keyof CurabilityQuestion]?: readonly CurabilityQuestion[F][];
};

/** The same question with one finding graver by one step. */
function* graver(asked: CurabilityQuestion): Generator<CurabilityQuestion, void> {
  for (const [field, ladder] of Object.entries(GRAVER)) {
    const steps: readonly unknown[] =
      field === 'depth' && asked.tumour !== 'squamous' ? ['m', 'sm', 'mp'] : ladder;
    const now = Object.entries(asked).find(([name]) => name === field)?.[1];
    const at = steps.indexOf(now);
    if (at >= 0 && at + 1 < steps.length) yield { ...asked, [field]: steps[at + 1] };
  }
  if (asked.gastricType === 'differentiated') yield { ...asked, gastricType: 'undifferentiated' };
}

function betterForWorse(rule: ClassRule, order: readonly string[], known: Known) {
  const found: object[] = [];
  let count = 0;
  for (const asked of allQuestions(known)) {
    count += 1;
    // One in seventeen: no axis has seventeen values, so that every value of every field is met.
    if (count % 17 !== 0 || isImpossible(asked)) continue;
    const before = order.indexOf(ask(rule, asked).class);
    if (before < 0) continue;
    for (const worse of graver(asked)) {
      if (isKnownReversal(asked, worse)) continue;
      const after = order.indexOf(ask(rule, worse).class);
      if (after >= 0 && after < before) found.push({ asked, worse });
      if (found.length === 5) return found;
    }
  }
  return found;
}

/** Undifferentiated parts longer than the lesion: they could not become all of it. */
const isImpossible = ({ undiffLengthMm, sizeMm }: CurabilityQuestion) => undiffLengthMm > sizeMm;

/**
 * The one reversal of the guidelines, as transcribed: the limit of 20 mm for undifferentiated
 * parts is worded for the mucosa, so that the same lesion in the submucosa escapes it.
 */
const isKnownReversal = (asked: CurabilityQuestion, worse: CurabilityQuestion) =>
  asked.depth === 'm' && worse.depth === 'sm' && asked.undiffLengthMm > 20;

// Mini-invasive Surg 2021;5:36, abstract: EP/LPM unless round the whole and longer than 50 mm; MM
// and SM1 (at most 200 um) unless round the whole.
describe('the indication in the oesophagus, jges-jes-2020-indication', () => {
  const isIndicated = (cDepth: string, um: number, percent: number, lengthMm: number): boolean => {
    const whole = percent === 100;
    if (cDepth === 'ep' || cDepth === 'lpm') return !whole || lengthMm <= 50;
    return !whole && (cDepth === 'mm' || um <= 200);
  };
  const space = ['ep', 'lpm', 'mm', 'sm'].flatMap((cDepth) =>
    [0, 200, 201].flatMap((cSmDepthUm) =>
      [0, 60, 99, 99.9, 100].flatMap((circumferencePercent) =>
        [1, 50, 50.1, 51].map((lengthMm) => ({
          cDepth,
          cSmDepthUm,
          circumferencePercent,
          lengthMm,
        })),
      ),
    ),
  );

  it('answers every question as its second writing does, and each row decides one alone', () => {
    const alone = new Set<string>();
    for (const asked of space) {
      const { cDepth, cSmDepthUm, circumferencePercent, lengthMm } = asked;
      const indicated = isIndicated(cDepth, cSmDepthUm, circumferencePercent, lengthMm);
      const { decision } = askClass(JGES_JES_2020_INDICATION, asked);
      expect(decision).toMatchObject({ class: indicated ? 'indicated' : 'not-indicated' });
      if (decision.kind === 'decided' && decision.rows.length === 1) {
        for (const { row } of decision.rows) alone.add(row);
      }
    }
    const rows = JGES_JES_2020_INDICATION.table.flat().map(({ row }) => row);
    expect(rows.filter((row) => !alone.has(row))).toEqual([]);
  });

  it('is never given for a deeper, wider or longer lesion and refused for a lesser one', () => {
    for (const one of space) {
      for (const other of space) {
        const depths = ['ep', 'lpm', 'mm', 'sm'];
        const lesser =
          depths.indexOf(one.cDepth) <= depths.indexOf(other.cDepth) &&
          one.cSmDepthUm <= other.cSmDepthUm &&
          one.circumferencePercent <= other.circumferencePercent &&
          one.lengthMm <= other.lengthMm;
        if (!lesser || ask(JGES_JES_2020_INDICATION, other).class !== 'indicated') continue;
        expect(ask(JGES_JES_2020_INDICATION, one).class).toBe('indicated');
      }
    }
  });
});
