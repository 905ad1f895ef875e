import type { Problem } from '../../kernel/index.js';
import { problemsAgainstCase, samePatient, type WithCase } from '../against-case.js';
import type { CaseFields } from '../case/case.js';
import type { CrossCheck } from '../cross-check.js';
import { placesBefore } from '../occurrence.js';
import type { ExaminationFields } from './examination.js';
import { leadsTo } from './finding-checks.js';
import { occurrenceOf } from './time-checks.js';

/**
 * Contradictions between an examination and its case. Project rules; the colonoscopy after a
 * duodenal adenoma: ESGE 2021 (Endoscopy 2021;53:522-534).
 */
export const EXAMINATION_CASE_CHECKS: readonly CrossCheck<WithCase<ExaminationFields>>[] = [
  samePatient,
  {
    rule: 'before-procedure',
    message: 'This lies before the end of the procedure that it follows up.',
    expected: 'a day and an instant at or after times.scopeOutAt of the case',
    broken: ({ sent, esd: { times } }) => placesBefore(occurrenceOf(sent), times.scopeOutAt),
  },
  {
    rule: 'route-of-another-organ',
    message: 'This route does not lead to the organ of the case.',
    expected: 'the route to lesion.organ of the case; lower also after a duodenal lesion',
    broken: ({ sent: { route }, esd: { lesion } }) =>
      leadsTo(route, lesion.organ) || (route === 'lower' && lesion.organ === 'duodenum')
        ? []
        : ['/route'],
  },
  {
    rule: 'scar-of-another-route',
    message: 'The place of the dissection cannot be seen by this route.',
    expected: 'no scar and no passage in a colonoscopy after a duodenal lesion',
    broken: ({ sent, esd: { lesion } }) =>
      sent.route === 'lower' && lesion.organ === 'duodenum'
        ? [
            ...(sent.scar !== undefined ? ['/scar'] : []),
            ...(sent.passage !== undefined ? ['/passage'] : []),
          ]
        : [],
  },
  {
    rule: 'no-scar',
    message: 'The dissection was never started, so that it left no scar.',
    expected: 'no scar that was seen, where resection.outcome of the case is not-started',
    broken: ({ sent: { scar }, esd: { resection } }) =>
      resection.outcome === 'not-started' && scar?.seen === true ? ['/scar/seen'] : [],
  },
];

/** Holds an examination against its case; see `problemsAgainstCase`. */
export function checkExaminationAgainstCase(
  sent: ExaminationFields,
  esd: CaseFields,
): readonly Problem[] {
  return problemsAgainstCase(EXAMINATION_CASE_CHECKS, sent, esd);
}
