import pg from 'pg';
import { InvariantError, StoreUnavailable } from '../kernel/index.js';

/**
 * SQLSTATE classes that are a fault of the database or of the way to it, and pass by
 * (https://www.postgresql.org/docs/18/errcodes-appendix.html): connection, transaction rollback,
 * insufficient resources (53100 disk full), wrong state (55P03 lock not available), operator
 * intervention (57014 timeout, 57P01 shutdown), system error, configuration file, internal error
 * (XX001 corrupted data).
 */
const PASSING_CLASSES = ['08', '40', '53', '55', '57', '58', 'F0', 'XX'];

/** A read-only database (25006) and a transaction that took too long (25P03, 25P04). */
const PASSING_STATES = ['25006', '25P03', '25P04'];

/**
 * What a fault of the driver means to the caller. The new error carries the SQLSTATE and the name
 * of a constraint, never the text of the database, which may hold row content.
 *
 * @returns StoreUnavailable when it may pass, InvariantError when the program is wrong, and
 *   everything that is one of ours already unchanged
 */
export function sorted(error: unknown): Error {
  if (error instanceof StoreUnavailable || error instanceof InvariantError) return error;
  const state = sqlState(error);
  if (state === undefined) {
    return new StoreUnavailable(`The store cannot be reached (${errorCode(error)}).`);
  }
  if (PASSING_CLASSES.includes(state.slice(0, 2)) || PASSING_STATES.includes(state)) {
    return new StoreUnavailable(`The store cannot serve now (SQLSTATE ${state}).`);
  }
  const constraint = error instanceof pg.DatabaseError ? error.constraint : undefined;
  const where = constraint === undefined ? '' : `, constraint ${constraint}`;
  return new InvariantError(`The database refused a statement (SQLSTATE ${state}${where}).`);
}

/** Runs database work and sorts its faults. */
export async function sorting<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw sorted(error);
  }
}

/** @returns the five characters, or undefined when the database did not answer at all */
export function sqlState(error: unknown): string | undefined {
  return error instanceof pg.DatabaseError ? error.code : undefined;
}

/** A system error name such as ECONNREFUSED, which tells nothing of what was stored. */
function errorCode(error: unknown): string {
  if (error instanceof Error && 'code' in error && typeof error.code === 'string') {
    return error.code;
  }
  return 'no answer';
}
