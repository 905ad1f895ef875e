import { describe, expect, it } from 'vitest';
import { KR_COLORECTAL_BLEEDING } from '../../../src/assessment/scores/kr-colorectal-bleeding.table.js';
import { LIMOGES } from '../../../src/assessment/scores/limoges.table.js';
import { answer } from '../../../src/rules/index.js';
import { disagreements, everyQuestion, shortAnswer } from './ask.js';
import { PLACES, possiblePlaces } from './places.js';

interface LimogesQuestion {
  readonly age: number;
  readonly antithrombotic: boolean;
  readonly location: string;
  readonly sizeMm: number;
  readonly asa: string;
}

// Source: Albouys J et al. Endoscopy 2024;56:110-118, abstract, in plain words: 75 years or older,
// antithrombotic use and rectal location 1 point each, size above 50 mm 3, ASA III or IV 2.
// 0-4: 4.1 %, 5-8: 17.5 %. ASA V counts as IV (derived).
function limoges({ age, antithrombotic, location, sizeMm, asa }: LimogesQuestion): string {
  let total = 0;
  if (age >= 75) total += 1;
  if (antithrombotic) total += 1;
  if (possiblePlaces(location).every((place) => place === 'rectum')) total += 1;
  if (sizeMm > 50) total += 3;
  if (asa !== 'I' && asa !== 'II') total += 2;
  return total > 4 ? `${total};high;17.5` : `${total};low-medium;4.1`;
}

const EVERY_LIMOGES = everyQuestion<LimogesQuestion>({
  age: [0, 74, 75, 76, 110],
  antithrombotic: [false, true],
  location: PLACES,
  sizeMm: [1, 49, 50, 50.1, 51],
  asa: ['I', 'II', 'III', 'IV', 'V'],
});

describe('Limoges score', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_LIMOGES).toHaveLength(5 * 2 * 11 * 5 * 5);
    expect(disagreements(LIMOGES, EVERY_LIMOGES, limoges)).toEqual([]);
  });

  it('would be caught with a border of 50 mm or more', () => {
    const other = (q: LimogesQuestion) =>
      limoges({ ...q, sizeMm: q.sizeMm === 50 ? 51 : q.sizeMm });
    expect(disagreements(LIMOGES, EVERY_LIMOGES, other).length).toBeGreaterThan(0);
  });

  it.each([
    [{}, 'indeterminate;missing=age,antithrombotic,location,sizeMm,asa;range=0-8'],
    [
      { age: 80, antithrombotic: true, location: null, sizeMm: 60, asa: 'III' },
      'indeterminate;missing=location;range=7-8',
    ],
    [{ age: 75.5 }, '(wrong-type /age)'],
    [{ location: 'cecum', asa: 'VI' }, '(not-in-list /location, not-in-list /asa)'],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(LIMOGES, document)).toBe(expected);
  });

  it('says that the rectosigmoid junction is not counted, and of no other place', () => {
    const remarksAt = (location: string) => {
      const answered = answer(LIMOGES, { location });
      return answered.ok ? answered.value.remarks.map(({ remark }) => remark) : [];
    };
    expect(remarksAt('rectosigmoid')).toEqual(['rectosigmoid-not-rectal']);
    expect(remarksAt('rectum')).toEqual([]);
  });
});

interface KrQuestion {
  readonly location: string;
  readonly sizeMm: number;
  readonly antiplatelet: string;
}

// Source: Endoscopy 2019, meeting abstract, in plain words: rectosigmoid location 2 (rectum and
// rectosigmoid; of the sigmoid it is not said), 30 mm or more 1, antiplatelet drugs other than
// aspirin alone 1. No groups.
function korean({ location, sizeMm, antiplatelet }: KrQuestion): string {
  let total = 0;
  if (sizeMm >= 30) total += 1;
  if (antiplatelet === 'other-or-combined') total += 1;
  const points = possiblePlaces(location).flatMap((place) => {
    if (place === 'rectum' || place === 'rectosigmoid') return [2];
    return place === 'sigmoid' ? [0, 2] : [0];
  });
  const [lowest, highest] = [Math.min(...points), Math.max(...points)];
  if (lowest === highest) return `${total + lowest}`;
  return `indeterminate;missing=location;range=${total + lowest}-${total + highest}`;
}

const EVERY_KR = everyQuestion<KrQuestion>({
  location: PLACES,
  sizeMm: [1, 29, 29.9, 30, 31],
  antiplatelet: ['none', 'aspirin-alone', 'other-or-combined'],
});

describe('Korean score of bleeding after colorectal dissection', () => {
  it('agrees with a second writing of the abstract on every question', () => {
    expect(EVERY_KR).toHaveLength(11 * 5 * 3);
    expect(disagreements(KR_COLORECTAL_BLEEDING, EVERY_KR, korean)).toEqual([]);
  });

  it('would be caught with points for aspirin alone', () => {
    const other = (q: KrQuestion) =>
      korean({ ...q, antiplatelet: q.antiplatelet === 'none' ? 'none' : 'other-or-combined' });
    expect(disagreements(KR_COLORECTAL_BLEEDING, EVERY_KR, other).length).toBeGreaterThan(0);
  });

  it.each([
    [{}, 'indeterminate;missing=location,sizeMm,antiplatelet;range=0-4'],
    [{ location: 'flexure', sizeMm: 30, antiplatelet: 'none' }, '1'],
    [
      { location: 'colon', sizeMm: 30, antiplatelet: 'none' },
      'indeterminate;missing=location;range=1-3',
    ],
  ])('answers %j with %s', (document, expected) => {
    expect(shortAnswer(KR_COLORECTAL_BLEEDING, document)).toBe(expected);
  });
});
