import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { describe, expect, inject, it } from 'vitest';
import { StoreUnavailable } from '../../src/kernel/index.js';
import {
  createRecordStore,
  openDatabase,
  StoreRefused,
  startOwnPostgres,
} from '../../src/store/index.js';
import { firstUnreachable } from '../../src/store/own-postgres/account.js';
import { copyInto } from '../../src/store/own-postgres/binaries.js';
import { layoutIn } from '../../src/store/own-postgres/layout.js';
import { startChild } from '../support/child.js';
import { serverIn } from '../support/postgres-folder.js';
import { accept } from './samples.js';
import { until } from './waiting.js';

/** Removed with everything in it, servers too, at the end of the run. */
function folder(): string {
  const path = mkdtempSync(join(inject('postgresFolder'), 'own-'));
  chmodSync(path, 0o711); // as root, PostgreSQL runs as another user
  return path;
}

/** One that is made already, for what does not need a first start. */
const made = folder();
await (await startOwnPostgres({ folder: made, durable: false })).stop();

const start = (at: string) => startOwnPostgres({ folder: at, durable: false });
const port = (url: string) => new URL(url).port;

async function query(url: string, text: string): Promise<readonly Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(text)).rows;
  } finally {
    await client.end();
  }
}

/** @returns what the work came to, or threw, while the file of the cluster held other text */
async function withFile(name: string, text: string, work: () => Promise<unknown>) {
  const path = join(made, 'postgresql', 'cluster', name);
  const before = readFileSync(path);
  writeFileSync(path, text);
  try {
    return await work().catch((error: unknown) => error);
  } finally {
    writeFileSync(path, before);
  }
}

describe('our own PostgreSQL at its first start', () => {
  it('is durable, checks its pages, and listens to this machine alone', async () => {
    // https://www.postgresql.org/docs/18/runtime-config.html, by the names of the settings
    const postgres = await startOwnPostgres({ folder: made });
    const settings = await query(
      postgres.url,
      `select current_setting('fsync') as fsync,
        current_setting('synchronous_commit') as synchronous_commit,
        current_setting('full_page_writes') as full_page_writes,
        current_setting('data_checksums') as data_checksums,
        current_setting('listen_addresses') as listen_addresses,
        current_setting('unix_socket_directories') as unix_socket_directories,
        current_setting('server_encoding') as server_encoding,
        current_setting('lc_messages') as lc_messages,
        (select string_agg(distinct auth_method, ',') from pg_hba_file_rules) as auth_methods,
        (select datlocprovider from pg_database where datname = current_database()) as provider`,
    );
    await postgres.stop();
    expect(settings).toEqual([
      {
        fsync: 'on',
        synchronous_commit: 'on',
        full_page_writes: 'on',
        data_checksums: 'on',
        listen_addresses: '127.0.0.1',
        unix_socket_directories: '',
        server_encoding: 'UTF8',
        lc_messages: 'C',
        auth_methods: 'scram-sha-256',
        provider: 'b',
      },
    ]);
  });

  it('keeps its folder and its password to the account that runs it, never to root', async () => {
    const at = made;
    const postgres = await start(at);
    const root = statSync(join(at, 'postgresql'));
    const password = join(at, 'postgresql', 'cluster', 'password');
    expect(root.mode & 0o777).toBe(0o700);
    expect(statSync(password).mode & 0o777).toBe(0o600);
    expect(statSync(join(at, 'postgresql', 'server.log')).mode & 0o777).toBe(0o600);
    expect(root.uid).not.toBe(0);
    expect(new URL(postgres.url).password).toBe(readFileSync(password, 'utf8'));
    expect(new URL(postgres.url).password.length).toBeGreaterThanOrEqual(40);
    await postgres.stop();
  });

  it('lets nobody in without the password', async () => {
    const at = made;
    const postgres = await start(at);
    const other = new URL(postgres.url);
    other.password = 'other';
    await expect(query(other.href, 'select 1')).rejects.toMatchObject({ code: '28P01' });
    await postgres.stop();
  });

  it('is made once by two programs that start at the same moment', async () => {
    const at = folder();
    const [one, two] = await Promise.all([start(at), start(at)]);
    expect(one.url).toBe(two.url);
    const drafts = readdirSync(join(at, 'postgresql')).filter((name) => name.includes('.new-'));
    expect(drafts).toEqual([]);
    await one.stop();
    expect(await query(two.url, 'select 1 as still')).toEqual([{ still: 1 }]);
    await two.stop();
    expect(await serverIn(at)).toBeUndefined();
  });
});

