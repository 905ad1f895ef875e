import { parseOutcomeQuery } from '../../contract/index.js';
import { Refused } from '../problem-document.js';
import type { Route } from '../route.js';
import { asked, notAsked } from './outcomes.js';

/** The outcomes of the unit for others, as FHIR. Media type: FHIR R4, MIME types. */
export const readMeasureReport: Route = {
  method: 'GET',
  path: '/outcomes/measure-report',
  answer: async ({ query }, { service }) => {
    const found = await service.readMeasureReport(asked(parseOutcomeQuery(query())));
    if (found.kind === 'invalid') throw new Refused(notAsked(found.problems));
    return { status: 200, body: found.report, mediaType: 'application/fhir+json' };
  },
};
