export { bindToSite } from './bind-to-site.js';
export { type Database, type DatabaseOptions, openDatabase } from './database.js';
export { createFactsStore } from './facts-store.js';
export { createKeptMode } from './identity-mode.js';
export { type Invented, markInvented, readInvented } from './invented-cases.js';
export { createOutbox, type OutboxOptions } from './outbox.js';
export {
  type OwnPostgres,
  type OwnPostgresOptions,
  startOwnPostgres,
} from './own-postgres/start-own-postgres.js';
export { createRecordStore } from './record-store.js';
export { knownCases, saveNewCases } from './save-new-cases.js';
export { createSeenMark } from './seen-mark.js';
export type { StoreLog } from './store-log.js';
export { StoreRefused } from './store-refused.js';
