import type { CrossCheck } from '../cross-check.js';
import { BUDDING_BANDS } from './budding.table.js';
import type { ReadablePathology } from './readable-pathology.js';
import { DEPTHS_OF_PT } from './tumours.table.js';
import type { Depth, Histology, PrimaryTumour } from './words.table.js';

export const invasionChecks: readonly CrossCheck<ReadablePathology>[] = [
  {
    rule: 'CC-04',
    message: 'The submucosal invasion is described, but the depth is not the submucosa.',
    expected: 'smDepthUm, smWidthUm and undiffInSm with depth sm alone',
    broken: ({ findings = {} }) =>
      findings.depth === undefined || findings.depth === 'sm'
        ? []
        : [
            ...(findings.smDepthUm !== undefined ? ['/findings/smDepthUm'] : []),
            ...(findings.smWidthUm !== undefined ? ['/findings/smWidthUm'] : []),
            ...(findings.undiffInSm === true && findings.depth !== 'mp'
              ? ['/findings/undiffInSm']
              : []),
          ],
  },
  {
    rule: 'CC-05',
    message: 'The pT contradicts the depth of this tumour.',
    expected: 'a pT of the depth, by the TNM for the organ',
    broken: ({ findings: { tumour, depth, pT } = {} }) => {
      if (tumour === undefined || depth === undefined || pT === undefined) return [];
      if (depth === 'X' || pT === 'pTX') return [];
      const depths = DEPTHS_OF_PT[tumour]?.[pT];
      return depths === undefined || depths.includes(depth) ? [] : ['/findings/pT'];
    },
  },
  {
    rule: 'dysplasia-invades',
    message: 'A lesion without carcinoma neither invades nor leaves carcinoma at a margin.',
    expected: 'histology carcinoma, or no invasion of layers, vessels and nerves',
    broken: (sent) => (isHarmless(sent.findings?.histology) ? invasionIn(sent) : []),
  },
  {
    rule: 'budding-grade',
    message: 'The grade of budding contradicts the number of buds.',
    expected: 'grade 1 for 0 to 4 buds, 2 for 5 to 9, 3 for 10 or more',
    broken: ({ findings: { budding = {} } = {} }) => {
      const { grade, count } = budding;
      if (grade === undefined || count === undefined) return [];
      const band = BUDDING_BANDS.find((b) => b.fromCount <= count && count <= b.toCount);
      return band?.grade === grade ? [] : ['/findings/budding/grade'];
    },
  },
];

/** Findings that stay within the epithelium. */
const HARMLESS: readonly (Histology | undefined)[] = [
  'none',
  'indefinite',
  'low-grade-dysplasia',
  'high-grade-dysplasia',
];
const isHarmless = (histology: Histology | undefined): boolean => HARMLESS.includes(histology);

const INVADED: readonly (Depth | undefined)[] = ['lpm', 'mm', 'sm', 'mp'];
const INVASIVE: readonly (PrimaryTumour | undefined)[] = ['pT1b', 'pT2'];

/** Where the findings speak of invasion or of carcinoma. */
function invasionIn({ findings = {} }: ReadablePathology): readonly string[] {
  const signs: readonly (readonly [boolean, string])[] = [
    [INVADED.includes(findings.depth), 'depth'],
    [findings.smDepthUm !== undefined, 'smDepthUm'],
    [findings.smWidthUm !== undefined, 'smWidthUm'],
    [findings.undiffInSm === true, 'undiffInSm'],
    [findings.ly === '1', 'ly'],
    [findings.v === '1', 'v'],
    [findings.perineural === '1', 'perineural'],
    [INVASIVE.includes(findings.pT), 'pT'],
    [findings.hm?.carcinoma === '1', 'hm/carcinoma'],
    [findings.vm?.carcinoma === '1', 'vm/carcinoma'],
  ];
  return signs.filter(([isThere]) => isThere).map(([, at]) => `/findings/${at}`);
}
