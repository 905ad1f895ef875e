import { describe, expect, it } from 'vitest';
import { COLORECTAL_DIFFICULTY_2021 } from '../../../src/assessment/scores/colorectal-difficulty-2021.table.js';
import { COLORECTAL_DIFFICULTY_2023 } from '../../../src/assessment/scores/colorectal-difficulty-2023.table.js';
import { COLORECTAL_DIFFICULTY_MATSUMOTO_2019 } from '../../../src/assessment/scores/colorectal-difficulty-matsumoto-2019.table.js';
import { disagreements, everyQuestion, shortAnswer } from './ask.js';
import { PLACES, possiblePlaces } from './places.js';

/** The answer of a score whose place may leave its points open. */
function placed(
  location: string,
  rest: number,
  pointsOf: (place: string) => number,
  groupOf: (total: number) => string,
): string {
  const points = possiblePlaces(location).map(pointsOf);
  const [lowest, highest] = [rest + Math.min(...points), rest + Math.max(...points)];
  return lowest === highest
    ? `${lowest};${groupOf(lowest)}`
    : `indeterminate;missing=location;range=${lowest}-${highest}`;
}

const isFlexure = (place: string): boolean => place.endsWith('flexure');
const SIZES = [1, 29, 29.9, 30, 31, 49, 49.9, 50, 51, 120];
const SHARES = [0, 66, 66.66, 66.67, 67, 100];
const FLAGS = [false, true];

interface Question2021 {
  readonly sizeMm: number;
  readonly circumferencePercent: number;
  readonly location: string;
  readonly lst: string;
  readonly dentateLine: boolean;
}

// Source: Li B et al. Gastrointest Endosc 2021;94:133-144, abstract, in plain words: 30 to less
// than 50 mm 1 point, 50 mm or more 2, two thirds of the circumference or more 2, caecum 1,
// flexure 2, dentate line 1, non-granular 1. 0 easy, 1 intermediate, 2-3 difficult, then very.
function year2021(q: Question2021): string {
  let rest = 0;
  if (q.sizeMm >= 50) rest += 2;
  else if (q.sizeMm >= 30) rest += 1;
  if (q.circumferencePercent >= 66.67) rest += 2;
  if (q.dentateLine) rest += 1;
  if (q.lst === 'NG') rest += 1;
  const pointsOf = (place: string) => (isFlexure(place) ? 2 : place === 'caecum' ? 1 : 0);
  return placed(q.location, rest, pointsOf, (total) => {
    if (total === 0) return 'easy';
    if (total === 1) return 'intermediate';
    return total <= 3 ? 'difficult' : 'very-difficult';
  });
}

const EVERY_2021 = everyQuestion<Question2021>({
  sizeMm: SIZES,
  circumferencePercent: SHARES,
  location: PLACES,
  lst: ['G', 'NG', 'none'],
  dentateLine: FLAGS,
});

describe('difficulty of a colorectal dissection, 2021', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_2021).toHaveLength(10 * 6 * 11 * 3 * 2);
    expect(disagreements(COLORECTAL_DIFFICULTY_2021, EVERY_2021, year2021)).toEqual([]);
  });

  it('would be caught with 50 mm in the lower class of size', () => {
    const other = (q: Question2021) => year2021({ ...q, sizeMm: q.sizeMm === 50 ? 49 : q.sizeMm });
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

interface Question2023 {
  readonly sizeMm: number;
  readonly circumferencePercent: number;
  readonly location: string;
  readonly lst: string;
  readonly precedingBiopsy: boolean;
  readonly nice: number;
}

// Source: Gastrointest Endosc 2023, doi 10.1016/j.gie.2023.10.037, in plain words: 30 to 50 mm 2
// points, 50 mm or more 3, two thirds of the circumference or more 3, caecum 2, flexure 2,
// non-granular 1, preceding biopsy 1, NICE type 3 3. 0-1, 2-3, 4-6, 7 and more.
function year2023(q: Question2023): string {
  let rest = 0;
  if (q.sizeMm >= 50) rest += 3;
  else if (q.sizeMm >= 30) rest += 2;
  if (q.circumferencePercent >= 66.67) rest += 3;
  if (q.lst === 'NG') rest += 1;
  if (q.precedingBiopsy) rest += 1;
  if (q.nice === 3) rest += 3;
  const pointsOf = (place: string) => (isFlexure(place) || place === 'caecum' ? 2 : 0);
  return placed(q.location, rest, pointsOf, (total) => {
    if (total <= 1) return 'easy';
    if (total <= 3) return 'intermediate';
    return total <= 6 ? 'difficult' : 'very-difficult';
  });
}

const EVERY_2023 = everyQuestion<Question2023>({
  sizeMm: [29, 30, 49, 50, 51],
  circumferencePercent: [66.66, 66.67, 67],
  location: PLACES,
  lst: ['G', 'NG', 'none'],
  precedingBiopsy: FLAGS,
  nice: [1, 2, 3],
});

describe('difficulty of a colorectal dissection, 2023', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_2023).toHaveLength(5 * 3 * 11 * 3 * 2 * 3);
    expect(disagreements(COLORECTAL_DIFFICULTY_2023, EVERY_2023, year2023)).toEqual([]);
  });

  it('would be caught with the points of 2021', () => {
    const other = (q: Question2023) => year2021({ ...q, dentateLine: false });
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

interface Question2019 {
  readonly emrScar: boolean;
  readonly sizeMm: number;
  readonly location: string;
  readonly morphology: string;
}

// Source: Matsumoto S et al. PLoS One 2019, abstract, in plain words: EMR scar 4 points, 30 mm or
// more 1, flexure 2, transverse colon 1, non-granular pseudo-depressed or depressed 3, protruded
// or non-granular flat 1. 0-2 low, 3-5 intermediate, 6 and more high.
function year2019(q: Question2019): string {
  let rest = 0;
  if (q.emrScar) rest += 4;
  if (q.sizeMm >= 30) rest += 1;
  if (q.morphology === 'LST-NG-PD' || q.morphology === 'depressed') rest += 3;
  if (q.morphology === 'LST-NG-F' || q.morphology === 'protruded') rest += 1;
  const pointsOf = (place: string) => (isFlexure(place) ? 2 : place === 'transverse' ? 1 : 0);
  return placed(q.location, rest, pointsOf, (total) => {
    if (total <= 2) return 'low';
    return total <= 5 ? 'intermediate' : 'high';
  });
}

const EVERY_2019 = everyQuestion<Question2019>({
  emrScar: FLAGS,
  sizeMm: [1, 29, 29.9, 30, 31],
  location: PLACES,
  morphology: ['LST-G', 'LST-NG-F', 'LST-NG-PD', 'protruded', 'depressed'],
});

describe('difficulty of a colorectal dissection, 2019', () => {
  const rule = COLORECTAL_DIFFICULTY_MATSUMOTO_2019;

  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_2019).toHaveLength(2 * 5 * 11 * 5);
    expect(disagreements(rule, EVERY_2019, year2019)).toEqual([]);
  });

  it('would be caught with the points of granular and flat lesions exchanged', () => {
    const other = (q: Question2019) =>
      year2019({ ...q, morphology: q.morphology === 'LST-G' ? 'LST-NG-F' : q.morphology });
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
