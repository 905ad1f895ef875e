import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { QUANTITY_RULES } from '../../../src/assessment/quantities/quantity-rules.js';
import { answer } from '../../../src/rules/index.js';

type Document = Readonly<Record<string, unknown>>;

/** The short answer, or the codes of the refusal with their places. */
function ask(id: string, document: Document): string {
  const rule = QUANTITY_RULES.find((each) => each.id === id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  const answered = answer(rule, document);
  if (answered.ok) return answered.value.answer;
  return answered.problems.map((problem) => `${problem.rule} ${problem.pointer}`).join(',');
}

const EXAMPLES: readonly Readonly<Record<string, string>>[] = parse(
  readFileSync('tests/published/worked-examples.csv'),
  { columns: true },
);
const OURS = EXAMPLES.filter(({ rule_or_score: id }) => QUANTITY_RULES.some((r) => r.id === id));

describe('areas and speeds, against worked examples', () => {
  it('has examples to look at', () => {
    expect(OURS.length).toBe(6);
  });

  it.each(OURS)('$id: $rule_or_score of $inputs_json ($source)', (example) => {
    const { rule_or_score: id = '', inputs_json: inputs = '', expected = '' } = example;
    expect(ask(id, JSON.parse(inputs))).toBe(expected);
    expect(ask(id, JSON.parse(inputs))).not.toBe(expected.replace(/\d$/, ''));
  });
});

describe('area and speed', () => {
  const square = { longMm: 20, shortMm: 20, minutes: 60 };

  // Source: area of a circle, pi r^2.
  it('gives a circle of 20 mm its area, and that area in an hour its speed', () => {
    const area = Math.PI.toFixed(3);
    const perMin = ((Math.PI * 100) / 60).toFixed(3);
    expect(ask('area-speed', square)).toBe(`areaCm2=${area};cm2PerH=${area};mm2PerMin=${perMin}`);
  });

  it.each([
    ['axes-order /shortMm', { ...square, shortMm: 20.1 }],
    ['area-limit /longMm', { ...square, longMm: 225.7, shortMm: 225.7 }],
    ['out-of-range /longMm', { ...square, longMm: 0 }],
    ['out-of-range /shortMm', { ...square, shortMm: -5 }],
    ['out-of-range /minutes', { ...square, minutes: 0 }],
    ['wrong-type /minutes', { ...square, minutes: '60' }],
    ['unknown-field /widthMm', { ...square, widthMm: 20 }],
  ])('is refused with %s', (refusal, document) => {
    expect(ask('area-speed', document)).toBe(refusal);
  });

  it('takes a specimen of just under 400 cm2, which is the limit of the case message', () => {
    expect((Math.PI / 4) * 22.56 ** 2).toBeLessThan(400);
    expect((Math.PI / 4) * 22.57 ** 2).toBeGreaterThan(400);
    expect(ask('area-speed', { longMm: 225.6, shortMm: 225.6, minutes: 60 })).toMatch(
      /^areaCm2=399\.\d+;/,
    );
  });

  it('names what is missing, in the order of the fields', () => {
    expect(ask('area-speed', { minutes: 90 })).toBe('indeterminate;missing=longMm,shortMm');
    expect(ask('area-speed', { ...square, minutes: null })).toBe('indeterminate;missing=minutes');
  });
});

describe('area in a tube', () => {
  // Gut 2016;65 suppl 1:A173: 2 pi r x length x share. By hand: a tube of 20 mm width has a wall
  // of 62.83 mm, half of it over 40 mm is 12.566 cm2.
  it('is a share of the wall', () => {
    const half = { radiusMm: 10, lengthMm: 40, circumferencePercent: 50 };
    expect(ask('tube-area', half)).toBe('areaCm2=12.566');
    expect(ask('tube-area', { ...half, circumferencePercent: 100 })).toBe('areaCm2=25.133');
    expect(ask('tube-area', { ...half, circumferencePercent: 0 })).toBe('areaCm2=0');
  });

  it('is refused for more than the circumference, and open without the radius', () => {
    const whole = { radiusMm: 10, lengthMm: 40, circumferencePercent: 100 };
    expect(ask('tube-area', { ...whole, circumferencePercent: 101 })).toBe(
      'out-of-range /circumferencePercent',
    );
    expect(ask('tube-area', { ...whole, radiusMm: null })).toBe('indeterminate;missing=radiusMm');
  });
});

describe('units of speed', () => {
  it('lead back to where one started: min/cm2 = 60 / (cm2/h)', () => {
    expect(ask('speed-units', { minPerCm2: 8 })).toBe('cm2PerH=7.5');
    expect(ask('speed-units', { cm2PerH: 7.5 })).toBe('mm2PerMin=12.5');
    // 0.125 cm2/min = 12.5 mm2/min, and 1/8 cm2 a minute.
    expect(ask('speed-units', { cm2PerMin: 0.125 })).toBe('cm2PerH=7.5');
  });

  it('are asked for one at a time', () => {
    const refusal = 'one-speed-alone /minPerCm2';
    expect(ask('speed-units', { cm2PerH: 9, minPerCm2: 4 })).toBe(refusal);
    expect(ask('speed-units', { cm2PerMin: 0.07, minPerCm2: 4 })).toBe(refusal);
    expect(ask('speed-units', { cm2PerH: 9, cm2PerMin: 0.07 })).toBe('one-speed-alone /cm2PerMin');
    expect(ask('speed-units', { cm2PerH: 0 })).toBe('out-of-range /cm2PerH');
  });

  it('are all named where none is told', () => {
    const open = 'indeterminate;missing=cm2PerH,cm2PerMin,minPerCm2';
    expect(ask('speed-units', {})).toBe(open);
    expect(ask('speed-units', { cm2PerH: null })).toBe(open);
    expect(ask('speed-units', { cm2PerH: 9, cm2PerMin: null })).toBe('mm2PerMin=15');
  });
});
