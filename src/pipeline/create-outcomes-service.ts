import type { Asked } from '../outcomes/index.js';
import { dataDictionary, type ExportRow, toExportRow } from './export-rows.js';
import type { OutcomesService } from './outcomes-service.js';
import type { RecordStore } from './ports.js';
import { readOutcomesAtLarge } from './read-at-large.js';
import { readMeasureReport } from './read-measure-report.js';
import { type OutcomeDeps, policyOf, readOutcomes } from './read-outcomes.js';
import { readSeries } from './read-series.js';

interface Deps extends OutcomeDeps {
  readonly store: Pick<RecordStore, 'outcomes' | 'facts'>;
}

/** Outcomes over the cases of a store. */
export function createOutcomesService(deps: Deps): OutcomesService {
  return {
    readOutcomes: (question) => readOutcomes(question, deps),
    readOutcomesAtLarge: (question) => readOutcomesAtLarge(question, deps),
    readSeries: (question) => readSeries(question, deps),
    readMeasureReport: (question) => readMeasureReport(question, deps),
    exportCases: (asked) =>
      policyOf(deps).smallCells === 'hide'
        ? { kind: 'hidden' }
        : { kind: 'rows', rows: rowsOf(asked, deps) },
    dataDictionary,
  };
}

async function* rowsOf(
  asked: Asked,
  { store, settings: { secret } }: Deps,
): AsyncGenerator<readonly ExportRow[]> {
  for await (const page of store.facts(asked)) {
    yield page.map((facts) => toExportRow(facts, secret));
  }
}
