import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { toBundle } from '../../src/mapping/index.js';
import { sampleReported } from '../support/generate-report.js';
import { explain, inputLeaves } from './explain.js';
import { find, SETTINGS, versionOf } from './records.js';
import { REPORT_TABLES, scopeOf } from './report-sources.js';
import { REPORTED } from './reported.js';

const HOW_MANY = 300;
const GENERATED = sampleReported(HOW_MANY).map((pair, i) => ({
  name: `generated report ${i + 1}`,
  texts: pair.map((document) => JSON.stringify(document)),
}));
const ALL_WELL = { lost: [], stray: [] };
const COMPLETE = REPORTED.find(({ name }) => name === 'stomach-high-risk.json')?.texts ?? [];

/** Of the case and the last revision of its report alone. */
function unexplained(
  texts: readonly string[],
  change: (bundle: Bundle) => void = () => {},
  settings = SETTINGS,
) {
  const version = versionOf(texts[0] ?? '', texts.at(-1) ?? '');
  const bundle: Bundle = structuredClone(toBundle(version, settings));
  change(bundle);
  const fields = version.now.reports[0]?.fields ?? {};
  return explain(version, settings, bundle, REPORT_TABLES, scopeOf(fields));
}

describe('every field of a report is in the record, and its resources say nothing else', () => {
  it.each(REPORTED)('$name', ({ texts }) => {
    expect(unexplained(texts)).toEqual(ALL_WELL);
  });

  it.each(REPORTED)('$name, for a site with a licence for all codes', ({ texts }) => {
    const licensed = { ...SETTINGS, licences: { snomedCt: true } };
    expect(unexplained(texts, () => {}, licensed)).toEqual(ALL_WELL);
    expect(checkBundle(toBundle(versionOf(...texts), licensed))).toMatchObject({ ok: true });
  });

  it('so do generated reports of every shape, and their Bundles pass the gate', () => {
    expect(GENERATED.length).toBeGreaterThan(100);
    const faults = GENERATED.flatMap(({ name, texts }) => {
      const { lost, stray } = unexplained(texts);
      const gate = checkBundle(toBundle(versionOf(...texts), SETTINGS));
      const refused = gate.ok ? [] : gate.problems.map(({ rule }) => rule);
      return [...lost, ...stray, ...refused].map((fault) => `${name}: ${fault}`);
    });
    expect(faults).toEqual([]);
  }, 120_000);

  it('is asked of every field that the contract of reports has', () => {
    const told = new Set(
      [...GENERATED, ...REPORTED].flatMap(({ texts }) =>
        inputLeaves(JSON.parse(texts.at(-1) ?? '')).map(({ pattern }) => pattern),
      ),
    );
    const known = new Set(
      [...REPORT_TABLES.fields, ...REPORT_TABLES.journalOnly].map(({ at }) => at),
    );
    expect([...told].filter((pattern) => !known.has(pattern))).toEqual([]);
    expect([...known].filter((pattern) => !told.has(pattern))).toEqual([]);
  });
});

describe('the account of a report rejects', () => {
  it.each<[string, (bundle: Bundle) => void]>([
    [
      'a number',
      (b) => (find(b, 'Observation', 'tumour-dimensions').component[0].valueQuantity.value = 99),
    ],
    ['a word', (b) => (find(b, 'Observation', 'histology').valueCodeableConcept.text = 'None')],
    ['a status', (b) => (find(b, 'Observation', 'lateral-margin').status = 'preliminary')],
    ['an author', (b) => delete find(b, 'Observation', 'venous-invasion').performer[0].identifier],
    [
      'a residual tumour',
      (b) => (find(b, 'Observation', 'resection-status').valueCodeableConcept.text = 'R1'),
    ],
  ])('%s that differs', (_name, change) => {
    const { lost, stray } = unexplained(COMPLETE, change);
    expect([...lost, ...stray]).not.toEqual([]);
  });

  it('the loss of a finding', () => {
    const { lost } = unexplained(COMPLETE, (bundle) => {
      const gone = find(bundle, 'Observation', 'olga-stage');
      bundle.entry = (bundle.entry ?? []).filter(({ resource }) => resource !== gone);
    });
    expect(lost).toEqual(['/background/olga']);
  });
});
