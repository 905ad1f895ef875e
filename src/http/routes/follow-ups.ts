import { parseFollowUpQuery } from '../../contract/index.js';
import type { Problem } from '../../kernel/index.js';
import { type Refusal, Refused } from '../problem-document.js';
import type { Route } from '../route.js';
import { idOf, NO_SUCH_FOLLOW_UP } from './follow-up-id.js';

/** Follow-ups by target day, or what has changed since a cursor. */
export const listFollowUps: Route = {
  method: 'GET',
  path: '/follow-ups',
  answer: async ({ query, caller }, { service }) => {
    const asked = parseFollowUpQuery(query());
    if (!asked.ok) throw new Refused(notAsked(asked.problems));
    const found = await service.listFollowUps(asked.value, caller);
    switch (found.kind) {
      case 'found':
        return { status: 200, body: found.page };
      case 'invalid':
        throw new Refused(notAsked(found.problems));
      case 'gone':
        throw new Refused(GONE);
    }
  },
};

/** One follow-up. */
export const readFollowUp: Route = {
  method: 'GET',
  path: '/follow-ups/:id',
  answer: async (asked, { service }) => {
    const followUp = await service.readFollowUp(idOf(asked, NO_SUCH_FOLLOW_UP), asked.caller);
    if (followUp === undefined) throw new Refused(NO_SUCH_FOLLOW_UP);
    asked.note({ caseId: followUp.caseId });
    return { status: 200, body: followUp };
  },
};

const notAsked = (errors: readonly Problem[]): Refusal => ({
  problem: 'invalid-query',
  detail: 'Each entry of errors names one parameter to correct.',
  errors,
});

/** Source: RFC 9110 section 15.5.11. */
const GONE: Refusal = {
  problem: 'cursor-gone',
  detail:
    'This cursor is of another database, such as one that was restored since. List everything ' +
    'anew and go on from the cursor of that answer.',
};
