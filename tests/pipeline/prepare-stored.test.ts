import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEFAULT_UNIT_SETTINGS, parseCase } from '../../src/contract/index.js';
import { prepareStored } from '../../src/pipeline/index.js';
import { foldRecord } from '../../src/record/index.js';

const settings = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};
const CASE_ID = '00000000-0000-8000-8000-000000000001';

function stored(...names: readonly string[]) {
  const messages = names.map((name, i) => {
    const text = readFileSync(`examples/cases/${name}.json`, 'utf8');
    const revised = { ...JSON.parse(text), revision: i + 1 };
    const parsed = parseCase(new TextEncoder().encode(JSON.stringify(revised)));
    if (!parsed.ok) throw new Error('the example is good');
    return { kind: 'case' as const, ...parsed.value, sha256: String(i + 1).repeat(64) };
  });
  const version = foldRecord(CASE_ID, messages, DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the messages hold their case');
  return version;
}

// Source: project definition, README "Promises" 4: delivery is repeated until it is confirmed.
describe('a state that was stored by an earlier release', () => {
  const version = stored('rectum', 'rectum');
  const older = { ...version, assessment: { rulesVersion: '0' } };

  it('is prepared as one of this release, whatever was computed then', () => {
    const prepare = prepareStored(settings);
    const now = prepare(JSON.stringify(version));
    expect(now.ok).toBe(true);
    expect(prepare(JSON.stringify(older))).toEqual(now);
  });

  it('would be caught: another case gives another Bundle', () => {
    const prepare = prepareStored(settings);
    const other = prepare(JSON.stringify(stored('duodenum', 'duodenum')));
    expect(other).not.toEqual(prepare(JSON.stringify(older)));
  });
});
