import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CAUTION } from '../../src/kernel/index.js';
import { type Comparison, compareUnits, type UnitReport } from '../../src/measure/index.js';
import { renderComparison, renderQualityReport } from '../../src/pages/index.js';
import { STYLE_RULES } from '../../src/pages/report/stylesheet.js';
import { readUnitReport } from '../../src/read-unit-report.js';
import { attribute, below, type Element, isElement, read, words } from './read-page.js';
import { EMPTY_REPORT, REPORT } from './report-samples.js';
import { HARM } from './samples.js';

const comparison = comparisonOf((report) => report);

function comparisonOf(renamed: (report: UnitReport) => UnitReport): Comparison {
  const reports = ['ridge', 'shore', 'vale'].map((name) => {
    const report = readUnitReport(readFileSync(`examples/comparison/${name}.json`));
    if (!report.ok) throw new Error('the examples are sound');
    return { name, report: renamed(report.value) };
  });
  const compared = compareUnits(reports);
  if (!compared.ok) throw new Error('the examples stand side by side');
  return compared.value;
}

const classes = (node: Element): readonly string[] => (attribute(node, 'class') ?? '').split(' ');

/** Each element with all that it stands in, the nearest first. */
function withParents(nodes: readonly Element[], above: readonly Element[] = []): readonly Placed[] {
  return nodes.flatMap((node) => [
    { node, above },
    ...withParents(node.childNodes.filter(isElement), [node, ...above]),
  ]);
}
interface Placed {
  readonly node: Element;
  readonly above: readonly Element[];
}

/** Charts that stand in no figure, and tables in no box that scrolls or without a head. */
function loose(root: readonly Element[]): readonly string[] {
  return withParents(root).flatMap(({ node, above }) => {
    const [parent] = above;
    if (node.tagName === 'svg') return parent?.tagName === 'figure' ? [] : ['svg'];
    if (node.tagName !== 'table') return [];
    const hasHead = below(node.childNodes).some(({ tagName }) => tagName === 'thead');
    return parent !== undefined && classes(parent).includes('scroll') && hasHead ? [] : ['table'];
  });
}

/** What those who cannot see or point need to find their way (WCAG 2.1, 2.4.1, 2.4.2, 3.1.1). */
function lost({ named, elements }: ReturnType<typeof read>): readonly string[] {
  const [skip] = named('a', 'button', 'input', 'select');
  const target = elements.find((node) => `#${attribute(node, 'id')}` === attributeOf(skip, 'href'));
  const found: readonly (readonly [string, boolean])[] = [
    ['one h1', named('h1').length === 1],
    ['one main', named('main').length === 1],
    ['one header', named('header').length === 1],
    ['title', named('title').map(words).join('').trim() !== ''],
    ['lang', named('html').every((node) => attribute(node, 'lang') === 'en')],
    ['skip link', target?.tagName === 'main' && attribute(target, 'tabindex') === '-1'],
  ];
  return found.flatMap(([name, isThere]) => (isThere ? [] : [name]));
}

const attributeOf = (node: Element | undefined, name: string): string | undefined =>
  node === undefined ? undefined : attribute(node, name);

/** Selectors that one rule of the style gives this declaration. */
const selectorsWith = (rules: string, declaration: string): readonly string[] =>
  [...rules.matchAll(/([^{}]+)\{([^{}]*)\}/g)]
    .filter(([, , declarations = '']) => declarations.includes(declaration))
    .flatMap(([, selectors = '']) => selectors.split(',').map((selector) => selector.trim()));

/** The words at the foot of a printed page, read as CSS Syntax Level 3, 4.3.7, unescapes them. */
function footOf({ named }: ReturnType<typeof read>): string | undefined {
  const rules = named('style').map(words).join('\n');
  return /@bottom-left \{ content: "([^"]*)"/
    .exec(rules)?.[1]
    ?.replace(/\\([0-9a-f]{1,6}) /g, (_, code) => {
      const point = Number.parseInt(code, 16);
      const isNone = point === 0 || (point >= 0xd800 && point <= 0xdfff);
      return isNone ? '\ufffd' : String.fromCodePoint(point);
    });
}

describe.each([
  ['a full report', renderQualityReport(REPORT)],
  ['an empty report', renderQualityReport(EMPTY_REPORT)],
  ['a comparison', renderComparison(comparison)],
])('%s', (_, page) => {
  const seen = read(page);

  it('has its charts in figures and its tables in boxes that scroll, each with a head', () => {
    expect(loose(seen.named('html'))).toEqual([]);
    expect(seen.named('svg').length).toBe(seen.named('figure').length);
  });

  it('can be walked without eyes and without a mouse', () => {
    expect([seen.errors, lost(seen)]).toEqual([[], []]);
  });
});

