import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InvariantError } from '../../src/kernel/index.js';
import { approximateWidth, shorten, spread, wrap } from '../../src/pages/lettering.js';
import { percentScale, place, scaleOver } from '../../src/pages/scale.js';

/** Whether a step is 1, 2 or 5 times a power of ten. */
const isNice = (step: number): boolean =>
  [1, 2, 5].includes(Number((step / 10 ** Math.floor(Math.log10(step) + 1e-9)).toPrecision(6)));

describe('ticks, against Heckbert 1990 (Graphics Gems, from memory)', () => {
  it('are 100, 200 to 600 for the worked range of 105 to 543', () => {
    const { ticks } = scaleOver({ from: 105, to: 543 }, [0, 1]);
    expect(ticks).toEqual([100, 200, 300, 400, 500, 600]);
  });

  it('are nice steps that hold any range, and are few', () => {
    const numbers = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(numbers, fc.double({ min: 0.01, max: 1e4, noNaN: true }), (from, width) => {
        const { ticks } = scaleOver({ from, to: from + width }, [0, 500]);
        const [first = Number.NaN, second = Number.NaN] = ticks;
        expect(isNice(second - first)).toBe(true);
        expect(first).toBeLessThanOrEqual(from + 1e-6);
        expect(ticks.at(-1)).toBeGreaterThanOrEqual(from + width - 1e-6);
        expect(ticks.length).toBeLessThanOrEqual(11);
      }),
    );
  });

  it('would be caught if they were not nice', () => {
    expect([3, 0.7, 25].map(isNice)).toEqual([false, false, false]);
    expect([0.2, 1, 50].map(isNice)).toEqual([true, true, true]);
  });
});

describe('an axis', () => {
  it('has whole numbers where cases are counted', () => {
    for (const to of [1, 2, 3, 7]) {
      const { ticks } = scaleOver({ from: 0, to, whole: true }, [0, 1]);
      expect(ticks.every(Number.isInteger)).toBe(true);
    }
  });

  it('has whole years where months are many', () => {
    const { ticks } = scaleOver({ from: 0, to: 60, steps: [1, 2, 3, 6, 12, 24] }, [0, 1]);
    expect(ticks).toEqual([0, 12, 24, 36, 48, 60]);
  });

  it.each([0, 0.3, 4.7, 50, 50.1, 100])('of percentages never leaves 0 to 100: %s', (most) => {
    const { from, to } = percentScale(most, [0, 1]);
    expect([from, to >= most, to <= 100]).toEqual([0, true, true]);
  });

  it.each([0, 5, -3])('opens for the single value %s', (value) => {
    const { from, to } = scaleOver({ from: value, to: value }, [0, 1]);
    expect(from).toBeLessThan(to);
    expect(from <= value && value <= to).toBe(true);
  });

  it.each([
    [2, 1],
    [0, Number.POSITIVE_INFINITY],
    [Number.NaN, 1],
  ])('refuses the ends %s and %s', (from, to) => {
    expect(() => scaleOver({ from, to }, [0, 1])).toThrow(InvariantError);
  });

  it('refuses a percentage over 100 and a value that is no number', () => {
    expect(() => percentScale(101, [0, 1])).toThrow(InvariantError);
    expect(() => place(percentScale(100, [0, 1]), Number.NaN)).toThrow(InvariantError);
  });

  it('keeps the order of values', () => {
    const scale = scaleOver({ from: -3, to: 8 }, [300, 0]);
    const value = fc.double({ min: -3, max: 8, noNaN: true });
    fc.assert(
      fc.property(value, value, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-9);
        expect(place(scale, a) > place(scale, b)).toBe(a < b);
      }),
    );
  });
});

describe('lettering', () => {
  it('breaks any text into lines that fit, and loses no letter', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: 'grapheme' }), (text) => {
        const lines = wrap(text, 120, 12);
        for (const line of lines) {
          if (Array.from(line).length > 1)
            expect(approximateWidth(line, 12)).toBeLessThanOrEqual(120);
        }
        expect(lines.join('').replaceAll(/\s/g, '')).toBe(text.replaceAll(/\s/g, ''));
      }),
    );
  });

  it('breaks once more where what follows a hyphen is still too long', () => {
    for (const line of wrap(`-${'a'.repeat(15)}漢漢`, 120, 12)) {
      expect(approximateWidth(line, 12)).toBeLessThanOrEqual(120);
    }
  });

  it('shortens only what does not fit, and says so', () => {
    expect(shorten('rectum', 100, 13)).toBe('rectum');
    expect(shorten('oesophagus, middle third', 100, 13)).toMatch(/^oesophagus.*…$/);
    expect(approximateWidth(shorten('m'.repeat(99), 100, 13), 13)).toBeLessThanOrEqual(100);
  });

  it('keeps a distance between neighbours, in their order and inside the plot', () => {
    const heights = fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { maxLength: 8 });
    fc.assert(
      fc.property(heights, (wanted) => {
        const placed = spread(wanted, 16, [0, 300]);
        const sorted = [...placed].sort((a, b) => a - b);
        for (const [i, at] of sorted.entries()) {
          expect(at).toBeGreaterThanOrEqual(0);
          expect(at).toBeLessThanOrEqual(300);
          if (i > 0) expect(at - (sorted[i - 1] ?? at)).toBeGreaterThanOrEqual(16 - 1e-9);
        }
      }),
    );
  });
});
