import type { PlanItem } from './follow-up-plan.js';
import { isToCome, revoked, taskItem, toConfirm, withReasons } from './item.js';
import type { PlanFacts } from './plan-facts.js';

/**
 * What ends a plan, or puts it in question: the case taken back, death, an operation, a patient
 * who declines or cannot be reached. A later examination shows that the patient came back.
 *
 * Source: the plan logic of follow-up.
 */
export function ended(facts: PlanFacts, items: readonly PlanItem[]): readonly PlanItem[] {
  const { events, withdrawn } = facts;
  if (withdrawn) return items.map((item) => revoked(item, 'withdrawn'));
  if (events.deaths.length > 0) return items.map((item) => revoked(item, 'death'));
  const operated = items.map((item) => afterSurgery(item, facts));
  return [...operated.map((item) => afterRefusal(item, facts)), ...surgicalTask(facts)];
}

/** Tasks that an operation leaves as they are. */
const NOT_OF_THE_SCAR = ['pathology', 'helicobacter-test', 'helicobacter-treatment'];
const STAYS = [...NOT_OF_THE_SCAR, 'helicobacter-confirmation', 'colonoscopy-once', 'new-lesion'];

function afterSurgery(item: PlanItem, { events }: PlanFacts): PlanItem {
  const [done] = [...events.surgeries].sort((a, b) => (a.on < b.on ? -1 : 1));
  if (done === undefined || STAYS.includes(item.row)) return item;
  if (item.row === 'surgery-referral' && isToCome(item)) {
    const doneBy = { kind: 'event', id: done.id, on: done.on, timing: 'in-window' } as const;
    return withReasons({ ...item, state: 'done', doneBy }, 'surgery-done');
  }
  return events.surgeries.some(({ kind }) => kind === 'resection')
    ? revoked(item, 'surgery-done')
    : toConfirm(item, 'local-excision');
}

function surgicalTask({ events, route }: PlanFacts): readonly PlanItem[] {
  const [last] = [...events.surgeries].sort((a, b) => (a.on < b.on ? 1 : -1));
  if (last === undefined) return [];
  return [
    taskItem({
      task: 'clinician-decision',
      row: 'after-surgery',
      route,
      countsFrom: last.on,
      says: 'an operation was done',
      reasons: ['after-surgery'],
    }),
  ];
}

function afterRefusal(item: PlanItem, { events, examinations }: PlanFacts): PlanItem {
  if (!isToCome(item) || item.kind === 'task') return item;
  const cameBack = (on: string) =>
    examinations.some((each) => each.route === item.route && each.on > on);
  const declines = events.declines.filter(({ on }) => !cameBack(on));
  const isNamed = declines.some(
    ({ request }) => request === undefined || request.endsWith(`.${item.key}`),
  );
  if (isNamed) return revoked(item, 'declined');
  const doubted = declines.some(({ request = '' }) => !KEY_AT_END.test(request));
  const asked = doubted ? toConfirm(item, 'declined-other') : item;
  return events.losses.some(({ on }) => !cameBack(on)) ? toConfirm(asked, 'lost') : asked;
}

/** A request of a plan ends with the key of its item. */
const KEY_AT_END = /\.[A-Za-z][A-Za-z0-9-]*\.\d+$/;
