#!/usr/bin/env node
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { type ExitCode, type KeyWork, runCli, type Work, type World } from './cli/index.js';
import { SOFTWARE_VERSION } from './version.js';

/*
 * Only what a command needs is loaded, when it needs it: a dry run loads no server, no database
 * and no configuration.
 */

/** For a dry run: what it makes is shown, never kept or sent. The configuration refuses it. */
const DRY_RUN_SECRET = 'dry-run-only-0123456789-abcdefghijklmnop';

const world: World = {
  out: (text) => process.stdout.write(text),
  outBytes: (bytes) => process.stdout.write(bytes),
  err: (text) => process.stderr.write(text),
  taken: async () => {
    if (process.stdout.writableNeedDrain) await once(process.stdout, 'drain');
  },
  readFile: (path) => readFile(path),
  readStdin: () => buffer(process.stdin),
  terminal: process.stdout.isTTY === true,
  // https://no-color.org: set and not empty means none.
  colour: process.stdout.isTTY === true && (process.env['NO_COLOR'] ?? '') === '',
};

const keys: KeyWork = {
  file: async () => (await import('./config/index.js')).keysFileOf(),
  list: async () => (await import('./http/index.js')).readKeyFile(await keys.file()),
  add: async (role, source) => {
    const { addKey } = await import('./http/index.js');
    const owner = source === undefined ? {} : { source };
    const createdAt = new Date().toISOString();
    const made = await addKey(await keys.file(), { role, ...owner, createdAt });
    return { id: made.stored.id, key: made.key };
  },
  revoke: async (id) => (await import('./http/index.js')).revokeKey(await keys.file(), id),
};

const work: Work = {
  version: SOFTWARE_VERSION,
  check: async (bytes, unit) => {
    const { checkMessage, kindOf } = await import('./pipeline/index.js');
    const settings = { unit, secret: DRY_RUN_SECRET, softwareVersion: SOFTWARE_VERSION };
    const nothing = () => Promise.resolve([]);
    return checkMessage(kindOf(bytes), bytes, { settings, caller: {}, entriesOf: nothing });
  },
  assessRecord: async (esdCase, pathology, unit) => {
    const { assessRecord } = await import('./pipeline/index.js');
    return assessRecord(esdCase, pathology, unit);
  },
  rules: async () => {
    const { CAUTION } = await import('./kernel/index.js');
    const { allRules } = await import('./pipeline/index.js');
    return { rules: allRules(), caution: CAUTION };
  },
  readUnitReport: async (bytes) => (await import('./read-unit-report.js')).readUnitReport(bytes),
  reassess: async (options, tell) =>
    (await import('./reassess-records.js')).reassessRecords(options, tell, world.err),
  followUps: async (read) => (await import('./follow-up-lists.js')).readFollowUps(read, world.err),
  outcomes: async (read) => (await import('./outcome-reports.js')).readOutcomes(read, world.err),
  publishOutcomes: async (question, tell) =>
    (await import('./publish-outcomes.js')).publishOutcomes(question, tell, world.err),
  verifyFacts: async (options, tell) =>
    (await import('./verify-facts.js')).verifyFacts(options, tell, world.err),
  serve: async () => (await import('./run-service.js')).runService(world.err),
  printConfig: async () => (await import('./run-service.js')).printConfig(world.out, world.err),
  keys,
};

/** Says what can be said without quoting what was read. */
function explain(error: unknown): ExitCode {
  const name = error instanceof Error ? error.name : 'Error';
  const ours = error instanceof Error && ['KeyFileRefused', 'InvariantError'].includes(name);
  world.err(`dissection-records: ${ours ? error.message : `failed (${name})`}\n`);
  return name === 'KeyFileRefused' ? 3 : 1;
}

// A reader that has seen enough, such as `head`, is no failure.
process.stdout.on('error', () => process.exit());

process.exitCode = await runCli(process.argv.slice(2), world, work).catch(explain);
