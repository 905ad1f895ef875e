import { describe, expect, it } from 'vitest';
import { parseFeedRequest, parseFollowUpQuery } from '../../src/contract/index.js';

/* The parameters of the list of follow-ups. Source: project definition. */

const problemsOf = (search: string) => {
  const read = parseFollowUpQuery(search);
  return read.ok ? [] : read.problems.map(({ pointer, rule }) => `${pointer} ${rule}`);
};

describe('a query for follow-ups', () => {
  it('asks for a hundred, and looks four weeks ahead, where it says nothing', () => {
    expect(parseFollowUpQuery('')).toEqual({ ok: true, value: { limit: 100, withinDays: 28 } });
  });

  it('reads every parameter', () => {
    const search =
      'from=2026-06-01&to=2026-06-30&state=open,to-confirm&kind=endoscopy&route=upper' +
      '&due=unbooked-soon&withinDays=14&booked=false&limit=500&after=YWJj';
    expect(parseFollowUpQuery(search)).toEqual({
      ok: true,
      value: {
        ...{ from: '2026-06-01', to: '2026-06-30', states: ['open', 'to-confirm'] },
        ...{ kind: 'endoscopy', route: 'upper', due: 'unbooked-soon', withinDays: 14 },
        ...{ booked: false, limit: 500, after: 'YWJj' },
      },
    });
    expect(parseFollowUpQuery('since=YWJj&limit=1')).toMatchObject({
      value: { since: 'YWJj', limit: 1 },
    });
  });

  it.each([
    ['from=2026-02-30', '/from bad-format'],
    ['to=', '/to bad-format'],
    ['from=2026-06-02&to=2026-06-01', '/to days-out-of-order'],
    ['state=', '/state bad-format'],
    ['state=open,open', '/state bad-format'],
    ['state=open,closed', '/state bad-format'],
    ['state=open, done', '/state bad-format'],
    ['kind=surgery', '/kind not-in-list'],
    ['route=both', '/route not-in-list'],
    ['due=now', '/due not-in-list'],
    ['withinDays=7', '/withinDays needs-unbooked-soon'],
    ['due=unbooked-soon&withinDays=367', '/withinDays out-of-range'],
    ['due=unbooked-soon&withinDays=1.5', '/withinDays bad-format'],
    ['booked=yes', '/booked not-in-list'],
    ['limit=0', '/limit out-of-range'],
    ['limit=501', '/limit out-of-range'],
    ['limit=1e2', '/limit bad-format'],
    ['limit=%201', '/limit bad-format'],
    ['limit=1&limit=1', '/limit repeated-parameter'],
    ['since=a%2Fb', '/since bad-format'],
    ['since=YWJj&kind=task', '/since since-alone'],
    ['since=YWJj&from=2026-06-01', '/since since-alone'],
    ['after=', '/after bad-format'],
    ['patient=7', ' unknown-parameter'],
    ['FROM=2026-06-01', ' unknown-parameter'],
    ['__proto__=1', ' unknown-parameter'],
    ['constructor=1', ' unknown-parameter'],
  ])('%s is refused: %s', (search, problem) => {
    expect(problemsOf(search)).toEqual([problem]);
  });

  it('tells all its problems at once, what was expected, and nothing that was sent', () => {
    const read = parseFollowUpQuery('from=EX-7&limit=EX-8&EX-9=1&EX-9=2&kind=EX-10');
    const problems = read.ok ? [] : read.problems;
    expect(problems.map(({ rule }) => rule).sort()).toEqual([
      ...['bad-format', 'bad-format', 'not-in-list'],
      ...['repeated-parameter', 'unknown-parameter'],
    ]);
    expect(problems.every(({ expected, message }) => expected !== '' && message !== '')).toBe(true);
    expect(JSON.stringify(problems)).not.toContain('EX-');
  });
});

describe('a wish for a feed', () => {
  const read = (wish: object) => parseFeedRequest(new TextEncoder().encode(JSON.stringify(wish)));

  it('is for a year and both routes, where it says nothing', () => {
    expect(read({ schema: 'feed/1' })).toEqual({ ok: true, value: { expiresInDays: 365 } });
    expect(read({ schema: 'feed/1', route: 'lower', expiresInDays: 30 })).toEqual({
      ok: true,
      value: { route: 'lower', expiresInDays: 30 },
    });
  });

  it.each([
    [{}, '/schema', 'missing-field'],
    [{ schema: 'feed/1', route: 'both' }, '/route', 'not-in-list'],
    [{ schema: 'feed/1', expiresInDays: 0 }, '/expiresInDays', 'out-of-range'],
    [{ schema: 'feed/1', expiresInDays: 367 }, '/expiresInDays', 'out-of-range'],
    [{ schema: 'feed/1', name: 'x' }, '/name', 'unknown-field'],
  ])('%o is refused at %s: %s', (wish, pointer, rule) => {
    expect(read(wish)).toMatchObject({ ok: false, problems: [{ pointer, rule }] });
  });
});
