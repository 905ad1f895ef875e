import { type Config, ownSiteSecret } from './config/index.js';
import type { Log } from './http/index.js';
import { type PipelineSettings, siteMarkOf } from './pipeline/index.js';
import { bindToSite, type Database, openDatabase, startOwnPostgres } from './store/index.js';
import { SOFTWARE_VERSION } from './version.js';

/** What a part that was opened needs to be closed again. */
export type Close = () => Promise<unknown>;

/** The database that the configuration names, and what the pipeline needs to know. */
export interface OpenRecords {
  readonly database: Database;
  readonly settings: PipelineSettings;
}

/** @param opened gets what is to be closed again, even if this fails half-way */
export async function openRecords(config: Config, log: Log, opened: Close[]): Promise<OpenRecords> {
  const database = await openStore(config, log, opened);
  const settings = {
    unit: config.unit,
    secret: config.siteSecret ?? ownSiteSecret(config.dataDir),
    softwareVersion: SOFTWARE_VERSION,
  };
  await bindToSite(database, siteMarkOf(settings.secret));
  return { database, settings };
}

/** Closes in the order opposite to opening; one that fails does not keep the others open. */
export async function closeAll(opened: Close[]): Promise<void> {
  for (const close of opened.splice(0).reverse()) await close().catch(() => undefined);
}

async function openStore(config: Config, log: Log, opened: Close[]): Promise<Database> {
  let url = config.databaseUrl;
  if (url === undefined) {
    const postgres = await startOwnPostgres({ folder: config.dataDir, log });
    opened.push(() => postgres.stop());
    url = postgres.url;
  }
  const database = await openDatabase(url, { log });
  opened.push(() => database.close());
  return database;
}
