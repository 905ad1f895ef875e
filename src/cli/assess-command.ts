import { readArguments, unitSettings } from './arguments.js';
import { describeAssessment, describeLesion } from './describe-assessment.js';
import { describeProblems } from './describe-problems.js';
import { type Input, readInput } from './read-input.js';
import { type Command, type ExitCode, UsageError, type World } from './world.js';

const HELP = `Usage: dissection-records assess [options] CASE [PATHOLOGY]

Says what a case means, on one screen: curability by the rule set of the unit, why, what is missing,
what other rule sets say, follow-up, scores, computed values, review, sources. With PATHOLOGY, a
report on the specimen of this case. Keeps and sends nothing. One of the files may be - for
standard input.

Options:
  --settings FILE  settings of the unit, instead of those of the example
  --json           one JSON document instead of text
  --help           this text

Exit code: 0 assessed, 1 a message is not valid, 2 called wrongly, 3 a file could not be read.
`;

const OPTIONS = { settings: { type: 'string' }, json: { type: 'boolean' } } as const;

export const assess: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    const [caseFile, pathologyFile, ...more] = positionals;
    if (caseFile === undefined || more.length > 0) {
      throw new UsageError('assess needs a CASE, and takes one PATHOLOGY.');
    }
    const unit = await unitSettings(values.settings, world);
    if (typeof unit === 'number') return unit;
    const esdCase = await readInput(caseFile, world);
    if (!esdCase.ok) return unread(esdCase, world);
    const pathology =
      pathologyFile === undefined ? undefined : await readInput(pathologyFile, world);
    if (pathology?.ok === false) return unread(pathology, world);
    const record = await work.assessRecord(esdCase.bytes, pathology?.bytes, unit);
    if (record.kind === 'invalid') {
      const { name } = record.message === 'case' ? esdCase : (pathology ?? esdCase);
      world.err(`${name}: not valid\n${describeProblems(record.problems)}\n`);
      return 1;
    }
    const book = await work.rules();
    const { assessment, plan, fields } = record;
    world.out(
      values.json
        ? `${JSON.stringify({ ...assessment, plan, caution: book.caution })}\n`
        : `${describeLesion(fields)}\n\n${describeAssessment(record, book)}\n`,
    );
    return 0;
  },
};

function unread(input: Input, { err }: World): ExitCode {
  if (!input.ok) err(`${input.name}: ${input.reason}\n`);
  return 3;
}
