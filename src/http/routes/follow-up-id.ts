import { type Refusal, Refused } from '../problem-document.js';
import type { Asked } from '../route.js';

/** Our ids are UUIDs of version 8; any other text names nothing and is not looked for. */
const ID = /^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

/** @throws Refused when the path has no id of ours */
export function idOf({ param }: Asked, refusal: Refusal): string {
  const id = param('id');
  if (!ID.test(id)) throw new Refused(refusal);
  return id;
}

export const NO_SUCH_FOLLOW_UP: Refusal = {
  problem: 'not-found',
  detail: 'There is no such follow-up.',
};
