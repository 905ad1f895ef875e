import type { Database } from './database.js';
import { sorting } from './faults.js';

type Mode = 'client-id' | 'conditional';

/** Keeps how resources keep their identity at the FHIR server, over restarts and for all programs. */
export function createKeptMode({ pool }: Database) {
  return {
    read: (): Promise<Mode | undefined> =>
      sorting(async () => {
        const { rows } = await pool.query<{ mode: Mode }>('select mode from identity_mode');
        return rows[0]?.mode;
      }),
    keep: (mode: Mode): Promise<void> =>
      sorting(async () => {
        await pool.query(
          `insert into identity_mode (mode) values ($1)
           on conflict (single) do update set mode = excluded.mode`,
          [mode],
        );
      }),
  };
}
