import pg from 'pg';
import { openDatabase } from '../../../src/store/index.js';

/** Opens a database and dies when it is about to send a statement that holds the given words. */
const [url = '', words = ''] = process.argv.slice(2);

const query = Reflect.get(pg.Client.prototype, 'query');
Reflect.set(pg.Client.prototype, 'query', function (this: pg.Client, ...args: unknown[]) {
  if (JSON.stringify(args[0]).includes(words)) process.kill(process.pid, 'SIGKILL');
  return Reflect.apply(query, this, args);
});
await openDatabase(url);
