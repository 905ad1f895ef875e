import type { PlanItem } from './follow-up-plan.js';
import { isToCome, reason } from './item.js';
import type { PlanFacts } from './plan-facts.js';
import type { ReasonCode } from './reasons.table.js';

/** A plan that was, or could have been, with what it rested on. */
export interface EarlierPlan {
  readonly facts: PlanFacts;
  readonly items: readonly PlanItem[];
}

/**
 * Items that an earlier plan had and the present one has not, each once, and why.
 *
 * Source: project definition: nothing planned vanishes without a word.
 *
 * @param now the present plan
 * @param before of those that had an item, the first one says why it is gone
 */
export function supersededItems(
  now: EarlierPlan,
  before: readonly EarlierPlan[],
): readonly PlanItem[] {
  const kept = new Set(now.items.map(({ key }) => key));
  const gone = new Map<string, PlanItem>();
  for (const earlier of before) {
    for (const item of earlier.items) {
      if (kept.has(item.key) || gone.has(item.key) || item.state === 'revoked') continue;
      const replacedBy = replacementOf(item, now.items);
      gone.set(item.key, {
        ...item,
        state: 'superseded',
        reasons: [reason(whyOf(now.facts, earlier.facts))],
        ...(replacedBy === undefined ? {} : { replacedBy }),
      });
    }
  }
  return [...gone.values()];
}

/** Rows beside the series of the scar: nothing of it is replaced by them, nor they by it. */
const BESIDE =
  /^(MUCOSA|stricture|dilatation|helicobacter|colonoscopy|new-lesion|pathology|booking)/;

/** What comes first of the series, or the task that stands instead. */
function replacementOf(item: PlanItem, items: readonly PlanItem[]): string | undefined {
  if (BESIDE.test(item.row)) return undefined;
  const [next] = items
    .filter((each) => isToCome(each) && each.route === item.route && !BESIDE.test(each.row))
    .sort((a, b) => (targetOf(a) < targetOf(b) ? -1 : 1));
  return next?.key;
}

/** A task without a day comes last. */
const targetOf = ({ due, key }: PlanItem): string => `${due?.target ?? '~'}|${key}`;

function whyOf(now: PlanFacts, was: PlanFacts): ReasonCode {
  if (was.pathology === undefined && now.pathology !== undefined) return 'pathology-arrived';
  if (was.verdict.class !== now.verdict.class) return 'class-changed';
  const differs = (of: (facts: PlanFacts) => unknown) =>
    JSON.stringify(of(was)) !== JSON.stringify(of(now));
  if (differs(({ examinations }) => examinations)) return 'examination-told';
  return differs(({ events }) => events) ? 'event-told' : 'facts-changed';
}
