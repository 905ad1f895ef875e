import { once } from 'node:events';
import type { Writable } from 'node:stream';
import type { Wanted } from './drawn-case.js';
import type { Progress } from './progress.js';
import { syntheticCase } from './synthetic-case.js';

/**
 * Writes every message of so many cases, one a line, the messages of a case together. Waits where
 * the reader is slower.
 *
 * @param stopped whether to end after the case at hand
 */
export async function writeNdjson(
  out: Writable,
  wanted: Wanted,
  count: number,
  progress: Progress,
  stopped: () => boolean,
): Promise<void> {
  for (let index = 0; index < count && !stopped(); index += 1) {
    const lines = syntheticCase(wanted, index).map(({ text }) => `${text}\n`);
    if (!out.write(lines.join(''))) await once(out, 'drain');
    progress.add(1);
  }
}
