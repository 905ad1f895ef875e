import type { DryRun } from '../pipeline/index.js';
import { readArguments, unitSettings } from './arguments.js';
import { describeAssessment } from './describe-assessment.js';
import { describeBundle } from './describe-bundle.js';
import { describeProblems } from './describe-problems.js';
import { GREEN, paint, RED } from './paint.js';
import { type Input, readInputs } from './read-input.js';
import { type Command, type ExitCode, type RuleBook, UsageError, type World } from './world.js';

const HELP = `Usage: dissection-records check [options] FILE...

Says what is wrong with messages, or what would become of them. Keeps and sends nothing; needs no
database and no configuration. A message about a case is checked by itself, without that case. FILE may be - for standard input.

Options:
  --settings FILE  settings of the unit, instead of those of the example
  --json           one JSON document for each file, as the dry runs of the service answer
  --quiet          exit code only
  --help           this text

Exit code: 0 all valid, 1 some invalid, 2 called wrongly, 3 a file could not be read.
`;

const OPTIONS = {
  settings: { type: 'string' },
  json: { type: 'boolean' },
  quiet: { type: 'boolean' },
} as const;

export const check: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    if (positionals.length === 0) throw new UsageError('check needs at least one FILE.');
    const unit = await unitSettings(values.settings, world);
    if (typeof unit === 'number') return unit;
    let worst: ExitCode = 0;
    for await (const input of readInputs(positionals, world)) {
      const result = input.ok ? await work.check(input.bytes, unit) : undefined;
      worst = worse(worst, codeOf(result));
      if (result === undefined || !input.ok) sayUnread(input, world);
      else if (values.json) world.out(`${JSON.stringify(toJson(input.name, result))}\n`);
      else if (!values.quiet)
        world.out(describe(input.name, result, world.colour, await work.rules()));
    }
    return worst;
  },
};

const codeOf = (result: DryRun | undefined): ExitCode => {
  if (result === undefined) return 3;
  return result.kind === 'valid' ? 0 : 1;
};

const worse = (one: ExitCode, other: ExitCode): ExitCode => (one > other ? one : other);

function sayUnread(input: Input, { err }: World): void {
  if (!input.ok) err(`${input.name}: ${input.reason}\n`);
}

function toJson(file: string, result: DryRun): object {
  if (result.kind !== 'valid') return { file, valid: false, errors: result.problems };
  const { view, warnings, bundle } = result;
  return { file, valid: true, ...view, warnings, bundle };
}

function describe(file: string, result: DryRun, colour: boolean, book: RuleBook): string {
  if (result.kind !== 'valid') {
    const count = result.problems.length;
    const verdict = paint(
      colour,
      RED,
      `not valid, ${count} ${count === 1 ? 'problem' : 'problems'}`,
    );
    return `${file}: ${verdict}\n${describeProblems(result.problems)}\n`;
  }
  const { view, warnings, bundle } = result;
  const valid = `${file}: ${paint(colour, GREEN, 'valid')}`;
  if ('waitingFor' in view) return `${valid}\n  It would wait for its case.\n`;
  return [
    valid,
    indented(describeAssessment(view, book)),
    ...(warnings.length === 0 ? [] : ['  To look at:', describeProblems(warnings)]),
    ...(bundle === undefined ? [] : [describeBundle(bundle)]),
    '',
  ].join('\n');
}

const indented = (text: string): string => text.replaceAll(/^(?=.)/gm, '  ');
