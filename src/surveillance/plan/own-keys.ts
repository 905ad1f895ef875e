import type { PlanItem } from './follow-up-plan.js';

/**
 * Gives each item a key of its own. Two series may lead to the same row, as when a recurrence opens
 * it again beside what was done; the later item then counts on.
 *
 * Source: project definition: a key names one request.
 *
 * @param items in the order of a plan
 */
export function ownKeys(items: readonly PlanItem[]): readonly PlanItem[] {
  const taken = new Set<string>();
  return items.map((item) => {
    const name = item.key.slice(0, item.key.lastIndexOf('.'));
    let { sequence } = item;
    while (taken.has(`${name}.${sequence}`)) sequence += 1;
    taken.add(`${name}.${sequence}`);
    return sequence === item.sequence ? item : { ...item, sequence, key: `${name}.${sequence}` };
  });
}