describe('what the checks of a page look for', () => {
  it('finds a chart and a table that stand alone', () => {
    const page = '<!DOCTYPE html><title>a</title><svg></svg><table><tr><td>1</table>';
    expect(loose(read(page).named('html'))).toEqual(['svg', 'table']);
  });

  it('finds what leads nobody', () => {
    expect(lost(read('<!DOCTYPE html><a href="#b">b</a><p id="b">b</p>'))).toEqual([
      ...['one h1', 'one main', 'one header', 'title', 'lang', 'skip link'],
    ]);
  });
});

// https://www.w3.org/TR/css-break-3/#breaking-controls
describe('the style on paper', () => {
  const print = STYLE_RULES.slice(STYLE_RULES.indexOf('@media print {') + 14);

  it('cuts no row, no chart and no short section in two', () => {
    expect(selectorsWith(print, 'break-inside: avoid')).toEqual(
      expect.arrayContaining(['tr', 'figure', '.whole', '.note', 'li']),
    );
  });

  it('leaves no heading alone at the foot, and says the head of a table on each page', () => {
    expect(selectorsWith(print, 'break-after: avoid')).toEqual(
      expect.arrayContaining(['h1', 'h2', 'h3', 'caption', 'thead']),
    );
    expect(selectorsWith(print, 'display: table-header-group')).toEqual(['thead']);
  });

  it('begins no page of itself', () => {
    expect(print).not.toMatch(/break-(before|after): (page|always|left|right)/);
  });

  it('would be caught: a rule for another element', () => {
    expect(selectorsWith('td, li { break-inside: avoid; } p { }', 'break-inside: avoid')).toEqual([
      'td',
      'li',
    ]);
  });
});

describe('an indicator on paper', () => {
  const sectionsOf = (report: typeof REPORT) =>
    read(renderQualityReport(report))
      .named('section')
      .filter(
        (node) =>
          node.childNodes.filter(isElement).some(({ tagName }) => tagName === 'h3') &&
          below(node.childNodes).some((child) => attribute(child, 'id')?.startsWith('indicator-')),
      );

  it('has its table beside its chart, on one page', () => {
    expect(sectionsOf(REPORT).map(classes)).toEqual(
      REPORT.outcomes.definitions.map(() => ['beside', 'whole']),
    );
  });

  it('goes over pages where it has more rows than stand beside a chart', () => {
    const [period] = REPORT.periods;
    if (period === undefined) throw new Error('the sample has periods');
    const periods = Array.from({ length: 30 }, (_, i) => ({ ...period, label: `${1990 + i}` }));
    for (const section of sectionsOf({ ...REPORT, periods })) {
      expect(classes(section)).not.toContain('whole');
    }
  });
});

describe('the foot of a printed page', () => {
  it('names title, days and unit', () => {
    expect(footOf(read(renderQualityReport(REPORT)))).toBe(
      `Quality report, resections ${REPORT.outcomes.query.from} to ${REPORT.outcomes.query.to}, An invented unit`,
    );
    expect(footOf(read(renderQualityReport(EMPTY_REPORT)))).toBe(
      'Quality report, resections the first case to the last case, ' +
        'https://dissection-records.example/unit',
    );
    expect(footOf(read(renderComparison(comparison)))).toBe(
      'Outcomes of several units, resections 2021-01-01 to 2025-12-31',
    );
  });

  it('keeps a text that would do harm inside its string', () => {
    const unit = { name: HARM, identifier: 'urn:oid:2.999' };
    const page = read(renderQualityReport({ ...REPORT, title: '"}\\ body{', unit }));
    expect(footOf(page)).toContain('"}\\ body{, resections');
    expect(footOf(page)?.endsWith(HARM.replace('\u0000', '\ufffd'))).toBe(true);
    expect(page.errors).toEqual([]);
  });
});

describe('a comparison of units', () => {
  const { named } = read(renderComparison(comparison));

  it('says its cautions and the general one, once each', () => {
    expect(named('li').map(words)).toEqual([CAUTION, ...comparison.cautions]);
    expect(comparison.cautions.some((caution) => /no ranking/.test(caution))).toBe(true);
  });

  const headsOf = (compared: Comparison) => {
    const { named } = read(renderComparison(compared));
    const heads = named('table').map((table) =>
      below(table.childNodes)
        .filter((node) => attribute(node, 'scope') === 'row')
        .map(words)
        .join(', '),
    );
    return [...new Set(heads)];
  };
  it('names each unit as its report does, with its identifier once', () => {
    expect(headsOf(comparison)).toEqual(['Ridge (invented), Shore (invented), Vale (invented)']);
    const told = named('dd').map(words);
    expect(told.filter((text) => text.endsWith(' https://vale.example/dissections'))).toHaveLength(
      1,
    );
  });

  it.each([{}, { name: 'Endoscopy' }])('names units by identifier where all have %o', (named) => {
    const units = comparison.units.map(({ unit }) => unit);
    const renamed = comparisonOf(({ name: _, ...report }) => ({ ...report, ...named }));
    expect(headsOf(renamed)).toEqual([units.join(', ')]);
  });
});
