import { type Condition, truthOf, type Value } from '../../rules/index.js';

/** Facts by name; `undefined` was not told, and keeps every check silent that needs it. */
export type Facts = Readonly<Record<string, Value | undefined>>;

/** Whether a condition is known to hold: with a fact that was not told it is not. */
export const holds = (condition: Condition, facts: Facts): boolean =>
  truthOf(condition, (fact) => facts[fact] ?? { needs: fact }) === true;
