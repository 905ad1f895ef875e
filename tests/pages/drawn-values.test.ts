import { describe, expect, it } from 'vitest';
import type { Markup } from '../../src/pages/index.js';
import { all, corners, marks, type Node, part, parts, readXml, seenAxis } from './read-markup.js';
import {
  CHARTS,
  CURVE,
  cusum,
  FUNNEL_POINTS,
  funnel,
  QUARTERS,
  rate,
  rates,
  SPEEDS,
  SURVIVAL,
  speeds,
  survival,
} from './samples.js';

// What a reader measures with a ruler between the ticks of a chart must be what was given.

const drawn = (chart: Markup): Node => readXml(chart.markup);

/** Half of the last digit that a path keeps, in values of the axis. */
const NEAR = 1;

describe('rates', () => {
  const svg = drawn(rates(QUARTERS));
  const up = seenAxis(svg, 'up-axis');
  const told = QUARTERS.flatMap((at) => (at.kind === 'rate' ? [at] : []));

  it('stand at their percentage, with both ends of the interval', () => {
    const heights = marks(part(svg, 'points')).map(([, y]) => up.valueAt(y));
    const ends = part(svg, 'points')
      .children.filter(({ name }) => name === 'path')
      .map(corners)
      .filter(([a, b]) => a !== undefined && b !== undefined && a[0] === b[0] && a[1] !== b[1])
      .map((line) => line.map(([, y]) => up.valueAt(y)));
    for (const [i, { rate, lower, upper }] of told.entries()) {
      expect(heights[i]).toBeCloseTo(100 * rate, NEAR);
      expect(ends[i]?.[0]).toBeCloseTo(100 * lower, NEAR);
      expect(ends[i]?.[1]).toBeCloseTo(100 * upper, NEAR);
    }
    expect(heights).toHaveLength(told.length);
  });

  it('stand at equal distances, and a gap stays a gap', () => {
    const [first = 0, second = 0, third = 0] = marks(part(svg, 'points')).map(([x]) => x);
    expect((third - second) / (second - first)).toBeCloseTo(3, 2);
    expect(part(svg, 'joined').children).toHaveLength(1);
  });

  it('say what stands where there is no rate, and only then', () => {
    const caption = (chart: Markup): string =>
      part(drawn(chart), 'caption')
        .children.map(({ text }) => text)
        .join(' ');
    expect(caption(rates(QUARTERS))).toMatch(/× small numbers, not shown\. – no case to count\./);
    expect(caption(rates([rate('a', 1, 2)]))).not.toMatch(/×|–/);
  });

  it('have an axis from 0 to 100 %, or from 0 to above the highest', () => {
    expect([up.values[0], up.values.at(-1)]).toEqual([0, 100]);
    const low = seenAxis(drawn(rates([rate('a', 60, 90)], 'to-highest')), 'up-axis').values;
    expect(low[0]).toBe(0);
    expect(low.at(-1)).toBeGreaterThanOrEqual(90);
    expect(low.at(-1)).toBeLessThanOrEqual(100);
  });

  it('stand beside published values at their heights, whose words keep clear', () => {
    const { children } = part(svg, 'levels');
    const lines = children.filter(({ name }) => name === 'path').map(corners);
    expect(lines.map(([at]) => up.valueAt(at?.[1] ?? 0))).toEqual([
      expect.closeTo(90, NEAR),
      expect.closeTo(89, NEAR),
    ]);
    const [a = 0, b = 0] = children
      .filter(({ name }) => name === 'text')
      .map(({ attributes }) => Number(attributes['y']));
    expect(Math.abs(a - b)).toBeGreaterThanOrEqual(13);
  });
});

