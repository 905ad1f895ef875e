import { describe, expect, it } from 'vitest';
import { all, corners, marks, part, parts, readXml, seenAxis } from './read-markup.js';
import { LEARNING, learning } from './samples.js';

// What a reader measures with a ruler between the ticks of a chart must be what was given.

const { blocks } = LEARNING;
/** Half of the last digit that a path keeps, in values of the axis. */
const NEAR = 1;

describe.each([
  ['rates', ['enBlocRate', 'r0Rate', 'curativeRate'], 100],
  ['speed', ['medianSpeedCm2PerH'], 1],
] as const)('a learning curve by %s', (form, told, times) => {
  const svg = readXml(learning(form).markup);
  const up = seenAxis(svg, 'up-axis');
  const along = seenAxis(svg, 'across-axis');

  it('has a mark a block that tells it, at its height and in the middle of its cases', () => {
    const lines = parts(svg, 'curve');
    expect(lines).toHaveLength(told.length);
    for (const [i, name] of told.entries()) {
      const expected = blocks.flatMap((block) => {
        const value = block[name];
        return value === undefined
          ? []
          : [[(block.fromCase - 1 + block.toCase) / 2, times * value] as const];
      });
      const drawn = marks(lines[i] ?? svg).map(([x, y]) => [along.valueAt(x), up.valueAt(y)]);
      expect(drawn).toEqual(
        expected.map(([x, y]) => [expect.closeTo(x, NEAR), expect.closeTo(y, NEAR)]),
      );
    }
  });

  it('joins neighbours alone, and leaves a gap where a block tells nothing', () => {
    const joins = parts(svg, 'curve').map(
      ({ children }) =>
        children.filter(
          ({ name, attributes }) => name === 'path' && attributes['transform'] === undefined,
        ).length,
    );
    expect(joins).toEqual(form === 'rates' ? [3, 1, 0] : [3]);
  });

  it('tells what a rate counts, with its interval', () => {
    const told = '80.0 % (16 of 20, 95 % interval 58.4 % to 91.9 %)';
    expect(JSON.stringify(learning(form)).includes(told)).toBe(form === 'rates');
  });

  it('tells its series by shape as well as colour', () => {
    const shapes = parts(svg, 'curve').map((line) => {
      const [mark] = line.children.filter(({ attributes }) => attributes['transform']);
      return mark?.attributes['d'];
    });
    expect(new Set(shapes).size).toBe(told.length);
  });

  it('stands beside the levels of the same cases alone', () => {
    const levels = part(svg, 'levels').children.filter(({ name }) => name === 'path');
    const heights = levels.map((line) => up.valueAt(corners(line)[0]?.[1] ?? 0));
    expect(heights).toEqual([expect.closeTo(form === 'rates' ? 90 : 9, NEAR)]);
  });

  it('says in words over whom it runs, every number, and that the last block is smaller', () => {
    const description = svg.children.find(({ name }) => name === 'desc')?.text ?? '';
    expect(description).toContain('67 cases: colon and rectum, one operator.');
    expect(description).toContain(form === 'rates' ? 'R0 80.0 %' : 'median speed 11.5 cm²/h');
    const caption = all(part(svg, 'caption'))
      .map(({ text }) => text)
      .join(' ');
    expect(caption).toContain('The last block has 7 cases.');
    expect(caption).not.toContain('17.9');
    expect(description + caption).not.toContain('op-a');
  });
});
