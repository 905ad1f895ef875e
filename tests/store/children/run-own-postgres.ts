import { startOwnPostgres } from '../../../src/store/index.js';

/** Starts our own PostgreSQL, prints where it is, and waits to be killed. */
const [folder = ''] = process.argv.slice(2);

const { url } = await startOwnPostgres({ folder, durable: false });
process.stdout.write(`${url}\n`);
setInterval(() => {}, 1_000_000);
