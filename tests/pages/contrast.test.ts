import { describe, expect, it } from 'vitest';
import * as palette from '../../src/pages/palette.table.js';
import { STYLE_RULES } from '../../src/pages/report/stylesheet.js';
import { all, type Node, readXml } from './read-markup.js';
import { CHARTS } from './samples.js';

/** WCAG 2.1, definition of relative luminance; colour as #rrggbb. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** WCAG 2.1, definition of contrast ratio: 1 to 21. */
function contrast(a: string, b: string): number {
  const [darker = 0, lighter = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (lighter + 0.05) / (darker + 0.05);
}

/** WCAG 2.1: 1.4.3 for text, 1.4.11 for what is needed to understand a graphic. */
const NEEDED = { text: 4.5, graphic: 3 };

/** Colours of a chart that stand out too little from its paper. */
function pale(svg: Node): readonly string[] {
  return all(svg).flatMap(({ name, attributes: { fill, stroke } }) => {
    if (name === 'text') return [fill ?? 'none'].filter((c) => isPale(c, NEEDED.text));
    return [fill, stroke].flatMap((colour) =>
      colour === undefined || PAPERS.has(colour) || !isPale(colour, NEEDED.graphic) ? [] : [colour],
    );
  });
}

/** No colour, the paper itself, and the grid that repeats what the axis says. */
const PAPERS = new Set(['none', palette.PAPER, palette.GRID]);
const isPale = (colour: string, needed: number): boolean =>
  !/^#[0-9a-f]{6}$/.test(colour) || contrast(colour, palette.PAPER) < needed;

describe('contrast, against WCAG 2.1', () => {
  it('is 21 of black on white and 1 of a colour on itself', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#777777', '#777777')).toBe(1);
  });

  it('is below 4.5 for #777777 and above for #767676 on white, the known border', () => {
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
    expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
  });

  it.each(CHARTS)('is enough for every text, mark and line of the chart of %s', (_, chart) => {
    expect(pale(readXml(chart.markup))).toEqual([]);
  });

  it('would be caught: the yellow and the orange of the palette are too pale for marks', () => {
    const svg = readXml(
      '<svg><path stroke="#f0e442"/><path fill="#e69f00"/><text fill="#d55e00"/></svg>',
    );
    expect(pale(svg)).toEqual(['#f0e442', '#e69f00', '#d55e00']);
  });

  it('is enough for text and lines of the report', () => {
    const colours = [...STYLE_RULES.matchAll(/#[0-9a-f]+\b/g)].map(([colour]) => colour);
    expect(colours.length).toBeGreaterThan(3);
    const used = colours.filter((colour) => colour !== palette.PAPER);
    expect(used.filter((colour) => isPale(colour, NEEDED.text))).toEqual([]);
  });
});

describe('series', () => {
  it('are told apart without colour, by shape and by dashes', () => {
    const { LOOKS } = palette;
    expect(new Set(LOOKS.map(({ shape }) => shape)).size).toBe(LOOKS.length);
    expect(new Set(LOOKS.map(({ dashes }) => dashes)).size).toBe(LOOKS.length);
  });

  it('have colours of Okabe and Ito alone (Wong, Nat Methods 2011;8:441, from memory)', () => {
    const published = [
      '#000000',
      '#e69f00',
      '#56b4e9',
      '#009e73',
      '#f0e442',
      '#0072b2',
      '#d55e00',
      '#cc79a7',
    ];
    for (const { colour } of palette.LOOKS) expect(published).toContain(colour);
  });
});
