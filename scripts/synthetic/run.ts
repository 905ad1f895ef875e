// Makes invented cases: npm run generate -- COUNT. See USAGE for what can be asked.
import { createWriteStream } from 'node:fs';
import { finished } from 'node:stream/promises';
import { type Asked, readArguments, USAGE } from './arguments.js';
import { load } from './load.js';
import { createProgress } from './progress.js';
import { writeNdjson } from './write-ndjson.js';

const say = (line: string): void => {
  process.stderr.write(`${line}\n`);
};

/** A first signal ends the run after what is at hand, a second one at once. */
let interrupted = false;
for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.on(signal, () => {
    if (interrupted) process.exit(130);
    interrupted = true;
    say('Ending after what is at hand; the same command goes on from there.');
  });
}
// A reader that has seen enough, such as `head`, is no failure.
process.stdout.on('error', () => process.exit());

const args = process.argv.slice(2);
const asked = readArguments(args);
if (args.includes('--help')) {
  process.stdout.write(USAGE);
} else if (typeof asked === 'string') {
  say(`${asked}\n\n${USAGE}`);
  process.exitCode = 2;
} else {
  process.exitCode = await run(asked).catch(explain);
}

async function run(asked: Asked): Promise<number> {
  const { count, wanted, to } = asked;
  if (Date.parse(wanted.untilOn) + 2 * 86_400_000 > Date.now()) {
    say('--until names a day that has passed: nobody sends messages of the future.');
    return 2;
  }
  const progress = createProgress(count, say);
  const stopped = (): boolean => interrupted;
  if (to.kind === 'load') {
    const { loaded, threads } = await load(asked, { progress, stopped });
    progress.end();
    say(`${loaded} cases loaded by ${threads} ${threads === 1 ? 'thread' : 'threads'}.`);
  } else if (to.kind === 'file') {
    const file = createWriteStream(to.path);
    await writeNdjson(file, wanted, count, progress, stopped);
    await finished(file.end());
    progress.end();
  } else {
    await writeNdjson(process.stdout, wanted, count, progress, stopped);
  }
  return interrupted ? 130 : 0;
}

/** Sentences of ours are said; what others say may quote an address with its password. */
function explain(error: unknown): number {
  const ours = ['StoreRefused', 'StoreUnavailable', 'SiteSecretRefused', 'RangeError', 'Error'];
  const isOurs = error instanceof Error && ours.includes(error.name) && !('code' in error);
  say(isOurs ? error.message : `It ends: an error (${error instanceof Error ? error.name : '?'}).`);
  return isOurs ? 3 : 1;
}
