import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { caseSchema } from '../../src/contract/index.js';
import checks from '../published/practice-check-fields.json' with { type: 'json' };
import record from '../published/record-elements.json' with { type: 'json' };
import type { SchemaNode } from '../support/from-json-schema.js';

const schema: SchemaNode = JSON.parse(JSON.stringify(z.toJSONSchema(caseSchema, { io: 'input' })));

/** @param pointer with `*` for the entries of a list */
function placeOf(pointer: string): SchemaNode | undefined {
  return pointer
    .split('/')
    .slice(1)
    .reduce<SchemaNode | undefined>(
      (node, key) => (key === '*' ? node?.items : node?.properties?.[key]),
      schema,
    );
}

describe(`${record.work} has a place in the case message`, () => {
  it.each(record.elements)('$group: $element', ({ pointers, words }) => {
    for (const pointer of pointers) expect(placeOf(pointer), pointer).toBeDefined();
    const offered = pointers.flatMap((pointer) => placeOf(pointer)?.enum ?? []);
    expect(offered).toEqual(expect.arrayContaining(words ?? []));
  });

  it('with its unit in the name where it has one', () => {
    const measured = record.elements.filter(({ element }) => /, (mm|cm|%)$/.test(element));
    const suffix = { mm: /Mm$/, cm: /Cm$/, '%': /Percent$/ };
    for (const { element, pointers } of measured) {
      const [, unit = 'mm'] = /, (mm|cm|%)$/.exec(element) ?? [];
      for (const pointer of pointers) expect(pointer).toMatch(Reflect.get(suffix, unit));
    }
    expect(measured.length).toBeGreaterThan(5);
  });

  it('save what is known later only, and says where that will come from', () => {
    expect(record.later.every(({ why }) => why.length > 10)).toBe(true);
    expect(placeOf('/pathology')).toBeUndefined(); // the oracle sees what is not there
    expect(placeOf('/lesion/longAxisCm')).toBeUndefined();
    expect(placeOf('/team/assistants/0')).toBeUndefined();
  });
});

describe(`every field of the ${checks.work} has a place in the case message`, () => {
  it.each(checks.checks)('$check', ({ pointers }) => {
    for (const pointer of pointers) expect(placeOf(pointer), pointer).toBeDefined();
  });

  it('and each check of the tables is listed, PC-01 to PC-47 and CC-01 to CC-15', () => {
    const listed = new Set([...checks.checks, ...checks.later].map(({ check }) => check));
    const rows = [
      ...PRACTICE.map((n) => `PC-${String(n).padStart(2, '0')}`),
      ...Array.from({ length: 15 }, (_, n) => `CC-${String(n + 1).padStart(2, '0')}`),
    ];
    expect([...listed].sort()).toEqual(rows.sort());
  });
});

/** Numbers of the practice checks; tens begin a new part of the procedure. */
const PRACTICE = [
  [1, 7],
  [10, 17],
  [20, 27],
  [30, 36],
  [40, 47],
].flatMap(([from = 0, to = 0]) => Array.from({ length: to - from + 1 }, (_, i) => from + i));
