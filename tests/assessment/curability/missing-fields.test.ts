import { describe, expect, it } from 'vitest';
import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';
import { askClass, type ClassRule, classRule, type Told } from '../../../src/rules/index.js';
import { IN_ORDER, isPureDysplasia, isRequired, isUsed } from './second-asking.js';
import type { Answered } from './second-writing.js';
import { ALL_SETS, EUROPE_2022, HARMLESS, type Known } from './spaces.js';

type Field = keyof CurabilityQuestion;

/** A field that is not told (undefined), told to be not known (null), or X. */
interface Hole {
  readonly field: Field;
  readonly told: undefined | null | 'X';
}

/** One value on each side of every limit of any set. */
const VALUES = {
  tumour: ['squamous', 'barrett', 'gastric', 'colorectal', 'other'],
  histology: ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'],
  smDepthUm: [0, 200, 201, 499, 500, 501, 999, 1000, 1001],
  differentiation: ['well', 'moderate', 'poor', 'signet', 'mucinous'],
  gastricType: ['differentiated', 'undifferentiated'],
  undiffLengthMm: [20, 21],
  undiffInSm: [false, true],
  sizeMm: [20, 21, 30, 31],
  ulcer: ['UL0', 'UL1'],
  ly: ['0', '1'],
  v: ['0', '1'],
  hm: ['0', '1', 'X'],
  vm: ['0', '1', 'X'],
  enBloc: [true, false],
  endoscopicallyComplete: [true, false],
  budding: [1, 2, 3],
} as const;
const IF_ABSENT: { readonly [F in Field]?: CurabilityQuestion[F] } = {
  undiffLengthMm: 0,
  undiffInSm: false,
};
const IF_PURE_DYSPLASIA: { readonly [F in Field]?: CurabilityQuestion[F] } = {
  ly: '0',
  v: '0',
  differentiation: 'well',
  gastricType: 'differentiated',
};
const LAYERS = { squamous: ['ep', 'lpm', 'mm', 'sm', 'mp'], others: ['m', 'sm', 'mp'] } as const;
const layersOf = ({ tumour }: CurabilityQuestion): readonly CurabilityQuestion['depth'][] =>
  tumour === 'squamous' ? LAYERS.squamous : LAYERS.others;

/** What can stand in a hole, once tumour, histology and depth are filled in. */
function valuesFor(asked: CurabilityQuestion, { field, told }: Hole): readonly unknown[] {
  if (field === 'depth') return layersOf(asked);
  if (told === undefined && field in IF_ABSENT) return [IF_ABSENT[field]];
  if (told === undefined && field in IF_PURE_DYSPLASIA && isPureDysplasia(asked)) {
    return [IF_PURE_DYSPLASIA[field]];
  }
  return VALUES[field];
}

/** Every way to fill the holes of a question; holes in the order of the fields. */
function* filled(asked: CurabilityQuestion, holes: readonly Hole[]): Generator<CurabilityQuestion> {
  const [hole, ...rest] = holes;
  if (hole === undefined) return yield asked;
  for (const value of valuesFor(asked, hole))
    yield* filled({ ...asked, [hole.field]: value }, rest);
}

function expected({ rule, writing }: Known, asked: CurabilityQuestion, holes: readonly Hole[]) {
  const answers = new Map<string, Answered>();
  for (const complete of filled(asked, holes)) {
    if (!layersOf(complete).includes(complete.depth)) continue;
    const answered = writing(complete);
    answers.set(`${answered.class};${answered.reasons.join()}`, answered);
  }
  const [first, ...rest] = answers.values();
  if (rest.some((answered) => answered.class !== first?.class)) {
    return { kind: 'indeterminate', missing: missingOf(rule.id, asked, holes) };
  }
  const isCommon = (reason: string) => rest.every(({ reasons }) => reasons.includes(reason));
  return { kind: 'decided', class: first?.class, reasons: first?.reasons.filter(isCommon) };
}

/** Holes that count, for some way to fill in what decides whether they do. */
function missingOf(set: string, asked: CurabilityQuestion, holes: readonly Hole[]) {
  const deciding = holes.filter(({ field }) => ['tumour', 'histology', 'depth'].includes(field));
  const ways = [...filled(asked, deciding)];
  return holes
    .filter(({ field, told }) => {
      const counts = told === undefined ? isRequired : isUsed;
      return ways.some((way) => counts(set, field, way));
    })
    .map(({ field }) => field);
}

function given(rule: ClassRule, asked: CurabilityQuestion, holes: readonly Hole[]) {
  const told: Told = {
    ...asked,
    ...Object.fromEntries(holes.map((hole) => [hole.field, hole.told])),
  };
  const { decision } = askClass(rule, told);
  if (decision.kind === 'indeterminate') return decision;
  return { kind: 'decided', class: decision.class, reasons: decision.reasons };
}

/** Questions near every limit, in which holes are then made. */
const BASES: readonly Partial<CurabilityQuestion>[] = [
  {},
  { histology: 'high-grade-dysplasia' },
  { ulcer: 'UL1', sizeMm: 31 },
  { gastricType: 'undifferentiated', sizeMm: 20, hm: '1' },
  { depth: 'sm', smDepthUm: 500, sizeMm: 30 },
  { depth: 'sm', smDepthUm: 501, undiffInSm: true, vm: '1' },
  { depth: 'sm', smDepthUm: 499, ulcer: 'UL1', undiffLengthMm: 21, enBloc: false },
  { tumour: 'squamous', depth: 'lpm' },
  { tumour: 'squamous', depth: 'mm', sizeMm: 21, hm: 'X' },
  { tumour: 'squamous', depth: 'sm', smDepthUm: 200, sizeMm: 20 },
  { tumour: 'squamous', histology: 'low-grade-dysplasia', depth: 'ep', enBloc: false },
  { tumour: 'barrett', depth: 'sm', smDepthUm: 501, sizeMm: 40 },
  { tumour: 'barrett', histology: 'high-grade-dysplasia', hm: '1' },
  { tumour: 'colorectal', depth: 'sm', smDepthUm: 1000, budding: 2 },
  { tumour: 'colorectal', depth: 'sm', smDepthUm: 999, ly: '1', vm: 'X' },
  { tumour: 'colorectal', histology: 'low-grade-dysplasia', enBloc: false },
  { tumour: 'colorectal', depth: 'mp', differentiation: 'mucinous' },
  { tumour: 'other', vm: '1' },
  { endoscopicallyComplete: false, v: '1' },
];

