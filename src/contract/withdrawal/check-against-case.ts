import type { Problem } from '../../kernel/index.js';
import { problemsAgainstCase, samePatient, type WithCase } from '../against-case.js';
import type { CaseFields } from '../case/case.js';
import { isBefore } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { WithdrawalFields } from './withdrawal.js';

/**
 * Contradictions between a withdrawal and its case. A withdrawal for a wrong patient names that
 * patient, too: whoever takes a case back shows that this very case is meant. Project rules.
 */
export const WITHDRAWAL_CASE_CHECKS: readonly CrossCheck<WithCase<WithdrawalFields>>[] = [
  samePatient,
  {
    rule: 'before-procedure',
    message: 'The case was taken back before its procedure was over.',
    expected: 'sentAt at or after times.scopeOutAt of the case',
    broken: ({ sent, esd: { times } }) =>
      isBefore(sent.sentAt, times.scopeOutAt) ? ['/sentAt'] : [],
  },
];

/** Holds a withdrawal against its case; see `problemsAgainstCase`. */
export function checkWithdrawalAgainstCase(
  sent: WithdrawalFields,
  esd: CaseFields,
): readonly Problem[] {
  return problemsAgainstCase(WITHDRAWAL_CASE_CHECKS, sent, esd);
}
