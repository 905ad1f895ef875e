import type { Organ } from '../contract/index.js';
import type { CaseInOrder, Stratum } from './counts.js';
import type { Filters } from './question.js';

/** Of whose cases a published value or an aim speaks. */
export interface OfOrgans {
  /** Absent: of any organ. */
  readonly organs?: readonly Organ[];
}

/** Over whose cases a curve runs. */
export interface RanOver {
  /** Absent: every organ together. */
  readonly organs?: readonly string[];
  /** Pseudonym; absent: all operators together. */
  readonly operator?: string;
}

export const COLORECTAL = ['colon', 'rectum'] as const satisfies readonly Organ[];

/**
 * Whether a published value may stand beside cases: where it speaks of some organs, only beside
 * cases of these organs alone.
 *
 * @param counted organs of the cases; undefined: any may be among them
 */
export const speaksOf = ({ organs }: OfOrgans, counted: readonly string[] | undefined): boolean =>
  organs === undefined ||
  (counted?.every((organ) => organs.some((each) => each === organ)) ?? false);

/** Organs of the cases of a stratum or filter. */
export const organsOf = ({ organ }: Stratum): RanOver['organs'] =>
  organ === undefined ? undefined : [organ];

/**
 * Over whose cases a question makes a curve run.
 *
 * @param organs unless the question is about one organ
 */
export function ranOver(filters: Filters, organs?: RanOver['organs']): RanOver {
  const over = organsOf(filters) ?? organs;
  return {
    ...(over === undefined ? {} : { organs: over }),
    ...(filters.operator === undefined ? {} : { operator: filters.operator }),
  };
}

export const casesOver = (
  cases: readonly CaseInOrder[],
  { organs }: RanOver,
): readonly CaseInOrder[] =>
  organs === undefined ? cases : cases.filter(({ organ }) => organs.includes(organ));
