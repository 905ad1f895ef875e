import { parseExportQuery } from '../contract/index.js';
import { csvRows } from '../kernel/index.js';
import type { DataDictionary, ExportRow } from '../pipeline/index.js';
import { readOutcomesFlags } from './outcomes-options.js';
import { type Command, UsageError, type World } from './world.js';

const HELP = `Usage: dissection-records export --csv | --ndjson | --parquet [options]

Writes one row a case, for analysis: pseudonyms that nothing else has, no date finer than a day, and
no withdrawn case. shared/data-dictionary.json says what each column holds. Rows are single cases:
there are none where the settings of the unit hide small counts. Uses the database and the settings
that serve would use; a service may run meanwhile.

Options:
  --csv                 CSV with a header; what a spreadsheet would run has an apostrophe before it
  --ndjson              one JSON document a line
  --parquet             Apache Parquet, for a file or a pipe: no screen shows it
  --from DAY, --to DAY  days of the resection, YYYY-MM-DD, both included
  --organ, --rule-set, --size-band, --fibrosis, --technique, --trainee-band VALUE
                        cases of this value alone; not-told where a record may not tell it
  --help                this text

Exit code: 0 done, 1 single cases are hidden here, 2 called wrongly, 3 the database cannot be had.
`;

export const exportCases: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { question, forms, names } = readOutcomesFlags(args, parseExportQuery, FORMS);
    const [form, ...others] = forms;
    if (form === undefined || others.length > 0) throw new UsageError(ONE_FORM);
    if (names.length > 0) throw new UsageError('export takes options alone.');
    if (form === 'parquet' && world.terminal) throw new UsageError(NO_SCREEN);
    return work.outcomes(async (service) => {
      const found = service.exportCases(question);
      if (found.kind === 'hidden') {
        world.err(HIDDEN);
        return 1;
      }
      const { columns } = service.dataDictionary();
      if (form === 'parquet') await writeParquet(columns, found.rows, world);
      else if (form === 'csv') await writeCsv(columns, found.rows, world);
      else await writeLines(found.rows, world);
      return 0;
    });
  },
};

type Columns = DataDictionary['columns'];
type Pages = AsyncIterable<readonly ExportRow[]>;

async function writeCsv(columns: Columns, pages: Pages, world: World): Promise<void> {
  const names = columns.map(({ name }) => name);
  world.out(csvRows([names]));
  for await (const rows of pages) {
    world.out(csvRows(rows.map((row) => names.map((name) => row[name]))));
    await world.taken();
  }
}

async function writeLines(pages: Pages, world: World): Promise<void> {
  for await (const rows of pages) {
    world.out(rows.map((row) => `${JSON.stringify(row)}\n`).join(''));
    await world.taken();
  }
}

async function writeParquet(columns: Columns, pages: Pages, world: World): Promise<void> {
  const { toParquet } = await import('../parquet/index.js');
  for await (const piece of toParquet(columns, pages)) {
    world.outBytes(piece);
    await world.taken();
  }
}

const FORMS = ['csv', 'ndjson', 'parquet'] as const;
const ONE_FORM = 'Either --csv, --ndjson or --parquet.';
const NO_SCREEN =
  '--parquet writes no text that a screen could show: send it to a file, as with > cases.parquet.';

const HIDDEN =
  'Rows are single cases, and the settings of the unit hide small counts. A unit that decides ' +
  'otherwise\nsets smallCells to "show" in its settings file.\n';
