import { describe, expect, it } from 'vitest';
import { CLASSIFICATION_RULES } from '../../../src/assessment/classifications/classification-rules.js';
import { BIBLIOGRAPHY } from '../../../src/references/index.js';
import { askClass, type ClassRule, type Told, type Value } from '../../../src/rules/index.js';

const CLASSIFICATIONS = CLASSIFICATION_RULES.flatMap((rule) =>
  rule.kind === 'classification' ? [rule] : [],
);

/** One value in each range of each number. */
const NUMBERS: Readonly<Record<string, readonly number[]>> = {
  budsInStandardField: [0, 4, 5, 9, 10],
  admissionHours: [0, 23, 24, 25],
  observationHours: [0, 1, 3],
  defectCircumferencePercent: [0, 51, 76, 100],
  defectLengthMm: [1, 31, 51],
  speedCm2PerMin: [0.05, 0.07],
};

function valuesOf(rule: ClassRule, name: string): readonly Value[] {
  const field = rule.fields[name];
  if (field?.type === 'word') return field.words;
  return field?.type === 'flag' ? [false, true] : (NUMBERS[name] ?? [0]);
}

function everyTold(rule: ClassRule): readonly Told[] {
  return Object.keys(rule.fields).reduce<readonly Told[]>(
    (list, name) =>
      list.flatMap((each) => valuesOf(rule, name).map((value) => ({ ...each, [name]: value }))),
    [{}],
  );
}

describe.each(CLASSIFICATIONS)('$id', (rule) => {
  it('has one class for every question, and no row that decides none', () => {
    const used = new Set<string>();
    for (const told of everyTold(rule)) {
      const { decision } = askClass(rule, told);
      if (decision.kind === 'indeterminate') throw new Error('every field is told');
      for (const { row } of decision.rows) used.add(row);
    }
    const rows = rule.table.flat().map(({ row }) => row);
    expect([...used].sort()).toEqual([...rows].sort());
  });

  it('gives one class in each step', () => {
    for (const step of rule.table) {
      expect(new Set(step.map((row) => row.class)).size).toBe(1);
    }
  });

  it('cites a known work for itself and each row', () => {
    const cites = [rule, ...rule.table.flat()].map((row) => row.cites);
    expect(cites.every((list) => list.length > 0)).toBe(true);
    const works = cites.flat().map(({ work }) => work);
    expect(works.filter((work) => !Object.hasOwn(BIBLIOGRAPHY, work))).toEqual([]);
    expect(rule.version).toBeGreaterThanOrEqual(1);
    expect(rule.population.length).toBeGreaterThan(20);
  });
});
