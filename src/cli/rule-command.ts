import type { Rule } from '../rules/index.js';
import { readArguments, unitSettings } from './arguments.js';
import { askRule } from './ask-rule.js';
import { describeRule } from './describe-rule.js';
import { nearIds } from './near-ids.js';
import { outlineRule } from './outline-rule.js';
import { readInput } from './read-input.js';
import { toRuleJson } from './rule-json.js';
import { listRules, toEntry } from './rule-list.js';
import { type Command, type ExitCode, type RuleBook, UsageError, type World } from './world.js';

const HELP = `Usage: dissection-records rule [options]
       dissection-records rule [options] ID
       dissection-records rule [options] ID FILE

Lists the rules: rule sets, follow-ups, scores, classifications, quantities. With ID: shows one, a
line a row, with its sources. With FILE, or - for standard input: reads the fields of a question as
a JSON object and answers it as JSON; a list of objects gets a list of answers.

Options:
  --settings FILE  settings of the unit, instead of those of the example
  --full           with ID, also what is read, the remarks and the places in the works
  --json           JSON instead of text; an answer on one line
  --help           this text

Exit code: 0 answered, 1 a question was refused, 2 called wrongly or no such rule,
3 the file could not be read.
`;

const OPTIONS = {
  settings: { type: 'string' },
  full: { type: 'boolean' },
  json: { type: 'boolean' },
} as const;

interface Flags {
  readonly settings?: string | undefined;
  readonly full?: boolean | undefined;
  readonly json?: boolean | undefined;
}

export const rule: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    const [id, file, ...more] = positionals;
    if (more.length > 0) throw new UsageError('rule takes one ID and one FILE at most.');
    const book = await work.rules();
    if (id === undefined) return list(book, values, world);
    const found = ruleOf(book.rules, id);
    if (file !== undefined) return ask(found, file, { book, json: values.json === true }, world);
    world.out(`${show(found, book.caution, values)}\n`);
    return 0;
  },
};

function show(found: Rule, caution: string, { full, json }: Flags): string {
  if (json) return JSON.stringify(toRuleJson(found, caution));
  return full ? describeRule(found, caution) : outlineRule(found, caution);
}

function ruleOf(rules: readonly Rule[], id: string): Rule {
  const found = rules.find((each) => each.id === id);
  if (found !== undefined) return found;
  const near = nearIds(
    id,
    rules.map((each) => each.id),
  );
  const hint = near.length > 0 ? ` Near it: ${near.join(', ')}.` : '';
  throw new UsageError(`There is no rule of this id.${hint}`);
}

async function list(book: RuleBook, { settings, json }: Flags, world: World): Promise<ExitCode> {
  const unit = await unitSettings(settings, world);
  if (typeof unit === 'number') return unit;
  const entries = book.rules.map((each) => toEntry(each, unit));
  world.out(json ? `${JSON.stringify(entries)}\n` : `${listRules(entries)}\n`);
  return 0;
}

interface Asking {
  readonly book: RuleBook;
  readonly json: boolean;
}

async function ask(
  asked: Rule,
  file: string,
  { book, json }: Asking,
  world: World,
): Promise<ExitCode> {
  const input = await readInput(file, world);
  if (!input.ok) {
    world.err(`${input.name}: ${input.reason}\n`);
    return 3;
  }
  const { document, refused } = askRule(asked, input.bytes, book.caution);
  world.out(`${JSON.stringify(document, undefined, json ? undefined : 2)}\n`);
  return refused ? 1 : 0;
}
