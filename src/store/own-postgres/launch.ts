import { spawn } from 'node:child_process';
import { open, readFile, stat, truncate } from 'node:fs/promises';
import { createServer } from 'node:net';
import type { Account } from './account.js';
import { giveTo } from './account.js';
import type { Binaries } from './binaries.js';
import type { Layout } from './layout.js';
import { lastLines, notStarted, plainEnvironment } from './run-program.js';

/** A server process that we started and that lives on without us. */
export interface Launched {
  /** Resolves with what it last said once the process has ended, so or so. */
  readonly ended: Promise<string>;
}

const LOG_IS_LONG_FROM_BYTES = 10_000_000;

/**
 * Starts the server in a session of its own, so that neither a signal to our terminal nor our
 * death ends it.
 *
 * @param port of the loopback address
 */
export async function launch(
  layout: Layout,
  binaries: Binaries,
  account: Account | undefined,
  port: number,
  durable: boolean,
): Promise<Launched> {
  const from = await openLog(layout, account);
  const log = await open(layout.log, 'a', 0o600);
  try {
    await giveTo(account, layout.log);
    const child = spawn(binaries.postgres, serverArguments(layout, port, durable), {
      cwd: layout.root,
      env: plainEnvironment(),
      detached: true,
      stdio: ['ignore', log.fd, log.fd],
      ...account,
    });
    child.unref();
    const ended = new Promise<string>((done) => {
      child.on('error', (error) => done(notStarted(binaries.postgres, error).message));
      child.on('exit', () => done(lastWords(layout, from)));
    });
    return { ended };
  } finally {
    await log.close();
  }
}

/**
 * Every setting that a promise of ours rests on is said here, where no file can change it
 * (https://www.postgresql.org/docs/18/runtime-config-wal.html and runtime-config-logging.html:
 * terse messages and no statements, so that no row content gets into the log).
 */
function serverArguments(layout: Layout, port: number, durable: boolean): readonly string[] {
  const settings = {
    listen_addresses: '127.0.0.1',
    port: String(port),
    unix_socket_directories: '',
    password_encryption: 'scram-sha-256',
    fsync: durable ? 'on' : 'off',
    full_page_writes: durable ? 'on' : 'off',
    synchronous_commit: durable ? 'on' : 'off',
    timezone: 'UTC',
    log_timezone: 'UTC',
    log_destination: 'stderr',
    logging_collector: 'off',
    log_error_verbosity: 'terse',
    log_min_error_statement: 'panic',
    log_statement: 'none',
    log_checkpoints: 'off',
  };
  const named = Object.entries(settings).flatMap(([name, value]) => ['-c', `${name}=${value}`]);
  return ['-D', layout.data, ...named];
}

/** @returns the length of the log before this start, bytes */
async function openLog(layout: Layout, account: Account | undefined): Promise<number> {
  const size = await stat(layout.log).then(
    (found) => found.size,
    () => 0,
  );
  if (size < LOG_IS_LONG_FROM_BYTES) return size;
  await truncate(layout.log);
  await giveTo(account, layout.log);
  return 0;
}

async function lastWords(layout: Layout, from: number): Promise<string> {
  const text = await readFile(layout.log).catch(() => Buffer.alloc(0));
  return lastLines(text.subarray(from).toString('utf8'));
}

/** A port of the loopback address that nobody listened on a moment ago. */
export async function freePort(): Promise<number> {
  const server = createServer();
  return new Promise((done, failed) => {
    server.on('error', failed);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => {
        if (typeof address === 'object' && address !== null) done(address.port);
        else failed(new Error('the system gave no port'));
      });
    });
  });
}
