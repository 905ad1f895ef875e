import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { run } from './run.js';

const FILES: Readonly<Record<string, string>> = {
  case: 'examples/cases/colon-piecemeal.json',
  report: 'examples/pathology/colon-piecemeal.json',
  other: 'examples/pathology/rectum-final.json',
};

const readFile = (name: string): Promise<Uint8Array> => {
  const path = FILES[name];
  return path === undefined
    ? Promise.reject(Object.assign(new Error(name), { code: 'ENOENT' }))
    : Promise.resolve(new Uint8Array(readFileSync(path)));
};

const assess = (...args: string[]) => run(['assess', ...args], { readFile });

describe('assess', () => {
  it('says that the verdict waits for pathology, and what is then known', async () => {
    const { code, out } = await assess('case');
    expect(code).toBe(0);
    expect(out).toMatch(/^colon .*piecemeal on \d{4}-\d{2}-\d{2}$/m);
    expect(out).toMatch(/^Verdict +open until pathology is back, by esge-esd-2022 version 1$/m);
    expect(out).toMatch(/^ {2}missing +histology, depth, /m);
  });

  it('says the verdict with the report, its reason, sources and the caution', async () => {
    const { code, out } = await assess('case', 'report');
    expect(code).toBe(0);
    // Source: ESGE ESD 2022, piecemeal without submucosal invasion is a local-risk resection.
    expect(out).toMatch(/^Verdict +local-risk \(local-risk\), by esge-esd-2022 version 1$/m);
    expect(out).toMatch(/^ {2}why +Resected piecemeal; .+\s+\[1\]$/m);
    expect(out).toMatch(/^Scores +limoges: /m);
    expect(out).toMatch(/^Sources +\[1\] published, /m);
    expect(out).toContain('Decision support, not a verdict.');
    expect(out.split('\n').every((line) => line.length <= 100)).toBe(true);
  });

  // Source: ESGE polypectomy guideline 2020, piecemeal resection of 20 mm or more: first check after
  // 3 to 6 months. Dissection on 2026-03-24; months counted by hand.
  it('says what follows, in which window and why', async () => {
    const { out } = await assess('case', 'report');
    const text = out.replaceAll(/\s+/g, ' ');
    expect(text).toContain(
      'COL-2.1, open: lower endoscopy, from 2026-06-24 to 2026-09-24, best on 2026-09-24.',
    );
    // What is over is no longer news.
    expect(text).not.toContain('pathology.1');
  });

  it('gives machines the whole assessment with the caution', async () => {
    const { code, out } = await assess('case', 'report', '--json');
    expect(code).toBe(0);
    const answer: unknown = JSON.parse(out);
    expect(answer).toMatchObject({
      curability: { verdict: { rule: 'esge-esd-2022', outcome: { class: 'local-risk' } } },
      plan: { items: expect.arrayContaining([expect.objectContaining({ key: 'COL-2.1' })]) },
      caution: expect.stringContaining('licensed clinicians decide'),
    });
  });

  it('refuses a report on another case, naming the place and the rule', async () => {
    const { code, out, err } = await assess('case', 'other');
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toContain('other: not valid');
    expect(err).toContain('/case');
  });

  it('names a file that cannot be read', async () => {
    const { code, err } = await assess('case', 'nowhere');
    expect(code).toBe(3);
    expect(err).toMatch(/^nowhere: /);
  });

  it.each([[[]], [['case', 'report', 'other']]])('is called wrongly with %j', async (args) => {
    const { code, err } = await assess(...args);
    expect(code).toBe(2);
    expect(err).toContain('assess needs a CASE');
  });
});
