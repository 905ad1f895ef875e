import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { DEFAULT_UNIT_SETTINGS } from '../../../src/contract/index.js';
import { invariant } from '../../../src/kernel/index.js';
import type { OutcomeReport } from '../../../src/outcomes/index.js';
import { createService, type Service } from '../../../src/pipeline/index.js';
import {
  createRecordStore,
  type Database,
  openDatabase,
  startOwnPostgres,
} from '../../../src/store/index.js';
import { loadBatch } from '../../synthetic/load-batch.js';
import { syntheticCase } from '../../synthetic/synthetic-case.js';
import { UNITS } from '../../synthetic/units.table.js';
import { isNoisy, machine, quiet } from '../machine.js';
import { ratio, showRatio, spread } from '../ratio.js';
import { type Answering, answering } from './answering.js';
import { fillDocuments, fillFacts } from './fill.js';
import { EN_BLOC_OF_DOCUMENTS, EN_BLOC_OF_FACTS, readRaw } from './raw-sql.js';

const CASES = 1_000;
const DOCUMENTS = 10_000;
const WANTED = { seed: 11, units: UNITS, untilOn: '2026-06-30' };
const SETTINGS = {
  unit: { ...DEFAULT_UNIT_SETTINGS, smallCells: 'show' as const },
  secret: 'a-secret-of-the-bench-that-is-long-enough',
  softwareVersion: '0',
};
const ROUNDS = 15;
const WARM_UP_ROUNDS = 3;
/** Messages of one block, and blocks of each kind, of the look at pushes. */
const PUSHES = 120;
const BLOCKS = 5;

interface World {
  readonly database: Database;
  readonly client: pg.Client;
  readonly service: Service;
  readonly http: Answering;
}

/**
 * Outcomes over HTTP against the same aggregate in SQL by hand, over facts against over documents,
 * and what a message that comes meanwhile waits.
 */
