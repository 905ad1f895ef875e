import { invariant } from '../kernel/index.js';
import type { Told } from './question.js';

/** @throws InvariantError unless the field was told and read as a number */
export function numberTold(told: Told, field: string): number {
  const value = told[field];
  invariant(typeof value === 'number', `${field} is a number that was told`);
  return value;
}

/** @throws InvariantError unless the field was told and read as a word or a date */
export function textTold(told: Told, field: string): string {
  const value = told[field];
  invariant(typeof value === 'string', `${field} is a text that was told`);
  return value;
}
