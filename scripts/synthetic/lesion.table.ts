import type { Organ, Site, Tumour } from '../../src/contract/index.js';
import type { Share } from './chance.js';
import { COMMON, INVENTED } from './sources.table.js';

/** A share whose number names its source. */
export interface Sourced<T> extends Share<T> {
  readonly from: string;
}

const invented = <T>(shares: readonly (readonly [T, number])[]): readonly Sourced<T>[] =>
  shares.map(([value, weight]) => ({ value, weight, from: INVENTED }));

/** Of 100 cases. */
export const ORGAN: readonly Sourced<Organ>[] = invented([
  ['oesophagus', 18],
  ['stomach', 34],
  ['duodenum', 3],
  ['colon', 27],
  ['rectum', 18],
]);

/** Of 100 cases of the organ. */
export const SITE: Readonly<Record<Organ, readonly Sourced<Site>[]>> = {
  oesophagus: invented([
    ['oesophagus-cervical', 3],
    ['oesophagus-upper-third', 15],
    ['oesophagus-middle-third', 37],
    ['oesophagus-lower-third', 30],
    ['oesophagogastric-junction', 15],
  ]),
  stomach: invented([
    ['stomach-cardia', 10],
    ['stomach-fundus', 4],
    ['stomach-body', 34],
    ['stomach-angulus', 15],
    ['stomach-antrum', 35],
    ['stomach-pylorus', 2],
  ]),
  duodenum: invented([
    ['duodenum-bulb', 35],
    ['duodenum-second-part', 60],
    ['duodenum-third-part', 5],
  ]),
  colon: invented([
    ['caecum', 20],
    ['ascending-colon', 26],
    ['hepatic-flexure', 6],
    ['transverse-colon', 16],
    ['splenic-flexure', 4],
    ['descending-colon', 7],
    ['sigmoid-colon', 21],
  ]),
  rectum: invented([
    ['rectosigmoid-junction', 12],
    ['rectum-upper', 28],
    ['rectum-middle', 28],
    ['rectum-lower', 32],
  ]),
};

/** Of 100 cases of the organ. */
export const TUMOUR: Readonly<Record<Organ, readonly Sourced<Tumour>[]>> = {
  oesophagus: invented([
    ['squamous', 64],
    ['barrett', 36],
  ]),
  stomach: invented([
    ['gastric', 98],
    ['other', 2],
  ]),
  duodenum: invented([
    ['duodenal', 97],
    ['other', 3],
  ]),
  colon: invented([
    ['colorectal', 99],
    ['other', 1],
  ]),
  rectum: invented([
    ['colorectal', 92],
    ['other', 8],
  ]),
};

/** Long axis of the lesion, mm: median, and standard deviation of the natural logarithm. */
export const SIZE: Readonly<
  Record<Organ, { readonly medianMm: number; readonly spread: number; readonly from: string }>
> = {
  oesophagus: { medianMm: 24, spread: 0.45, from: INVENTED },
  stomach: { medianMm: 21, spread: 0.5, from: INVENTED },
  duodenum: { medianMm: 18, spread: 0.4, from: INVENTED },
  colon: { medianMm: 34, spread: 0.42, from: INVENTED },
  rectum: { medianMm: 36, spread: 0.5, from: INVENTED },
};
/** A lesion outside of this was measured in another unit, or is no lesion for a dissection. */
export const SIZE_LIMITS_MM = { least: 5, most: 150, from: COMMON };

/** Lesions of which treatment was tried before, of 100. */
export const ATTEMPTED_BEFORE = { percent: 11, from: INVENTED };

/** Of 100 lesions, by whether treatment was tried before; F2 is severe. */
export const FIBROSIS: Readonly<
  Record<'untouched' | 'attempted', readonly Sourced<'F0' | 'F1' | 'F2'>[]>
> = {
  untouched: invented([
    ['F0', 68],
    ['F1', 24],
    ['F2', 8],
  ]),
  attempted: invented([
    ['F0', 10],
    ['F1', 40],
    ['F2', 50],
  ]),
};

/** Age at the procedure, years. */
export const AGE = { mean: 68, deviation: 10.5, least: 24, most: 95, from: INVENTED };
export const SEX = invented<'male' | 'female'>([
  ['male', 62],
  ['female', 38],
]);
export const ASA = invented<'I' | 'II' | 'III' | 'IV'>([
  ['I', 18],
  ['II', 54],
  ['III', 27],
  ['IV', 1],
]);
export const HAEMODIALYSIS = { percent: 1.5, from: INVENTED };
export const SEVERAL_LESIONS = { percent: 7, from: INVENTED };

/** Drugs against clots, of 100 patients; the decision before the procedure, of 100 drugs. */
export const ANTITHROMBOTIC = invented<
  'none' | 'aspirin' | 'p2y12-inhibitor' | 'cilostazol' | 'vitamin-k-antagonist' | 'doac'
>([
  ['none', 79],
  ['aspirin', 9],
  ['p2y12-inhibitor', 3],
  ['cilostazol', 1],
  ['vitamin-k-antagonist', 2],
  ['doac', 6],
]);
export const DRUG_CONTINUED = { percent: 35, from: INVENTED };
