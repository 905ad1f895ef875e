import { type Refusal, Refused } from '../problem-document.js';
import type { Asked, Route } from '../route.js';

/** Where a case stands, and everything that happened to it. */
export const readCase: Route = {
  method: 'GET',
  path: '/cases/:caseId',
  answer: async (asked, { service }) => {
    const caseId = caseIdOf(asked);
    const view = await service.readCase(caseId, asked.caller);
    if (view === undefined) throw new Refused(NO_SUCH_CASE);
    asked.note({ caseId, state: view.state, delivery: view.delivery.name });
    return { status: 200, body: view };
  },
};

/** What was, or would be, sent to the FHIR server for the newest state of a case. */
export const readBundle: Route = {
  method: 'GET',
  path: '/cases/:caseId/bundle',
  answer: async (asked, { service }) => {
    const caseId = caseIdOf(asked);
    const bundle = await service.readBundle(caseId, asked.caller);
    if (bundle === undefined) throw new Refused(NO_SUCH_CASE);
    asked.note({ caseId });
    return { status: 200, body: bundle, mediaType: 'application/fhir+json' };
  },
};

/** A case id is a UUID of version 8; any other text names nothing and is not looked for. */
const CASE_ID = /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

function caseIdOf({ param }: Asked): string {
  const caseId = param('caseId');
  if (!CASE_ID.test(caseId)) throw new Refused(NO_SUCH_CASE);
  return caseId;
}

/** The same for a case of another source: its existence is nobody else's business. */
const NO_SUCH_CASE: Refusal = {
  problem: 'not-found',
  detail: 'There is no such case for this API key.',
};
