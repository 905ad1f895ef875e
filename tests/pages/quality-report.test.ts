import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../src/kernel/index.js';
import { renderQualityReport } from '../../src/pages/index.js';
import { attribute, below, type Element, isElement, read, words } from './read-page.js';
import { EMPTY_REPORT, REPORT } from './report-samples.js';
import { HARM } from './samples.js';

/** What a page has that a policy without scripts and style attributes would stop. */
const stopped = (elements: readonly Element[]): readonly string[] =>
  elements.flatMap(({ tagName, attrs }) => [
    ...(/^(script|img|link|iframe|object|embed|form|base)$/.test(tagName) ? [tagName] : []),
    ...attrs.flatMap(({ name, value }) =>
      /^(on|style$|src)/.test(name) || (name === 'href' && !value.startsWith('#')) ? [name] : [],
    ),
  ]);

/** Headings that skip a level, or a beginning other than the first. */
const skipped = (levels: readonly number[]): readonly number[] =>
  levels.filter((level, i) => level > (levels[i - 1] ?? 0) + 1);

describe.each([
  ['full', REPORT],
  ['empty', EMPTY_REPORT],
])('a quality report, %s', (_, report) => {
  const page = renderQualityReport(report);
  const { errors, elements, named, mode } = read(page);

  it('is HTML without a parse error, in no-quirks mode and a told language', () => {
    expect(errors).toEqual([]);
    expect(mode).toBe('no-quirks');
    expect(named('html').map((node) => attribute(node, 'lang'))).toEqual(['en']);
    expect(named('main')).toHaveLength(1);
  });

  it('has one title and headings in order (WCAG 2.1, 1.3.1)', () => {
    const levels = named('h1', 'h2', 'h3', 'h4').map(({ tagName }) => Number(tagName.slice(1)));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(skipped(levels)).toEqual([]);
  });

  it('has ids once, and each reference and link finds its own', () => {
    const ids = elements.flatMap((node) => attribute(node, 'id') ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    const wanted = elements.flatMap((node) => [
      ...(attribute(node, 'aria-labelledby')?.split(' ') ?? []),
      ...(attribute(node, 'href')?.startsWith('#') ? [attribute(node, 'href')?.slice(1)] : []),
    ]);
    expect(wanted.filter((id) => id !== undefined && !ids.includes(id))).toEqual([]);
    expect(wanted.length).toBeGreaterThan(5);
  });

  it('has no script, no style attribute and nothing from elsewhere', () => {
    expect(stopped(elements)).toEqual([]);
  });

  it('has style elements alone, each of which the policy allows by its hash (CSP 3, 8.3)', () => {
    const hashes = named('style').map((style) =>
      createHash('sha256').update(words(style), 'utf8').digest('base64'),
    );
    const sources = hashes.map((hash) => `'sha256-${hash}'`).join(' ');
    expect(page.policy).toBe(
      `default-src 'none'; style-src ${sources}; base-uri 'none'; form-action 'none'; ` +
        "frame-ancestors 'none'",
    );
    const saved = named('meta').filter((node) => attribute(node, 'http-equiv') !== undefined);
    // The header of CSP 3, 3.3: frame-ancestors has no effect in a meta element.
    expect(saved.map((node) => attribute(node, 'content'))).toEqual([
      page.policy.replace("; frame-ancestors 'none'", ''),
    ]);
  });

  it('has tables whose columns and rows have heads and as many cells', () => {
    for (const table of named('table')) {
      const rows = below(table.childNodes).filter(({ tagName }) => tagName === 'tr');
      const widths = rows.map((row) =>
        row.childNodes
          .filter(isElement)
          .reduce((sum, cell) => sum + Number(attribute(cell, 'colspan') ?? 1), 0),
      );
      expect(new Set(widths).size).toBe(1);
      for (const row of rows) {
        expect(row.childNodes.filter(isElement)[0]?.tagName).toBe('th');
      }
      expect(below(table.childNodes).map(({ tagName }) => tagName)).toContain('caption');
    }
  });

  it('says the caution', () => {
    expect(named('li').map(words)).toContain(CAUTION);
  });
});

describe('what the checks of the report look for', () => {
  it('finds what a policy would stop', () => {
    const html = `<!DOCTYPE html><title>a</title><p style="color:red" onclick="x()"><a href="//x">a</a><script></script>`;
    expect(stopped(read(html).elements)).toEqual(['style', 'onclick', 'href', 'script']);
  });

  it('finds a heading that skips a level, and broken HTML', () => {
    expect(skipped([1, 3, 2])).toEqual([3]);
    expect(skipped([2])).toEqual([2]);
    expect(read('<p></b>').errors).toContain('missing-doctype');
  });
});

describe('the tables of a report', () => {
  const { named } = read(renderQualityReport(REPORT));
  const tables = named('table').map((table) => ({
    caption: below(table.childNodes)
      .filter((node) => node.tagName === 'caption')
      .map(words)[0],
    heads: below(table.childNodes)
      .filter((node) => attribute(node, 'scope') === 'col')
      .map(words),
    rows: below(table.childNodes)
      .filter(({ tagName }) => tagName === 'tr')
      .map((row) => row.childNodes.filter(isElement).map(words)),
  }));
  const rows = (caption: string) => tables.find((table) => table.caption === caption)?.rows ?? [];

  it('name the method of the interval', () => {
    const heads = tables.find(({ caption }) => caption === 'En bloc')?.heads;
    expect(heads?.[2]).toBe('95 % interval (Wilson score)');
  });

  it('give rate, interval, count, n, missing with its ends, and open of 81 in 263 (Newcombe 1998)', () => {
    expect(rows('En bloc')[1]).toEqual([
      'all cases',
      '30.8 %',
      '25.5 to 36.6 %',
      '81',
      '263',
      // 81 and 85 of 267, by division.
      '4 (30.3 to 31.8 %)',
      '7',
    ]);
  });

  it('say what is not shown, and what has no rate, without a number', () => {
    expect(rows('En bloc').slice(2)).toEqual([
      ['By organ'],
      ['colon', 'not shown: small numbers'],
      ['not told (too few cases to compare)', 'no rate', '–', '–', '0', '2', '1'],
      ['By period'],
      ['2025', '30.8 %', '25.5 to 36.6 %', '81', '263', '4 (30.3 to 31.8 %)', '7'],
      ['2026', 'not shown: small numbers'],
    ]);
  });

  it('say which numbers are small, to those who may see them', () => {
    expect(rows('Bleeding')[1]?.[1]).toBe('0.5 % !');
  });

  it('give the middle of quantities with their unit', () => {
    const speed = rows('Speed of the dissection, each to 0.1 cm²/h')[1];
    expect(speed).toEqual(['all cases', '9.3', '7.0 to 12.1', 'cm²/h', '250', '13']);
  });

  it('write units as people do', () => {
    const [cell] = REPORT.outcomes.cells;
    const quantity = { kind: 'quartiles', n: 9, missing: 0, q1: 5, median: 7, q3: 10 } as const;
    const cells = (['speedCm2PerH', 'pathologyDays'] as const).map((id, i) => ({
      ...{ stratum: {}, isRankable: true, indicators: cell?.indicators ?? [] },
      quantities: [{ ...quantity, id, unit: ['cm2/h', 'd'][i] ?? '' }],
    }));
    const page = read(renderQualityReport({ ...REPORT, outcomes: { ...REPORT.outcomes, cells } }));
    const told = page.named('td').map(words);
    expect([told.includes('cm²/h'), told.includes('days')]).toEqual([true, true]);
    expect([told.includes('cm2/h'), told.includes('d')]).toEqual([false, false]);
  });

  it('stand below the rule sets of curability', () => {
    expect(named('dd').map(words)).toContain(
      'stomach, rectum: set-a; colon: set-b, in the settings of the day of this report',
    );
  });

  it('tell where first checks stand', () => {
    const checks = rows('First check after the resection');
    expect(checks.slice(1).map(([, number]) => number)).toEqual([
      '150',
      '20',
      '30',
      '12',
      '3',
      '9',
      '7',
      '16',
    ]);
  });
});

describe('what a report says of itself', () => {
  const textOf = (report: typeof REPORT) =>
    read(renderQualityReport(report)).named('li', 'p').map(words);

  it('counts what is not shown, and says nothing where all is', () => {
    const notShown = (report: typeof REPORT) =>
      textOf(report).filter((text) => /not shown: small numbers\.$/.test(text));
    expect(notShown(REPORT).filter((text) => /^\d+ results? of/.test(text))).toHaveLength(1);
    expect(notShown(EMPTY_REPORT).filter((text) => /^\d+ results? of/.test(text))).toEqual([]);
  });

  it('does not say that restricted cases are left out, for no message can restrict one', () => {
    expect(textOf(REPORT).filter((text) => /restrict/.test(text))).toEqual([]);
    expect(textOf(REPORT)).toContain('Cases that were withdrawn are in no count.');
  });

  it('says after how many days an outcome is judged, also one that counts at any time', () => {
    expect(textOf(REPORT)).toContain(
      'Counts: bled. Out of: procedures. Judged once 28 days are over. Not counted: too young.',
    );
    expect(textOf(REPORT)).toContain('Counts: removed in one piece. Out of: attempted.');
  });

  it('names the works of its intervals', () => {
    const [said] = textOf(REPORT).filter((text) =>
      text.startsWith('Intervals, bounds of what is missing, and curve: '),
    );
    expect(said).toMatch(/\[\d+\]/);
    expect(textOf(EMPTY_REPORT).some((text) => text.startsWith('Intervals, bounds'))).toBe(false);
  });
});

describe('texts in a report that would do harm', () => {
  const harmful = REPORT.outcomes.definitions.map((definition) => ({ ...definition, title: HARM }));
  const { named, elements, errors } = read(
    renderQualityReport({
      ...REPORT,
      title: HARM,
      unit: { name: HARM, identifier: 'urn:oid:2.999' },
      outcomes: { ...REPORT.outcomes, definitions: harmful },
    }),
  );
  const text = HARM.replace('\u0000', '\ufffd');

  it('stay text where they stand', () => {
    expect(named('title').map(words)[0]).toBe(text);
    expect(named('h1').map(words)).toEqual([text]);
    expect(named('dd').map(words)[0]).toBe(`${text} urn:oid:2.999`);
    expect(named('h3').map(words)[0]).toBe(text);
  });

  it('stay inside their attribute', () => {
    const labels = elements.map((node) => attribute(node, 'aria-label'));
    expect(labels.filter((label) => label === text)).toHaveLength(harmful.length);
    expect([stopped(elements), errors]).toEqual([[], []]);
  });
});
