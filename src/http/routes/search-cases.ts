import { isUnreadable, parseCaseSearch } from '../../contract/index.js';
import { Refused } from '../problem-document.js';
import type { Route } from '../route.js';

/** Finds cases by what the sender calls them; the question stands in the body, never in a URL. */
export const searchCases: Route = {
  method: 'POST',
  path: '/cases/search',
  answer: async ({ body, caller }, { service }) => {
    const search = parseCaseSearch(await body());
    if (!search.ok) {
      throw new Refused({
        problem: isUnreadable(search.problems) ? 'unreadable-body' : 'invalid-message',
        detail: 'The search could not be made.',
        errors: search.problems,
      });
    }
    const cases = await service.searchCases(search.value, caller);
    const last = cases.length === search.value.limit ? cases.at(-1) : undefined;
    return {
      status: 200,
      body: { cases, ...(last === undefined ? {} : { next: last.caseId }) },
    };
  },
};
