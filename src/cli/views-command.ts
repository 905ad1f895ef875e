import { readJson } from '../contract/index.js';
import { type Checked, failed, type Problem, passed, toCsv } from '../kernel/index.js';
import type { Keyed, View, ViewRow } from '../views/index.js';
import { readArguments } from './arguments.js';
import { describeProblems } from './describe-problems.js';
import { type Input, readInput, readInputs } from './read-input.js';
import { type Command, type ExitCode, UsageError, type World } from './world.js';

const HELP = `Usage: dissection-records views
       dissection-records views VIEW [options] FILE...

Makes flat rows of FHIR resources, by views of SQL on FHIR. Without a VIEW it lists those of this
package. A FILE is a Bundle or a resource as JSON, or NDJSON with one of them on each line, as a
FHIR server exports; it may be - for standard input. Needs no database and no configuration.

Options:
  --definition FILE  a ViewDefinition of your own; then there is no VIEW
  --csv              CSV, which is written if nothing else is said
  --ndjson           one JSON object a row
  --help             this text

Exit code: 0 done, 1 the view or a resource cannot be used, 2 called wrongly, 3 a file could not
be read.
`;

const OPTIONS = {
  definition: { type: 'string' },
  csv: { type: 'boolean' },
  ndjson: { type: 'boolean' },
} as const;

export const views: Command = {
  help: HELP,
  run: async (args, world) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    if (values.csv === true && values.ndjson === true) throw new UsageError('--csv or --ndjson.');
    if (positionals.length === 0 && values.definition === undefined) return list(world);
    const [name, files] =
      values.definition === undefined
        ? [positionals[0] ?? '', positionals.slice(1)]
        : [undefined, positionals];
    if (files.length === 0) throw new UsageError('views needs the FILEs with the resources.');
    const view =
      values.definition === undefined
        ? await published(name ?? '')
        : await ownView(values.definition, world);
    if (typeof view === 'number') return view;
    const resources = await readResources(files, world);
    if (typeof resources === 'number') return resources;
    return write(view, resources, values.ndjson === true, world);
  },
};

async function list({ out }: World): Promise<ExitCode> {
  const { columnsOf, publishedViews } = await import('../views/index.js');
  for (const [name, view] of publishedViews()) {
    out(`${name}  (${view.resource}): ${columnsOf(view).join(', ')}\n`);
  }
  return 0;
}

/** @throws UsageError for a view that there is not */
async function published(name: string): Promise<View> {
  const { publishedViews } = await import('../views/index.js');
  const known = publishedViews();
  const view = known.get(name);
  if (view === undefined) {
    throw new UsageError(
      `There is no view of this name. There are: ${[...known.keys()].join(', ')}.`,
    );
  }
  return view;
}

async function ownView(file: string, world: World): Promise<View | ExitCode> {
  const { parseView } = await import('../views/index.js');
  const input = await readInput(file, world);
  if (!input.ok) return unreadable(input, world);
  const read = valueIn(input.bytes);
  const view = read.ok ? parseView(read.value) : read;
  return view.ok ? view.value : refuse(input.name, view.problems, world);
}

/** Reads every file before it says what is wrong with any. */
async function readResources(
  files: readonly string[],
  world: World,
): Promise<readonly Keyed[] | ExitCode> {
  const { resourcesIn } = await import('../views/index.js');
  const all: Keyed[] = [];
  let worst: ExitCode = 0;
  for await (const input of readInputs(files, world)) {
    if (!input.ok) {
      worst = unreadable(input, world);
      continue;
    }
    const documents = documentsIn(input.bytes);
    for (const document of documents) {
      if (document.ok) all.push(...resourcesIn(document.value));
      else worst = worst === 3 ? 3 : refuse(input.name, document.problems, world);
    }
  }
  return worst === 0 ? all : worst;
}

/** One JSON document, or one a line. */
function documentsIn(bytes: Uint8Array): readonly Checked<unknown>[] {
  const whole = valueIn(bytes);
  if (whole.ok) return [whole];
  const lines = new TextDecoder().decode(bytes).split('\n');
  const filled = lines.filter((line) => line.trim() !== '');
  if (filled.length < 2) return [whole];
  return filled.map((line) => valueIn(new TextEncoder().encode(line)));
}

function valueIn(bytes: Uint8Array): Checked<unknown> {
  const read = readJson(bytes);
  if (!read.ok) return read;
  return read.value.faults.length > 0 ? failed(read.value.faults) : passed(read.value.value);
}

async function write(
  view: View,
  resources: readonly Keyed[],
  asLines: boolean,
  world: World,
): Promise<ExitCode> {
  const { columnsOf, runView, ViewFault } = await import('../views/index.js');
  let rows: readonly ViewRow[];
  try {
    rows = runView(view, resources);
  } catch (error) {
    if (!(error instanceof ViewFault)) throw error;
    world.err(`${view.name}: ${error.message}\n`);
    return 1;
  }
  if (asLines) {
    for (const row of rows) world.out(`${JSON.stringify(row)}\n`);
    return 0;
  }
  const names = columnsOf(view);
  world.out(
    toCsv(
      names,
      rows.map((row) => names.map((name) => cellText(row[name]))),
    ),
  );
  return 0;
}

const cellText = (cell: ViewRow[string] | undefined) =>
  cell === undefined || cell === null || typeof cell !== 'object' ? cell : JSON.stringify(cell);

function unreadable({ name, reason }: Extract<Input, { ok: false }>, { err }: World): ExitCode {
  err(`${name}: ${reason}\n`);
  return 3;
}

function refuse(name: string, problems: readonly Problem[], { err }: World): ExitCode {
  err(`${name}: cannot be used\n${describeProblems(problems)}\n`);
  return 1;
}