/** Every choice of at most `most` fields, in their order. */
function* choicesOf(fields: readonly Field[], most: number): Generator<readonly Field[]> {
  yield [];
  if (most === 0) return;
  for (const [i, field] of fields.entries()) {
    for (const rest of choicesOf(fields.slice(i + 1), most - 1)) yield [field, ...rest];
  }
}

/** Patterns of holes in which table and second writing differ; the first five. */
function disagreements(known: Known, most: number, told: null | undefined): readonly object[] {
  const fields = IN_ORDER.filter((field) => field in known.rule.fields);
  const found: object[] = [];
  for (const base of BASES) {
    const asked = { ...HARMLESS, ...base };
    for (const chosen of choicesOf(fields, most)) {
      const holes = chosen.map((field) => ({ field, told }));
      const second = expected(known, asked, holes);
      const table = given(known.rule, asked, holes);
      if (JSON.stringify(second) === JSON.stringify(table)) continue;
      if (found.push({ base, chosen, second, table }) === 5) return found;
    }
  }
  return found;
}

// The oracle is brute force: every way to fill the holes, asked of the second writing.
describe('brute force', () => {
  it('notices a rule that takes a missing vessel invasion for none', () => {
    const rule = classRule({
      ...EUROPE_2022.rule,
      fields: {
        ...EUROPE_2022.rule.fields,
        ly: { type: 'word', says: '', words: ['0', '1'], assumed: [{ when: {}, value: '0' }] },
      },
    });
    expect(disagreements({ ...EUROPE_2022, rule }, 1, undefined)).not.toEqual([]);
  });

  it('notices a rule that forgets to name a field that is missing', () => {
    const fields = Object.entries(EUROPE_2022.rule.fields).map(([name, field]) =>
      name === 'hm' ? [name, { ...field, askedWhen: [] }] : [name, field],
    );
    const rule = { ...EUROPE_2022.rule, fields: Object.fromEntries(fields) };
    expect(disagreements({ ...EUROPE_2022, rule }, 1, undefined)).not.toEqual([]);
  });
});

describe.each(ALL_SETS)('$rule.id with missing fields', (known) => {
  it('gives the class and reasons common to all values, for up to three absent fields', () => {
    expect(disagreements(known, 3, undefined)).toEqual([]);
  }, 60_000);

  it('reads null as missing, whatever absence would mean', () => {
    expect(disagreements(known, 2, null)).toEqual([]);
  }, 60_000);
});

const DAY_0 = { tumour: 'gastric', enBloc: true, endoscopicallyComplete: true } as const;

// Conventions of the worked examples: X of ly, v and budding is not known; X of hm and vm is not
// free; an answer that names missing fields names them in the order of the table.
describe('answers with missing fields', () => {
  const { rule } = EUROPE_2022;
  const { histology: _, ...noHistology } = HARMLESS;

  it.each([
    ['ly', 'X'],
    ['v', 'X'],
    ['ly', null],
    ['v', undefined],
  ])('an invasion %s told as %s leaves the class open', (field, value) => {
    expect(askClass(rule, { ...HARMLESS, [field]: value }).decision).toEqual({
      kind: 'indeterminate',
      missing: [field],
    });
  });

  it('leaves the class open for a budding X only where invasion makes it count', () => {
    const asked = { ...HARMLESS, tumour: 'colorectal', depth: 'sm', budding: 'X' } as const;
    expect(askClass(rule, asked).decision).toMatchObject({ missing: ['budding'] });
    expect(askClass(rule, { ...asked, depth: 'm' }).decision).toMatchObject({
      class: 'very-low-risk',
    });
  });

  it('answers in spite of missing fields where they change nothing', () => {
    expect(askClass(rule, { tumour: 'other' }).decision).toMatchObject({ class: 'no-rule' });
    expect(askClass(rule, noHistology).decision).toMatchObject({ class: 'very-low-risk' });
  });

  it('names every field asked for on the day of the procedure, in their order', () => {
    expect(askClass(rule, DAY_0).decision).toEqual({
      kind: 'indeterminate',
      missing: [
        ...['histology', 'depth', 'smDepthUm', 'gastricType', 'sizeMm', 'ulcer'],
        ...['ly', 'v', 'hm', 'vm'],
      ],
    });
  });

  it('takes nothing for granted of a dysplasia whose depth is not told', () => {
    const asked = { ...DAY_0, histology: 'high-grade-dysplasia', sizeMm: 10, ulcer: 'UL0' };
    expect(askClass(rule, { ...asked, hm: '0', vm: '0' }).decision).toMatchObject({
      missing: ['depth', 'smDepthUm', 'gastricType', 'ly', 'v'],
    });
    expect(askClass(rule, { ...asked, depth: 'm', hm: '0', vm: '0' }).decision).toMatchObject({
      class: 'very-low-risk',
    });
  });
});