export async function benchOutcomes(): Promise<readonly string[]> {
  const folder = await mkdtemp(join(tmpdir(), 'outcomes-bench-'));
  // As root, PostgreSQL runs as another user, who must be able to enter.
  await chmod(folder, 0o755);
  const postgres = await startOwnPostgres({ folder });
  try {
    const database = await openDatabase(postgres.url, { statementMs: 60_000 });
    const client = new pg.Client({ connectionString: postgres.url });
    await client.connect();
    const service = createService({
      store: createRecordStore(database),
      settings: SETTINGS,
      now: () => new Date().toISOString(),
    });
    const http = await answering(service);
    try {
      return await measured({ database, client, service, http });
    } finally {
      await http.stop();
      await client.end();
      await database.close();
    }
  } finally {
    await postgres.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

async function measured(world: World): Promise<readonly string[]> {
  const { database, client } = world;
  for (let from = 0; from < CASES; from += 100) {
    console.error(`${from} of ${CASES} cases`);
    const batch = { from, to: from + 100 };
    await loadBatch(database, SETTINGS, WANTED, batch, new Date().toISOString());
  }
  await fillDocuments(database, DOCUMENTS);
  await client.query(
    "set max_parallel_workers_per_gather = 0; set jit = off; set work_mem = '64MB'",
  );
  await quiet();
  console.log(`\n${machine()}`);
  console.log(
    `${CASES} generated cases; rows beyond them are copies under other ids and days, with other sizes,` +
      ' times and speeds. Medians in ms; the raw SQL has the same settings of its session.',
  );
  const documents = await againstDocuments(world);
  const small = await againstRaw(world, 100_000, 1.5);
  const large = await againstRaw(world, 1_000_000, 1.2);
  const pushes = await besidesPushes(world);
  const noisy = isNoisy() ? ' noisy' : '';
  return [documents, small, large, ...pushes].map((line) => line + noisy);
}

/** Documents and facts of the same cases. */
async function againstDocuments({ database, client }: World): Promise<string> {
  await fillFacts(database, DOCUMENTS);
  const facts = async () => (await client.query(EN_BLOC_OF_FACTS)).rows;
  const documents = async () => (await client.query(EN_BLOC_OF_DOCUMENTS)).rows;
  same(await facts(), await documents());
  const [ours, theirs] = await interleaved(facts, documents, 7);
  console.log(`en bloc by organ, ${DOCUMENTS} cases: facts ${spread(ours)}`);
  console.log(`  newest documents ${spread(theirs)}`);
  return showRatio('P4b outcomes, facts / documents', ratio(ours, theirs), {
    goal: 0.1,
    stretch: 0.03,
  });
}

async function againstRaw(world: World, rows: number, goal: number): Promise<string> {
  const { database, client, http } = world;
  console.error(`filling ${rows} rows`);
  await fillFacts(database, rows);
  const asOf = new Date().toISOString().slice(0, 10);
  const answer = async (): Promise<OutcomeReport> =>
    JSON.parse(await http.get('/outcomes?by=organ'));
  const raw = () => readRaw(client, asOf);
  sameAnswer(await answer(), await raw());
  const [ours, theirs] = await interleaved(answer, raw, ROUNDS);
  console.log(`outcomes by organ, ${rows} cases: HTTP ${spread(ours)}`);
  console.log(`  raw SQL ${spread(theirs)}`);
  const name = `P4 outcomes at ${rows}, HTTP / raw SQL`;
  return showRatio(name, ratio(ours, theirs), { goal, stretch: goal });
}

/** Times of both in turn, ms. */
async function interleaved(
  one: () => Promise<unknown>,
  other: () => Promise<unknown>,
  rounds: number,
): Promise<readonly [readonly number[], readonly number[]]> {
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds + WARM_UP_ROUNDS; round += 1) {
    for (const [i, work] of [one, other].entries()) {
      const from = performance.now();
      await work();
      if (round >= WARM_UP_ROUNDS) times[i]?.push(performance.now() - from);
    }
  }
  return times;
}

function same(a: unknown, b: unknown): void {
  invariant(JSON.stringify(a) === JSON.stringify(b), 'both contenders count the same');
}

function sameAnswer(report: OutcomeReport, raw: Awaited<ReturnType<typeof readRaw>>): void {
  invariant(report.cells.length === raw.cells.length, 'as many cells');
  for (const cell of report.cells) {
    const row = raw.cells.find(({ organ }) => organ === (cell.stratum.organ ?? null));
    same(cell.cases, Number(row?.['cases']));
    for (const result of cell.indicators) {
      if (result.kind !== 'rate') continue;
      same(result.numerator, Number(row?.[`${result.id} yes`]));
      same(result.denominator - result.numerator, Number(row?.[`${result.id} no`]));
      same(result.missing, Number(row?.[`${result.id} missing`]));
      same(result.windowOpen, Number(row?.[`${result.id} window-open`]));
    }
    const [speed] = cell.quantities;
    if (speed?.kind !== 'quartiles') continue;
    same(speed.n, Number(row?.['speed_n']));
    const values: unknown = row?.['speed'];
    const rounded = Array.isArray(values) ? values.map((value) => Number(value).toFixed(5)) : [];
    same(
      [speed.q1, speed.median, speed.q3].map((value) => value.toFixed(5)),
      rounded,
    );
  }
  for (const [state, cases] of Object.entries(report.followUp ?? {})) {
    same(cases, raw.checks[state] ?? 0);
  }
  same(report.recurrence?.lesions, raw.watched);
}

/** Messages one after the other, with an outcome query going on all the time and without. */
async function besidesPushes({ service }: World): Promise<readonly string[]> {
  const times: { readonly idle: number[]; readonly busy: number[] } = { idle: [], busy: [] };
  let next = CASES;
  const block = async (into: number[]): Promise<void> => {
    for (let i = 0; i < PUSHES; i += 1) {
      const [message] = syntheticCase(WANTED, next);
      next += 1;
      invariant(message !== undefined, 'a case has a message');
      const bytes = new TextEncoder().encode(message.text);
      const from = performance.now();
      const { kind } = await service.receive(message.kind, bytes, {});
      into.push(performance.now() - from);
      invariant(kind === 'accepted', 'every message is accepted');
    }
  };
  await block([]);
  for (let round = 0; round < BLOCKS; round += 1) {
    console.error(`pushes, round ${round + 1} of ${BLOCKS}`);
    await block(times.idle);
    let isOver = false;
    const asking = (async () => {
      while (!isOver)
        await service.readOutcomes({ filters: {}, by: ['organ'], interval: 'wilson' });
    })();
    await block(times.busy);
    isOver = true;
    await asking;
  }
  console.log(`accept, ${BLOCKS * PUSHES} messages each: idle ${spread(times.idle)}`);
  console.log(`  with an outcome query of 1000000 cases running ${spread(times.busy)}`);
  return [0.5, 0.99].map((share) => {
    const [idle, busy] = [at(times.idle, share), at(times.busy, share)];
    return (
      `P8 accept p${share * 100}, query running / idle ${(busy / idle).toPrecision(3)}` +
      ` (${busy.toPrecision(3)} / ${idle.toPrecision(3)} ms; goal p99 <= 2, stretch <= 1.3)`
    );
  });
}

const at = (list: readonly number[], share: number): number =>
  list.toSorted((a, b) => a - b)[Math.round((list.length - 1) * share)] ?? Number.NaN;
