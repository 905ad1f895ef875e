import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { ReviewRemark } from '../../../src/assessment/assessment.js';
import { AFTER_CHECKS } from '../../../src/assessment/events/after-checks.table.js';
import { DRUG_CHECKS } from '../../../src/assessment/review/drug-checks.table.js';
import type { ReviewContext } from '../../../src/assessment/review/facts.js';
import { CASE_CHECKS, reviewCase } from '../../../src/assessment/review/review-case.js';
import {
  type CaseFields,
  CROSS_CHECKS,
  caseSchema,
  DEFAULT_UNIT_SETTINGS,
  parseCase,
  pathologySchema,
  REVIEW_CHECKS,
  type UnitSettings,
} from '../../../src/contract/index.js';
import { BIBLIOGRAPHY } from '../../../src/references/index.js';
import { withValue } from '../../contract/places.js';
import fieldsOfChecks from '../../published/practice-check-fields.json' with { type: 'json' };
import published from '../../published/review-checks.json' with { type: 'json' };
import type { SchemaNode } from '../../support/from-json-schema.js';
import { sampleCases } from '../../support/generate-case.js';
import { DRUG_SAMPLES } from './drug-samples.table.js';
import { CASE_SAMPLES, type Fields, NOT_STARTED, type Sample } from './samples.table.js';

const ROWS = [...CASE_CHECKS, ...DRUG_CHECKS];
const SAMPLES: readonly Sample[] = [...CASE_SAMPLES, ...DRUG_SAMPLES];

function caseOf(base: string, fields: Fields): CaseFields {
  const sound: unknown = JSON.parse(readFileSync(`examples/cases/${base}`, 'utf8'));
  const changed = Object.entries(fields).reduce(
    (document, [path, value]) => withValue(document, path.split('.'), value),
    sound,
  );
  const checked = parseCase(new TextEncoder().encode(JSON.stringify(changed)));
  if (!checked.ok) throw new Error(`a reviewed case is sound: ${JSON.stringify(checked.problems)}`);
  return checked.value.fields;
}

const review = (
  sent: CaseFields,
  context: ReviewContext = {},
  unit: Partial<UnitSettings> = {},
): readonly ReviewRemark[] => reviewCase(sent, context, { ...DEFAULT_UNIT_SETTINGS, ...unit });

/** What the row of this title said; a number of the case may stand where its template has one. */
function saidBy(title: string, remarks: readonly ReviewRemark[]): readonly ReviewRemark[] {
  const row = rowOf(title);
  const escaped = row.says.replaceAll(/[.*+?^$()|[\]\\]/g, '\\$&');
  const pattern = new RegExp(`^${escaped.replaceAll(/\{\w+\}/g, '.+')}$`);
  return remarks.filter(
    ({ check, severity, says }) =>
      check === row.check && severity === row.severity && pattern.test(says),
  );
}

function rowOf(title: string) {
  const found = ROWS.filter((row) => row.title === title);
  if (found[0] === undefined || found.length > 1) throw new Error(`one row is titled ${title}`);
  return found[0];
}

const numbered = SAMPLES.map((sample, i) => ({ ...sample, i }));

// Common practice, no source, unless the row cites a work; borders from the published conditions.
describe('each check of the review', () => {
  it.each(numbered)('$row, in $base ($i)', ({ row, base, fires, context, unit }) => {
    const said = saidBy(row, review(caseOf(base, fires), context, unit));
    expect(said).toHaveLength(1);
    expect(said[0]?.says).not.toMatch(/[{}]|undefined|NaN|-0/);
  });

  it.each(numbered)('$row: silent on the other side ($i)', (sample) => {
    const { row, base, fires, silent, context, unit } = sample;
    for (const change of silent) {
      const sent = caseOf(base, { ...fires, ...change });
      expect(saidBy(row, review(sent, context, unit)), JSON.stringify(change)).toEqual([]);
    }
    const sent = caseOf(base, fires);
    for (const other of sample.silentContexts ?? []) {
      expect(saidBy(row, review(sent, other, unit)), JSON.stringify(other)).toEqual([]);
    }
    for (const other of sample.silentUnits ?? []) {
      expect(saidBy(row, review(sent, context, other)), JSON.stringify(other)).toEqual([]);
    }
  });

  it.each(numbered)('$row: silent without one of its fields ($i)', (sample) => {
    const { row, base, fires, context, unit } = sample;
    for (const without of withoutOne(sample)) {
      const sent = caseOf(base, { ...fires, ...without });
      expect(saidBy(row, review(sent, context, unit)), JSON.stringify(without)).toEqual([]);
    }
  });

  it.each(numbered)('$row: silent where the unit has switched it off ($i)', (sample) => {
    const { row, base, fires, context, unit } = sample;
    const { check } = rowOf(row);
    const on = review(caseOf(base, fires), context, unit);
    const off = review(caseOf(base, fires), context, { ...unit, checksOff: [check] });
    expect(off).toEqual(on.filter((remark) => remark.check !== check));
    expect(off.length).toBeLessThan(on.length);
  });

  it('has its sample', () => {
    expect(new Set(SAMPLES.map(({ row }) => row))).toEqual(new Set(ROWS.map((row) => row.title)));
    expect(new Set(ROWS.map(({ title }) => title)).size).toBe(ROWS.length);
  });

  it('asks nothing of a dissection that was never started', () => {
    expect(review(caseOf(NOT_STARTED.base, NOT_STARTED.fires))).toEqual([]);
    const begun = { ...NOT_STARTED.fires, resection: { outcome: 'abandoned', complete: false } };
    expect(review(caseOf(NOT_STARTED.base, begun)).length).toBeGreaterThan(1);
  });
});

