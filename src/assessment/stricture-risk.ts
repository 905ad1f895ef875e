import type { Organ } from '../contract/index.js';
import { determined, type Finding, indeterminate, invariant } from '../kernel/index.js';
import type { DefectCircumference } from './defect-circumference.js';
import {
  STRICTURE_BANDS,
  STRICTURE_FACTORS,
  type StrictureBand,
  type StrictureFactor,
  type StrictureFlag,
} from './stricture-risk.table.js';

export interface StrictureRisk {
  readonly flag: StrictureFlag;
  readonly factors: readonly StrictureFactor['name'][];
}

/** Where the defect lies and how long it is; mm. */
export interface DefectPlace {
  readonly organ: Organ;
  readonly site?: string | undefined;
  readonly lengthMm?: number | undefined;
}

const UPPER_OESOPHAGUS: readonly (string | undefined)[] = [
  'oesophagus-cervical',
  'oesophagus-upper-third',
];

/**
 * Flags the risk of a stricture by the share of the circumference that the defect takes.
 *
 * Source: kim2014, abstract; the bands between by memory, see the table.
 * Indeterminate: without the share, or where length decides and is absent.
 *
 * @returns undefined for an organ without a published threshold
 */
export function strictureRisk(
  circumference: Finding<DefectCircumference>,
  place: DefectPlace,
): Finding<StrictureRisk> | undefined {
  const bands = STRICTURE_BANDS[place.organ];
  if (bands === undefined) return undefined;
  if (circumference.kind === 'indeterminate') return circumference;
  const { percent } = circumference.value;
  const reached = bands.filter((band) => reaches(band, percent));
  const first = reached[0];
  if (first?.longerThanMm !== undefined && place.lengthMm === undefined) {
    return indeterminate(['defect.longAxisMm']);
  }
  const band = reached.find((b) => isLongEnough(b, place.lengthMm));
  invariant(band !== undefined, 'the lowest band starts at 0 percent');
  const facts = {
    percent,
    lengthMm: place.lengthMm,
    upperOesophagus: UPPER_OESOPHAGUS.includes(place.site),
  };
  const factors = STRICTURE_FACTORS.filter((f) => f.organ === place.organ && f.holds(facts));
  return determined({ flag: band.flag, factors: factors.map(({ name }) => name) }, [
    ...circumference.cites,
    ...band.cites,
    ...factors.flatMap(({ cites }) => cites),
  ]);
}

function reaches({ foot }: StrictureBand, percent: number): boolean {
  return 'above' in foot ? percent > foot.above : percent >= foot.atLeast;
}

function isLongEnough({ longerThanMm }: StrictureBand, lengthMm: number | undefined): boolean {
  return longerThanMm === undefined || (lengthMm !== undefined && lengthMm > longerThanMm);
}
