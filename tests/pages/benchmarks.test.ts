import { describe, expect, it } from 'vitest';
import type { OutcomeReport, ReportCell } from '../../src/outcomes/index.js';
import { drawChart, renderQualityReport } from '../../src/pages/index.js';
import { all, part, readXml } from './read-markup.js';
import { read, words } from './read-page.js';
import { REPORT } from './report-samples.js';
import { LEARNING } from './samples.js';

const { outcomes } = REPORT;
const [WHOLE] = outcomes.cells;

/** The sample with a value of colon and rectum, over cases of some organs. */
function reportOf(filters: OutcomeReport['query']['filters'], strata: readonly string[] = []) {
  const cellOf = (stratum: ReportCell['stratum']): ReportCell => ({
    ...{ isRankable: true, indicators: WHOLE?.indicators ?? [], quantities: [] },
    stratum,
  });
  return {
    ...outcomes,
    query: { ...outcomes.query, filters },
    cells: [cellOf({}), ...strata.map((organ) => cellOf({ organ }))],
    definitions: outcomes.definitions.map((definition) => ({
      ...definition,
      benchmarks: definition.benchmarks.map((benchmark) => ({
        ...benchmark,
        organs: ['colon', 'rectum'] as const,
      })),
    })),
  };
}

function drawn(report: OutcomeReport) {
  const svg = readXml(drawChart({ kind: 'rates', report, indicator: 'enBloc' }));
  const lines = part(svg, 'levels').children.filter(({ name }) => name === 'path').length;
  const caption = all(part(svg, 'caption'))
    .map(({ text }) => text)
    .join(' ');
  return { lines, caption, description: svg.children[1]?.text ?? '' };
}

describe('a published value of colon and rectum', () => {
  it.each([
    ['cases of the colon', reportOf({ organ: 'colon' })],
    ['groups of colon and rectum', reportOf({}, ['colon', 'rectum'])],
  ])('is drawn beside %s', (_, report) => {
    const { lines, caption, description } = drawn(report);
    expect(lines).toBe(1);
    expect(caption).toContain('A: expert level: at least 90.0 %.');
    expect(caption).not.toContain('not drawn');
    expect(description).toContain('Compared with: expert level');
  });

  it.each([
    ['cases of all organs', reportOf({})],
    ['cases of the stomach', reportOf({ organ: 'stomach' })],
    ['groups of which one is another organ', reportOf({}, ['colon', 'stomach'])],
  ])('is told and not drawn beside %s', (_, report) => {
    const { lines, caption, description } = drawn(report);
    expect(lines).toBe(0);
    expect(caption).toContain('Of colon and rectum alone, and not drawn beside other cases');
    expect(description).not.toContain('Compared with');
  });

  it('is drawn where the indicator itself counts these organs alone', () => {
    const all = reportOf({});
    const definitions = all.definitions.map((each) => ({
      ...each,
      organs: ['colon', 'rectum'] as const,
    }));
    expect(drawn({ ...all, definitions }).lines).toBe(1);
  });

  it('names its organs in the table of sources', () => {
    const page = read(renderQualityReport({ ...REPORT, outcomes: reportOf({}) }));
    const cells = page.named('td').map(words);
    expect(cells.filter((text) => text.includes('(colon and rectum alone)')).length).toBe(2);
  });
});

describe('the curves of a report', () => {
  const page = read(renderQualityReport(REPORT));
  const texts = page.named('text').map(words).join(' ');

  it('say over whose cases they run', () => {
    expect(texts).toContain('Cases: colon and rectum, all operators together.');
    expect(texts).toContain('Left out: 3 cases of other organs; the aims are not of them.');
  });

  it('say which levels are of other cases, and compare nothing with them', () => {
    const items = page.named('li').map(words);
    const [other, ...more] = items.filter((text) => text.startsWith('one of others: '));
    expect(more).toEqual([]);
    expect(other).toContain('of colon alone, not compared here');
    expect(other).not.toContain('reached');
  });
});

describe('the rule sets behind the rate of curative resections', () => {
  const curative = outcomes.definitions.map((each, i) =>
    i === 0 ? { ...each, id: 'curative' as const } : each,
  );
  const rowsOf = (change: Partial<OutcomeReport>) => {
    const report = { ...REPORT, outcomes: { ...outcomes, definitions: curative, ...change } };
    return read(renderQualityReport(report)).named('tr').map(words);
  };

  it('stand in a table with their cases', () => {
    expect(rowsOf({})).toEqual(expect.arrayContaining(['colonset-a7', 'colonset-b40']));
  });

  it('stand without a count where small counts are hidden', () => {
    const rows = rowsOf({
      policy: { smallCells: 'hide', threshold: 5 },
      judgedBy: [{ organ: 'colon', ruleSet: 'set-a' }],
    });
    expect(rows).toContain('colonset-anot counted here');
  });
});

describe('a curve that is drawn by itself', () => {
  const cites = [{ work: 'eio2024', place: 'abstract', basis: 'published' }] as const;
  const captionOf = (chart: Parameters<typeof drawChart>[0]) =>
    all(part(readXml(drawChart(chart)), 'caption'))
      .map(({ text }) => text)
      .join(' ');

  it.each(['rates', 'speed'] as const)('names the source of each level: %s', (form) => {
    const thresholds = LEARNING.thresholds.map((level) => ({ ...level, cites }));
    const series = { ...LEARNING, thresholds };
    const caption = captionOf({ kind: 'series', form, series });
    // One level stands beside each form; a level of other cases is not told, nor is its source.
    expect(caption.match(/abstract \(read in the work\)/g)).toHaveLength(1);
    expect(captionOf({ kind: 'series', form, series: LEARNING })).not.toContain('Source');
  });

  it.each([
    ['sequential', 'cusum', true],
    ['simple', 'cusum', false],
    ['simple', 'funnel', true],
  ] as const)('names its sources, where it has limits: %s %s', (form, kind, hasLimits) => {
    const drawn = REPORT.series.filter(({ series }) => series.kind === kind);
    expect(drawn).toHaveLength(1);
    for (const { series } of drawn) {
      expect(captionOf({ kind: 'series', form, series }).includes('Source: ')).toBe(hasLimits);
    }
  });
});
