import type { SecondWriting } from '../../support/every-question.js';
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

export interface Question2021 {
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

export const YEAR_2021: SecondWriting<Question2021> = {
  id: 'colorectal-difficulty-2021',
  says: year2021,
  choices: {
    sizeMm: SIZES,
    circumferencePercent: SHARES,
    location: PLACES,
    lst: ['G', 'NG', 'none'],
    dentateLine: FLAGS,
  },
};

export interface Question2023 {
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

export const YEAR_2023: SecondWriting<Question2023> = {
  id: 'colorectal-difficulty-2023',
  says: year2023,
  choices: {
    sizeMm: [29, 30, 49, 50, 51],
    circumferencePercent: [66.66, 66.67, 67],
    location: PLACES,
    lst: ['G', 'NG', 'none'],
    precedingBiopsy: FLAGS,
    nice: [1, 2, 3],
  },
};

export interface Question2019 {
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

export const YEAR_2019: SecondWriting<Question2019> = {
  id: 'colorectal-difficulty-matsumoto-2019',
  says: year2019,
  choices: {
    emrScar: FLAGS,
    sizeMm: [1, 29, 29.9, 30, 31],
    location: PLACES,
    morphology: ['LST-G', 'LST-NG-F', 'LST-NG-PD', 'protruded', 'depressed'],
  },
};
