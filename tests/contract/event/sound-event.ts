import { readFileSync } from 'node:fs';
import { parseEvent } from '../../../src/contract/index.js';
import { bytesOf, changed, type Fields } from '../changed.js';

/** @param name of a file in `examples/events` without its ending */
export const example = (name: string): object =>
  JSON.parse(readFileSync(`examples/events/${name}.json`, 'utf8'));

/** Rules that the example breaks once the fields are set in it. */
export function rulesOf(name: string, fields: Fields): readonly string[] {
  const checked = parseEvent(bytesOf(changed(example(name), fields)));
  return checked.ok ? [] : checked.problems.map(({ rule }) => rule);
}
