import { readArguments, unitSettings } from './arguments.js';
import { describeProblems } from './describe-problems.js';
import { readInput } from './read-input.js';
import { type Command, UsageError } from './world.js';

const HELP = `Usage: dissection-records bundle [options] FILE

Prints the FHIR transaction Bundle that would be sent for a case message. Keeps and sends nothing;
needs no database and no configuration. FILE may be - for standard input.

Options:
  --settings FILE  settings of the unit, instead of those of the example
  --json           the Bundle on one line
  --quiet          no talk beside the Bundle
  --help           this text

Exit code: 0 done, 1 the message is not valid, 2 called wrongly, 3 the file could not be read.
`;

const OPTIONS = {
  settings: { type: 'string' },
  json: { type: 'boolean' },
  quiet: { type: 'boolean' },
} as const;

export const bundle: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    const [file, ...more] = positionals;
    if (file === undefined || more.length > 0) throw new UsageError('bundle needs one FILE.');
    const unit = await unitSettings(values.settings, world);
    if (typeof unit === 'number') return unit;
    const input = await readInput(file, world);
    if (!input.ok) {
      world.err(`${input.name}: ${input.reason}\n`);
      return 3;
    }
    const result = await work.check(input.bytes, unit);
    if (result.kind !== 'valid') {
      world.err(`${input.name}: not valid\n${describeProblems(result.problems)}\n`);
      return 1;
    }
    if (result.bundle === undefined) {
      world.err(`${input.name}: a message about a case, and not the case itself\n`);
      return 1;
    }
    if (!values.quiet) world.err(IDS_DIFFER);
    world.out(`${JSON.stringify(result.bundle, undefined, values.json ? undefined : 2)}\n`);
    return 0;
  },
};

const IDS_DIFFER =
  'Made with the secret of dry runs: the service gives other ids, under its own site secret.\n';
