import { invariant, roundTo } from '../kernel/index.js';

/** Values along an axis, and where they lie in units of the view box. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly fromPixel: number;
  readonly toPixel: number;
  /** Values with a label, ascending, both ends among them. */
  readonly ticks: readonly number[];
  /** Digits after the point that tell the ticks apart. */
  readonly decimals: number;
}

/** What an axis has to show. */
export interface Extent {
  readonly from: number;
  readonly to: number;
  /** Distances between ticks that may be used; absent: 1, 2 or 5 times a power of ten. */
  readonly steps?: readonly number[];
  /** Ticks at whole numbers only. */
  readonly whole?: boolean;
}

/** About as many ticks as an axis gets. */
const TICKS = 6;

/**
 * A scale whose ends are ticks and lie at or beyond the extent.
 *
 * Source: Heckbert PS, "Nice numbers for graph labels", Graphics Gems, 1990 (from memory): ticks
 * at multiples of 1, 2 or 5 times a power of ten, and loose ends.
 *
 * @throws InvariantError unless the ends are finite and in order
 */
export function scaleOver(extent: Extent, pixels: readonly [number, number]): Scale {
  const { from, to } = opened(extent);
  invariant(Number.isFinite(from) && Number.isFinite(to) && from < to, 'an axis has two ends');
  const step = stepOf({ ...extent, from, to });
  const first = Math.floor(from / step + 1e-9);
  const last = Math.ceil(to / step - 1e-9);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const ticks = Array.from({ length: last - first + 1 }, (_, i) =>
    roundTo((first + i) * step, Math.min(decimals, 6)),
  );
  const [fromPixel, toPixel] = pixels;
  return { from: first * step, to: last * step, fromPixel, toPixel, ticks, decimals };
}

/** 0 to 100 per cent, or to the nice number that the values need. */
export function percentScale(most: number, pixels: readonly [number, number]): Scale {
  invariant(0 <= most && most <= 100, 'a percentage lies between 0 and 100');
  if (most > 50) return scaleOver({ from: 0, to: 100, steps: [20] }, pixels);
  return scaleOver({ from: 0, to: Math.max(most, 1) }, pixels);
}

/** Where a value lies on the axis. */
export function place(scale: Scale, value: number): number {
  invariant(Number.isFinite(value), 'a value on an axis is finite');
  const share = (value - scale.from) / (scale.to - scale.from);
  return scale.fromPixel + share * (scale.toPixel - scale.fromPixel);
}

/** A single value still needs an axis: from 0 to it, or from 0 to 1. */
function opened({ from, to }: Extent): { readonly from: number; readonly to: number } {
  if (from !== to) return { from, to };
  if (from === 0) return { from: 0, to: 1 };
  return { from: Math.min(0, from), to: Math.max(0, to) };
}

function stepOf({ from, to, steps, whole }: Extent): number {
  const rough = (to - from) / (TICKS - 1);
  if (steps !== undefined) return steps.find((step) => step >= rough / 1.35) ?? niceStep(rough);
  return whole === true ? Math.max(1, niceStep(rough)) : niceStep(rough);
}

function niceStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const share = rough / power;
  if (share < 1.5) return power;
  if (share < 3) return 2 * power;
  return share < 7 ? 5 * power : 10 * power;
}
