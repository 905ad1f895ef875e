import type { Problem } from '../../kernel/index.js';
import { axisChecks } from './axis-checks.js';
import type { CaseFields } from './case.js';
import { outcomeChecks } from './outcome-checks.js';
import { timeChecks } from './time-checks.js';

/** The readable part of a case: a field that broke its own rule is left out. */
export type Readable<T> = T extends readonly (infer E)[]
  ? readonly Readable<E>[]
  : T extends object
    ? { readonly [K in keyof T]?: Readable<T[K]> | undefined }
    : T;

export type ReadableCase = Readable<CaseFields>;

/** A rule across fields. Silent when a field that it needs is absent. */
export interface CrossCheck {
  readonly rule: string;
  readonly message: string;
  readonly expected: string;
  /** @returns JSON Pointers of the places where the rule is broken */
  readonly broken: (sent: ReadableCase) => readonly string[];
}

/**
 * Contradictions on which no record can stand.
 *
 * Source: the consistency rules CC-01, 02, 03, 07, 09 and 12 (common practice, no source), the
 * limits of specimen axes and area, and project rules for what FHIR R4 cannot hold.
 */
export const CROSS_CHECKS: readonly CrossCheck[] = [...timeChecks, ...axisChecks, ...outcomeChecks];

export function crossProblems(sent: ReadableCase): Problem[] {
  return CROSS_CHECKS.flatMap(({ rule, message, expected, broken }) =>
    broken(sent).map((pointer) => ({ rule, pointer, message, expected })),
  );
}
