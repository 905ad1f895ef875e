import { describe, expect, it } from 'vitest';
import type { Publication, Work } from '../../src/cli/index.js';
import { run } from './run.js';

/* Source: project definition: exit codes, and what is data and what is talk. */

const PERIOD = ['--from', '2025-01-01', '--to', '2025-12-31'];

const becoming = (
  publication: Publication,
  asked: (question: unknown) => void = () => undefined,
) => {
  const publishOutcomes: Work['publishOutcomes'] = (question, tell) => {
    asked(question);
    return Promise.resolve(tell(publication));
  };
  return { publishOutcomes };
};

const away: Publication = {
  kind: 'not-published',
  fault: 'status-503',
  reason: 'The FHIR server is not available (503).',
  issues: [],
  passing: true,
  waitMs: 6_500,
};

describe('the command outcomes publish', () => {
  it('asks for the report of the period, and says what became of it', async () => {
    const locations = ['Measure/a', 'MeasureReport/b'];
    let question: unknown;
    const work = becoming(
      { kind: 'written', detail: '2 created, 0 updated', locations },
      (asked) => {
        question = asked;
      },
    );
    const ran = await run(['outcomes', 'publish', ...PERIOD, '--by', 'organ'], {}, work);
    expect(ran).toMatchObject({
      code: 0,
      out: 'Put on the FHIR server: 2 created, 0 updated.\n  Measure/a\n  MeasureReport/b\n',
      err: '',
    });
    expect(question).toEqual({
      from: '2025-01-01',
      to: '2025-12-31',
      by: ['organ'],
      filters: {},
      interval: 'wilson',
    });
  });

  it('ends well where the server holds the same', async () => {
    const work = becoming({ kind: 'unchanged', locations: ['MeasureReport/b'] });
    const ran = await run(['outcomes', 'publish', ...PERIOD], {}, work);
    expect([ran.code, ran.err]).toEqual([0, '']);
    expect(ran.out).toContain('nothing was sent');
  });

  it('ends with 1 where such a report is not made, and names the option', async () => {
    const message = 'The Measure is about all cases.';
    const problem = { rule: 'report-all-cases', pointer: '/organ', message, expected: 'no filter' };
    const work = becoming({ kind: 'invalid', problems: [problem] });
    const ran = await run(['outcomes', 'publish', ...PERIOD, '--organ', 'colon'], {}, work);
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toContain(`--organ: ${message}`);
  });

  it('ends with 1 where the server refuses, and quotes it', async () => {
    const issues = ['error invalid: no group here'];
    const work = becoming({ ...away, issues, passing: false });
    const ran = await run(['outcomes', 'publish', ...PERIOD], {}, work);
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toContain('Not published.');
    expect(ran.err).toContain('  error invalid: no group here\n');
    expect(ran.err).not.toContain('Run it again');
  });

  it('ends with 3 where the server is away, and says that it can be repeated', async () => {
    const ran = await run(['outcomes', 'publish', ...PERIOD], {}, becoming(away));
    expect(ran.code).toBe(3);
    expect(ran.err).toContain('Run it again after 7 s: a rerun replaces and never doubles.');
  });

  it('says all of it as one JSON document', async () => {
    const ran = await run(['outcomes', 'publish', ...PERIOD, '--json'], {}, becoming(away));
    expect(ran.code).toBe(3);
    expect(JSON.parse(ran.out)).toEqual(away);
  });

  it.each([
    ['a name', ['x']],
    ['another form', ['--csv']],
    ['a day that is none', ['--from', '2025-02-30']],
    ['no period', []],
    ['one end of a period', ['--from', '2025-01-01']],
  ])('is called wrongly with %s', async (_what, more) => {
    const ran = await run(['outcomes', 'publish', ...more], {}, becoming(away));
    expect([ran.code, ran.out]).toEqual([2, '']);
  });
});
