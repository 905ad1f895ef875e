import { type Axes, areaLimit, axesAt, axesOrder } from '../axes.js';
import { isLess } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { ReadableCase } from './readable-case.js';

export const axisChecks: readonly CrossCheck<ReadableCase>[] = [
  axesOrder(allAxes),
  areaLimit(specimenAxes),
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

function specimenAxes({ specimen = {} }: ReadableCase): readonly Axes[] {
  return [
    axesAt(specimen, '/specimen'),
    ...(specimen.pieces ?? []).map((piece, i) => axesAt(piece, `/specimen/pieces/${i}`)),
  ];
}

function allAxes(sent: ReadableCase): readonly Axes[] {
  const { lesion = {}, specimen = {}, defect = {} } = sent;
  return [
    axesAt(lesion, '/lesion'),
    axesAt(defect, '/defect'),
    ...specimenAxes(sent),
    {
      long: specimen.lesionLongAxisMm,
      short: specimen.lesionShortAxisMm,
      longAt: '/specimen/lesionLongAxisMm',
      shortAt: '/specimen/lesionShortAxisMm',
    },
  ];
}
