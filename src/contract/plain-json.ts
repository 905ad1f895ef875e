import { isSafeNumber, LosslessNumber } from 'lossless-json';
import type { Problem } from '../kernel/index.js';
import { escapePointer } from './pointer.js';

/** A document with plain numbers, what these lose, and the values that cannot be read one way. */
export interface PlainDocument {
  readonly value: unknown;
  /** JSON Pointer of each number that was sent with trailing zeros -> decimals that were sent. */
  readonly decimals: Readonly<Record<string, number>>;
  readonly faults: readonly Problem[];
}

/** More decimals than any instrument has; beyond them a number cannot be written out. */
const MAX_DECIMALS = 20;
/** Tab, line feed and carriage return are the only control characters that text may hold. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/;

interface Notes {
  readonly decimals: Record<string, number>;
  readonly faults: Problem[];
}

/** @param parsed a document whose numbers are still text */
export function toPlain(parsed: unknown): PlainDocument {
  const notes: Notes = { decimals: {}, faults: [] };
  const value = plain(parsed, '', notes);
  return { value, ...notes };
}

function plain(node: unknown, pointer: string, notes: Notes): unknown {
  if (typeof node === 'string') {
    noteText(node, pointer, notes);
    return node;
  }
  if (node === null || typeof node !== 'object') return node;
  if (node instanceof LosslessNumber) return plainNumber(node.value, pointer, notes);
  if (Array.isArray(node)) return node.map((item, i) => plain(item, `${pointer}/${i}`, notes));
  const result: Record<string, unknown> = {};
  for (const [key, item] of Object.entries(node)) {
    const place = `${pointer}/${escapePointer(key)}`;
    noteText(key, pointer, notes);
    if (key === '__proto__') notes.faults.push(prototypeFault(place));
    else result[key] = plain(item, place, notes);
  }
  return result;
}

function plainNumber(text: string, pointer: string, { decimals, faults }: Notes): number {
  const value = Number(text);
  const sent = decimalsOf(text);
  if (!isSafeNumber(text) || !Number.isFinite(value) || sent > MAX_DECIMALS) {
    faults.push({
      rule: 'number-out-of-range',
      pointer,
      message: 'This number cannot be kept exactly.',
      expected: `at most 15 significant digits and ${MAX_DECIMALS} decimals`,
    });
  } else if (sent > decimalsOf(String(value))) {
    decimals[pointer] = sent;
  }
  return value;
}

/** Digits after the decimal point once the exponent is applied: 1.20 -> 2, 1.20e1 -> 1. */
function decimalsOf(text: string): number {
  const [mantissa = '', exponent = '0'] = text.toLowerCase().split('e');
  const fraction = mantissa.split('.')[1] ?? '';
  return Math.max(0, fraction.length - Number(exponent));
}

function noteText(text: string, pointer: string, { faults }: Notes): void {
  if (text.isWellFormed() && !CONTROL.test(text)) return;
  faults.push({
    rule: 'ill-formed-text',
    pointer,
    message: 'This text holds a control character or half of a character.',
    expected: 'well-formed Unicode text without control characters',
  });
}

/** An object with this key would change its prototype in many readers. */
const prototypeFault = (pointer: string): Problem => ({
  rule: 'unknown-field',
  pointer,
  message: 'This field is not part of the message.',
  expected: 'only the fields of the published schema',
});
