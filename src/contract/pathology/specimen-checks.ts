import { type Axes, areaLimit, axesAt, axesOrder } from '../axes.js';
import { isLess } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { ReadablePathology } from './readable-pathology.js';
import { DEPTHS, type Depth, type Histology } from './words.table.js';

export const specimenChecks: readonly CrossCheck<ReadablePathology>[] = [
  axesOrder((sent) => [...specimenAxes(sent), tumourAxes(sent)]),
  areaLimit(specimenAxes),
  {
    rule: 'CC-02',
    message: 'More pieces are described than were received.',
    expected: 'at most as many entries in specimen.pieces as specimen.piecesReceived',
    broken: ({ specimen = {} }) =>
      isLess(specimen.piecesReceived, specimen.pieces?.length) ? ['/specimen/pieces'] : [],
  },
  {
    rule: 'CC-03',
    message: 'The tumour is larger than the only piece, which holds it.',
    expected: 'axes of the tumour of at most those of the specimen',
    broken: (sent) => {
      const { specimen = {}, findings = {} } = sent;
      if ((specimen.piecesReceived ?? 1) > 1) return [];
      return [
        ...(isLess(specimen.longAxisMm, findings.sizeMm) ? ['/findings/sizeMm'] : []),
        ...(isLess(specimen.shortAxisMm, findings.shortSizeMm) ? ['/findings/shortSizeMm'] : []),
      ];
    },
  },
  {
    rule: 'piece-beyond-whole',
    message: 'A piece shows more than the findings of the whole lesion say.',
    expected: 'findings as advanced as those of the worst piece',
    broken: ({ specimen = {}, findings = {} }) =>
      (specimen.pieces ?? []).flatMap((piece, i) => [
        ...(isLess(rank(findings.histology), rank(piece.histology))
          ? [`/specimen/pieces/${i}/histology`]
          : []),
        ...(isLess(layer(findings.depth), layer(piece.depth))
          ? [`/specimen/pieces/${i}/depth`]
          : []),
        ...(findings.vm?.state === '0' && piece.vm?.state === '1'
          ? [`/specimen/pieces/${i}/vm/state`]
          : []),
      ]),
  },
];

function specimenAxes({ specimen = {} }: ReadablePathology): readonly Axes[] {
  return [
    axesAt(specimen, '/specimen'),
    ...(specimen.pieces ?? []).map((piece, i) => axesAt(piece, `/specimen/pieces/${i}`)),
  ];
}

const tumourAxes = ({ findings = {} }: ReadablePathology): Axes => ({
  long: findings.sizeMm,
  short: findings.shortSizeMm,
  longAt: '/findings/sizeMm',
  shortAt: '/findings/shortSizeMm',
});

/** From nothing to cancer; what stands outside of this order has no rank. */
const ADVANCING: readonly (Histology | undefined)[] = [
  'none',
  'indefinite',
  'low-grade-dysplasia',
  'high-grade-dysplasia',
  'carcinoma',
];

const rank = (histology: Histology | undefined): number | undefined =>
  ADVANCING.includes(histology) ? ADVANCING.indexOf(histology) : undefined;

const layer = (depth: Depth | undefined): number | undefined =>
  depth === undefined || depth === 'X' ? undefined : DEPTHS.indexOf(depth);
