import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { cusumChart, rateChart } from '../../src/pages/index.js';
import { all, type Node, readXml } from './read-markup.js';
import {
  CHARTS,
  CURVE,
  cusum,
  funnel,
  HARM,
  point,
  SURVIVAL,
  speeds,
  survival,
} from './samples.js';

/** Elements of SVG 2 that draw or describe, and need no script, style or other file. */
const HARMLESS = new Set(['svg', 'title', 'desc', 'g', 'path', 'rect', 'text']);

/** What a chart has that would run, load or be stopped by a strict policy (CSP 3). */
function harmIn(svg: Node): readonly string[] {
  return all(svg).flatMap(({ name, attributes }) => [
    ...(HARMLESS.has(name) ? [] : [name]),
    ...Object.entries(attributes).flatMap(([key, value]) =>
      /^(on|style$|href$|xlink)/.test(key) || /url\(|javascript:/.test(value) ? [key] : [],
    ),
  ]);
}

/** Texts that begin or end outside the view box, by the place of their anchor. */
function outside(svg: Node): readonly string[] {
  const [, , width = 0, height = 0] = (svg.attributes['viewBox'] ?? '').split(' ').map(Number);
  return all(svg).flatMap(({ name, attributes, text }) => {
    const [x, y] = [Number(attributes['x']), Number(attributes['y'])];
    const isOut = x < 0 || x > width || y < 10 || y > height - 4;
    return name === 'text' && isOut ? [text] : [];
  });
}

describe.each(CHARTS)('the chart of %s', (_, chart) => {
  const svg = readXml(chart.markup);

  it('is well-formed XML of an SVG with a view box and system fonts', () => {
    expect(svg.name).toBe('svg');
    expect(svg.attributes['xmlns']).toBe('http://www.w3.org/2000/svg');
    expect(svg.attributes['viewBox']).toMatch(/^0 0 500 \d+$/);
    expect(svg.attributes['font-family']).toBe('system-ui, sans-serif');
  });

  it('is an image with a name and a description (SVG-AAM, WAI-ARIA 1.2)', () => {
    const [title, desc] = svg.children;
    expect([svg.attributes['role'], title?.name, desc?.name]).toEqual(['img', 'title', 'desc']);
    expect(svg.attributes['aria-labelledby']).toBe(
      `${title?.attributes['id']} ${desc?.attributes['id']}`,
    );
    expect(title?.text).not.toBe('');
    expect(desc?.text).not.toBe('');
  });

  it('runs nothing, loads nothing and has no style of its own', () => {
    expect(harmIn(svg)).toEqual([]);
  });

  it('writes inside its view box', () => {
    expect(outside(svg)).toEqual([]);
  });
});

describe('what the checks of charts look for', () => {
  it.each([
    ['script', '<svg><script>1</script></svg>'],
    ['image', '<svg><image href="x"/></svg>'],
    ['onload', '<svg onload="x()"/>'],
    ['style', '<svg style="fill:red"/>'],
    ['fill', '<svg fill="url(#a)"/>'],
  ])('finds %s', (found, xml) => {
    expect(harmIn(readXml(xml))).toContain(found);
  });

  it('finds text outside the view box', () => {
    const xml = '<svg viewBox="0 0 720 99"><text x="721" y="20">a</text></svg>';
    expect(outside(readXml(xml))).toEqual(['a']);
  });

  it('rejects what is no XML', () => {
    expect(() => readXml('<svg><b></svg>')).toThrow();
    expect(() => readXml('<svg>\u0000</svg>')).toThrow();
  });
});

describe('texts that would do harm', () => {
  it('are read back as text, with what no XML may hold replaced', () => {
    const [title] = readXml(cusum('simple', CURVE, HARM).markup).children;
    expect(title?.text).toBe(HARM.replace('\u0000', '\ufffd'));
  });
});

describe('a chart without data', () => {
  it.each(CHARTS.filter(([name]) => name.startsWith('no ')))('says so: %s', (_, chart) => {
    const words = all(readXml(chart.markup)).map(({ text }) => text);
    expect(words.some((text) => /^No (rate|curve|point) to draw: /.test(text))).toBe(true);
  });
});

describe('a caller that gives what no chart can show', () => {
  it.each<[string, () => unknown]>([
    ['an id that is none', () => cusumChart({ ...chartOf('a"b') })],
    ['a rate outside its interval', () => rateOf(0.5, 0.6, 0.7)],
    ['a point of nine cases in a funnel', () => funnel([point('op', 8, 9, 'within')])],
    ['a speed that is no number', () => speeds([{ areaCm2: 1, speedCm2PerH: NaN, group: 'a' }])],
    ['six curves', () => survival([1, 2, 3, 4, 5, 6].map(() => SURVIVAL))],
  ])('is told of %s', (_, draw) => {
    expect(draw).toThrow(InvariantError);
  });
});

const chartOf = (id: string) => ({
  id,
  title: 'a',
  form: 'simple' as const,
  curve: {
    aims: { acceptable: 0.1, unacceptable: 0.2, alpha: 0.1, beta: 0.1 },
    step: 0.1,
    lowerLimit: -1,
    upperLimit: 1,
    points: CURVE,
    missing: 0,
    over: {},
    ofOtherOrgans: 0,
  },
});

const rateOf = (rate: number, lower: number, upper: number) =>
  rateChart({
    id: 'a',
    title: 'a',
    points: [{ kind: 'rate', label: 'a', events: 1, of: 2, rate, lower, upper }],
    are: 'groups',
    interval: 'interval',
    references: [],
    axis: 'to-100',
  });
