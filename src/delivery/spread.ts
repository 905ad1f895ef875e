import type { Failure } from './verdict.js';

/**
 * Cases that lately failed alike, since the target last dealt with a record as it should.
 * One case that fails is taken for a fault of the case or a passing one; several that fail with
 * the same fault are taken for a fault of the destination.
 */
export interface Spread {
  /** All ways of not knowing the outcome are alike: a gateway that fails mixes them. */
  readonly fault: string;
  readonly caseIds: readonly string[];
}

/** So many cases failing alike are the destination's fault. Source: project definition. */
const ALIKE_CASES = 3;

export const noSpread: Spread = { fault: '', caseIds: [] };

export function addFailure(spread: Spread, caseId: string, failure: Failure): Spread {
  const fault = failure.failureClass === 'unknown' ? 'unknown' : failure.fault;
  if (spread.fault !== fault) return { fault, caseIds: [caseId] };
  if (spread.caseIds.includes(caseId) || spread.caseIds.length >= ALIKE_CASES) return spread;
  return { fault, caseIds: [...spread.caseIds, caseId] };
}

export const isDestinationWide = (spread: Spread): boolean => spread.caseIds.length >= ALIKE_CASES;
