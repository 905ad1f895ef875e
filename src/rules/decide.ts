import { invariant } from '../kernel/index.js';
import { type Needs, type Read, truthOf } from './condition.js';
import { missingFields, possibleResults, type Question } from './question.js';
import type { Row, Table } from './table.js';

/** The class of a question with every row and reason that gives it, or what is missing. */
export type Decision<C extends string = string> = Decided<C> | Open;

export interface Decided<C extends string = string> {
  readonly kind: 'decided';
  readonly class: C;
  /** In the order of the table, each once; those that hold whatever is still missing. */
  readonly reasons: readonly string[];
  /** The rows that decided, the same way; empty when each possible value has its own row. */
  readonly rows: readonly Row<C>[];
}

export interface Open {
  readonly kind: 'indeterminate';
  /** Fields that were asked for and are not known, in the order of the question. */
  readonly missing: readonly string[];
}

/**
 * Looks a question up in a table. Missing fields are tried out with every value that they can
 * take: one class for all of them is the answer, with the reasons that all of them share.
 *
 * @throws InvariantError when the table leaves the question without a class
 */
export function decide<C extends string>(table: Table<C>, question: Question): Decision<C> {
  let decided: Decided<C> | undefined;
  for (const found of possibleResults(question, (read) => rowsThatHold(table, read))) {
    const next = toDecided(found);
    if (decided !== undefined && decided.class !== next.class) {
      return { kind: 'indeterminate', missing: missingFields(question) };
    }
    decided = decided === undefined ? next : shared(decided, next);
  }
  invariant(decided !== undefined, 'every field of a question has a value to try out');
  return decided;
}

/** The rows that hold in the first step that has one. Their class is certain; more may hold. */
function rowsThatHold<C extends string>(table: Table<C>, read: Read): readonly Row<C>[] | Needs {
  for (const step of table) {
    const found: Row<C>[] = [];
    let needs: Needs | undefined;
    for (const row of step) {
      const truth = truthOf(row.when, read);
      if (truth === true) found.push(row);
      else if (truth !== false) needs ??= truth;
    }
    if (found.length > 0) return found;
    if (needs !== undefined) return needs;
  }
  return [];
}

function toDecided<C extends string>(rows: readonly Row<C>[]): Decided<C> {
  const [first] = rows;
  invariant(first !== undefined, 'a table has a row for every question');
  const reasons = rows.flatMap(({ reason }) => (reason === undefined ? [] : [reason]));
  return { kind: 'decided', class: first.class, reasons: [...new Set(reasons)], rows };
}

const shared = <C extends string>(one: Decided<C>, other: Decided<C>): Decided<C> => ({
  ...one,
  reasons: one.reasons.filter((reason) => other.reasons.includes(reason)),
  rows: one.rows.filter((row) => other.rows.includes(row)),
});
