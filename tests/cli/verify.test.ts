import { describe, expect, it } from 'vitest';
import type { FactsChecked } from '../../src/pipeline/index.js';
import { run } from './run.js';

/* Source: project definition: exit codes and what is data and what is talk. */

const SAME: FactsChecked = { caseId: 'a', kind: 'same', facts: [], repaired: false };
const DIFFERS: FactsChecked = {
  caseId: 'b',
  kind: 'differ',
  facts: ['enBloc', 'r0'],
  repaired: false,
};

const over = (rows: readonly FactsChecked[]) => ({
  verifyFacts: (_options: object, tell: (one: FactsChecked) => void) => {
    for (const row of rows) tell(row);
    return Promise.resolve(0 as const);
  },
});

describe('verify facts', () => {
  it('ends well where every row is right', async () => {
    expect(await run(['verify', 'facts'], {}, over([SAME]))).toEqual({
      code: 0,
      out: 'cases looked at: 1; rows that differ: 0; written anew: 0.\n',
      err: '',
    });
  });

  it('ends with 1 where a row differs, and says in which facts', async () => {
    const ran = await run(['verify', 'facts'], {}, over([SAME, DIFFERS, DIFFERS]));
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('b  differs: enBloc, r0\n');
    expect(ran.out).toContain('rows that differ: 2 (enBloc 2, r0 2)');
  });

  it('ends well where what differed was written anew', async () => {
    const ran = await run(
      ['verify', 'facts', '--repair', '--json'],
      {},
      over([{ ...DIFFERS, repaired: true }]),
    );
    expect(ran.code).toBe(0);
    const lines = ran.out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(lines).toEqual([
      { caseId: 'b', kind: 'differ', facts: ['enBloc', 'r0'], repaired: true },
      { looked: 1, wrong: 1, repaired: 1, facts: { enBloc: 1, r0: 1 } },
    ]);
  });

  it('is called wrongly without a word for what', async () => {
    expect((await run(['verify'])).code).toBe(2);
    expect((await run(['verify', 'journal'])).code).toBe(2);
  });
});
