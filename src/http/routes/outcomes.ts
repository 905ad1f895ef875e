import { parseExportQuery, parseOutcomeQuery, parseSeriesQuery } from '../../contract/index.js';
import { type Checked, csvRows, type Problem } from '../../kernel/index.js';
import { renderQualityReport } from '../../pages/index.js';
import { toParquet } from '../../parquet/index.js';
import type { ExportRow, FoundRows, Service } from '../../pipeline/index.js';
import { type Refusal, Refused } from '../problem-document.js';
import type { Route } from '../route.js';

/** Rates with their intervals, quartiles and follow-up. */
export const readOutcomes: Route = {
  method: 'GET',
  path: '/outcomes',
  answer: async ({ query }, { service }) => {
    const found = await service.readOutcomes(asked(parseOutcomeQuery(query())));
    if (found.kind === 'invalid') throw new Refused(notAsked(found.problems));
    return { status: 200, body: found.report };
  },
};

/** A curve case by case, or a funnel. */
export const readSeries: Route = {
  method: 'GET',
  path: '/outcomes/series',
  answer: async ({ query }, { service }) => {
    const found = await service.readSeries(asked(parseSeriesQuery(query())));
    if (found.kind === 'invalid') throw new Refused(notAsked(found.problems));
    return { status: 200, body: found.series };
  },
};

/** The report as one page for people. */
export const readReport: Route = {
  method: 'GET',
  path: '/outcomes/report',
  answer: async ({ query }, { service }) => {
    const found = await service.readOutcomesAtLarge(asked(parseOutcomeQuery(query())));
    if (found.kind === 'invalid') throw new Refused(notAsked(found.problems));
    const { html, policy } = renderQualityReport(found.report);
    return {
      status: 200,
      body: html,
      mediaType: 'text/html; charset=utf-8',
      headers: { 'Content-Security-Policy': policy },
    };
  },
};

/** What the columns of an export hold. */
export const readDictionary: Route = {
  method: 'GET',
  path: '/outcomes/dictionary',
  answer: async (_asked, { service }) => ({ status: 200, body: service.dataDictionary() }),
};

/** Source: RFC 4180 section 3 (text/csv, header). */
export const exportCsv: Route = {
  method: 'GET',
  path: '/outcomes/export.csv',
  answer: async ({ query }, { service }) => {
    const rows = rowsFor(query(), service);
    const names = service.dataDictionary().columns.map(({ name }) => name);
    return {
      status: 200,
      body: csvOf(names, rows),
      mediaType: 'text/csv; charset=utf-8; header=present',
      headers: { 'Content-Disposition': 'attachment; filename="cases.csv"' },
    };
  },
};

/** One JSON document a line. */
export const exportNdjson: Route = {
  method: 'GET',
  path: '/outcomes/export.ndjson',
  answer: async ({ query }, { service }) => {
    const rows = rowsFor(query(), service);
    return {
      status: 200,
      body: linesOf(rows),
      mediaType: 'application/x-ndjson',
      headers: { 'Content-Disposition': 'attachment; filename="cases.ndjson"' },
    };
  },
};

/** Media type as registered with IANA. */
export const exportParquet: Route = {
  method: 'GET',
  path: '/outcomes/export.parquet',
  answer: async ({ query }, { service }) => {
    const rows = rowsFor(query(), service);
    return {
      status: 200,
      body: toParquet(service.dataDictionary().columns, rows),
      mediaType: 'application/vnd.apache.parquet',
      headers: { 'Content-Disposition': 'attachment; filename="cases.parquet"' },
    };
  },
};

type Rows = Extract<FoundRows, { readonly kind: 'rows' }>['rows'];

/** @throws Refused */
function rowsFor(query: string, service: Service): Rows {
  const found = service.exportCases(asked(parseExportQuery(query)));
  if (found.kind === 'hidden') throw new Refused(HIDDEN);
  return found.rows;
}

async function* csvOf(names: readonly string[], pages: AsyncIterable<readonly ExportRow[]>) {
  yield csvRows([names]);
  for await (const rows of pages) yield csvRows(rows.map((row) => names.map((name) => row[name])));
}

async function* linesOf(pages: AsyncIterable<readonly ExportRow[]>) {
  for await (const rows of pages) yield rows.map((row) => `${JSON.stringify(row)}\n`).join('');
}

/** @throws Refused */
export function asked<T>(read: Checked<T>): T {
  if (!read.ok) throw new Refused(notAsked(read.problems));
  return read.value;
}

export const notAsked = (errors: readonly Problem[]): Refusal => ({
  problem: 'invalid-query',
  detail: 'Each entry of errors names one parameter to correct.',
  errors,
});

const HIDDEN: Refusal = {
  problem: 'small-counts-hidden',
  detail:
    'An export shows single cases, and the settings of the unit hide small counts. Where the ' +
    'unit decides otherwise for its records team, it sets smallCells to "show".',
};
