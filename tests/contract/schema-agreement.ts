import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type BeyondLaterSchema,
  WHAT_LATER_SCHEMAS_CANNOT_SAY,
} from '../../scripts/contract/beyond-later-schemas.table.js';
import type { Checked, Problem } from '../../src/kernel/index.js';
import { fromJsonSchema, type SchemaNode } from '../support/from-json-schema.js';
import { SEED } from '../support/generate-case.js';
import { bytesOf } from './changed.js';
import { placesOf, withValue } from './places.js';
import { pointerOf, shapeMutant } from './shape-mutant.js';

interface MessageKind {
  readonly message: BeyondLaterSchema['message'];
  readonly file: string;
  readonly examples: string;
  readonly parse: (bytes: Uint8Array) => Checked<unknown>;
  readonly checks: readonly { readonly rule: string }[];
  readonly caseChecks: readonly { readonly rule: string }[];
}

const DRAFTS = 300;
const CANARY = 'Canary Q. Person 19570230';

/** Tests of a published schema. Oracle: ajv, another implementation of draft 2020-12. */
export function testAgreement({ message, file, examples, parse, checks, caseChecks }: MessageKind) {
  const published: SchemaNode = JSON.parse(readFileSync(`shared/schemas/${file}`, 'utf8'));
  const ajv = new Ajv2020({ allErrors: true, strict: true, strictTypes: false });
  formats.default(ajv);
  const validate = ajv.compile(published);
  const drafts: readonly object[] = fc
    .sample(fromJsonSchema(published), { seed: SEED, numRuns: DRAFTS })
    .map((draft) => Object(draft));
  const rows = WHAT_LATER_SCHEMAS_CANNOT_SAY.filter((row) => row.message === message);
  const rulesOf = (kind: string): ReadonlySet<string> =>
    new Set(rows.filter((row) => row.kind === kind).map(({ rule }) => rule));
  const across = rulesOf('fields');
  const problemsOf = (document: unknown): readonly Problem[] => {
    const checked = parse(bytesOf(document));
    return checked.ok ? [] : checked.problems;
  };

  it(`agrees with ajv on ${DRAFTS} messages of the right shape (seed ${SEED})`, () => {
    for (const draft of drafts) {
      expect(validate(draft), JSON.stringify(validate.errors)).toBe(true);
      expect(problemsOf(draft).filter(({ rule }) => !across.has(rule))).toEqual([]);
    }
  });

  it('refuses every mistake of shape at the very places that ajv names', () => {
    const mutants = drafts
      .map((draft, turn) => shapeMutant(published, draft, turn))
      .filter((mutant) => mutant !== undefined);
    expect(mutants.length).toBeGreaterThan(DRAFTS / 3);
    for (const { document, mutation, pointer } of mutants) {
      expect(validate(document), mutation.mistake).toBe(false);
      const named = problemsOf(document).filter(({ rule }) => !across.has(rule));
      expect(new Set(named.map((problem) => problem.pointer)), mutation.mistake).toEqual(
        new Set((validate.errors ?? []).map(pointerOf)),
      );
      expect(named.some((problem) => problem.pointer.startsWith(pointer))).toBe(true);
    }
  });

  it('accepts every example', () => {
    const files = readdirSync(examples);
    expect(files.length).toBeGreaterThan(0);
    for (const name of files) {
      expect(validate(JSON.parse(readFileSync(`${examples}/${name}`, 'utf8'))), name).toBe(true);
    }
  });

  it('publishes each rule that it cannot say, and no other', () => {
    expect(across).toEqual(new Set(checks.map(({ rule }) => rule)));
    expect(rulesOf('case')).toEqual(new Set(caseChecks.map(({ rule }) => rule)));
    const readme = readFileSync('shared/schemas/README.md', 'utf8');
    expect(readme).toContain(`\`${file}\``);
    for (const { rule, asks } of rows) expect(readme).toContain(`- \`${rule}\`: ${asks}`);
  });

  it('names a broken place once and never the text that was sent there', () => {
    let tried = 0;
    for (const draft of drafts.slice(0, 20)) {
      for (const { path } of placesOf(published, draft)) {
        if (path.length === 0) continue;
        const problems = problemsOf(withValue(draft, path, ` ${CANARY} `));
        const pointer = path.map((key) => `/${key}`).join('');
        expect(problems.filter((problem) => problem.pointer === pointer)).toHaveLength(1);
        expect(JSON.stringify(problems)).not.toMatch(/Canary|19570230/);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(150);
    expect(JSON.stringify([{ message: CANARY }])).toMatch(/Canary|19570230/); // it would be seen
  });
}
