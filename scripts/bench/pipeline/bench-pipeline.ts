import { benchFaults } from '../faults.js';
import { isNoisy, machine, quiet } from '../machine.js';
import { ratio, showRatio, spread } from '../ratio.js';
import { Contender } from './contender-process.js';
import { LARGE, MIX, REFUSED, SMALL } from './messages.js';
import { isRefusal } from './protocol.js';

const ROUNDS = 11;
const WARM_UP_ROUNDS = 2;

/**
 * CPU of the whole pipeline (parse, contract, assessment, mapping, every check, writing) against
 * validators of others on the same Bundles, against plain JSON, and against itself at size.
 */
export async function benchPipeline(): Promise<readonly string[]> {
  await quiet();
  console.log(`\n${machine()}`);
  const faults = await benchFaults();
  const ours = await Contender.start('pipeline', MIX);
  const outputs = await ours.outputs();
  const bundles = outputs.filter((text) => !isRefusal(text));
  if (outputs.some((text, i) => isRefusal(text) !== REFUSED.includes(MIX[i] ?? ''))) {
    ours.stop();
    throw new Error('not those messages are refused that should be');
  }
  const all = [
    ours,
    await Contender.start('json', bundles),
    await Contender.start('@medplum/core', bundles),
    await Contender.start('fhir', bundles),
    await Contender.start('pipeline', [SMALL]),
    await Contender.start('pipeline', [LARGE]),
    await Contender.start('pipeline', REFUSED),
  ] as const;
  try {
    const hashes = await Promise.all(all.slice(0, 4).map((contender) => contender.hash()));
    if (new Set(hashes).size !== 1) throw new Error('the contenders see different Bundles');
    const share = `${REFUSED.length} of ${MIX.length} messages are refused`;
    console.log(`${share}; Bundles: ${bundles.length}, SHA-256 ${hashes[0]}, the same for each`);
    const entries = await Promise.all(all.slice(4, 6).map((contender) => contender.entries()));
    const times = await interleaved(all);
    return report(all, times, entries, faults);
  } finally {
    for (const contender of all) contender.stop();
  }
}

/** CPU in ms a set, by contender and round; the rounds go through all contenders in turn. */
async function interleaved(all: readonly Contender[]): Promise<readonly (readonly number[])[]> {
  const times: number[][] = all.map(() => []);
  for (let round = 0; round < ROUNDS + WARM_UP_ROUNDS; round += 1) {
    console.error(`round ${round + 1} of ${ROUNDS + WARM_UP_ROUNDS}`);
    for (const [i, contender] of all.entries()) {
      const ms = await contender.round();
      if (round >= WARM_UP_ROUNDS) times[i]?.push(ms);
    }
  }
  return times;
}

function report(
  all: readonly Contender[],
  times: readonly (readonly number[])[],
  entries: readonly number[],
  faults: readonly string[],
): readonly string[] {
  const [ours = [], json = [], medplum = [], fhir = [], small = [], large = [], refused = []] =
    times;
  const bundles = MIX.length - REFUSED.length;
  console.log('\nCPU in ms: ours for each message of the mix, others for each Bundle of it');
  all.slice(0, 4).forEach((contender, i) => {
    const each = (times[i] ?? []).map((ms) => ms / (i === 0 ? MIX.length : bundles));
    const loading = `   loading ${contender.loadingMs.toFixed(0)} (wall ms)`;
    console.log(`${contender.name.padEnd(16)}${spread(each)}${loading}`);
  });
  console.log(`a refusal       ${spread(refused.map((ms) => ms / REFUSED.length))}`);
  const [few = 1, many = 1] = entries;
  console.log(
    `\nsize: ${few} entries ${spread(small)}; ${many} entries ${spread(large)}` +
      '\n(one case is one lesion, so there is no Bundle of a session with eight lesions: it would be' +
      '\neight Bundles. A record grows by its lists: those of the large one are at their limits)',
  );
  console.log(NOT_COMPARED);
  const noisy = isNoisy() ? ' noisy' : '';
  const grown = large.map((ms) => ms * (few / many));
  return [
    ...faults,
    showRatio('P1 of @medplum/core', ratio(ours, medplum), { goal: 0.75, stretch: 0.4 }) + noisy,
    showRatio('P1 of fhir', ratio(ours, fhir), { goal: 3, stretch: 1.5 }) + noisy,
    showRatio('P2', ratio(ours, json), { goal: 25, stretch: 15 }) + noisy,
    showRatio('P2b', ratio(grown, small), { goal: 1.2, stretch: 1.05 }) + noisy,
  ];
}

const NOT_COMPARED =
  '\nEach ratio is of the whole mix: what refusing costs is charged to us, though it has no\n' +
  'counterpart. Not compared: validators on other platforms, terminology services. The\n' +
  'validators of others check less: see the table of faults above. They check each resource\n' +
  'alone, by their documented fast path.';