const NEVER_ABSENT = ['lesion.longAxisMm', 'markers.placed', 'equipment.endoscope.kind'];

/** A drug is one entry: its fields are taken away inside. */
function withoutOne(sample: Sample & { readonly absent?: readonly Fields[] }): readonly Fields[] {
  if (sample.absent !== undefined) return sample.absent;
  const { fires, notNeeded = [] } = sample;
  const required = [...NEVER_ABSENT, ...notNeeded];
  return Object.keys(fires)
    .filter((field) => !required.includes(field))
    .map((field) => ({ [field]: undefined }));
}

describe(`the ${published.work}`, () => {
  const refused = new Set(CROSS_CHECKS.map(({ rule }) => rule));

  it.each(published.checks)('$check: $severities', ({ check, severities, later }) => {
    const rows = ROWS.filter((row) => row.check === check);
    const soft = severities.filter((severity) => severity !== 'error');
    expect(new Set(rows.map(({ severity }) => severity))).toEqual(
      new Set(later === undefined ? soft : []),
    );
  });

  it('that are errors of common practice are refused, and not reviewed', () => {
    const errors = published.checks.filter(
      ({ check, severities }) => check.startsWith('PC-') && severities.includes('error'),
    );
    expect(errors.map(({ check }) => check)).toEqual(['PC-12', 'PC-15']);
    for (const { check } of errors) expect(refused.has(check), check).toBe(true);
  });

  it('cite their published source, and common practice elsewhere', () => {
    const cited = ROWS.flatMap(({ check, cites }) =>
      cites.filter(({ basis }) => basis !== 'practice').map(({ work }) => `${check} ${work}`),
    ).filter((pair) => !pair.startsWith('AT-'));
    expect(new Set(cited)).toEqual(
      new Set(published.cited.map(({ check, work }) => `${check} ${work}`)),
    );
    for (const { cites } of ROWS) {
      expect(cites.length).toBeGreaterThan(0);
      for (const { work } of cites) expect(Object.keys(BIBLIOGRAPHY)).toContain(work);
    }
  });

  it('look at the fields that are published for them, and at no others', () => {
    const known = new Map(fieldsOfChecks.checks.map(({ check, pointers }) => [check, pointers]));
    for (const { check, fields, title } of ROWS.filter((row) => known.has(row.check))) {
      const others = fields.filter((field) => !field.startsWith('/findings/'));
      const allowed = known.get(check) ?? [];
      for (const field of others) {
        expect(
          allowed.some((one) => one.startsWith(field)),
          `${title}: ${field}`,
        ).toBe(true);
      }
    }
  });

  it('are ids that a unit can switch off, each of them', () => {
    const rows = [...ROWS, ...AFTER_CHECKS];
    expect([...new Set(rows.map(({ check }) => check))].sort()).toEqual([...REVIEW_CHECKS].sort());
  });
});

const schemaOf = (schema: z.ZodType): SchemaNode =>
  JSON.parse(JSON.stringify(z.toJSONSchema(schema, { io: 'input' })));
const messages = [schemaOf(caseSchema), schemaOf(pathologySchema)];

