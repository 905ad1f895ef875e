import { RETRY_AFTER, Refused } from '../problem-document.js';
import type { Route } from '../route.js';

/** Whether the process answers at all. */
export const livez: Route = {
  method: 'GET',
  path: '/livez',
  answer: () => Promise.resolve({ status: 200, body: { alive: true } }),
};

/** Whether a case would be accepted now. */
export const readyz: Route = {
  method: 'GET',
  path: '/readyz',
  answer: async (_asked, { service, health }) => {
    if (!health.accepting()) {
      throw new Refused({
        problem: 'not-ready',
        detail: 'The service is stopping.',
        headers: RETRY_AFTER,
      });
    }
    await service.ready();
    return { status: 200, body: { ready: true, fhirServer: health.fhirServer() } };
  },
};
