import type { CrossCheck } from '../cross-check.js';
import { AGENT_CLASS, SITE_ORGAN } from '../words.table.js';
import type { ReadableCase } from './readable-case.js';

export const outcomeChecks: readonly CrossCheck<ReadableCase>[] = [
  {
    rule: 'CC-02',
    message: 'The number of pieces contradicts the outcome of the resection.',
    expected: 'one piece if en bloc; otherwise not one piece with nothing left to see',
    broken: ({ resection = {} }) => {
      const { outcome, pieces, complete } = resection;
      if (outcome === undefined || pieces === undefined) return [];
      const contradicts = outcome === 'en-bloc' ? pieces !== 1 : pieces === 1 && complete === true;
      return contradicts ? ['/resection/pieces'] : [];
    },
  },
  {
    rule: 'outcome-complete',
    message: 'A dissection that was abandoned or never started left the lesion to see.',
    expected: 'resection.complete false or absent',
    broken: ({ resection = {} }) =>
      resection.complete === true && isUnfinished(resection.outcome) ? ['/resection/complete'] : [],
  },
  {
    rule: 'not-started-cut',
    message: 'The dissection was never started, yet an incision or a specimen is recorded.',
    expected: 'no times of incision and dissection and no retrieved specimen',
    broken: ({ resection = {}, times = {}, specimen = {} }) =>
      resection.outcome !== 'not-started'
        ? []
        : [
            ...(times.firstIncisionAt !== undefined ? ['/times/firstIncisionAt'] : []),
            ...(times.dissectionEndAt !== undefined ? ['/times/dissectionEndAt'] : []),
            ...(specimen.retrieved === true ? ['/specimen/retrieved'] : []),
          ],
  },
  {
    rule: 'specimen-not-retrieved',
    message: 'The specimen was not retrieved, yet it was measured or handled.',
    expected: 'no sizes, container or times of a specimen that was not retrieved',
    broken: ({ specimen = {} }) =>
      specimen.retrieved === false && Object.values(specimen).some(isTold)
        ? ['/specimen/retrieved']
        : [],
  },
  {
    rule: 'CC-09',
    message: 'Muscle injury of this grade is a hole in the wall, yet perforation is denied.',
    expected: 'safety.perforation.occurred true with muscle injury IV or V',
    broken: ({ safety = {} }) =>
      (safety.muscleInjury === 'IV' || safety.muscleInjury === 'V') &&
      safety.perforation?.occurred === false
        ? ['/safety/perforation/occurred']
        : [],
  },
  {
    rule: 'CC-12',
    message: 'This site is not part of the organ.',
    expected: 'a site of lesion.organ',
    broken: ({ lesion = {} }) =>
      lesion.site !== undefined &&
      lesion.organ !== undefined &&
      SITE_ORGAN[lesion.site] !== lesion.organ
        ? ['/lesion/site']
        : [],
  },
  {
    rule: 'agent-class',
    message: 'This agent does not belong to the class of the drug.',
    expected: 'an agent of the class, or no agent',
    broken: (sent) =>
      drugs(sent).flatMap((drug, i) =>
        drug.agent !== undefined &&
        drug.class !== undefined &&
        AGENT_CLASS[drug.agent] !== drug.class
          ? [`/before/antithrombotics/${i}/agent`]
          : [],
      ),
  },
  {
    rule: 'repeated-drug',
    message: 'The same drug is listed twice.',
    expected: 'one entry for each drug',
    broken: (sent) => {
      const keys = drugs(sent).map((drug) => drug.agent ?? drug.class);
      return keys.flatMap((key, i) =>
        key !== undefined && keys.indexOf(key) < i ? [`/before/antithrombotics/${i}`] : [],
      );
    },
  },
];

/** An empty list says that there was nothing, as `false` does. */
const isTold = (value: unknown): boolean =>
  value !== undefined && value !== false && !(Array.isArray(value) && value.length === 0);

const isUnfinished = (outcome: string | undefined): boolean =>
  outcome === 'abandoned' || outcome === 'not-started';

const drugs = (sent: ReadableCase) => sent.before?.antithrombotics ?? [];
