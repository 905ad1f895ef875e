import type { SentKind } from '../../pipeline/index.js';
import { Refused } from '../problem-document.js';
import type { Route } from '../route.js';

/**
 * Says what would become of a message and keeps nothing. 200 whether it is valid or not:
 * only a body that cannot be read at all is an error of the request.
 */
export const checkMessage = (kind: SentKind, path: string): Route => ({
  method: 'POST',
  path,
  answer: async ({ body, caller, note }, { service }) => {
    const result = await service.check(kind, await body(), caller);
    note({ class: result.kind });
    switch (result.kind) {
      case 'unreadable':
        throw new Refused({
          problem: 'unreadable-body',
          detail: 'The message could not be checked.',
          errors: result.problems,
        });
      case 'invalid':
        return { status: 200, body: { valid: false, errors: result.problems } };
      case 'valid': {
        const { view, warnings, bundle } = result;
        return { status: 200, body: { valid: true, ...view, warnings, bundle } };
      }
    }
  },
});