describe('our own PostgreSQL when it is stopped', () => {
  it('is gone, and has its data at the next start', async () => {
    const at = made;
    const first = await start(at);
    await query(first.url, 'create table kept as select 42 as answer');
    await first.stop();
    expect(await serverIn(at)).toBeUndefined();
    const second = await start(at);
    expect(await query(second.url, 'select * from kept')).toEqual([{ answer: 42 }]);
    await second.stop();
  });

  it('may be stopped twice', async () => {
    const postgres = await start(made);
    await postgres.stop();
    await expect(postgres.stop()).resolves.toBeUndefined();
  });
});

describe('what a killed program left behind', () => {
  const SCRIPT = new URL('./children/run-own-postgres.ts', import.meta.url);

  it('is adopted while it runs, and can be stopped', async () => {
    const at = made;
    const parent = startChild(SCRIPT, at);
    const url = await parent.line();
    const pid = await serverIn(at);
    await parent.kill();
    const postgres = await start(at);
    expect(postgres.url).toBe(url);
    expect(await serverIn(at)).toBe(pid);
    await postgres.stop();
    expect(await serverIn(at)).toBeUndefined();
  });

  it('half a database is thrown away and made again', async () => {
    const at = folder();
    const root = join(at, 'postgresql');
    const drafts = () => {
      try {
        return readdirSync(root).filter((name) => name.startsWith('cluster.new-'));
      } catch {
        return [];
      }
    };
    const parent = startChild(SCRIPT, at);
    await until(() => drafts().some((name) => readdirSync(join(root, name)).includes('data')));
    await parent.kill();
    expect(readdirSync(root)).not.toContain('cluster');
    const postgres = await start(at);
    expect(await query(postgres.url, 'select 1 as whole')).toEqual([{ whole: 1 }]);
    await postgres.stop();
    await start(at).then((again) => again.stop());
    expect(drafts()).toEqual([]);
  });

  it('a lock file whose number now belongs to another program does not keep it down', async () => {
    const at = made;
    await (await start(at)).stop();
    const data = join(at, 'postgresql', 'cluster', 'data');
    const stale = `${process.pid}\n${data}\n1700000000\n54321\n\n127.0.0.1\n\nready\n`;
    writeFileSync(join(data, 'postmaster.pid'), stale);
    const postgres = await start(at);
    expect(port(postgres.url)).not.toBe('54321');
    expect(await query(postgres.url, 'select 1 as runs')).toEqual([{ runs: 1 }]);
    await postgres.stop();
  });

  it('a server that was killed under load comes back with all that was acknowledged', async () => {
    const postgres = await startOwnPostgres({ folder: made });
    const database = await openDatabase(postgres.url);
    const store = createRecordStore(database);
    const acknowledged: string[] = [];
    const refused: unknown[] = [];
    const push = async (sender: number, turn: number): Promise<void> => {
      const caseId = `sender ${sender} turn ${turn}`;
      await store.inCase(caseId, accept(caseId)).then(
        () => acknowledged.push(caseId),
        (error) => refused.push(error),
      );
      if (acknowledged.length < 200 || refused.length === 0) await push(sender, turn + 1);
    };
    const load = Promise.all([1, 2, 3, 4].map((sender) => push(sender, 1)));
    await until(() => acknowledged.length > 50);
    const killed = await serverIn(made);
    process.kill(killed ?? process.pid, 'SIGKILL');
    await load;
    const kept = await Promise.all(acknowledged.map((caseId) => store.read(caseId)));
    expect(kept.map((found) => found?.caseId)).toEqual(acknowledged);
    expect(refused.filter((error) => !(error instanceof StoreUnavailable))).toEqual([]);
    expect(await serverIn(made)).not.toBe(killed);
    await database.close();
    await postgres.stop();
    expect(await serverIn(made)).toBeUndefined();
  });
});

