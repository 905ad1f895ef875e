import { describe, expect, it } from 'vitest';
import { COLORECTAL_DIFFICULTY_2021 } from '../../../src/assessment/scores/colorectal-difficulty-2021.table.js';
import { COLORECTAL_DIFFICULTY_2023 } from '../../../src/assessment/scores/colorectal-difficulty-2023.table.js';
import { COLORECTAL_DIFFICULTY_MATSUMOTO_2019 } from '../../../src/assessment/scores/colorectal-difficulty-matsumoto-2019.table.js';
import { everyQuestion } from '../../support/every-question.js';
import { disagreements, shortAnswer } from './ask.js';
import {
  type Question2019,
  type Question2021,
  type Question2023,
  YEAR_2019,
  YEAR_2021,
  YEAR_2023,
} from './second-difficulty.js';

const EVERY_2021 = everyQuestion(YEAR_2021.choices);
const EVERY_2023 = everyQuestion(YEAR_2023.choices);
const EVERY_2019 = everyQuestion(YEAR_2019.choices);

describe('difficulty of a colorectal dissection, 2021', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_2021).toHaveLength(10 * 6 * 11 * 3 * 2);
    expect(disagreements(COLORECTAL_DIFFICULTY_2021, EVERY_2021, YEAR_2021.says)).toEqual([]);
  });

  it('would be caught with 50 mm in the lower class of size', () => {
    const other = (q: Question2021) =>
      YEAR_2021.says({ ...q, sizeMm: q.sizeMm === 50 ? 49 : q.sizeMm });
    expect(disagreements(COLORECTAL_DIFFICULTY_2021, EVERY_2021, other).length).toBeGreaterThan(0);
  });

  const REST = { sizeMm: 20, circumferencePercent: 30, lst: 'G' };
  it.each([
    [{}, 'indeterminate;missing=sizeMm,circumferencePercent,location,lst;range=0-7'],
    [{ ...REST, location: 'rectum' }, '0;easy'],
    [
      { ...REST, location: 'rectum', dentateLine: null },
      'indeterminate;missing=dentateLine;range=0-1',
    ],
    [{ ...REST, location: 'colon' }, 'indeterminate;missing=location;range=0-2'],
    [{ ...REST, location: 'flexure' }, '2;difficult'],
    [{ ...REST, nice: 3 }, '(unknown-field /nice)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(COLORECTAL_DIFFICULTY_2021, document)).toBe(expected);
  });

  // Source: Li B et al. 2021, abstract (derivation).
  it('says for each group the chance of an end within 60 min', () => {
    const figures = COLORECTAL_DIFFICULTY_2021.bands.map((band) => band.figures?.[0]?.value);
    expect(figures).toEqual([75.0, 51.3, 35.6, 3.4]);
  });
});

describe('difficulty of a colorectal dissection, 2023', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_2023).toHaveLength(5 * 3 * 11 * 3 * 2 * 3);
    expect(disagreements(COLORECTAL_DIFFICULTY_2023, EVERY_2023, YEAR_2023.says)).toEqual([]);
  });

  it('would be caught with the points of 2021', () => {
    const other = (q: Question2023) => YEAR_2021.says({ ...q, dentateLine: false });
    expect(disagreements(COLORECTAL_DIFFICULTY_2023, EVERY_2023, other).length).toBeGreaterThan(0);
  });

  const REST = { sizeMm: 20, circumferencePercent: 30, location: 'sigmoid', lst: 'G' };
  it.each([
    [{ ...REST }, '0;easy'],
    [{ ...REST, nice: null }, 'indeterminate;missing=nice;range=0-3'],
    [
      { ...REST, precedingBiopsy: null, nice: null },
      'indeterminate;missing=precedingBiopsy,nice;range=0-4',
    ],
    [{ ...REST, nice: '3' }, '(not-in-list /nice)'],
    [{ ...REST, nice: 4 }, '(not-in-list /nice)'],
    [{ ...REST, dentateLine: true }, '(unknown-field /dentateLine)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(COLORECTAL_DIFFICULTY_2023, document)).toBe(expected);
  });
});

describe('difficulty of a colorectal dissection, 2019', () => {
  const rule = COLORECTAL_DIFFICULTY_MATSUMOTO_2019;

  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_2019).toHaveLength(2 * 5 * 11 * 5);
    expect(disagreements(rule, EVERY_2019, YEAR_2019.says)).toEqual([]);
  });

  it('would be caught with the points of granular and flat lesions exchanged', () => {
    const other = (q: Question2019) =>
      YEAR_2019.says({ ...q, morphology: q.morphology === 'LST-G' ? 'LST-NG-F' : q.morphology });
    expect(disagreements(rule, EVERY_2019, other).length).toBeGreaterThan(0);
  });

  it('names every field that is missing, with the whole range', () => {
    expect(shortAnswer(rule, {})).toBe(
      'indeterminate;missing=emrScar,sizeMm,location,morphology;range=0-10',
    );
  });

  // Source: Matsumoto S et al. PLoS One 2019, abstract.
  it('says the mean speed of each group in mm2/min', () => {
    expect(rule.bands.map(({ figures }) => figures?.[0])).toMatchObject([
      { value: 12.6, unit: 'mm2/min' },
      { value: 8.1, unit: 'mm2/min' },
      { value: 5.5, unit: 'mm2/min' },
    ]);
  });
});
