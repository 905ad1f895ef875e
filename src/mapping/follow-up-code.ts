import type { PlanItem } from '../surveillance/index.js';
import { type CodeRef, REQUEST_KINDS } from '../terminology/index.js';

/** What is asked for: the task, or an endoscopy by its route. */
export const requestCode = (item: PlanItem): CodeRef => REQUEST_KINDS[kindOf(item)];

function kindOf({ kind, task, route }: PlanItem): keyof typeof REQUEST_KINDS {
  return kind === 'task' && task !== undefined ? task : `${route}-follow-up-endoscopy`;
}
