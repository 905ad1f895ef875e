import type { Citation } from '../kernel/index.js';
import type { Condition, ConditionOn } from './condition.js';

/** A row of a table of classes: what it asks for, what it gives, and who says so. */
export interface Row<C extends string = string, When = Condition> {
  /** Name of the row; no other row of the table has it. */
  readonly row: string;
  readonly when: When;
  readonly class: C;
  /** Why, as one word that several rows may share. */
  readonly reason?: string;
  /** The same for people. */
  readonly says: string;
  readonly cites: readonly Citation[];
}

/**
 * Steps from the top: the first one with a row that holds gives the class. Rows of one step
 * stand together, they give the same class, and each that holds is a reason.
 */
export type Table<C extends string = string, When = Condition> = readonly (readonly Row<
  C,
  When
>[])[];

/** A table over one kind of question. */
export type TableOf<Q, C extends string> = Table<C, ConditionOn<Q>>;
