import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CROSS_CHECKS, parseCase } from '../../src/contract/index.js';

const FOLDER = 'examples/faulty';

interface Faulty {
  readonly file: string;
  readonly mistake: string;
  readonly problems: readonly { readonly rule: string; readonly pointer: string }[];
}
// Oracle: the mistake that was made on purpose, written down beside it.
const expected: readonly Faulty[] = JSON.parse(readFileSync(`${FOLDER}/expected.json`, 'utf8'));

function problemsOf(file: string): readonly string[] {
  const checked = parseCase(readFileSync(`${FOLDER}/${file}`));
  return checked.ok ? [] : checked.problems.map(said).sort();
}
const said = ({ rule, pointer }: { readonly rule: string; readonly pointer: string }): string =>
  `${rule} at "${pointer}"`;

describe('the faulty messages', () => {
  it.each(expected)('$file: $mistake', ({ file, problems }) => {
    expect(problemsOf(file)).toEqual(problems.map(said).sort());
    expect(problems.length).toBeGreaterThan(0);
  });

  it('are all expected, and every expectation has its message', () => {
    const files = readdirSync(FOLDER).filter((file) => file !== 'expected.json');
    expect(expected.map(({ file }) => file).sort()).toEqual(files.sort());
    expect(files.length).toBeGreaterThanOrEqual(18);
  });

  it.each([...new Set(CROSS_CHECKS.map(({ rule }) => rule))])('show %s alone', (rule) => {
    const alone = expected.filter(({ problems }) => problems.every((p) => p.rule === rule));
    expect(alone.length).toBeGreaterThan(0);
  });

  it('break each check across fields, also where two checks share a name', () => {
    const messages = new Set(
      expected.flatMap(({ file }) => {
        const checked = parseCase(readFileSync(`${FOLDER}/${file}`));
        return checked.ok ? [] : checked.problems.map(({ message }) => message);
      }),
    );
    const never = CROSS_CHECKS.filter(({ message }) => !messages.has(message));
    expect(never.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
  });

  it('are sound without their mistake: a message with nothing wrong has no problem', () => {
    const repaired = readFileSync(`${FOLDER}/times-out-of-order.json`, 'utf8').replace(
      'T09:40:00+02:00',
      'T10:40:00+02:00',
    );
    expect(parseCase(new TextEncoder().encode(repaired)).ok).toBe(true);
  });
});
