import { sql } from 'kysely';
import type { SandboxDatabase } from './tables.js';

/**
 * Lets one writer in at a time until its SQL transaction ends. So a condition that was tested
 * still holds when its consequence is written, and no two requests can create the same thing.
 */
export async function holdWriterLock(tx: SandboxDatabase): Promise<void> {
  await sql`select pg_advisory_xact_lock(hashtextextended('sandbox writer', 0))`.execute(tx);
}
