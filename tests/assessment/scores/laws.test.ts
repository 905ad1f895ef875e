import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BBPS } from '../../../src/assessment/classifications/bbps.table.js';
import { SCORE_RULES } from '../../../src/assessment/scores/score-rules.js';
import { BIBLIOGRAPHY } from '../../../src/references/index.js';
import {
  askScore,
  type ScoreRule,
  type Told,
  type Total,
  type Value,
} from '../../../src/rules/index.js';

const SCORES = [...SCORE_RULES, BBPS].flatMap((rule) => (rule.kind === 'score' ? [rule] : []));

/** Values of a field that can be told: each word, both flags, numbers around each border. */
const KNOWN_VALUES: Readonly<Record<string, readonly number[]>> = {
  age: [0, 74, 75, 76],
  sizeMm: [1, 29, 30, 31, 49, 50, 51],
  smDepthUm: [0, 499, 500, 501],
  circumferencePercent: [0, 66, 66.67, 67, 100],
  right: [0, 1, 2, 3],
  transverse: [0, 1, 2, 3],
  left: [0, 1, 2, 3],
};

function valuesOf(rule: ScoreRule, name: string): readonly Value[] {
  const field = rule.fields[name];
  if (field?.type === 'flag') return [false, true];
  if (field?.type === 'word') return field.words.filter((word) => !field.unknown?.includes(word));
  return KNOWN_VALUES[name] ?? [];
}

const anyQuestion = (rule: ScoreRule) =>
  fc.record(
    Object.fromEntries(
      Object.keys(rule.fields).map((name) => [name, fc.constantFrom(...valuesOf(rule, name))]),
    ),
  );

function totalOf(rule: ScoreRule, told: Told): number {
  const { total } = askScore(rule, told);
  return total.kind === 'total' ? total.total : Number.NaN;
}

/** Every way to fill in these fields. */
function everyFilling(rule: ScoreRule, told: Told, names: readonly string[]): readonly Told[] {
  return names.reduce<readonly Told[]>(
    (list, name) =>
      list.flatMap((each) => valuesOf(rule, name).map((value) => ({ ...each, [name]: value }))),
    [told],
  );
}

const rangeOf = (total: Total): readonly number[] =>
  total.kind === 'total' ? [total.total, total.total] : [total.lowest, total.highest];

/** Whether a drug was interrupted is a question only where it was, or may have been, taken. */
const isAsked = (told: Told, name: string): boolean =>
  !name.endsWith('Interrupted') || told[name.replace('Interrupted', '')] !== false;