describe.each(['simple', 'sequential'] as const)('a cumulative sum, %s', (form) => {
  const svg = drawn(cusum(form));
  const up = seenAxis(svg, 'up-axis');
  const along = seenAxis(svg, 'across-axis');

  it('runs from zero through each case', () => {
    const [line] = parts(svg, 'curve').flatMap(({ children }) => children);
    const [start, ...cases] = line === undefined ? [] : corners(line);
    expect(start?.map((_, i) => (i === 0 ? along : up).valueAt(start[i] ?? 0))).toEqual([
      expect.closeTo(0, NEAR),
      expect.closeTo(0, NEAR),
    ]);
    expect(cases).toHaveLength(CURVE.length);
    for (const [i, [x, y]] of cases.entries()) {
      expect(along.valueAt(x)).toBeCloseTo(i + 1, NEAR);
      expect(up.valueAt(y)).toBeCloseTo(CURVE[i]?.[form] ?? Number.NaN, NEAR);
    }
  });
});

describe('limits of a sequential test', () => {
  it('stand at h0 and h1 of the published parameters 0.10 and 0.20 (PMC6470078)', () => {
    const svg = drawn(cusum('sequential'));
    const up = seenAxis(svg, 'up-axis');
    const lines = part(svg, 'levels').children.filter(({ name }) => name === 'path');
    const heights = lines.map((line) => up.valueAt(corners(line)[0]?.[1] ?? Number.NaN));
    expect(heights).toEqual([0, 2.7095, -2.7095].map((limit) => expect.closeTo(limit, NEAR)));
  });

  it('are not drawn in the simple form, which has none', () => {
    const lines = part(drawn(cusum('simple')), 'levels').children;
    expect(lines.filter(({ name }) => name === 'path')).toHaveLength(1);
  });
});

describe('a funnel', () => {
  const svg = drawn(funnel(FUNNEL_POINTS));
  const up = seenAxis(svg, 'up-axis');
  const along = seenAxis(svg, 'across-axis');

  it('has its points at their number of cases and rate, in the order given', () => {
    const seen = marks(part(svg, 'points')).map(([x, y]) => [along.valueAt(x), up.valueAt(y)]);
    expect(seen).toEqual(
      FUNNEL_POINTS.map(({ of, rate }) => [
        expect.closeTo(of, NEAR),
        expect.closeTo(100 * rate, NEAR),
      ]),
    );
  });

  it('has limits at 81.7 and 98.3 %, 76.9 and 100 % for 50 cases of a target of 90 %', () => {
    const at50 = part(svg, 'limits').children.map((line) => up.valueAt(corners(line)[1]?.[1] ?? 0));
    const limits = [81.68, 98.32, 76.89, 100];
    expect(at50).toEqual(limits.map((limit) => expect.closeTo(limit, NEAR)));
  });

  it('names only what lies beyond a limit', () => {
    const names = part(svg, 'labels').children.map(({ text }) => text);
    expect(names).toContain('op-b');
    expect(names).not.toContain('op-a');
    expect(names).not.toContain('op-d');
  });

  it('tells what lies beyond by shape', () => {
    const shapes = part(svg, 'points').children.map(({ attributes }) => attributes['d']);
    expect(new Set(shapes).size).toBe(3);
  });
});

describe('speeds', () => {
  const svg = drawn(speeds(SPEEDS));

  it('stand at their area and speed, each group with a shape of its own', () => {
    const [up, along] = [seenAxis(svg, 'up-axis'), seenAxis(svg, 'across-axis')];
    const seen = marks(part(svg, 'points')).map(([x, y]) => [along.valueAt(x), up.valueAt(y)]);
    expect(seen).toEqual(
      SPEEDS.map(({ areaCm2, speedCm2PerH }) => [
        expect.closeTo(areaCm2, NEAR),
        expect.closeTo(speedCm2PerH, NEAR),
      ]),
    );
    const shapes = part(svg, 'points').children.map(({ attributes }) => attributes['d']);
    expect(new Set(shapes).size).toBe(SPEEDS.length);
  });

  it('say how many of how many are drawn, where they are not all', () => {
    const said = (chart: Markup) => chart.markup.match(/Drawn: \d+ of \d+/)?.[0];
    expect(said(speeds(SPEEDS, 1234))).toBe(`Drawn: ${SPEEDS.length} of 1234`);
    expect(said(speeds(SPEEDS))).toBe(undefined);
  });

  it('have a line at the published 9 cm²/h (PMC7411630)', () => {
    const up = seenAxis(svg, 'up-axis');
    const [line] = part(svg, 'levels').children;
    const y = line === undefined ? Number.NaN : corners(line)[0]?.[1];
    expect(up.valueAt(y ?? Number.NaN)).toBeCloseTo(9, NEAR);
  });
});

