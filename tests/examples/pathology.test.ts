import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { assess } from '../../src/assessment/index.js';
import {
  type CaseFields,
  checkAgainstCase,
  DEFAULT_UNIT_SETTINGS,
  type PathologyFields,
  parseCase,
  parsePathology,
  pathologySchema,
} from '../../src/contract/index.js';
import { minutesBetween } from '../../src/kernel/index.js';
import type { SchemaNode } from '../support/from-json-schema.js';
import { namesIn, namesOf } from './schema-names.js';

const FOLDER = 'examples/pathology';
const readme = readFileSync('examples/README.md', 'utf8');
const cases = readdirSync('examples/cases').map(readCase);
const reports = readdirSync(FOLDER)
  .sort()
  .map((file) => ({ file, report: readReport(file) }));
const DAY_MIN = 24 * 60;

function readCase(file: string): CaseFields {
  const checked = parseCase(readFileSync(`examples/cases/${file}`));
  if (!checked.ok) throw new Error(`${file}: ${JSON.stringify(checked.problems)}`);
  return checked.value.fields;
}

function readReport(file: string): PathologyFields {
  const checked = parsePathology(readFileSync(`${FOLDER}/${file}`));
  if (!checked.ok) throw new Error(`${file}: ${JSON.stringify(checked.problems)}`);
  return checked.value.fields;
}

function caseOf({ case: { system, value } }: PathologyFields): CaseFields {
  const found = cases.filter((one) => one.case.system === system && one.case.value === value);
  expect(found).toHaveLength(1);
  if (found[0] === undefined) throw new Error('no example case');
  return found[0];
}

describe('the example reports', () => {
  it.each(reports)('$file has its story and is marked as invented', ({ file, report }) => {
    expect(readme).toContain(`\`${file}\``);
    const text = JSON.stringify(report);
    const systems = text.match(/"system":"[^"]*"/g) ?? [];
    const values = text.match(/"value":"[^"]*"/g) ?? [];
    expect(systems.length).toBeGreaterThan(2);
    expect(systems.filter((found) => !found.startsWith('"system":"urn:oid:2.999.'))).toEqual([]);
    expect(values.filter((found) => !found.startsWith('"value":"EX-'))).toEqual([]);
  });

  it.each(reports)('$file fits its case', ({ report }) => {
    expect(checkAgainstCase(report, caseOf(report))).toEqual([]);
  });

  it('use every field of the contract between them', () => {
    const schema: SchemaNode = JSON.parse(
      JSON.stringify(z.toJSONSchema(pathologySchema, { io: 'input' })),
    );
    const used = new Set(reports.flatMap(({ report }) => namesIn(report)));
    expect(namesOf(schema).filter((name) => !used.has(name))).toEqual([]);
    expect(namesOf(schema)).toContain('/specimen/pieces/*/hm/state');
  });

  it('show each lineage, an interim report, an amended one, and no message twice', () => {
    const tumours = new Set(reports.map(({ report }) => report.findings?.tumour));
    for (const tumour of ['squamous', 'barrett', 'gastric', 'duodenal', 'colorectal']) {
      expect(tumours).toContain(tumour);
    }
    expect(reports.filter(({ report: { report } }) => report.status === 'interim').length).toBe(2);
    expect(reports.filter(({ report: { report } }) => report.version > 1).length).toBe(1);
    const keys = reports.map(
      ({ report }) => `${report.case.value} ${report.accession.value} ${report.revision}`,
    );
    expect(new Set(keys).size).toBe(reports.length);
  });

  it('keep the accession from the interim to the final report, and rise in revision', () => {
    for (const [before, after] of [
      ['rectum-interim.json', 'rectum-final.json'],
      ['colon-perforation-closed.json', 'colon-perforation-closed-amended.json'],
    ] as const) {
      const [first, second] = [readReport(before), readReport(after)];
      expect(second.accession).toEqual(first.accession);
      expect(second.case).toEqual(first.case);
      expect([first.revision, second.revision]).toEqual([1, 2]);
      expect(minutesBetween(first.sentAt, second.sentAt)).toBeGreaterThan(0);
    }
  });
});

