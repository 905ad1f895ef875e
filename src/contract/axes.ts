import { isLess } from './compare-told.js';
import type { CrossCheck } from './cross-check.js';

/** Two axes of one thing, in mm, and where they stand. */
export interface Axes {
  readonly long: number | undefined;
  readonly short: number | undefined;
  readonly longAt: string;
  readonly shortAt: string;
}

interface Measured {
  readonly longAxisMm?: number | undefined;
  readonly shortAxisMm?: number | undefined;
}

/** Axes of an object that names them as all objects do. */
export const axesAt = (measured: Measured, at: string): Axes => ({
  long: measured.longAxisMm,
  short: measured.shortAxisMm,
  longAt: `${at}/longAxisMm`,
  shortAt: `${at}/shortAxisMm`,
});

/** Above this a specimen was measured in another unit. */
const LARGEST_SPECIMEN_CM2 = 400;

const isTooLarge = ({ long = 0, short = 0 }: Axes): boolean =>
  (Math.PI / 4) * (long / 10) * (short / 10) > LARGEST_SPECIMEN_CM2;

/** No short axis of the message is longer than its long axis. */
export const axesOrder = <Sent>(axesOf: (sent: Sent) => readonly Axes[]): CrossCheck<Sent> => ({
  rule: 'axes-order',
  message: 'The short axis is longer than the long axis.',
  expected: 'a short axis of at most the long axis',
  broken: (sent) =>
    axesOf(sent)
      .filter(({ long, short }) => isLess(long, short))
      .map(({ shortAt }) => shortAt),
});

/** No specimen or piece of the message has an ellipse larger than any endoscopic resection. */
export const areaLimit = <Sent>(axesOf: (sent: Sent) => readonly Axes[]): CrossCheck<Sent> => ({
  rule: 'area-limit',
  message: 'The specimen is larger than any endoscopic resection.',
  expected: `axes in mm whose ellipse is at most ${LARGEST_SPECIMEN_CM2} cm2`,
  broken: (sent) =>
    axesOf(sent)
      .filter(isTooLarge)
      .map(({ longAt }) => longAt),
});
