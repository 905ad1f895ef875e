import { type Checked, failed, passed, roundTo } from '../../kernel/index.js';
import { type Fields, readTold } from '../../rules/index.js';
import { STANDARD_FIELD } from './standard-field.table.js';

/** Decimals to which a count is exact; beyond them binary fractions would decide. */
const DECIMALS = 6;

/**
 * Buds in the standard field, rounded down.
 *
 * Source: itbcc2016; rounding down by the project's convention.
 *
 * @param fieldMm2 area of the field in which they were counted, above 0
 */
function budsInStandardField(buds: number, fieldMm2: number): number {
  return Math.floor(roundTo((buds * STANDARD_FIELD.areaMm2) / fieldMm2, DECIMALS));
}

/**
 * The count in the standard field, which people do not send, put beside what they sent.
 *
 * Source: itbcc2016, the area of the field.
 */
export function unfoldBuds(fields: Fields, document: unknown): Checked<unknown> {
  const { budsInStandardField: _, ...sent } = fields;
  const told = readTold(sent, [], document);
  if (!told.ok) return failed(told.problems);
  const { buds, fieldMm2 } = told.value;
  const isNone = buds === 0;
  if (typeof buds !== 'number' || (typeof fieldMm2 !== 'number' && !isNone)) return told;
  const counted = typeof fieldMm2 === 'number' ? budsInStandardField(buds, fieldMm2) : buds;
  return passed({ ...told.value, budsInStandardField: counted });
}
