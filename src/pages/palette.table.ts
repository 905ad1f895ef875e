/**
 * Colours of the charts. Those of series are of the palette of Okabe and Ito, "Color Universal
 * Design" (2002, revised 2008), values as in Wong B, Nat Methods 2011;8:441 (from memory); of its
 * eight colours, those that reach a contrast of 3 to 1 on white (WCAG 2.1, 1.4.11).
 */
export const PAPER = '#ffffff';

/** Text and axes. */
export const INK = '#000000';

/** Text of second rank. */
export const SECOND_INK = '#4d4d4d';

/** Lines of the grid, which carry nothing: the labels of the axis say the same. */
export const GRID = '#dddddd';

export type Shape = 'circle' | 'square' | 'triangle' | 'diamond' | 'cross';

/** How one series looks; shape and dashes tell it without its colour. */
export interface Look {
  readonly colour: string;
  readonly shape: Shape;
  /** Lengths of dashes and gaps; absent: a line without gaps. */
  readonly dashes?: string;
  /** Outline only, when false. */
  readonly filled: boolean;
}

export const BLUE: Look = { colour: '#0072b2', shape: 'circle', filled: true };
export const VERMILLION: Look = {
  colour: '#d55e00',
  shape: 'square',
  dashes: '9 4',
  filled: false,
};
const GREEN: Look = { colour: '#009e73', shape: 'triangle', dashes: '2 3', filled: true };
const PURPLE: Look = {
  colour: '#cc79a7',
  shape: 'diamond',
  dashes: '12 4 2 4',
  filled: false,
};

const BLACK: Look = { colour: INK, shape: 'cross', dashes: '1 3', filled: false };

/** Looks of series in their order. */
export const LOOKS: readonly Look[] = [BLUE, VERMILLION, GREEN, PURPLE, BLACK];
