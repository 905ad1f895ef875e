import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import type { Condition, Value } from '../../src/rules/condition.js';
import { decide } from '../../src/rules/decide.js';
import type { Fields } from '../../src/rules/field.js';
import type { Told } from '../../src/rules/question.js';
import { samplesOf } from '../../src/rules/samples.js';
import type { Row, Table } from '../../src/rules/table.js';
import { question } from './fruit.js';

const row = (name: string, when: Condition, gives: string, reason?: string): Row => ({
  row: name,
  when,
  class: gives,
  ...(reason === undefined ? {} : { reason }),
  says: name,
  cites: [],
});

const RIPE: Table = [
  [row('light', { weightG: { below: 100 } }, 'wait', 'weight')],
  [
    row('spotted', { spots: { is: ['some'] } }, 'throw', 'spots'),
    row('neck', { part: { is: ['neck'] } }, 'throw', 'neck'),
    row('core', { part: { is: ['core'] } }, 'throw', 'core'),
  ],
  [row('rest', {}, 'eat')],
];
const ask = (told: Told, table: Table = RIPE) => decide(table, question(told));

const GOOD = { kind: 'apple', part: 'flesh', spots: 'none', weightG: 100 };

describe('looking a question up in a table', () => {
  it('takes the first step in which a row holds', () => {
    expect(ask(GOOD)).toMatchObject({ class: 'eat', reasons: [] });
    expect(ask({ ...GOOD, weightG: 99, spots: 'some' })).toMatchObject({
      class: 'wait',
      reasons: ['weight'],
    });
  });

  it('keeps every reason of that step, in the order of the table', () => {
    const found = ask({ ...GOOD, spots: 'some', part: 'core' });
    expect(found).toMatchObject({ class: 'throw', reasons: ['spots', 'core'] });
    expect(found).toMatchObject({ rows: [{ row: 'spotted' }, { row: 'core' }] });
  });

  it('names a reason of two rows once', () => {
    const twice: Table = [[row('a', {}, 'x', 'same'), row('b', {}, 'x', 'same')]];
    expect(ask({}, twice)).toMatchObject({ reasons: ['same'], rows: [{ row: 'a' }, { row: 'b' }] });
  });

  it('answers where a missing field changes nothing', () => {
    const { part: _, ...told } = GOOD;
    expect(ask({ ...told, spots: 'some' })).toMatchObject({ class: 'throw', reasons: ['spots'] });
    expect(ask({ weightG: 1 })).toMatchObject({ class: 'wait' });
  });

  it('keeps only the reasons and rows common to all values', () => {
    const parts: Table = [
      [
        row('neck', { part: { is: ['neck'] } }, 'throw', 'hard'),
        row('neck too', { part: { is: ['neck'] } }, 'throw', 'stalk'),
        row('flesh', { part: { is: ['flesh'] } }, 'throw', 'hard'),
      ],
      [row('rest', {}, 'eat')],
    ];
    const found = ask({ kind: 'pear' }, parts);
    expect(found).toEqual({ kind: 'decided', class: 'throw', reasons: ['hard'], rows: [] });
  });

  it('keeps a row that holds for every value', () => {
    const parts: Table = [
      [
        row('neck', { part: { is: ['neck'] } }, 'throw', 'stalk'),
        row('either', { part: { is: ['neck', 'flesh'] } }, 'throw', 'hard'),
      ],
      [row('rest', {}, 'eat')],
    ];
    expect(ask({ kind: 'pear' }, parts)).toMatchObject({
      class: 'throw',
      reasons: ['hard'],
      rows: [{ row: 'either' }],
    });
  });

  it('is our own fault where a number has nothing to try out', () => {
    const { fields, told } = question({});
    expect(() => decide(RIPE, { fields, told, samples: {} })).toThrow(InvariantError);
  });

  it('leaves the class open where values differ, and names what is missing', () => {
    const { part: _, ...told } = GOOD;
    expect(ask({ ...told, pickedOn: '2026-09-01' })).toEqual({
      kind: 'indeterminate',
      missing: ['part'],
    });
  });

  it('throws at a gap of the table, as it is our error', () => {
    expect(() => ask({}, [[]])).toThrow(InvariantError);
    expect(() => ask({ kind: 'pear' }, [[row('a', { kind: { is: ['apple'] } }, 'x')]])).toThrow(
      InvariantError,
    );
  });
});

