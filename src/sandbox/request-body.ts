import type { Json } from './json.js';
import { Refusal } from './refusal.js';

/** Deeper than any resource of use; the readers of a resource call themselves. */
const MOST_LEVELS = 100;

/**
 * Reads the bytes of a resource.
 *
 * @throws Refusal 400 when they are no UTF-8, no JSON or nested too deeply
 */
export function readJson(bytes: Uint8Array): Json {
  const text = readText(bytes);
  if (levels(text) > MOST_LEVELS) {
    throw new Refusal(400, 'structure', `The body is nested in more than ${MOST_LEVELS} levels.`);
  }
  try {
    const value: Json = JSON.parse(text);
    return value;
  } catch {
    throw new Refusal(400, 'structure', 'The body is no JSON.');
  }
}

/** @throws Refusal 400 when the bytes are no UTF-8 */
export function readText(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Refusal(400, 'structure', 'The body is no UTF-8.');
  }
}

function levels(text: string): number {
  let now = 0;
  let most = 0;
  for (const [token] of text.matchAll(/"(?:[^"\\]|\\.)*"|[[\]{}]/gs)) {
    if (token === '{' || token === '[') most = Math.max(most, ++now);
    else if (token === '}' || token === ']') now -= 1;
  }
  return most;
}
