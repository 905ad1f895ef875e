// Starts the service with its own PostgreSQL and the sandbox, pushes the lives and cases of the
// examples over HTTP, and prints what became of each. Stays up unless called with --exit.
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadConfig } from '../src/config/index.js';
import { CAUTION } from '../src/kernel/index.js';
import { type Running, startService } from '../src/serve.js';
import { StoreRefused } from '../src/store/index.js';
import { createCalls } from './demo/call.js';
import { createClient, type Pushed, putPatients } from './demo/client.js';
import { describeCase } from './demo/describe-case.js';
import { describeStep } from './demo/describe-step.js';
import { lines } from './demo/lines.js';
import { type Life, type LifeStep, otherCases, readExample, readLives } from './demo/lives.js';
import { tellScheduler } from './demo/tell-scheduler.js';

const SOURCE = 'example-notes';

const say = (text: string): void => console.log(text);

const running = await start();
const calls = createCalls(running);
const client = createClient(calls, running.fhirBase);
const stopped = new Promise<void>((resolve) => {
  process.once('SIGINT', resolve);
  process.once('SIGTERM', resolve);
});
try {
  await Promise.race([demonstrate(), stopped]);
} finally {
  await running.stop();
}
say('Stopped.');
process.exit(0);

async function demonstrate(): Promise<void> {
  await putPatients(running.fhirBase);
  const lives = readLives();
  say(`\nPushing ${lives.length} whole lives of examples/lives, message by message.`);
  for (const [i, life] of lives.entries()) await tell(life, i + 1);
  const others = otherCases(lives);
  say(`\nPushing ${others.length} more cases of examples/cases.\n`);
  for (const file of others) {
    say(describeCase(file, await client.push('case', readExample(file))));
  }
  say(await tellScheduler(calls, running.fhirBase));
  say(`\n${lines('', CAUTION)}`);
  say('Every case and patient here is invented.\n');
  if (process.argv.includes('--exit')) return;
  sayWhere();
  await stopped;
}

async function start(): Promise<Running> {
  say('Starting the service, its PostgreSQL and the sandbox FHIR server ...');
  return await startIn('data/demo').catch(async (error: unknown) => {
    if (!(error instanceof StoreRefused) || process.env['DISSECTION_DATA_DIR']) throw error;
    const elsewhere = join(tmpdir(), 'dissection-records-demo');
    say(`${error.message}\nThe demo takes ${elsewhere} instead.`);
    return await startIn(elsewhere);
  });
}

async function startIn(dataDir: string): Promise<Running> {
  const config = await loadConfig({
    DISSECTION_DATA_DIR: dataDir,
    DISSECTION_SANDBOX: 'true',
    DISSECTION_SETTINGS_FILE: 'examples/settings/unit.json',
    DISSECTION_LOG_LEVEL: 'error',
    ...process.env,
  });
  if (config.ok) return await startOnFreePort(config.value);
  for (const { pointer, message, expected } of config.problems) {
    console.error(`${pointer.slice(1)}: ${message} Expected: ${expected}.`);
  }
  process.exit(2);
}

async function startOnFreePort(config: Parameters<typeof startService>[0]): Promise<Running> {
  try {
    return await startService(config, SOURCE);
  } catch (error) {
    const isTaken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
    if (!isTaken) throw error;
    return await startService({ ...config, port: 0 }, SOURCE);
  }
}

/** Pushes a life step by step; each step is told against what stood of its case before. */
async function tell(life: Life, number: number): Promise<void> {
  say(`\n${number}. ${life.title}\n${lines('   ', life.story)}\n`);
  const stood = new Map<string, Pushed>();
  let about = '';
  for (const step of life.steps) {
    const pushed = await sendStep(step, about);
    about = pushed.location;
    say(describeStep(step, pushed, stood.get(about)));
    stood.set(about, pushed);
  }
  for (const [location, { view }] of stood) {
    const isWithdrawn = 'withdrawn' in view && view.withdrawn !== undefined;
    say(`    look       ${client.base}${location}${isWithdrawn ? '  (withdrawn)' : ''}`);
  }
}

/** @param about path of the case of the step before */
async function sendStep(step: LifeStep, about: string): Promise<Pushed> {
  const body = readExample(step.file);
  return step.kind === 'booking'
    ? await client.book(about, step.followUp, body)
    : await client.push(step.kind, body);
}

function sayWhere(): void {
  say(`Service   ${client.base}`);
  say(`Sandbox   ${running.fhirBase}   (for demonstrations only)`);
  say('Keys of this run:');
  for (const { stored, key } of running.oneTimeKeys) say(`  ${stored.role.padEnd(13)} ${key}`);
  say('\nOutcomes of these cases, with the key of the records team; /outcomes/report is a page:');
  say(`  curl '${client.base}/outcomes?by=organ' -H "Authorization: Bearer $RECORDS"`);
  say('\nStop with Ctrl-C.');
}
