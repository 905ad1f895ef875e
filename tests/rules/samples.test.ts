import { describe, expect, it } from 'vitest';
import { samplesOf } from '../../src/rules/samples.js';
import { FIELDS } from './fruit.js';

describe('values to try out for a number', () => {
  it('stand on both sides of every border, in order', () => {
    const samples = samplesOf(FIELDS, [
      { weightG: { atLeast: 40 } },
      { weightG: { above: 10 } },
      { weightG: { atMost: 20 } },
      { weightG: { below: 30 } },
      { weightG: [{ atLeast: 50 }, { below: 60 }] },
    ]);
    expect(samples).toEqual({ weightG: [0, 10, 11, 20, 21, 29, 30, 39, 40, 49, 50, 59, 60] });
  });

  it('stay within the range of the field, each once, and begin with its start', () => {
    expect(
      samplesOf(FIELDS, [
        { weightG: { atLeast: 0 } },
        { weightG: { above: 1000 } },
        { weightG: { above: 1000 } },
      ]),
    ).toEqual({ weightG: [0, 1000] });
  });

  it('are the start of the range where no row draws a border', () => {
    expect(samplesOf(FIELDS, [{ kind: { is: ['pear'] } }, {}])).toEqual({ weightG: [0] });
  });
});