// Common practice, no source, unless a work is named: what an expert would find odd.
describe('the example reports, as a pathologist reads them', () => {
  it.each(reports)('$file: a plausible time after the procedure', ({ report }) => {
    const { scopeOutAt } = caseOf(report).times;
    const { receivedAt } = report.specimen ?? {};
    if (receivedAt !== undefined) {
      expect(minutesBetween(scopeOutAt, receivedAt)).toBeLessThan(3 * DAY_MIN);
    }
    const { reportedAt = report.sentAt } = report.report;
    expect(minutesBetween(scopeOutAt, reportedAt)).toBeGreaterThan(4 * DAY_MIN);
    expect(minutesBetween(scopeOutAt, reportedAt)).toBeLessThan(30 * DAY_MIN);
    expect(minutesBetween(reportedAt, report.sentAt)).toBeLessThan(60);
  });

  it.each(reports)('$file: slices, shrinkage and vessels fit the lesion', ({ report }) => {
    const { specimen = {}, findings = {} } = report;
    const known = caseOf(report).specimen;
    // Slices of 2 to 3 mm: J Gastric Cancer 2020;20:165.
    expect([2, 3, undefined]).toContain(specimen.sliceIntervalMm);
    if (specimen.longAxisMm !== undefined && known?.longAxisMm !== undefined) {
      expect(specimen.longAxisMm).toBeLessThanOrEqual(known.longAxisMm); // fixed tissue shrinks
    }
    if (findings.histology === 'carcinoma' && report.report.status === 'final') {
      expect([findings.ly, findings.v, findings.differentiation]).not.toContain(undefined);
      expect([findings.depth, findings.pT, findings.sizeMm]).not.toContain(undefined);
    }
  });
});

/**
 * Class of each report, read by hand from the guideline; the default of every organ.
 *
 * Source: Pimentel-Nunes P et al. Endoscopy 2022;54:591-622 (ESGE), abstract; limits of depth and
 * size, and the fills between the classes, as marked in the tables of the project's rule set.
 */
const CLASSES: Readonly<Record<string, string>> = {
  'oesophagus-squamous.json': 'low-risk', // sm1 (200 um), 20 mm, moderate, no vessels
  'oesophagus-barrett.json': 'very-low-risk', // mucosa, well, R0
  'stomach-differentiated.json': 'very-low-risk', // mucosa, differentiated, no ulcer, R0
  'stomach-undifferentiated.json': 'high-risk', // undifferentiated
  'stomach-high-risk.json': 'high-risk', // lymphatic vessel, deeper than 500 um
  'stomach-ulcer-scar.json': 'low-risk', // ulcer, 30 mm
  'stomach-dysplasia.json': 'very-low-risk', // dysplasia, R0
  'duodenum.json': 'no-rule', // no classes for the duodenum
  'colon-caecum.json': 'low-risk', // sm1 (1000 um), budding 1
  'colon-sigmoid.json': 'very-low-risk', // adenoma, R0
  'colon-piecemeal.json': 'local-risk', // in pieces, not invasive
  'colon-perforation-closed.json': 'very-low-risk', // adenoma, R0
  'colon-perforation-closed-amended.json': 'low-risk', // 300 um, budding 1
  'rectum-interim.json': 'indeterminate', // vessels and budding to come
  'rectum-final.json': 'high-risk', // vein, 1650 um, budding 2
  'rectum-clock-change.json': 'local-risk', // horizontal margin not assessable
  'minimal.json': 'indeterminate', // nothing told
  'minimal-right-patient.json': 'very-low-risk', // mucosa, differentiated, no ulcer, R0
  'complete.json': 'high-risk', // muscularis mucosae, above 20 mm
};

describe('the example reports, by the European classes of curability', () => {
  it.each(reports)('$file has the class that its findings have', ({ file, report }) => {
    const known = { fields: caseOf(report), report };
    const { outcome } = assess(known, DEFAULT_UNIT_SETTINGS).curability.verdict;
    expect(outcome.kind === 'decided' ? outcome.class : outcome.kind).toBe(CLASSES[file]);
  });

  it('show every class', () => {
    const classes = ['very-low-risk', 'low-risk', 'local-risk', 'high-risk', 'no-rule'];
    expect(new Set(Object.values(CLASSES))).toEqual(new Set([...classes, 'indeterminate']));
    expect(Object.keys(CLASSES)).toHaveLength(reports.length);
  });
});
