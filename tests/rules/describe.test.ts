import { describe, expect, it } from 'vitest';
import {
  type Condition,
  describeAsking,
  describeCondition,
  describeValues,
  type Fields,
} from '../../src/rules/index.js';

// The sentences are what a reader would write for the condition; no published source.

const FIELDS: Fields = {
  depth: { type: 'word', words: ['m', 'sm', 'mp'], says: 'deepest layer' },
  smDepthUm: {
    type: 'number',
    unit: 'um',
    whole: true,
    from: 0,
    to: 50_000,
    says: 'depth into the submucosa',
    askedWhen: [{ depth: { is: ['sm'] } }],
  },
  sizeMm: { type: 'number', unit: 'mm', from: 0.1, to: 1000, says: 'size', askedWhen: [] },
  age: { type: 'number', unit: 'years', from: 0, to: 125, says: 'age' },
  circumferencePercent: { type: 'number', unit: '%', from: 0, to: 100, says: 'share' },
  enBloc: { type: 'flag', says: 'in one piece', assumed: [{ when: {}, value: true }] },
  budding: { type: 'word', words: [1, 2, 3, 'X'], unknown: ['X'], says: 'budding' },
  grade: {
    type: 'word',
    words: ['well', 'poor'],
    says: 'grade',
    only: [{ when: { depth: { is: ['m'] } }, words: ['well'] }],
    assumed: [{ when: { depth: { is: ['m'] } }, value: 'well' }],
  },
  hm: { type: 'word', words: ['0', '1', 'X'], says: 'horizontal margin' },
  nodes: {
    type: 'flag',
    says: 'nodes involved',
    askedWhen: [{ depth: { is: ['mp'] } }, { grade: { is: ['poor'] } }],
  },
  esdDate: { type: 'date', says: 'day of the dissection' },
};

describe('a condition in words', () => {
  it.each<[string, Condition]>([
    ['depth sm and sm depth over 500 um', { depth: { is: ['sm'] }, smDepthUm: { above: 500 } }],
    ['size at least 30 mm', { sizeMm: { atLeast: 30 } }],
    ['size under 20 mm', { sizeMm: { below: 20 } }],
    ['age at most 74 years', { age: { atMost: 74 } }],
    ['size over 20 and at most 30 mm', { sizeMm: [{ above: 20 }, { atMost: 30 }] }],
    ['size exactly 24 mm', { sizeMm: [{ atLeast: 24 }, { atMost: 24 }] }],
    ['size over 24 and at most 24 mm', { sizeMm: [{ above: 24 }, { atMost: 24 }] }],
    ['circumference at least 66.67 %', { circumferencePercent: { atLeast: 66.67 } }],
    ['circumference 75 %', { circumferencePercent: { is: [75] } }],
    ['en bloc', { enBloc: { is: [true] } }],
    ['not en bloc', { enBloc: { is: [false] } }],
    ['en bloc known', { enBloc: { is: [true, false] } }],
    ['budding 1, 2 or 3', { budding: { is: [1, 2, 3] } }],
    ['depth m or sm, and en bloc', { depth: { is: ['m', 'sm'] }, enBloc: { is: [true] } }],
    ['depth mp', { depth: { is: ['mp'] }, sizeMm: undefined }],
    ['hm 1 or X', { hm: { is: ['1', 'X'] } }],
    ['always', {}],
  ])('%s', (words, condition) => {
    expect(describeCondition(condition, FIELDS)).toBe(words);
  });

  it('tells each border from the others', () => {
    const borders = [{ above: 5 }, { atLeast: 5 }, { below: 5 }, { atMost: 5 }];
    const texts = borders.map((border) => describeCondition({ sizeMm: border }, FIELDS));
    expect(new Set(texts).size).toBe(4);
  });
});

describe('a field in words', () => {
  it.each([
    ['depth', 'm, sm or mp', []],
    ['smDepthUm', 'whole number, 0 to 50000 um', ['Asked for where depth sm.']],
    ['sizeMm', 'number, 0.1 to 1000 mm', ['Never asked for.']],
    ['enBloc', 'true or false', ['Absent: taken as true.']],
    ['budding', '1, 2, 3 or X (X counts as not known)', []],
    [
      'grade',
      'well or poor',
      ['Where depth m: well alone.', 'Absent where depth m: taken as "well".'],
    ],
    ['hm', '"0", "1" or X', []],
    ['nodes', 'true or false', ['Asked for where depth mp; or grade poor.']],
    ['esdDate', 'a day, YYYY-MM-DD', []],
  ])('%s: %s', (name, values, asking) => {
    const field = FIELDS[name];
    if (field === undefined) throw new Error(`no field ${name}`);
    expect(describeValues(field)).toBe(values);
    expect(describeAsking(field, FIELDS)).toEqual(asking);
  });
});
