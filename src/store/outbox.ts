import { invariant } from '../kernel/index.js';
import type { AttemptResult, Claim, DeliveryState, Outbox } from '../pipeline/index.js';
import type { Database } from './database.js';
import { sorting } from './faults.js';
import { CLAIM, COUNTS, EXTEND, NEXT_DUE, SETTLE, VERSION } from './outbox-statements.js';
import { listen } from './wake.js';

export interface OutboxOptions {
  /** Says in the database who holds a claim, for people who look there. */
  readonly worker: string;
}

interface ClaimRow {
  readonly case_id: string;
  readonly state: number;
  readonly version: string | null;
  readonly attempts: number;
  readonly queued_at: Date;
  readonly fence: number;
}

/**
 * The queue of states to deliver, in PostgreSQL. An attempt is counted when it is claimed;
 * `Claim.attempts` are those before it, including any whose worker died. A result that does not
 * count gives its attempt back.
 */
export function createOutbox(database: Database, { worker }: OutboxOptions): Outbox {
  const { pool } = database;
  return {
    claim: (leaseMs) =>
      sorting(async () => {
        const values = [leaseMs, worker];
        const { rows } = await pool.query<ClaimRow>({ name: 'claim', text: CLAIM, values });
        const row = rows[0];
        return row === undefined ? undefined : toClaim(row, await versionOf(pool, row));
      }),
    settle: (claim, result) =>
      sorting(async () => {
        const values = settleValues(claim, result);
        const { rowCount } = await pool.query({ name: 'settle', text: SETTLE, values });
        return rowCount === 1;
      }),
    extend: (claim, leaseMs) =>
      sorting(async () => {
        const { rowCount } = await pool.query(EXTEND, [claim.caseId, claim.fence, leaseMs]);
        return rowCount === 1;
      }),
    onQueued: (wake) => sorting(() => listen(database, wake)),
    nextDueInMs: () =>
      sorting(async () => {
        const { rows } = await pool.query<{ ms: number | null }>(NEXT_DUE);
        const ms = rows[0]?.ms ?? undefined;
        return ms === undefined ? undefined : Math.max(0, Math.ceil(ms));
      }),
    counts: () =>
      sorting(async () => {
        const { rows } = await pool.query<CountRow>(COUNTS);
        return { ...NONE, ...Object.fromEntries(rows.map((row) => [row.status, row.cases])) };
      }),
  };
}

interface CountRow {
  readonly status: DeliveryState['name'];
  readonly cases: number;
}

const NONE: Readonly<Record<DeliveryState['name'], number>> = {
  queued: 0,
  sending: 0,
  delivered: 0,
  'waiting-patient': 0,
  'waiting-case': 0,
  'dead-letter': 0,
};

async function versionOf(pool: Database['pool'], row: ClaimRow): Promise<string> {
  if (row.version !== null) return row.version;
  const values = [row.case_id, row.state];
  const { rows } = await pool.query<{ version: string }>(VERSION, values);
  invariant(rows[0] !== undefined, 'a queued state has a version');
  return rows[0].version;
}

const toClaim = (row: ClaimRow, version: string): Claim => ({
  caseId: row.case_id,
  state: row.state,
  version,
  attempts: row.attempts - 1,
  queuedAt: row.queued_at.toISOString(),
  fence: row.fence,
});

/** What SETTLE writes for each kind of result. */
interface Settlement {
  readonly status: DeliveryState['name'];
  readonly afterMs: number | null;
  readonly counts: boolean;
  readonly reason: string;
  readonly failureClass: string | null;
  readonly locations: readonly string[] | null;
  readonly event: string;
  readonly eventWhenSuperseded: string;
}

const settleValues = (claim: Claim, result: AttemptResult): unknown[] => {
  const to = settlement(result);
  return [
    claim.caseId,
    claim.fence,
    claim.state,
    to.status,
    to.afterMs,
    to.counts,
    to.reason,
    to.failureClass,
    to.locations,
    to.event,
    to.eventWhenSuperseded,
  ];
};

function settlement(result: AttemptResult): Settlement {
  const failed = { locations: null, eventWhenSuperseded: 'superseded' };
  switch (result.kind) {
    case 'delivered':
      return {
        status: 'delivered',
        afterMs: null,
        counts: true,
        reason: result.detail,
        failureClass: null,
        locations: result.locations,
        event: 'delivered',
        eventWhenSuperseded: 'delivered',
      };
    case 'retry': {
      const { afterMs, counts, reason, failureClass } = result;
      const event = 'retry-planned';
      return { ...failed, status: 'queued', afterMs, counts, reason, failureClass, event };
    }
    case 'waiting-patient': {
      const { afterMs, reason } = result;
      const event = 'waiting-patient';
      const status = 'waiting-patient';
      return { ...failed, status, afterMs, counts: false, reason, failureClass: null, event };
    }
    case 'dead-letter': {
      const { reason, failureClass } = result;
      const status = 'dead-letter';
      const event = 'dead-letter';
      return { ...failed, status, afterMs: null, counts: true, reason, failureClass, event };
    }
  }
}
