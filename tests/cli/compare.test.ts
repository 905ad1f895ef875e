import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { parse as parseHtml } from 'parse5';
import { describe, expect, it } from 'vitest';
import { run } from './run.js';

const FILES = ['vale', 'ridge', 'shore'].map((unit) => `examples/comparison/${unit}.json`);
const readFile = (path: string) => Promise.resolve(readFileSync(path));
const compare = (...args: readonly string[]) => run(['compare', ...args], { readFile });

describe('the command compare', () => {
  it('shows a table an indicator, with what is hidden, and its cautions', async () => {
    const { code, out, err } = await compare(...FILES);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^Resections from 2021-01-01 to 2025-12-31, by .*\/Measure\/dr-outcomes\|/);
    expect(out).toMatch(/^Vale \(invented\) +82.9 % +80.3 to 85.2 % /m);
    expect(out).toMatch(/^Shore \(invented\) +hidden/m);
    expect(out).toContain('Intervals: 95 %, wilson\n');
    expect(out).toContain('no ranking');
    expect(out.split('\n').every((line) => !line.endsWith(' '))).toBe(true);
  });

  it('writes CSV that a reader of CSV reads back', async () => {
    const { out } = await compare(...FILES, '--csv');
    const rows: readonly Record<string, string>[] = parse(out, { columns: true });
    expect(rows).toHaveLength(3 * 14);
    const r0 = rows.find((row) => row['indicator'] === 'r0');
    expect(r0).toMatchObject({
      kind: 'rate',
      numerator: '748',
      denominator: '902',
      method: 'wilson',
    });
    const hidden = rows.filter((row) => row['kind'] === 'suppressed');
    expect(hidden.length).toBeGreaterThan(0);
    for (const row of hidden) expect([row['numerator'], row['rate']]).toEqual(['', '']);
  });

  it('writes JSON, of one indicator where that is asked', async () => {
    const { out } = await compare(...FILES, '--json', '--indicator', 'r0');
    const { indicators } = JSON.parse(out);
    expect(indicators.map((one: { definition: { id: string } }) => one.definition.id)).toEqual([
      'r0',
    ]);
  });

  it('draws one funnel, with every unit that is shown', async () => {
    const { code, out } = await compare(...FILES, '--svg', '--indicator', 'r0');
    expect(code).toBe(0);
    expect(out).toMatch(/^<svg /);
    for (const unit of ['Vale', 'Ridge', 'Shore']) {
      expect(out).toContain(`unit ${unit} (invented)`);
    }
  });

  it('makes a whole page without scripts', async () => {
    const { out } = await compare(...FILES, '--html');
    expect(
      JSON.stringify(parseHtml(out), (key, value) => (key === 'parentNode' ? null : value)),
    ).toContain('"nodeName":"table"');
    expect(out).not.toContain('<script');
    expect(out).toContain('not shown: small numbers');
  });

  it('says everything that is wrong with every report', async () => {
    const [first = '', second = ''] = FILES;
    const { code, out, err } = await compare(first, second, first, 'examples/patients.json');
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('examples/patients.json: cannot be compared');
    const again = await compare(first, second, first);
    expect(again.code).toBe(1);
    expect(again.err).toContain('[compare-identifier]');
  });

  it.each([
    [['one.json'], 'needs the REPORTs of two units'],
    [[...FILES, '--svg'], 'name it with --indicator'],
    [[...FILES, '--svg', '--csv', '--indicator', 'r0'], 'One of'],
    [[...FILES, '--indicator', 'speed'], 'There is no indicator of this id'],
  ] as const)('is called wrongly with %j', async (args, says) => {
    const { code, err } = await compare(...args);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });

  it('ends with 3 when a file cannot be read', async () => {
    const missing = (path: string) =>
      path === 'gone.json'
        ? Promise.reject(Object.assign(new Error('x'), { code: 'ENOENT' }))
        : readFile(path);
    const { code, err } = await run(['compare', FILES[0] ?? '', 'gone.json'], {
      readFile: missing,
    });
    expect([code, err]).toEqual([3, 'gone.json: there is no such file\n']);
  });
});
