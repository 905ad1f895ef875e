import { parse } from 'lossless-json';
import { type Checked, failed, type Problem, passed } from '../kernel/index.js';
import { type PlainDocument, toPlain } from './plain-json.js';
import { repeatedKeys } from './repeated-keys.js';

const MAX_DEPTH = 16;

/**
 * Reads the bytes of a message as JSON. What could be read in two ways is no value but a fault:
 * repeated keys, numbers that a double cannot hold, ill-formed Unicode.
 *
 * Source: RFC 8259 sections 4, 6, 8.1 and 8.2 (interoperability).
 *
 * @returns the document with its faults, or the one problem for which there is no document
 */
export function readJson(bytes: Uint8Array): Checked<PlainDocument> {
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

function readText(text: string): Checked<PlainDocument> {
  let parsed: unknown;
  try {
    parsed = parse(text, null, { onDuplicateKey: ({ newValue }) => newValue });
  } catch {
    return refuse('not-json', 'The body is not valid JSON.', 'one JSON object');
  }
  const document = toPlain(parsed);
  return passed({ ...document, faults: [...document.faults, ...repeatFaults(text)] });
}

const repeatFaults = (text: string): Problem[] =>
  repeatedKeys(text).map((pointer) => ({
    rule: 'repeated-key',
    pointer,
    message: 'This field is there more than once.',
    expected: 'each field once',
  }));

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
