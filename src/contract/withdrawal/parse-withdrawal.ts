import type { Checked } from '../../kernel/index.js';
import { type Message, parseMessage } from '../parse-message.js';
import { WITHDRAWAL_CHECKS } from './cross-checks.js';
import { type WithdrawalFields, withdrawalSchema } from './withdrawal.js';

/** A withdrawal that has passed every check of the contract. */
export type WithdrawalMessage = Message<WithdrawalFields>;

/** Reads the bytes of a `withdrawal` message; see `parseMessage`. */
export function parseWithdrawal(bytes: Uint8Array): Checked<WithdrawalMessage> {
  return parseMessage<WithdrawalFields>(withdrawalSchema, WITHDRAWAL_CHECKS, bytes);
}
