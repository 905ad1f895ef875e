import type { Database } from './database.js';
import { sorting } from './faults.js';

/** Keeps until when the Appointments of the FHIR server were seen, over restarts. */
export function createSeenMark({ pool }: Database) {
  return {
    /** @returns an instant, UTC; undefined before the first look */
    read: (): Promise<string | undefined> =>
      sorting(async () => {
        const { rows } = await pool.query<{ until: Date }>(
          'select until_at as until from appointments_seen',
        );
        return rows[0]?.until.toISOString();
      }),
    /** It never goes back: of two programs the one that saw more counts. */
    keep: (until: string): Promise<void> =>
      sorting(async () => {
        await pool.query(
          `insert into appointments_seen (until_at) values (($1::text)::timestamptz)
           on conflict (single) do update
             set until_at = greatest(appointments_seen.until_at, excluded.until_at)`,
          [until],
        );
      }),
  };
}
