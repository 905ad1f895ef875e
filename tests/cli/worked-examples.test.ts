import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { allRules } from '../../src/pipeline/index.js';
import { run } from './run.js';

interface Example {
  readonly id: string;
  readonly rule_or_score: string;
  readonly inputs_json: string;
  readonly expected: string;
  readonly source: string;
  readonly read_or_memory: string;
}

const EXAMPLES: readonly Example[] = parse(readFileSync('tests/published/worked-examples.csv'), {
  columns: true,
});

/** Ids of examples without a rule: none. One that is lost or renamed is noticed here. */
const WITHOUT_RULE: readonly string[] = [];

async function ask(rule: string, json: string) {
  const readStdin = async () => Buffer.from(json);
  const { code, out } = await run(['rule', rule, '-', '--json'], { readStdin });
  return { code, answer: JSON.parse(out) };
}

describe('worked examples, asked on the command line', () => {
  it('have a rule each, but for those that are named', () => {
    const ids = allRules().map(({ id }) => id);
    const without = EXAMPLES.filter(({ rule_or_score: rule }) => !ids.includes(rule));
    expect(EXAMPLES.length).toBe(135);
    expect(without.map(({ id }) => id)).toEqual(WITHOUT_RULE);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(EXAMPLES)(
    '$id: $rule_or_score, $expected ($source; $read_or_memory)',
    async (example) => {
      const { code, answer } = await ask(example.rule_or_score, example.inputs_json);
      expect(code).toBe(0);
      expect(answer.answer).toBe(example.expected);
    },
  );

  it.each([...new Set(EXAMPLES.map((example) => example.rule_or_score))])(
    'are answered as one list for %s',
    async (rule) => {
      const ours = EXAMPLES.filter((example) => example.rule_or_score === rule);
      const list = `[${ours.map((example) => example.inputs_json).join(',')}]`;
      const { code, answer } = await ask(rule, list);
      expect(code).toBe(0);
      expect(answer.map((each: { answer: string }) => each.answer)).toEqual(
        ours.map(({ expected }) => expected),
      );
    },
  );

  it('would not be met with another size', async () => {
    const [small] = EXAMPLES.filter(({ id }) => id === 'ECURA-3');
    const { answer } = await ask('ecura', small?.inputs_json.replace('30', '31') ?? '');
    expect(answer.answer).not.toBe(small?.expected);
  });
});
