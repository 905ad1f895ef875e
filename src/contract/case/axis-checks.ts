import type { CrossCheck } from '../cross-check.js';
import type { ReadableCase } from './readable-case.js';

/** Above this a specimen was measured in another unit. */
const LARGEST_SPECIMEN_CM2 = 400;

interface Axes {
  readonly long: number | undefined;
  readonly short: number | undefined;
  readonly shortAt: string;
}

export const axisChecks: readonly CrossCheck<ReadableCase>[] = [
  {
    rule: 'axes-order',
    message: 'The short axis is longer than the long axis.',
    expected: 'a short axis of at most the long axis',
    broken: (sent) =>
      axes(sent)
        .filter(({ long, short }) => isLess(long, short))
        .map(({ shortAt }) => shortAt),
  },
  {
    rule: 'area-limit',
    message: 'The specimen is larger than any endoscopic resection.',
    expected: `axes in mm whose ellipse is at most ${LARGEST_SPECIMEN_CM2} cm2`,
    broken: ({ specimen = {} }) => [
      ...(isTooLarge(specimen) ? ['/specimen/longAxisMm'] : []),
      ...(specimen.pieces ?? []).flatMap((piece, i) =>
        isTooLarge(piece) ? [`/specimen/pieces/${i}/longAxisMm`] : [],
      ),
    ],
  },
  {
    rule: 'CC-03',
    message: 'The lesion on the specimen is larger than the specimen that holds it en bloc.',
    expected: 'axes of the lesion on the specimen of at most those of the specimen',
    broken: ({ specimen = {}, resection = {} }) => {
      if (resection.outcome !== 'en-bloc') return [];
      return [
        ...(isLess(specimen.longAxisMm, specimen.lesionLongAxisMm)
          ? ['/specimen/lesionLongAxisMm']
          : []),
        ...(isLess(specimen.shortAxisMm, specimen.lesionShortAxisMm)
          ? ['/specimen/lesionShortAxisMm']
          : []),
      ];
    },
  },
  {
    rule: 'CC-07',
    message: 'The circumferential length of the Barrett mucosa exceeds its maximum length.',
    expected: 'lesion.pragueCircumferentialCm of at most lesion.pragueMaximumCm',
    broken: ({ lesion = {} }) =>
      isLess(lesion.pragueMaximumCm, lesion.pragueCircumferentialCm)
        ? ['/lesion/pragueCircumferentialCm']
        : [],
  },
];

function axes({ lesion = {}, specimen = {}, defect = {} }: ReadableCase): readonly Axes[] {
  return [
    { long: lesion.longAxisMm, short: lesion.shortAxisMm, shortAt: '/lesion/shortAxisMm' },
    { long: defect.longAxisMm, short: defect.shortAxisMm, shortAt: '/defect/shortAxisMm' },
    { long: specimen.longAxisMm, short: specimen.shortAxisMm, shortAt: '/specimen/shortAxisMm' },
    {
      long: specimen.lesionLongAxisMm,
      short: specimen.lesionShortAxisMm,
      shortAt: '/specimen/lesionShortAxisMm',
    },
    ...(specimen.pieces ?? []).map(({ longAxisMm, shortAxisMm }, i) => ({
      long: longAxisMm,
      short: shortAxisMm,
      shortAt: `/specimen/pieces/${i}/shortAxisMm`,
    })),
  ];
}

interface Measured {
  readonly longAxisMm?: number | undefined;
  readonly shortAxisMm?: number | undefined;
}

const isTooLarge = ({ longAxisMm = 0, shortAxisMm = 0 }: Measured): boolean =>
  (Math.PI / 4) * (longAxisMm / 10) * (shortAxisMm / 10) > LARGEST_SPECIMEN_CM2;

const isLess = (a: number | undefined, b: number | undefined): boolean =>
  a !== undefined && b !== undefined && a < b;
