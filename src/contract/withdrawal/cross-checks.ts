import type { CrossCheck } from '../cross-check.js';
import type { ReadableWithdrawal } from './readable-withdrawal.js';

/** Contradictions within one withdrawal. Project rules. */
export const WITHDRAWAL_CHECKS: readonly CrossCheck<ReadableWithdrawal>[] = [
  {
    rule: 'replaced-by-itself',
    message: 'The case is named as its own replacement.',
    expected: 'the identifier of another case',
    broken: ({ case: withdrawn = {}, replacedBy = {} }) =>
      withdrawn.system !== undefined &&
      withdrawn.value !== undefined &&
      withdrawn.system === replacedBy.system &&
      withdrawn.value === replacedBy.value
        ? ['/replacedBy']
        : [],
  },
  {
    rule: 'replacement',
    message: 'A case that was entered twice stands under another identifier, which is not told.',
    expected: 'replacedBy with the reason entered-twice',
    broken: ({ reason, replacedBy }) =>
      reason === 'entered-twice' && replacedBy === undefined ? ['/replacedBy'] : [],
  },
  {
    rule: 'replacement',
    message: 'What the patient objects to, or what never was, has no replacement.',
    expected: 'replacedBy with the reasons wrong-patient and entered-twice alone',
    broken: ({ reason, replacedBy }) =>
      (reason === 'patient-request' || reason === 'entered-in-error') && replacedBy !== undefined
        ? ['/replacedBy']
        : [],
  },
];
