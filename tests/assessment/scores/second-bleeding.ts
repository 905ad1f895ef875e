import type { SecondWriting } from '../../support/every-question.js';
import { PLACES, possiblePlaces } from './places.js';

export interface EcuraQuestion {
  readonly ly: string;
  readonly v: string;
  readonly vm: string;
  readonly sizeMm: number;
  readonly smDepthUm: number;
}

// Source: Hatta W et al. Am J Gastroenterol 2017;112:874-881, abstract, in plain words: lymphatic
// invasion 3 points; size above 30 mm, positive vertical margin, venous invasion and submucosal
// invasion of 500 um or more 1 point each. 0-1 low, 2-4 intermediate, 5-7 high. A vertical margin
// that cannot be judged counts as positive, a vessel that cannot be judged is missing (derived).
function ecura({ ly, v, vm, sizeMm, smDepthUm }: EcuraQuestion): string {
  let sure = 0;
  if (ly === '1') sure += 3;
  if (v === '1') sure += 1;
  if (vm !== '0') sure += 1;
  if (sizeMm > 30) sure += 1;
  if (smDepthUm >= 500) sure += 1;
  const missing = [...(ly === 'X' ? ['ly'] : []), ...(v === 'X' ? ['v'] : [])];
  if (missing.length > 0) {
    const most = sure + (ly === 'X' ? 3 : 0) + (v === 'X' ? 1 : 0);
    return `indeterminate;missing=${missing.join(',')};range=${sure}-${most}`;
  }
  if (sure <= 1) return `${sure};low;2.5`;
  if (sure <= 4) return `${sure};intermediate;6.7`;
  return `${sure};high;22.7`;
}

export const ECURA_SECOND: SecondWriting<EcuraQuestion> = {
  id: 'ecura',
  says: ecura,
  choices: {
    ly: ['0', '1', 'X'],
    v: ['0', '1', 'X'],
    vm: ['0', '1', 'X'],
    sizeMm: [1, 29, 29.9, 30, 30.1, 31, 200],
    smDepthUm: [0, 1, 499, 500, 501, 5000],
  },
};

export interface LimogesQuestion {
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

export const LIMOGES_SECOND: SecondWriting<LimogesQuestion> = {
  id: 'limoges',
  says: limoges,
  choices: {
    age: [0, 74, 75, 76, 110],
    antithrombotic: [false, true],
    location: PLACES,
    sizeMm: [1, 49, 50, 50.1, 51],
    asa: ['I', 'II', 'III', 'IV', 'V'],
  },
};

export interface KrQuestion {
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

export const KR_SECOND: SecondWriting<KrQuestion> = {
  id: 'kr-colorectal-bleeding',
  says: korean,
  choices: {
    location: PLACES,
    sizeMm: [1, 29, 29.9, 30, 31],
    antiplatelet: ['none', 'aspirin-alone', 'other-or-combined'],
  },
};
