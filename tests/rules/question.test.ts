import { describe, expect, it } from 'vitest';
import { isNeeds, type Needs, type Read, type Value } from '../../src/rules/condition.js';
import { missingFields, possibleResults, type Told } from '../../src/rules/question.js';
import { question } from './fruit.js';

/** Reads these fields one after the other. */
const readAll =
  (...fields: readonly string[]) =>
  (read: Read): { readonly values: readonly Value[] } | Needs => {
    const values: Value[] = [];
    for (const field of fields) {
      const value = read(field);
      if (isNeeds(value)) return value;
      values.push(value);
    }
    return { values };
  };

const possible = (told: Told, ...fields: readonly string[]) =>
  [...possibleResults(question(told), readAll(...fields))].map(({ values }) => values.join(' '));

describe('the results that a question can have', () => {
  it('is one, where everything asked for was told', () => {
    expect(possible({ kind: 'apple', part: 'core' }, 'kind', 'part')).toEqual(['apple core']);
  });

  it('are those of every value of a missing field', () => {
    expect(possible({}, 'kind')).toEqual(['apple', 'pear']);
    expect(possible({ peeled: null }, 'peeled')).toEqual(['false', 'true']);
    expect(possible({}, 'weightG')).toEqual(['0', '99', '100']);
  });

  it('leave a word that was told alone while it is open whether it is possible', () => {
    expect(possible({ part: 'flesh' }, 'peeled')).toEqual(['false']);
    expect(possible({ part: 'flesh', peeled: null }, 'peeled')).toEqual(['false', 'true']);
  });

  it('try out only words that are possible beside the others', () => {
    expect(possible({ kind: 'apple' }, 'part')).toEqual(['core', 'flesh']);
    expect(possible({}, 'kind', 'part')).toEqual([
      'apple core',
      'apple flesh',
      'pear flesh',
      'pear neck',
    ]);
  });

  it('try out only values beside which a word that was told is possible', () => {
    expect(possible({ part: 'neck' }, 'kind', 'part')).toEqual(['pear neck']);
    expect(possible({ part: 'flesh' }, 'kind')).toEqual(['apple', 'pear']);
  });

  it('first try out what decides which words are possible', () => {
    expect(possible({}, 'part')).toEqual(['core', 'flesh', 'flesh', 'neck']);
  });

  it('never try out a word that says not known', () => {
    expect(possible({ spots: 'X' }, 'spots')).toEqual(['none', 'some']);
    expect(possible({ peeled: false }, 'spots')).toEqual(['none', 'some']);
  });

  it('take absence for what it means where it means something', () => {
    expect(possible({}, 'peeled')).toEqual(['false']);
    expect(possible({ peeled: true }, 'spots')).toEqual(['none']);
  });

  it('never take null or a word for not known for what absence means', () => {
    expect(possible({ peeled: true, spots: null }, 'spots')).toEqual(['none', 'some']);
    expect(possible({ peeled: true, spots: 'X' }, 'spots')).toEqual(['none', 'some']);
  });

  it('first try out what decides whether absence means something', () => {
    expect(possible({ peeled: null }, 'spots')).toEqual(['none', 'some', 'none']);
  });
});

describe('the fields that are missing', () => {
  const missing = (told: Told) => missingFields(question(told));

  it('are those asked for and not told, in the order of the question', () => {
    expect(missing({})).toEqual(['kind', 'part', 'spots', 'weightG', 'pickedOn']);
    expect(
      missing({ kind: 'apple', part: 'flesh', spots: 'some', pickedOn: '2026-09-01' }),
    ).toEqual([]);
  });

  it('count null and words for not known as not told', () => {
    const told = { kind: 'apple', part: 'flesh', pickedOn: '2026-09-01' };
    expect(missing({ ...told, spots: 'X' })).toEqual(['spots']);
    expect(missing({ ...told, spots: null })).toEqual(['spots']);
    expect(missing({ ...told, spots: 'none', peeled: null })).toEqual(['peeled']);
  });

  it('leave out fields that are asked for only elsewhere, and name those that may be', () => {
    const told = { spots: 'none', pickedOn: '2026-09-01' };
    expect(missing({ ...told, kind: 'apple', part: 'flesh' })).toEqual([]);
    expect(missing({ ...told, kind: 'apple', part: 'core' })).toEqual(['weightG']);
    expect(missing({ ...told, kind: 'pear', part: 'flesh' })).toEqual(['weightG']);
    expect(missing({ ...told, kind: 'apple' })).toEqual(['part', 'weightG']);
  });
});
