import type { Comparison, NamedReport } from '../measure/index.js';
import { readArguments } from './arguments.js';
import { compareAsCsv, describeComparison } from './describe-comparison.js';
import { describeProblems } from './describe-problems.js';
import { readInputs } from './read-input.js';
import { type Command, type ExitCode, UsageError, type Work, type World } from './world.js';

const HELP = `Usage: dissection-records compare [options] REPORT.json...

Puts the outcomes of several units side by side: rates with their intervals, and where each unit
lies between the limits around the rate of all. A REPORT is a FHIR MeasureReport as a unit gives
it out (GET /outcomes/measure-report); no case leaves its unit, and what a unit hides stays
hidden. Needs no database and no configuration. One REPORT may be - for standard input.

Options:
  --indicator ID  one indicator alone, such as enBloc
  --svg           the funnel of that indicator as SVG
  --html          everything as one printable page
  --csv           one row for each indicator and unit
  --json          everything as JSON
  --help          this text

Exit code: 0 done, 1 a report is not valid or cannot stand beside the others, 2 called wrongly,
3 a file could not be read.
`;

const OPTIONS = {
  indicator: { type: 'string' },
  svg: { type: 'boolean' },
  html: { type: 'boolean' },
  csv: { type: 'boolean' },
  json: { type: 'boolean' },
} as const;

export const compare: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { values, positionals } = readArguments(args, OPTIONS);
    if (positionals.length < 2) throw new UsageError('compare needs the REPORTs of two units.');
    const forms = FORMS.filter((form) => values[form] === true);
    if (forms.length > 1) throw new UsageError('One of --svg, --html, --csv and --json.');
    const form = forms[0] ?? 'text';
    if (form === 'svg' && values.indicator === undefined) {
      throw new UsageError('--svg draws one indicator: name it with --indicator.');
    }
    const reports = await readReports(positionals, world, work);
    if (typeof reports === 'number') return reports;
    const { compareUnits } = await import('../measure/index.js');
    const compared = compareUnits(reports);
    if (!compared.ok) {
      for (const { name, problems } of compared.refused) say(world, name, problems);
      return 1;
    }
    const chosen = choose(compared.value, values.indicator);
    world.out(await written(chosen, form));
    return 0;
  },
};

const FORMS = ['svg', 'html', 'csv', 'json'] as const;
type Form = (typeof FORMS)[number] | 'text';

/** Reads every file before it says what is wrong with any. */
async function readReports(
  files: readonly string[],
  world: World,
  work: Work,
): Promise<readonly NamedReport[] | ExitCode> {
  const reports: NamedReport[] = [];
  let unreadable = 0;
  for await (const input of readInputs(files, world)) {
    if (!input.ok) {
      world.err(`${input.name}: ${input.reason}\n`);
      unreadable += 1;
      continue;
    }
    const read = await work.readUnitReport(input.bytes);
    if (read.ok) reports.push({ name: input.name, report: read.value });
    else say(world, input.name, read.problems);
  }
  if (unreadable > 0) return 3;
  return reports.length < files.length ? 1 : reports;
}

const say = (world: World, name: string, problems: Parameters<typeof describeProblems>[0]): void =>
  world.err(`${name}: cannot be compared\n${describeProblems(problems)}\n`);

/** @throws UsageError for an indicator that there is not */
function choose(comparison: Comparison, id: string | undefined): Comparison {
  if (id === undefined) return comparison;
  const indicators = comparison.indicators.filter(({ definition }) => definition.id === id);
  if (indicators.length > 0) return { ...comparison, indicators };
  const known = comparison.indicators.map(({ definition }) => definition.id);
  throw new UsageError(`There is no indicator of this id. There are: ${known.join(', ')}.`);
}

async function written(comparison: Comparison, form: Form): Promise<string> {
  switch (form) {
    case 'json':
      return `${JSON.stringify(comparison)}\n`;
    case 'csv':
      return compareAsCsv(comparison);
    case 'html':
      return (await import('../pages/index.js')).renderComparison(comparison).html;
    case 'svg': {
      const { comparisonChart } = await import('../pages/index.js');
      return comparison.indicators.map((one) => `${comparisonChart(one).markup}\n`).join('');
    }
    case 'text':
      return `${describeComparison(comparison)}\n`;
  }
}
