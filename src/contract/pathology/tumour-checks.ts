import type { CrossCheck } from '../cross-check.js';
import { SITE_ORGAN, type Tumour } from '../words.table.js';
import {
  HISTOLOGICAL_TYPE,
  type HistologicalTypeRow,
  POLYP_TYPE_OF,
} from './histological-types.table.js';
import type { ReadablePathology } from './readable-pathology.js';
import { arisesIn } from './tumour-sites.js';
import { DEPTHS_OF } from './tumours.table.js';
import type { Depth } from './words.table.js';

/** Words that do not belong to the tumour which the report names. */
export const tumourChecks: readonly CrossCheck<ReadablePathology>[] = [
  {
    rule: 'tumour-of-another-organ',
    message: 'This tumour does not arise at this site.',
    expected: 'a tumour of the organ of findings.site, or other',
    broken: ({ findings: { tumour, site } = {} }) =>
      tumour !== undefined && site !== undefined && !arisesIn(tumour, SITE_ORGAN[site], site)
        ? ['/findings/tumour']
        : [],
  },
  {
    rule: 'depth-of-another-tumour',
    message: 'The depth of this tumour is not told in this layer.',
    expected: 'ep, lpm, mm, sm, mp or X for squamous tumours; m, sm, mp or X for others',
    broken: ({ specimen = {}, findings: { tumour, depth } = {} }) => [
      ...(isForeign(tumour, depth) ? ['/findings/depth'] : []),
      ...(specimen.pieces ?? []).flatMap((piece, i) =>
        isForeign(tumour, piece.depth) ? [`/specimen/pieces/${i}/depth`] : [],
      ),
    ],
  },
  {
    rule: 'barrett-depth',
    message: 'The layers m1 to m4 are those of an intramucosal tumour in Barrett mucosa.',
    expected: 'findings.barrettDepth with tumour barrett and depth m alone',
    broken: ({ findings: { tumour, depth, barrettDepth } = {} }) =>
      barrettDepth !== undefined &&
      ((tumour !== undefined && tumour !== 'barrett') || (depth !== undefined && depth !== 'm'))
        ? ['/findings/barrettDepth']
        : [],
  },
  {
    rule: 'gastric-type',
    message: 'Differentiated and undifferentiated types are those of gastric tumours.',
    expected: 'gastricType, undiffLengthMm and undiffInSm with tumour gastric alone',
    broken: ({ findings = {} }) =>
      findings.tumour === undefined || findings.tumour === 'gastric'
        ? []
        : [
            ...(findings.gastricType !== undefined ? ['/findings/gastricType'] : []),
            ...((findings.undiffLengthMm ?? 0) > 0 ? ['/findings/undiffLengthMm'] : []),
            ...(findings.undiffInSm === true ? ['/findings/undiffInSm'] : []),
          ],
  },
  {
    rule: 'histology-of-another-tumour',
    message: 'Neuroendocrine tumours and those of the wall belong to no lineage of the mucosa.',
    expected: 'tumour other',
    broken: ({ findings: { tumour, histology } = {} }) =>
      tumour !== undefined &&
      tumour !== 'other' &&
      (histology === 'neuroendocrine-tumour' || histology === 'other-tumour')
        ? ['/findings/histology']
        : [],
  },
  {
    rule: 'histological-type',
    message: 'This histological type does not occur in this tumour or with this histology.',
    expected: 'a type of findings.tumour and of findings.histology',
    broken: ({ findings: { tumour, histology, histologicalType } = {} }) => {
      if (histologicalType === undefined) return [];
      const { tumours, histologies }: HistologicalTypeRow = HISTOLOGICAL_TYPE[histologicalType];
      const fits =
        (tumour === undefined || tumours.includes(tumour)) &&
        (histology === undefined ||
          histology === 'not-assessable' ||
          histologies.includes(histology));
      return fits ? [] : ['/findings/histologicalType'];
    },
  },
  {
    rule: 'polyp-type',
    message: 'The type of polyp contradicts the histological type.',
    expected: 'the type of polyp that findings.histologicalType is',
    broken: ({ findings: { polypType, histologicalType } = {} }) => {
      if (polypType === undefined || histologicalType === undefined) return [];
      const meant = POLYP_TYPE_OF[histologicalType];
      return meant === undefined || meant === polypType ? [] : ['/findings/polypType'];
    },
  },
];

function isForeign(tumour: Tumour | undefined, depth: Depth | undefined): boolean {
  if (tumour === undefined || depth === undefined) return false;
  const depths: readonly Depth[] = DEPTHS_OF[tumour];
  return !depths.includes(depth);
}
