import { isSafeNumber, LosslessNumber, parse } from 'lossless-json';
import { type Checked, failed, type Problem, passed } from '../kernel/index.js';

/** A JSON document, and what plain numbers lose. */
export interface JsonDocument {
  readonly value: unknown;
  /** JSON Pointer of each number that was sent with trailing zeros -> decimals that were sent. */
  readonly decimals: Readonly<Record<string, number>>;
}

const MAX_DEPTH = 16;
/** Tab, line feed and carriage return are the only control characters that text may hold. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/;

/**
 * Reads the bytes of a message as JSON, refusing what could be read in two ways: other encodings
 * than UTF-8, repeated keys, numbers that a double cannot hold, ill-formed Unicode.
 *
 * Source: RFC 8259 sections 4, 6, 8.1 and 8.2 (interoperability).
 */
export function readJson(bytes: Uint8Array): Checked<JsonDocument> {
  const text = decode(bytes);
  if (text === undefined) {
    return refuse('not-utf-8', 'The body is not UTF-8.', 'JSON in UTF-8 without byte order mark');
  }
  if (text.startsWith('\ufeff')) {
    return refuse('byte-order-mark', 'The body starts with a byte order mark.', 'JSON in UTF-8');
  }
  if (depthOf(text) > MAX_DEPTH) {
    return refuse('too-deep', 'The JSON is nested too deeply.', `at most ${MAX_DEPTH} levels`);
  }
  return readText(text);
}

function readText(text: string): Checked<JsonDocument> {
  let parsed: unknown;
  try {
    parsed = parse(text);
  } catch (error) {
    const repeated = error instanceof Error && error.message.startsWith('Duplicate key');
    return repeated
      ? refuse('repeated-key', 'An object holds the same key twice.', 'each key once')
      : refuse('not-json', 'The body is not valid JSON.', 'one JSON object');
  }
  const decimals: Record<string, number> = {};
  const problems: Problem[] = [];
  const value = plain(parsed, '', decimals, problems);
  return problems.length > 0 ? failed(problems) : passed({ value, decimals });
}

/** Reads the document with plain numbers; collects decimals and problems on the way. */
function plain(
  node: unknown,
  pointer: string,
  decimals: Record<string, number>,
  problems: Problem[],
): unknown {
  if (node instanceof LosslessNumber) return plainNumber(node.value, pointer, decimals, problems);
  if (typeof node === 'string') {
    problems.push(...textProblems(node, pointer));
    return node;
  }
  if (Array.isArray(node)) {
    return node.map((item, i) => plain(item, `${pointer}/${i}`, decimals, problems));
  }
  if (node === null || typeof node !== 'object') return node;
  const result: Record<string, unknown> = {};
  for (const [key, item] of Object.entries(node)) {
    const place = `${pointer}/${escapePointer(key)}`;
    problems.push(...textProblems(key, pointer));
    if (key === '__proto__') {
      problems.push({
        rule: 'unknown-field',
        pointer: place,
        message: 'This field is not part of the message.',
        expected: 'only the fields of the published schema',
      });
      continue;
    }
    result[key] = plain(item, place, decimals, problems);
  }
  return result;
}

function plainNumber(
  text: string,
  pointer: string,
  decimals: Record<string, number>,
  problems: Problem[],
): number {
  const value = Number(text);
  if (!isSafeNumber(text, { approx: true }) || !Number.isFinite(value)) {
    problems.push({
      rule: 'number-out-of-range',
      pointer,
      message: 'This number cannot be kept exactly.',
      expected: 'a decimal number of at most 15 significant digits',
    });
  }
  const sent = decimalsOf(text);
  if (sent > decimalsOf(String(value))) decimals[pointer] = sent;
  return value;
}

/** Digits after the decimal point once the exponent is applied: 1.20 -> 2, 1.20e1 -> 1. */
function decimalsOf(text: string): number {
  const [mantissa = '', exponent = '0'] = text.toLowerCase().split('e');
  const fraction = mantissa.split('.')[1] ?? '';
  return Math.max(0, fraction.length - Number(exponent));
}

function textProblems(text: string, pointer: string): readonly Problem[] {
  if (!CONTROL.test(text) && text.isWellFormed()) return [];
  return [
    {
      rule: 'ill-formed-text',
      pointer,
      message: 'This text holds a control character or half of a character.',
      expected: 'well-formed Unicode text without control characters',
    },
  ];
}

export function escapePointer(key: string): string {
  return key.replaceAll('~', '~0').replaceAll('/', '~1');
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** Deepest nesting of brackets outside of strings; reads the text once, without recursion. */
function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let i = 0; i < text.length; i += 1) {
    const c = text.charCodeAt(i);
    if (inString) {
      if (c === 0x5c) i += 1;
      else if (c === 0x22) inString = false;
    } else if (c === 0x22) inString = true;
    else if (c === 0x7b || c === 0x5b) deepest = Math.max(deepest, ++depth);
    else if (c === 0x7d || c === 0x5d) depth -= 1;
  }
  return deepest;
}

const refuse = (rule: string, message: string, expected: string): Checked<never> =>
  failed([{ rule, pointer: '', message, expected }]);
