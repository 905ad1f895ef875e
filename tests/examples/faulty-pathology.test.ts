import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  CASE_CHECKS,
  checkAgainstCase,
  PATHOLOGY_CHECKS,
  parseCase,
  parsePathology,
} from '../../src/contract/index.js';
import type { Problem } from '../../src/kernel/index.js';

const FOLDER = 'examples/faulty-pathology';

interface Faulty {
  readonly file: string;
  readonly mistake: string;
  /** The example case that the report contradicts; without it the report contradicts itself. */
  readonly case?: string;
  readonly problems: readonly { readonly rule: string; readonly pointer: string }[];
}
// Oracle: the mistake that was made on purpose, written down beside it.
const expected: readonly Faulty[] = JSON.parse(readFileSync(`${FOLDER}/expected.json`, 'utf8'));
const alone = expected.filter((one) => one.case === undefined);
const beside = expected.filter((one) => one.case !== undefined);

/** Problems of the report by itself or, if it has none, beside its case. */
function problemsOf({ file, case: caseFile }: Faulty): readonly Problem[] {
  const checked = parsePathology(readFileSync(`${FOLDER}/${file}`));
  if (!checked.ok) return checked.problems;
  const esd = parseCase(readFileSync(`examples/cases/${caseFile}`));
  return esd.ok ? checkAgainstCase(checked.value.fields, esd.value.fields) : esd.problems;
}
const said = ({ rule, pointer }: { readonly rule: string; readonly pointer: string }): string =>
  `${rule} at "${pointer}"`;

describe('the faulty reports', () => {
  it.each(expected)('$file: $mistake', (one) => {
    expect(problemsOf(one).map(said).sort()).toEqual(one.problems.map(said).sort());
    expect(one.problems.length).toBeGreaterThan(0);
  });

  it('are all expected, and every expectation has its message', () => {
    const files = readdirSync(FOLDER).filter((file) => file !== 'expected.json');
    expect(expected.map(({ file }) => file).sort()).toEqual(files.sort());
  });

  it.each(beside)('$file is sound by itself', ({ file }) => {
    expect(parsePathology(readFileSync(`${FOLDER}/${file}`)).ok).toBe(true);
  });

  it.each([
    ...PATHOLOGY_CHECKS.map(({ rule, message }) => ({ rule, message, shown: alone })),
    ...CASE_CHECKS.map(({ rule, message }) => ({ rule, message, shown: beside })),
  ])('show $rule alone: $message', ({ rule, message, shown }) => {
    const found = shown.filter(
      (one) =>
        one.problems.every((problem) => problem.rule === rule) &&
        problemsOf(one).some((problem) => problem.message === message),
    );
    expect(found.length).toBeGreaterThan(0);
  });

  it('are sound without their mistake: a message with nothing wrong has no problem', () => {
    const repaired = readFileSync(`${FOLDER}/budding-miscounted.json`, 'utf8').replace(
      '"count": 5',
      '"count": 4',
    );
    expect(parsePathology(new TextEncoder().encode(repaired)).ok).toBe(true);
  });
});
