import type { CaseFields, PathologyFields } from '../contract/index.js';
import { determined, type Finding, indeterminate, invariant } from '../kernel/index.js';
import {
  RESECTION_STATUS,
  type ResectionFacts,
  type ResectionStatus,
} from './resection-status.table.js';

/**
 * Residual tumour by the pieces and margins of a report, whatever status the report states.
 *
 * Source: each row of the table.
 * Indeterminate: as long as a margin that was not told could change the answer.
 */
export function resectionStatus(
  { resection }: CaseFields,
  { findings = {} }: PathologyFields,
): Finding<ResectionStatus> {
  return statusOf({
    enBloc: resection.outcome === 'en-bloc',
    leftInPlace:
      resection.complete === false ||
      resection.outcome === 'abandoned' ||
      resection.outcome === 'not-started',
    hm: findings.hm?.state,
    vm: findings.vm?.state,
  });
}

/**
 * As `resectionStatus`, of the facts alone.
 *
 * Source: see `resectionStatus`.
 */
export function statusOf(facts: ResectionFacts): Finding<ResectionStatus> {
  const row = RESECTION_STATUS.find(({ when }) => fits(when, facts));
  if (row !== undefined) return determined(row.status, row.cites);
  const missing = [
    ...(facts.hm === undefined ? ['pathology.findings.hm'] : []),
    ...(facts.vm === undefined ? ['pathology.findings.vm'] : []),
  ];
  invariant(missing.length > 0, 'the table has a row where both margins are told');
  return indeterminate(missing);
}

type When = (typeof RESECTION_STATUS)[number]['when'];

function fits(when: When, facts: ResectionFacts): boolean {
  return (
    holds(when.leftInPlace, facts.leftInPlace) &&
    holds(when.enBloc, facts.enBloc) &&
    holds(when.hm, facts.hm) &&
    holds(when.vm, facts.vm)
  );
}

/** A value that was not told fits only where any value would. */
function holds<T>(allowed: readonly T[] | undefined, value: T | undefined): boolean {
  return allowed === undefined || (value !== undefined && allowed.includes(value));
}
