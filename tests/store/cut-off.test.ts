import { connect, createServer, type Server, type Socket } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { StoreUnavailable } from '../../src/kernel/index.js';
import { createRecordStore, type Database, openDatabase } from '../../src/store/index.js';
import { testDatabase } from '../support/database.js';
import { accept } from './samples.js';

const test = await testDatabase();

/** A way to the database of which the connections can fall silent: nothing comes through. */
let way: Server;
let open: readonly Socket[] = [];
let silent: readonly Socket[] = [];
let database: Database;

const fallSilent = (): void => {
  silent = open;
};

function forward(from: Socket, to: Socket): void {
  from.on('data', (bytes) => silent.includes(from) || to.write(bytes));
  from.on('error', () => undefined).on('close', () => to.destroy());
}

beforeAll(async () => {
  const url = new URL(test.url);
  const port = Number(url.port);
  way = createServer((near) => {
    const far = connect(port, '127.0.0.1');
    open = [...open, near, far];
    forward(near, far);
    forward(far, near);
  });
  await new Promise<void>((resolve) => way.listen(0, '127.0.0.1', resolve));
  const address = way.address();
  url.port = String(typeof address === 'object' ? address?.port : 0);
  database = await openDatabase(url.href, { statementMs: 100 });
});

afterAll(async () => {
  for (const socket of open) socket.destroy();
  way.close();
  await database.close();
});

describe('a database that is cut off without a word', () => {
  it('lets nobody wait without end, and serves again over new connections', async () => {
    const store = createRecordStore(database);
    await store.inCase('before', accept('before'));
    const during = store.inCase('during', async (journal) => {
      fallSilent();
      await accept('during')(journal);
    });
    await expect(during).rejects.toThrow(StoreUnavailable);
    const read = (caseId: string) => store.read(caseId).catch(() => 'unavailable');
    await expect.poll(() => read('before')).toMatchObject({ state: 1 });
    await expect.poll(() => read('during')).toBeUndefined();
  });
});
