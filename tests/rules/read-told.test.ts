import { describe, expect, it } from 'vitest';
import { type Contradiction, readTold } from '../../src/rules/read-told.js';
import { FIELDS } from './fruit.js';

const CONTRADICTIONS: readonly Contradiction[] = [
  {
    rule: 'peeled-spots',
    field: 'spots',
    when: { peeled: { is: [true] }, spots: { is: ['some'] } },
    message: 'A peeled fruit shows no spots.',
    expected: 'spots none or absent',
  },
];

const read = (document: unknown) => readTold(FIELDS, CONTRADICTIONS, document);

function problems(document: unknown) {
  const checked = read(document);
  return checked.ok ? [] : checked.problems;
}
const refusals = (document: unknown) =>
  problems(document).map(({ rule, pointer }) => `${rule} ${pointer}`);

describe('reading the fields of a question', () => {
  it('passes fields of the right kind, and null for each', () => {
    const told = {
      kind: 'pear',
      part: 'neck',
      spots: 'X',
      peeled: false,
      weightG: 0,
      pickedOn: '2026-02-28',
    };
    expect(read(told)).toEqual({ ok: true, value: told });
    const asked = Object.fromEntries(Object.keys(FIELDS).map((name) => [name, null]));
    expect(read(asked)).toEqual({ ok: true, value: asked });
    expect(read({})).toEqual({ ok: true, value: {} });
  });

  it.each([null, undefined, 'text', 1, true, [{}]])(
    'refuses %j, which is no object',
    (document) => {
      expect(refusals(document)).toEqual(['wrong-type ']);
    },
  );

  it.each([
    ['a word that is none of the list', { kind: 'plum' }, 'not-in-list /kind'],
    ['another type for a word', { kind: 1 }, 'not-in-list /kind'],
    [
      'a word that is not possible beside another',
      { kind: 'apple', part: 'neck' },
      'not-in-list /part',
    ],
    ['text for a flag', { peeled: 'true' }, 'wrong-type /peeled'],
    ['text for a number', { weightG: '10' }, 'wrong-type /weightG'],
    ['a part of a whole number', { weightG: 1.5 }, 'wrong-type /weightG'],
    ['a number below the range', { weightG: -1 }, 'out-of-range /weightG'],
    ['a number above the range', { weightG: 1001 }, 'out-of-range /weightG'],
    ['a day that does not exist', { pickedOn: '2026-02-29' }, 'bad-format /pickedOn'],
    ['a number for a day', { pickedOn: 20_260_228 }, 'bad-format /pickedOn'],
  ])('refuses %s', (_what, document, refusal) => {
    expect(refusals(document)).toEqual([refusal]);
  });

  it('passes both ends of a range', () => {
    expect(refusals({ weightG: 0 })).toEqual([]);
    expect(refusals({ weightG: 1000 })).toEqual([]);
  });

  it('takes every word of a field as long as nothing rules it out', () => {
    for (const part of ['core', 'flesh', 'neck']) expect(refusals({ part })).toEqual([]);
    expect(refusals({ kind: null, part: 'neck' })).toEqual([]);
  });

  it.each(['colour', 'constructor', '__proto__', 'toString', ''])('refuses a field %j', (name) => {
    const document: unknown = JSON.parse(`{ ${JSON.stringify(name)}: "none" }`);
    expect(refusals(document)).toEqual([`unknown-field /${name}`]);
  });

  // RFC 6901, section 3: ~ is written ~0 and / is written ~1.
  it('writes the name of an unknown field as a JSON Pointer', () => {
    expect(refusals({ 'a/b~c': 1 })).toEqual(['unknown-field /a~1b~0c']);
  });

  it('names every problem at once', () => {
    expect(refusals({ kind: 'plum', colour: 1, weightG: -1 })).toEqual([
      'not-in-list /kind',
      'unknown-field /colour',
      'out-of-range /weightG',
    ]);
  });

  it('refuses fields that contradict each other, and only those', () => {
    expect(refusals({ peeled: true, spots: 'some' })).toEqual(['peeled-spots /spots']);
    for (const told of [{ peeled: false, spots: 'some' }, { spots: 'some' }, { peeled: true }]) {
      expect(refusals(told)).toEqual([]);
    }
    expect(refusals({ peeled: true, spots: 'X' })).toEqual([]);
  });

  it('says what was expected and never what came', () => {
    const found = problems({ kind: 'plum', spots: 'none', weightG: 4711, peeled: 'maybe' });
    expect(found.map(({ expected }) => expected)).toEqual([
      'one of: apple, pear, or null',
      'a whole number from 0 to 1000, in g, or null',
      'true, false or null',
    ]);
    expect(JSON.stringify(found)).not.toMatch(/plum|4711|maybe/);
    const [name, day] = problems({ colour: 'red', pickedOn: ['2024-03-15'] });
    expect(name?.expected).toBe('only the fields: kind, part, spots, peeled, weightG, pickedOn');
    expect(day?.expected).toBe('a day as YYYY-MM-DD, or null');
    const [word] = problems({ kind: 'pear', part: 'core' });
    expect(word?.expected).toBe('one of: flesh, neck, or null');
    const [spots] = problems({ spots: 'many' });
    expect(spots?.expected).toBe('one of: none, some, X, or null');
  });
});
