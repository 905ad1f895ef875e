import type { Receipt } from '../../pipeline/index.js';
import type { Refusal } from '../problem-document.js';

type NotKept = Extract<Receipt, { readonly kind: 'unreadable' | 'invalid' | 'conflict' }>;

/** Why a message, of whatever kind, was not taken. */
export function notKept(receipt: NotKept): Refusal {
  switch (receipt.kind) {
    case 'unreadable':
      return {
        problem: 'unreadable-body',
        detail: 'Nothing was stored.',
        errors: receipt.problems,
      };
    case 'invalid':
      return {
        problem: 'invalid-message',
        detail: 'Nothing was stored. Each entry of errors names one place to correct.',
        errors: receipt.problems,
      };
    case 'conflict':
      return {
        problem: 'conflict',
        detail: receipt.problem.message,
        errors: [receipt.problem],
      };
  }
}