describe.each(SCORES)('$id', (rule) => {
  it('gives every field that is told a total with one group, or with none at all', () => {
    fc.assert(
      fc.property(anyQuestion(rule), (told) => {
        const { total, band } = askScore(rule, told);
        expect(total.kind).toBe('total');
        expect(band === undefined).toBe(rule.bands.length === 0);
      }),
    );
  });

  it('says the exact range when some fields are missing', () => {
    const names = Object.keys(rule.fields);
    fc.assert(
      fc.property(
        anyQuestion(rule),
        fc.subarray(names, { minLength: 1, maxLength: 3 }),
        (q, gone) => {
          const told = { ...q, ...Object.fromEntries(gone.map((name) => [name, null])) };
          const totals = everyFilling(rule, told, gone).map((filled) => totalOf(rule, filled));
          const { total } = askScore(rule, told);
          const range = [Math.min(...totals), Math.max(...totals)];
          expect(rangeOf(total)).toEqual(range);
          const missing = names.filter((name) => gone.includes(name) && isAsked(told, name));
          expect(total.kind === 'total' ? [] : total.missing).toEqual(missing);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('adds up the items that it names, of which only interruptions subtract', () => {
    fc.assert(
      fc.property(anyQuestion(rule), (told) => {
        const { total } = askScore(rule, told);
        if (total.kind === 'indeterminate') throw new Error('every field is told');
        const sum = total.counted.reduce((points, each) => points + each.points, 0);
        expect(total.total).toBe(sum);
      }),
    );
    const subtract = rule.items.filter(({ points }) => points <= 0).map(({ item }) => item);
    expect(subtract.every((item) => item.endsWith('-interrupted'))).toBe(true);
  });

  it('has no item that no question counts, and no name twice', () => {
    const counted = new Set<string>();
    for (const item of rule.items) {
      const names = Object.keys(item.when);
      for (const told of everyFilling(rule, {}, names)) {
        const { total } = askScore(rule, { ...firstQuestion(rule), ...told });
        if (total.kind === 'total') for (const each of total.counted) counted.add(each.item);
      }
    }
    expect([...counted].sort()).toEqual(rule.items.map(({ item }) => item).sort());
  });

  it('has groups of totals without gap and overlap, the first from 0', () => {
    const plain = rule.bands.filter(({ when }) => when === undefined);
    for (const [i, { from }] of plain.entries()) {
      expect(from).toBe(i === 0 ? 0 : (plain[i - 1]?.to ?? Number.NaN) + 1);
    }
    const last = plain.at(-1)?.to ?? Number.POSITIVE_INFINITY;
    const highest = askScore(rule, {}).total;
    expect(last).toBeGreaterThanOrEqual(highest.kind === 'indeterminate' ? highest.highest : 0);
  });

  it('cites a known work for itself, each item and each group', () => {
    const cites = [rule, ...rule.items, ...rule.bands].map((row) => row.cites);
    expect(cites.every((list) => list.length > 0)).toBe(true);
    const works = new Set(cites.flat().map(({ work }) => work));
    expect([...works].filter((work) => !Object.hasOwn(BIBLIOGRAPHY, work))).toEqual([]);
    expect(rule.version).toBeGreaterThanOrEqual(1);
    expect(rule.population.length).toBeGreaterThan(20);
  });
});

const firstQuestion = (rule: ScoreRule): Told =>
  Object.fromEntries(Object.keys(rule.fields).map((name) => [name, valuesOf(rule, name)[0]]));

describe('a score', () => {
  /** One more point of danger in each field: the order in which the works list their items. */
  const RISING: Readonly<Record<string, readonly Value[]>> = {
    ly: ['0', '1'],
    v: ['0', '1'],
    vm: ['0', '1'],
    asa: ['I', 'II', 'III', 'IV', 'V'],
    antiplatelet: ['none', 'aspirin-alone', 'other-or-combined'],
    lst: ['G', 'NG'],
    nice: [1, 2, 3],
    morphology: ['LST-G', 'LST-NG-F', 'LST-NG-PD'],
    location: ['ascending', 'rectum'],
  };

  it.each(SCORES)(
    '$id never falls when one field grows worse, an interruption left aside',
    (rule) => {
      const fields = Object.keys(rule.fields).filter((name) => !name.endsWith('Interrupted'));
      fc.assert(
        fc.property(anyQuestion(rule), fc.constantFrom(...fields), (told, name) => {
          const values = RISING[name] ?? valuesOf(rule, name);
          const totals = values.map((value) => totalOf(rule, { ...told, [name]: value }));
          expect(totals).toEqual([...totals].sort((a, b) => a - b));
        }),
      );
    },
  );

  it('falls by exactly 1 with each kind of drug that was interrupted', () => {
    const bestJ = SCORES.find(({ id }) => id === 'best-j');
    if (bestJ === undefined) throw new Error('the score is in the list');
    for (const kind of ['warfarin', 'doac', 'p2y12', 'aspirin', 'cilostazol']) {
      const taken = { ...firstQuestion(bestJ), [kind]: true };
      const flag = `${kind}Interrupted`;
      const continued = totalOf(bestJ, { ...taken, [flag]: false });
      expect(totalOf(bestJ, { ...taken, [flag]: true })).toBe(continued - 1);
    }
  });
});
