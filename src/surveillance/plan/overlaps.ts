import type { Overlap, PlanItem } from './follow-up-plan.js';
import { isToCome } from './item.js';

/**
 * Rows that ask for an examination of the same place: the earliest date wins, and the others are
 * named beside it. An examination that answered several stands once.
 *
 * Source: the follow-up table (derived).
 *
 * @param items in the order of their rank: class first, background last
 */
export function joinOverlaps(items: readonly PlanItem[]): readonly PlanItem[] {
  const joined = new Map<string, PlanItem>();
  for (const item of items) {
    const group = groupOf(item);
    const other = joined.get(group);
    joined.set(group, other === undefined ? item : join(other, item));
  }
  return [...joined.values()];
}

function groupOf(item: PlanItem): string {
  if (item.kind === 'task') return item.key;
  if (item.doneBy !== undefined)
    return `${item.route}|${item.doneBy.id.system}|${item.doneBy.id.value}`;
  return isToCome(item) || item.state === 'revoked' ? `${item.route}|to come` : item.key;
}

function join(first: PlanItem, second: PlanItem): PlanItem {
  if (first.key === second.key) return first;
  const isDone = first.state === 'done';
  const [winner, loser] =
    !isDone && targetOf(second) < targetOf(first) ? [second, first] : [first, second];
  const overlaps = [...winner.overlaps, ...loser.overlaps, named(loser)];
  return { ...winner, overlaps: overlaps.filter(({ row }) => row !== winner.row) };
}

/** Later than every day. */
const NEVER = '9999-12-31';
const targetOf = ({ due }: PlanItem): string => due?.target ?? NEVER;

const named = ({ row, rule, due }: PlanItem): Overlap => ({
  row,
  rule,
  ...(due === undefined ? {} : { target: due.target }),
});
