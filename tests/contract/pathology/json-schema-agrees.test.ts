import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WHAT_PATHOLOGY_SCHEMA_CANNOT_SAY } from '../../../scripts/contract/beyond-json-schema.table.js';
import { CASE_CHECKS, PATHOLOGY_CHECKS, pathologySchema } from '../../../src/contract/index.js';
import { fromJsonSchema, type SchemaNode } from '../../support/from-json-schema.js';
import { SEED } from '../../support/generate-case.js';
import { placesOf, withValue } from '../places.js';
import { pointerOf, shapeMutant } from '../shape-mutant.js';
import { SHAPE_MUTATIONS } from '../shape-mutations.table.js';
import { changed, problemsOf } from './sound-report.js';

// Oracle: ajv, another implementation of JSON Schema draft 2020-12, on the published schema.
const path = 'shared/schemas/pathology-1.schema.json';
const published: SchemaNode = JSON.parse(readFileSync(path, 'utf8'));
const ajv = new Ajv2020({ allErrors: true, strict: true, strictTypes: false });
formats.default(ajv);
const validate = ajv.compile(published);

/** Right in shape; what they say is left to chance and mostly contradicts itself. */
const DRAFTS = 500;
const drafts: readonly object[] = fc
  .sample(fromJsonSchema(published), { seed: SEED, numRuns: DRAFTS })
  .map((draft) => Object(draft));

const rulesOf = (kind: string): ReadonlySet<string> =>
  new Set(
    WHAT_PATHOLOGY_SCHEMA_CANNOT_SAY.filter((row) => row.kind === kind).map(({ rule }) => rule),
  );
const ACROSS = rulesOf('fields');

describe('the published JSON Schema of a report, judged by ajv', () => {
  it(`agrees on ${DRAFTS} messages of the right shape (seed ${SEED})`, () => {
    for (const draft of drafts) {
      expect(validate(draft), JSON.stringify(validate.errors)).toBe(true);
      expect(pathologySchema.safeParse(draft).success).toBe(true);
      expect(problemsOf(draft).filter(({ rule }) => !ACROSS.has(rule))).toEqual([]);
    }
  });

  it('meets every rule across fields in them', () => {
    const met = new Set(drafts.flatMap((draft) => problemsOf(draft).map(({ rule }) => rule)));
    expect([...ACROSS].filter((rule) => !met.has(rule))).toEqual([]);
  });

  it('refuses every mistake of shape at the very places that the service names', () => {
    const mutants = drafts
      .map((draft, turn) => shapeMutant(published, draft, turn))
      .filter((mutant) => mutant !== undefined);
    expect(mutants.length).toBeGreaterThan(DRAFTS * 0.7);
    const mistakes = new Set(mutants.map(({ mutation }) => mutation.mistake));
    expect(mistakes.size).toBeGreaterThan(SHAPE_MUTATIONS.length * 0.9);
    for (const { document, mutation, pointer } of mutants) {
      expect(validate(document), mutation.mistake).toBe(false);
      expect(pathologySchema.safeParse(document).success, mutation.mistake).toBe(false);
      const named = problemsOf(document).filter(({ rule }) => !ACROSS.has(rule));
      expect(new Set(named.map((problem) => problem.pointer)), mutation.mistake).toEqual(
        new Set((validate.errors ?? []).map(pointerOf)),
      );
      expect(named.some((problem) => problem.pointer.startsWith(pointer))).toBe(true);
    }
  });

  it('accepts every example', () => {
    for (const file of readdirSync('examples/pathology')) {
      const report = JSON.parse(readFileSync(`examples/pathology/${file}`, 'utf8'));
      expect(validate(report), file).toBe(true);
    }
  });
});

describe('the list of what the JSON Schema of a report cannot say', () => {
  it('has each rule of the contract and no other', () => {
    expect(ACROSS).toEqual(new Set(PATHOLOGY_CHECKS.map(({ rule }) => rule)));
    expect(rulesOf('case')).toEqual(new Set(CASE_CHECKS.map(({ rule }) => rule)));
  });

  it.each(WHAT_PATHOLOGY_SCHEMA_CANNOT_SAY)('is published: $kind, $rule', ({ rule, asks }) => {
    const readme = readFileSync('shared/schemas/README.md', 'utf8');
    expect(readme).toContain(`- \`${rule}\`: ${asks}`);
  });
});

describe('a problem of a report', () => {
  const CANARY = 'Canary Q. Person 19570230';

  it('points to a place of the message or to a field that is missing there', () => {
    for (const draft of drafts.slice(0, 150)) {
      const known = new Set(placesOf(published, draft).map((place) => `/${place.path.join('/')}`));
      for (const { pointer } of problemsOf(draft)) {
        const parent = pointer.replace(/\/[^/]*$/, '');
        expect(known.has(pointer) || known.has(parent) || parent === '/findings', pointer).toBe(
          true,
        );
      }
    }
  });

  it('names one place for one reason, also where a rule asks for the field', () => {
    const broken = [
      ['report.reportedAt', '/report/reportedAt'],
      ['report.amendmentReason', '/report/amendmentReason'],
      ['findings.histology', '/findings/histology'],
      ['findings', '/findings'],
    ] as const;
    for (const [field, pointer] of broken) {
      const document = changed({ 'report.version': 2, ...AMENDED, [field]: CANARY });
      expect(problemsOf(document).map((problem) => problem.pointer)).toEqual([pointer]);
    }
  });

  it('never holds the text that was sent, in whichever field it came', () => {
    let tried = 0;
    for (const draft of drafts.slice(0, 20)) {
      for (const place of placesOf(published, draft)) {
        if (place.path.length === 0) continue;
        const problems = problemsOf(withValue(draft, place.path, ` ${CANARY} `));
        expect(problems.length).toBeGreaterThan(0);
        expect(JSON.stringify(problems)).not.toMatch(/Canary|19570230/);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(400);
    expect(JSON.stringify([{ message: CANARY }])).toMatch(/Canary|19570230/); // it would be seen
  });
});

const AMENDED = { 'report.amendmentReason': 'second-opinion' };
