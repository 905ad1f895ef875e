import { benchCapacity } from './capacity.js';
import { benchFaults } from './faults.js';
import { benchOutcomes } from './outcomes/bench-outcomes.js';
import { benchPipeline } from './pipeline/bench-pipeline.js';

/** What can be measured, by the name that is given on the command line. */
const BENCHES: Readonly<Record<string, () => Promise<readonly string[]>>> = {
  capacity: benchCapacity,
  faults: benchFaults,
  outcomes: benchOutcomes,
  pipeline: benchPipeline,
};

/** Runs the named benches, or all; the report goes to stdout, progress to stderr. */
async function run(names: readonly string[]): Promise<number> {
  const unknown = names.filter((name) => !Object.hasOwn(BENCHES, name));
  if (unknown.length > 0) {
    console.error(`usage: npm run bench -- [NAME...]\nnames: ${Object.keys(BENCHES).join(', ')}`);
    return 2;
  }
  const goals: string[] = [];
  for (const [name, bench] of Object.entries(BENCHES)) {
    if (names.length > 0 && !names.includes(name)) continue;
    console.error(`${name} ...`);
    goals.push(...(await bench()));
  }
  console.log(`\n${goals.join('\n')}`);
  return 0;
}

process.exitCode = await run(process.argv.slice(2));
