// Starts the service with its own PostgreSQL and the sandbox, pushes the example cases over HTTP,
// and prints what became of each. Stays up unless called with --exit.
import { readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Bundle } from 'fhir/r4.js';
import { loadConfig } from '../src/config/index.js';
import { type Running, startService } from '../src/serve.js';
import { StoreRefused } from '../src/store/index.js';
import { type AnsweredView, describeCase } from './demo/describe-case.js';

const SOURCE = 'example-notes';
const DELIVERED_WITHIN_MS = 60_000;

const say = (text: string): void => console.log(text);

const { running, base } = await start();
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
  const names = readdirSync('examples/cases').filter((name) => name.endsWith('.json'));
  say(`\nPushing ${names.length} invented cases of examples/cases ...\n`);
  for (const name of names) await show(name);
  say('\nDecision support, not a verdict: confirm against the guideline and local policy;');
  say('licensed clinicians decide. Every case and patient here is invented.\n');
  if (process.argv.includes('--exit')) return;
  sayWhere();
  await stopped;
}

async function start(): Promise<{ readonly running: Running; readonly base: string }> {
  say('Starting the service, its PostgreSQL and the sandbox FHIR server ...');
  const started = await startIn('data/demo').catch(async (error: unknown) => {
    if (!(error instanceof StoreRefused) || process.env['DISSECTION_DATA_DIR']) throw error;
    const elsewhere = join(tmpdir(), 'dissection-records-demo');
    say(`${error.message}\nThe demo takes ${elsewhere} instead.`);
    return await startIn(elsewhere);
  });
  return { running: started, base: `http://127.0.0.1:${started.port}` };
}

async function startIn(dataDir: string): Promise<Running> {
  const config = await loadConfig({
    DISSECTION_DATA_DIR: dataDir,
    DISSECTION_SANDBOX: 'true',
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

/** The invented patients, who must be on the server before their cases can be. */
async function putPatients(fhirBase: string): Promise<void> {
  const response = await fetch(fhirBase, {
    method: 'POST',
    headers: { 'content-type': 'application/fhir+json' },
    body: readFileSync('examples/patients.json'),
  });
  if (!response.ok) throw new Error(`the sandbox refused the patients: ${response.status}`);
}

async function show(name: string): Promise<void> {
  const pushed = await call('note-system', '/cases', readFileSync(`examples/cases/${name}`));
  const location = pushed.headers.get('location');
  if (location === null) throw new Error(`${name} was refused: ${await pushed.text()}`);
  const view = await delivered(name, location);
  const bundle = await read<Bundle>('records-team', `${location}/bundle`);
  say(describeCase({ name, status: pushed.status, location: `${base}${location}`, view, bundle }));
}

async function delivered(name: string, location: string): Promise<AnsweredView> {
  const deadline = Date.now() + DELIVERED_WITHIN_MS;
  for (;;) {
    const view = await read<AnsweredView>('note-system', location);
    if (view.delivery.name === 'delivered' && view.delivery.state === view.state) return view;
    if (Date.now() > deadline || view.delivery.name === 'dead-letter') {
      throw new Error(`${name} is ${view.delivery.name}: ${view.delivery.reason ?? 'no reason'}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

async function read<T>(role: string, path: string): Promise<T> {
  const response = await call(role, path);
  if (!response.ok) throw new Error(`${path} answers ${response.status}`);
  return response.json() as Promise<T>;
}

function call(role: string, path: string, body?: Uint8Array<ArrayBuffer>): Promise<Response> {
  return fetch(base + path, {
    ...(body === undefined ? {} : { method: 'POST', body }),
    headers: { authorization: `Bearer ${keyOf(role)}`, 'content-type': 'application/json' },
  });
}

function keyOf(role: string): string {
  return running.oneTimeKeys.find(({ stored }) => stored.role === role)?.key ?? '';
}

function sayWhere(): void {
  say(`Service   ${base}`);
  say(`Sandbox   ${running.fhirBase}   (for demonstrations only)`);
  say('Keys of this run:');
  for (const { stored, key } of running.oneTimeKeys) say(`  ${stored.role.padEnd(13)} ${key}`);
  say('\nStop with Ctrl-C.');
}