const FIELDS: Fields = {
  a: { type: 'word', says: 'a', words: ['0', '1', 'X'], unknown: ['X'] },
  b: { type: 'word', says: 'b', words: ['p', 'q', 'r'] },
  c: { type: 'flag', says: 'c' },
  d: { type: 'number', says: 'd', unit: 'mm', from: 0, to: 100 },
};
const EVERY: Readonly<Record<string, readonly Value[]>> = {
  a: ['0', '1'],
  b: ['p', 'q', 'r'],
  c: [false, true],
  d: [0, 9, 10, 19, 20, 21, 100],
};

const oneOf = (...values: readonly Value[]) =>
  fc.subarray([...values], { minLength: 1 }).map((is) => ({ is }));
const border = fc.oneof(
  fc.constantFrom(10, 20).map((above) => ({ above })),
  fc.constantFrom(10, 20).map((atLeast) => ({ atLeast })),
  fc.constantFrom(10, 20).map((below) => ({ below })),
  fc.constantFrom(10, 20).map((atMost) => ({ atMost })),
);
const condition = fc.record(
  { a: oneOf('0', '1'), b: oneOf('p', 'q', 'r'), c: oneOf(false, true), d: border },
  { requiredKeys: [] },
);
/** Steps of one class each, the last one for everything. */
const tables: fc.Arbitrary<Table> = fc
  .array(
    fc.tuple(fc.constantFrom('x', 'y', 'z'), fc.array(condition, { minLength: 1, maxLength: 3 })),
    { maxLength: 4 },
  )
  .map((steps) => [
    ...steps.map(([gives, whens], i) =>
      whens.map((when, j) => row(`${i}.${j}`, when, gives, `why ${i}.${j}`)),
    ),
    [row('rest', {}, 'z', 'rest')],
  ]);
const tolds: fc.Arbitrary<Told> = fc.record({
  a: fc.constantFrom('0', '1', 'X', null, undefined),
  b: fc.constantFrom('p', 'q', 'r', null, undefined),
  c: fc.constantFrom(false, true, null, undefined),
  d: fc.constantFrom(0, 10, 20, 21, null, undefined),
});

/** The table once more, without any thought of missing fields. */
function plainly(table: Table, known: Readonly<Record<string, Value>>) {
  const passes = (when: Condition) =>
    Object.entries(when).every(([field, test]) => {
      const value = known[field];
      if (value === undefined || test === undefined || Array.isArray(test)) return false;
      if ('is' in test) return test.is.includes(value);
      const n = Number(value);
      if ('above' in test) return n > test.above;
      if ('atLeast' in test) return n >= test.atLeast;
      if ('below' in test) return n < test.below;
      return 'atMost' in test && n <= test.atMost;
    });
  const step = table.find((rows) => rows.some(({ when }) => passes(when))) ?? [];
  const found = step.filter(({ when }) => passes(when));
  return { class: found[0]?.class, reasons: found.map(({ reason }) => reason) };
}

/** Every way to know all fields, given what was told. */
function completions(told: Told): readonly Readonly<Record<string, Value>>[] {
  return Object.entries(EVERY).reduce<readonly Readonly<Record<string, Value>>[]>(
    (all, [field, values]) => {
      const value = told[field] ?? 'X';
      const each = value === 'X' ? values : [value];
      return all.flatMap((known) => each.map((one) => ({ ...known, [field]: one })));
    },
    [{}],
  );
}

// The oracle is brute force over every completion, each one looked up without the machinery.
describe('looking up with missing fields, against brute force', () => {
  it('gives the class that all completions share and no other, for any table', () => {
    fc.assert(
      fc.property(tables, tolds, (table, told) => {
        const whens = table.flat().map(({ when }) => when);
        const given = decide(table, { fields: FIELDS, told, samples: samplesOf(FIELDS, whens) });
        const all = completions(told).map((known) => plainly(table, known));
        const classes = new Set(all.map((one) => one.class));
        expect(given.kind).toBe(classes.size === 1 ? 'decided' : 'indeterminate');
        if (given.kind === 'indeterminate') {
          const missing = Object.keys(FIELDS).filter((name) => (told[name] ?? 'X') === 'X');
          expect(given.missing).toEqual(missing);
          return;
        }
        expect([...classes]).toEqual([given.class]);
        for (const reason of given.reasons) {
          for (const one of all) expect(one.reasons).toContain(reason);
        }
      }),
      { seed: 20_260_329, numRuns: 2000 },
    );
  });

  it('is not satisfied by an answer that ignores what is missing', () => {
    const table: Table = [[row('a', { a: { is: ['1'] } }, 'x')], [row('rest', {}, 'z')]];
    const classes = completions({ b: 'p', c: true, d: 0 }).map(
      (known) => plainly(table, known).class,
    );
    expect([...new Set(classes)]).toEqual(['z', 'x']);
  });
});