const placeOf = (pointer: string): SchemaNode | undefined =>
  messages
    .map((schema) =>
      pointer
        .split('/')
        .slice(1)
        .reduce<SchemaNode | undefined>(
          (node, key) => (/^(\*|\d+)$/.test(key) ? node?.items : node?.properties?.[key]),
          schema,
        ),
    )
    .find((node) => node !== undefined);

describe('a remark', () => {
  it('points to places that the messages have', () => {
    const pointers = [
      ...ROWS.flatMap(({ fields }) => fields),
      ...SAMPLES.flatMap(({ base, fires, context, unit }) =>
        review(caseOf(base, fires), context, unit).flatMap((remark) => remark.pointers),
      ),
    ];
    for (const pointer of pointers) expect(placeOf(pointer), pointer).toBeDefined();
    expect(placeOf('/markers/distanceCm')).toBeUndefined(); // the oracle sees what is not there
  });

  it('names the entry of the drug that it is about, and the list where it is about all', () => {
    const drugs = [
      { class: 'cilostazol', decision: 'stopped' },
      { class: 'doac', agent: 'apixaban', decision: 'continued' },
    ];
    const [remark] = review(
      caseOf('stomach-differentiated.json', { 'before.antithrombotics': drugs }),
    );
    expect(remark).toMatchObject({ check: 'AT-06', severity: 'warning' });
    expect(remark?.pointers).toContain('/before/antithrombotics/1/decision');
    const dual = review(caseOf('stomach-dual-antiplatelet.json', {}));
    expect(dual.map(({ check, pointers }) => ({ check, pointers }))).toEqual([
      { check: 'PC-44', pointers: ['/before/antithrombotics'] },
    ]);
  });

  it('says the numbers of the case', () => {
    const near = { 'markers.placed': true, 'markers.distanceMm': 1.5 };
    expect(review(caseOf('stomach-differentiated.json', near))[0]?.says).toMatch(/ 1\.5 mm /);
    const slow = review(caseOf('minimal.json', {}), { speedCm2PerH: 0.4321 });
    expect(slow[0]?.says).toMatch(/ 0\.43 cm2 /);
  });

  it('is one or two plain sentences without blame', () => {
    for (const { says } of ROWS) {
      expect(says).toMatch(/^[A-Z{].*[.?]$/);
      expect(says.match(/[.?:;](?= [A-Z])/g)?.length ?? 0).toBeLessThanOrEqual(1);
      expect(says).not.toMatch(/\b(wrong|mistake|error|failed|fault|must|should have|you)\b/i);
    }
    expect('You must not.').toMatch(/\b(must|you)\b/i); // the oracle sees what it forbids
  });

  it('uses only facts that its own row asks for, or that no drug is without', () => {
    const always = ['drug', 'guideline'];
    for (const { says, when, title } of ROWS) {
      for (const [, fact = ''] of says.matchAll(/\{(\w+)\}/g)) {
        expect([...Object.keys(when), ...always], title).toContain(fact);
      }
    }
  });
});

describe('the review', () => {
  it('says nothing of a case with required fields alone', () => {
    expect(review(caseOf('minimal.json', {}))).toEqual([]);
  });

  // An endoscopist has read the examples: they are good dissections, these three remarks apart.
  it('has hardly anything to say of the example cases', () => {
    const said = readdirSync('examples/cases').flatMap((file) =>
      review(caseOf(file, {})).map(({ check, severity }) => `${file} ${check} ${severity}`),
    );
    expect(said).toEqual([
      'colon-piecemeal.json PC-30 note',
      'colon-piecemeal.json PC-43 note',
      'stomach-dual-antiplatelet.json PC-44 note',
    ]);
  });

  it('never throws and never changes a case, over 500 generated ones', () => {
    const editions = ['bsg-esge-2016', 'bsg-esge-2021', 'asia-pacific-2018'] as const;
    const met = new Set<string>();
    for (const [i, document] of sampleCases(500).entries()) {
      const sent = caseSchema.parse(document);
      const before = structuredClone(sent);
      const antithromboticEdition = editions[i % editions.length] ?? 'bsg-esge-2021';
      for (const remark of review(sent, {}, { antithromboticEdition })) {
        met.add(remark.check);
        expect(remark.says).not.toMatch(/[{}]|undefined|NaN/);
        expect(remark.pointers.length).toBeGreaterThan(0);
      }
      expect(sent).toEqual(before);
    }
    expect(met.size).toBeGreaterThan(35); // the cases are strange enough to try the checks
  });
});