describe('a folder that will not do is refused, and the sentence says why', () => {
  it('when another password is kept beside a running server', async () => {
    const postgres = await start(made);
    const refused = await withFile('password', 'other', () => start(made));
    expect(refused).toBeInstanceOf(StoreRefused);
    expect(refused).toMatchObject({
      message: expect.stringContaining('does not take the password'),
    });
    await postgres.stop();
  });

  it('when it was made by another major version', async () => {
    const refused = await withFile('data/PG_VERSION', '17\n', () => start(made));
    expect(refused).toBeInstanceOf(StoreRefused);
    expect(refused).toMatchObject({ message: expect.stringContaining('made by PostgreSQL 17') });
  });

  it('when its place is taken by a file', async () => {
    const at = folder();
    writeFileSync(join(at, 'postgresql'), '');
    await expect(start(at)).rejects.toThrow(StoreRefused);
  });

  it('when the server does not start, with what it said', async () => {
    const refused = await withFile('data/postgresql.conf', 'nonsense = 1\n', () => start(made));
    expect(refused).toBeInstanceOf(StoreRefused);
    expect(refused).toMatchObject({ message: expect.stringContaining('nonsense') });
  });
});

describe('programs that the account cannot reach', () => {
  it('are copied once, whole, with their links', async () => {
    const at = folder();
    const native = join(at, 'package', 'native');
    mkdirSync(join(native, 'bin'), { recursive: true });
    writeFileSync(join(at, 'package', 'package.json'), '{"version":"1.2.3"}');
    writeFileSync(join(native, 'bin', 'postgres'), 'program', { mode: 0o755 });
    symlinkSync('postgres', join(native, 'bin', 'linked'));
    const layout = await layoutIn(at);
    const { uid, gid } = statSync(layout.root);
    const copy = await copyInto(layout, native, { uid, gid });
    expect(copy).toBe(join(layout.root, 'programs-1.2.3'));
    expect(readFileSync(join(copy, 'bin', 'linked'), 'utf8')).toBe('program');
    expect(readlinkSync(join(copy, 'bin', 'linked'))).toBe('postgres');
    expect(statSync(join(copy, 'bin', 'postgres')).mode & 0o777).toBe(0o755);
    writeFileSync(join(native, 'bin', 'postgres'), 'other');
    expect(await copyInto(layout, native, { uid, gid })).toBe(copy);
    expect(readFileSync(join(copy, 'bin', 'postgres'), 'utf8')).toBe('program');
  });
});

describe('the way to a folder', () => {
  it('is blocked where the account may not enter, and the place is named', async () => {
    const home = folder();
    const inside = join(home, 'inside');
    mkdirSync(inside);
    const { uid, gid } = statSync(home);
    const owner = { uid, gid };
    const sameGroup = { uid: uid + 1, gid };
    const stranger = { uid: uid + 1, gid: gid + 1 };
    chmodSync(home, 0o700);
    expect(await firstUnreachable(inside, owner)).toBeUndefined();
    expect(await firstUnreachable(inside, stranger)).toBe(home);
    expect(await firstUnreachable(inside, sameGroup)).toBe(home);
    chmodSync(home, 0o710);
    expect(await firstUnreachable(inside, sameGroup)).toBeUndefined();
    expect(await firstUnreachable(inside, stranger)).toBe(home);
    chmodSync(home, 0o701);
    expect(await firstUnreachable(inside, stranger)).toBeUndefined();
  });
});
