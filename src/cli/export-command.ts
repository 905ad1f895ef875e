import { parseExportQuery } from '../contract/index.js';
import { csvRows } from '../kernel/index.js';
import type { ExportRow } from '../pipeline/index.js';
import { readOutcomesFlags } from './outcomes-options.js';
import { type Command, UsageError } from './world.js';

const HELP = `Usage: dissection-records export --csv | --ndjson [options]

Writes one row a case, for analysis: pseudonyms that nothing else has, no date finer than a day, and
no withdrawn case. shared/data-dictionary.json says what each column holds. Rows are single cases:
there are none where the settings of the unit hide small counts. Uses the database and the settings
that serve would use; a service may run meanwhile.

Options:
  --csv                 CSV with a header; what a spreadsheet would run has an apostrophe before it
  --ndjson              one JSON document a line
  --from DAY, --to DAY  days of the resection, YYYY-MM-DD, both included
  --organ, --rule-set, --size-band, --fibrosis, --technique, --trainee-band VALUE
                        cases of this value alone; not-told where a record may not tell it
  --help                this text

Exit code: 0 done, 1 single cases are hidden here, 2 called wrongly, 3 the database cannot be had.
`;

export const exportCases: Command = {
  help: HELP,
  run: async (args, world, work) => {
    const { question, forms, names } = readOutcomesFlags(args, parseExportQuery, ['csv', 'ndjson']);
    const [form, ...others] = forms;
    if (form === undefined || others.length > 0) throw new UsageError('Either --csv or --ndjson.');
    if (names.length > 0) throw new UsageError('export takes options alone.');
    return work.outcomes(async (service) => {
      const found = service.exportCases(question);
      if (found.kind === 'hidden') {
        world.err(HIDDEN);
        return 1;
      }
      const columns = service.dataDictionary().columns.map(({ name }) => name);
      if (form === 'csv') world.out(csvRows([columns]));
      for await (const rows of found.rows) {
        world.out(form === 'csv' ? csvText(rows, columns) : linesText(rows));
        await world.taken();
      }
      return 0;
    });
  },
};

const csvText = (rows: readonly ExportRow[], columns: readonly string[]): string =>
  csvRows(rows.map((row) => columns.map((name) => row[name])));

const linesText = (rows: readonly ExportRow[]): string =>
  rows.map((row) => `${JSON.stringify(row)}\n`).join('');

const HIDDEN =
  'Rows are single cases, and the settings of the unit hide small counts. A unit that decides ' +
  'otherwise\nsets smallCells to "show" in its settings file.\n';
