import type { FactsChecked } from '../pipeline/index.js';
import { readArguments } from './arguments.js';
import { type Command, UsageError, type World } from './world.js';

const HELP = `Usage: dissection-records verify facts [options]

Makes the facts by which outcomes are counted again from the messages in the journal, and says which
rows of the database are something else. Writes nothing unless it is told to. Uses the database and
the settings that serve would use; a service may run meanwhile. A rule or setting that has changed
since a case was last judged shows here too: see reassess.

Options:
  --repair   write the rows that differ or are absent
  --json     one JSON document a case that differs, and one with the counts
  --quiet    no talk beside the data
  --help     this text

Exit code: 0 every row is what the journal says, 1 some are not, 2 called wrongly, 3 the database
cannot be had. With --repair, rows that were written count as right.
`;

const OPTIONS = {
  repair: { type: 'boolean' },
  json: { type: 'boolean' },
  quiet: { type: 'boolean' },
} as const;

/** After so many cases it says how far it is. */
const SAY_EVERY = 500;

const WORDS: { readonly [Kind in FactsChecked['kind']]: string } = {
  same: 'is right',
  differ: 'differs',
  absent: 'has no row',
  stray: 'is a row without a case',
  failed: 'cannot be made again: a fault of the program',
};

export const verify: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    const { repair = false, json = false, quiet = false } = values;
    if (positionals.length !== 1 || positionals[0] !== 'facts') {
      throw new UsageError('verify takes what is to be verified: facts.');
    }
    const seen: FactsChecked[] = [];
    let looked = 0;
    const code = await work.verifyFacts({ repair }, (one) => {
      looked += 1;
      if (one.kind !== 'same') {
        seen.push(one);
        say(one, json, world);
      }
      if (!quiet && looked % SAY_EVERY === 0) world.err(`${looked} cases ...\n`);
    });
    if (code !== 0) return code;
    const counts = countsOf(looked, seen);
    if (json) world.out(`${JSON.stringify(counts)}\n`);
    else if (!quiet) world.out(summary(counts));
    return counts.wrong > counts.repaired ? 1 : 0;
  },
};

function say({ caseId, kind, facts, repaired }: FactsChecked, json: boolean, world: World): void {
  if (json) {
    world.out(`${JSON.stringify({ caseId, kind, facts, repaired })}\n`);
    return;
  }
  const names = facts.length === 0 ? '' : `: ${facts.join(', ')}`;
  world.out(`${caseId}  ${WORDS[kind]}${names}${repaired ? '; written anew' : ''}\n`);
}

function countsOf(looked: number, seen: readonly FactsChecked[]) {
  const names = seen.flatMap(({ facts }) => facts);
  return {
    looked,
    wrong: seen.length,
    repaired: seen.filter(({ repaired }) => repaired).length,
    /** In how many rows each fact differs. */
    facts: Object.fromEntries(
      [...new Set(names)]
        .sort()
        .map((name) => [name, names.filter((each) => each === name).length]),
    ),
  };
}

function summary({ looked, wrong, repaired, facts }: ReturnType<typeof countsOf>): string {
  const columns = Object.entries(facts).map(([name, count]) => `${name} ${count}`);
  const which = columns.length === 0 ? '' : ` (${columns.join(', ')})`;
  return `cases looked at: ${looked}; rows that differ: ${wrong}${which}; written anew: ${repaired}.\n`;
}
