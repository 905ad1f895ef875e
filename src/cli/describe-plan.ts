import type { Citation } from '../kernel/index.js';
import type { Answer } from '../pipeline/index.js';
import { numbersOf } from './rule-sources.js';

type Plan = Answer['plan'];
type Item = Plan['items'][number];

/** What comes after the case: one paragraph an item, with its window and why; then the notes. */
export function describePlan(plan: Plan, sources: readonly Citation[]): string[] {
  return [
    ...toCome(plan).map((item) => itemText(item, sources)),
    ...plan.notes.map(({ says, cites }) => `Note: ${says}${numbersOf(cites, sources)}`),
  ];
}

/** Every citation of a plan, in its order; some more than once. */
export const citesOfPlan = (plan: Plan): readonly Citation[] =>
  [...toCome(plan), ...plan.notes].flatMap(({ cites }) => cites);

const OVER: readonly Item['state'][] = ['done', 'superseded', 'revoked'];

const toCome = ({ items }: Plan): readonly Item[] =>
  items.filter(({ state }) => !OVER.includes(state));

function itemText(item: Item, sources: readonly Citation[]): string {
  const { key, state, says, reasons, cites } = item;
  const why = [...says, ...reasons.map((reason) => reason.says)].map(sentence).join(' ');
  const what = `${key}, ${state.replace('-', ' ')}: ${whatText(item)}, ${windowText(item)}.`;
  return `${what} ${why}${numbersOf(cites, sources)}`;
}

/** An examination by its route, a task by its words. */
export const whatText = ({ kind, task, route }: Item): string =>
  kind === 'endoscopy' || task === undefined ? `${route} endoscopy` : task.replaceAll('-', ' ');

/** By the rule, and the day that the unit is open. */
function windowText({ due, proposed }: Item): string {
  if (due === undefined) return 'no day';
  const { earliest, target, latest } = due;
  const window =
    earliest === latest ? `on ${target}` : `from ${earliest} to ${latest}, best on ${target}`;
  const isMoved = proposed !== undefined && proposed.target !== target;
  return isMoved ? `${window} (open on ${proposed.target})` : window;
}

const sentence = (text: string): string => {
  const first = `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  return /[.?!]$/.test(first) ? first : `${first}.`;
};