describe('survival', () => {
  const svg = drawn(survival([SURVIVAL]));
  const up = seenAxis(svg, 'up-axis');
  const along = seenAxis(svg, 'across-axis');

  it('falls in stairs at the time of each event', () => {
    const stairs = part(svg, 'curve').children.filter(({ name }) => name === 'path')[2];
    const seen = (stairs === undefined ? [] : corners(stairs)).map(([x, y]) => [
      Math.round(10 * along.valueAt(x)) / 10,
      Math.round(up.valueAt(y)),
    ]);
    const falls = [
      [0, 100],
      [6, 100],
      [6, 90],
      [18, 90],
      [18, 75],
    ];
    expect(seen.filter((at, i) => String(at) !== String(seen[i - 1]))).toEqual(falls);
  });

  it('begins just below the curves where events are rare, and says so', () => {
    const points = SURVIVAL.points.map((point, i) => ({
      ...{ ...point, survival: 1 - i / 100, lower: 1 - i / 50, upper: 1 },
    }));
    const rare = survival([{ ...SURVIVAL, points }]);
    const axis = seenAxis(drawn(rare), 'up-axis');
    expect([Math.min(...axis.values), Math.max(...axis.values)]).toEqual([96, 100]);
    expect(JSON.stringify(rare)).toContain('The axis begins at 96.0 %, not at 0.');
    expect(Math.min(...up.values)).toBe(0);
    expect(JSON.stringify(survival([SURVIVAL]))).not.toContain('The axis begins');
  });

  it('tells under each tick how many were still watched', () => {
    const watched = (months: number): number =>
      SURVIVAL.points.find((point) => point.months >= months)?.atRisk ?? 0;
    const told = part(svg, 'at-risk').children.map(({ text }) => Number(text));
    expect(told).toEqual(along.values.map(watched));
  });

  it('tells no number where a curve was cut', () => {
    const points = SURVIVAL.points.slice(0, 2);
    const cut = drawn(survival([SURVIVAL, { ...SURVIVAL, points, isCoarsened: true }]));
    expect(part(cut, 'at-risk').children.at(-1)?.text).toBe('–');
  });
});

describe('every axis', () => {
  const axes = CHARTS.flatMap(([name, chart]) => {
    const svg = drawn(chart);
    return (['up-axis', 'across-axis'] as const).flatMap((axis) => {
      const isNamed = /rate/.test(name) && axis === 'across-axis';
      return parts(svg, axis).length === 0 || isNamed
        ? []
        : [{ name, axis, seen: seenAxis(svg, axis) }];
    });
  });

  it.each(axes)('rises evenly: $axis of $name', ({ axis, seen: { values, pixels } }) => {
    const direction = axis === 'up-axis' ? -1 : 1;
    const value = steps(values);
    const pixel = steps(pixels).map((step) => direction * step);
    for (const found of [value, pixel]) {
      expect(Math.min(...found)).toBeGreaterThan(0);
      expect(Math.max(...found) - Math.min(...found)).toBeLessThan(0.03);
    }
  });

  it('was looked at', () => {
    expect(axes.length).toBeGreaterThan(15);
    expect(all(drawn(rates(QUARTERS))).length).toBeGreaterThan(20);
  });
});

const steps = (values: readonly number[]): readonly number[] =>
  values.slice(1).map((value, i) => value - (values[i] ?? Number.NaN));
