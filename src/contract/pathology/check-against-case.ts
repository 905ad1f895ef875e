import { compareInstants, type Problem } from '../../kernel/index.js';
import { problemsAgainstCase, samePatient, type WithCase } from '../against-case.js';
import type { CaseFields } from '../case/case.js';
import { isBefore, isLess } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { PathologyFields } from './pathology.js';
import { arisesIn, mayLieIn } from './tumour-sites.js';

/**
 * Contradictions between a report and its case.
 *
 * Source: the consistency rules CC-02, 03, 06, 12 and 14 (common practice, no source); a patient
 * or a specimen that does not fit: project rules.
 */
export const CASE_CHECKS: readonly CrossCheck<WithCase<PathologyFields>>[] = [
  samePatient,
  {
    rule: 'CC-14',
    message: 'The report was signed before the procedure was over.',
    expected: 'an instant after times.scopeOutAt of the case',
    broken: ({ sent: { report }, esd: { times } }) =>
      report.reportedAt !== undefined && compareInstants(report.reportedAt, times.scopeOutAt) <= 0
        ? ['/report/reportedAt']
        : [],
  },
  {
    rule: 'CC-14',
    message: 'The specimen was received before it was taken.',
    expected: 'an instant at or after the end of the dissection',
    broken: ({ sent: { specimen }, esd: { times } }) =>
      isBefore(specimen?.receivedAt, times.dissectionEndAt ?? times.scopeInAt)
        ? ['/specimen/receivedAt']
        : [],
  },
  {
    rule: 'no-specimen',
    message: 'The case says that there is no specimen.',
    expected: 'a case whose specimen was retrieved',
    broken: ({ esd: { specimen, resection } }) =>
      specimen?.retrieved === false || resection.outcome === 'not-started' ? ['/case'] : [],
  },
  {
    rule: 'tumour-of-another-organ',
    message: 'This tumour does not arise in the organ of the case.',
    expected: 'a tumour of lesion.organ of the case, or other',
    broken: ({ sent: { findings = {} }, esd: { lesion } }) =>
      findings.tumour !== undefined && !arisesIn(findings.tumour, lesion.organ, lesion.site)
        ? ['/findings/tumour']
        : [],
  },
  {
    rule: 'CC-12',
    message: 'This site is not part of the organ of the case.',
    expected: 'a site of lesion.organ of the case, or one that adjoins lesion.site',
    broken: ({ sent: { findings = {} }, esd: { lesion } }) =>
      findings.site !== undefined && !mayLieIn(findings.site, lesion.organ, lesion.site)
        ? ['/findings/site']
        : [],
  },
  {
    rule: 'CC-02',
    message: 'The lesion came out in one piece, yet several were received.',
    expected: 'one piece of a lesion resected en bloc',
    broken: ({ sent: { specimen = {} }, esd: { resection } }) =>
      resection.outcome !== 'en-bloc'
        ? []
        : [
            ...(isLess(1, specimen.piecesReceived) ? ['/specimen/piecesReceived'] : []),
            ...(isLess(1, specimen.pieces?.length) ? ['/specimen/pieces'] : []),
          ],
  },
  {
    rule: 'CC-03',
    message: 'The tumour is larger than the specimen that came out en bloc.',
    expected: 'axes of the tumour of at most those of the specimen of the case',
    broken: ({ sent: { findings = {} }, esd: { resection, specimen } }) =>
      resection.outcome !== 'en-bloc'
        ? []
        : [
            ...(isLess(specimen?.longAxisMm, findings.sizeMm) ? ['/findings/sizeMm'] : []),
            ...(isLess(specimen?.shortAxisMm, findings.shortSizeMm)
              ? ['/findings/shortSizeMm']
              : []),
          ],
  },
  {
    rule: 'CC-06',
    message: 'R0 is stated of a lesion that was not removed completely and in one piece.',
    expected: 'R0 with resection.outcome en-bloc, and nothing of the lesion left to see',
    broken: ({ sent: { findings = {} }, esd: { resection } }) =>
      findings.resectionStatus === 'R0' &&
      (resection.outcome !== 'en-bloc' || resection.complete === false)
        ? ['/findings/resectionStatus']
        : [],
  },
];

/** Holds a report against its case, as known now; see `problemsAgainstCase`. */
export function checkAgainstCase(sent: PathologyFields, esd: CaseFields): readonly Problem[] {
  return problemsAgainstCase(CASE_CHECKS, sent, esd);
}
