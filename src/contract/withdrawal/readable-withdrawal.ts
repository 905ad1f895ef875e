import type { Readable } from '../cross-check.js';
import type { WithdrawalFields } from './withdrawal.js';

/** What can be read of a withdrawal as it was sent. */
export type ReadableWithdrawal = Readable<WithdrawalFields>;
