import type { Migration, MigrationProvider } from 'kysely';
import { journal } from './0001-journal.js';
import { states } from './0002-states.js';
import { outbox } from './0003-outbox.js';
import { site } from './0004-site.js';
import { identityMode } from './0005-identity-mode.js';
import { afterTheCase } from './0006-after-the-case.js';
import { passingTime } from './0007-passing-time.js';
import { followUps } from './0008-follow-ups.js';
import { outcomeFacts } from './0009-outcome-facts.js';
import { feeds } from './0010-feeds.js';
import { inventedCases } from './0011-invented-cases.js';
import { appointmentsSeen } from './0012-appointments-seen.js';
import { countedFacts } from './0013-counted-facts.js';

/** In the order of their names. Append only: what has run somewhere is never edited again. */
export const MIGRATIONS: Readonly<Record<string, Migration>> = {
  '0001-journal': journal,
  '0002-states': states,
  '0003-outbox': outbox,
  '0004-site': site,
  '0005-identity-mode': identityMode,
  '0006-after-the-case': afterTheCase,
  '0007-passing-time': passingTime,
  '0008-follow-ups': followUps,
  '0009-outcome-facts': outcomeFacts,
  '0010-feeds': feeds,
  '0011-invented-cases': inventedCases,
  '0012-appointments-seen': appointmentsSeen,
  '0013-counted-facts': countedFacts,
};

/** Reads no disk: the migrations are part of the program. */
export const migrationProvider: MigrationProvider = {
  getMigrations: async () => ({ ...MIGRATIONS }),
};
