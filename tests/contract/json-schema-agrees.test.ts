import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { WHAT_JSON_SCHEMA_CANNOT_SAY } from '../../scripts/contract/beyond-json-schema.table.js';
import { CROSS_CHECKS, caseSchema, parseCase } from '../../src/contract/index.js';
import { SEED, sampleCases } from '../support/generate-case.js';
import { CROSS_MUTATIONS } from './cross-mutations.table.js';
import { withValue } from './places.js';
import { pointerOf, shapeMutant } from './shape-mutant.js';
import { SHAPE_MUTATIONS } from './shape-mutations.table.js';

// Oracle: ajv, another implementation of JSON Schema draft 2020-12, on the published schema.
const published = JSON.parse(readFileSync('shared/schemas/case-1.schema.json', 'utf8'));
const ajv = new Ajv2020({ allErrors: true, strict: true, strictTypes: false });
formats.default(ajv);
const validate = ajv.compile(published);

/** Half sound, half with a mistake of shape; contradictions come on top. */
const SOUND = 560;
const cases = sampleCases(SOUND);
const shapeMutants = cases.map((sound, i) => mutant(sound, i)).filter((m) => m !== undefined);
const crossMutants = CROSS_MUTATIONS.flatMap((mutation, m) =>
  cases.slice(m * 8, m * 8 + 8).map((sound) => ({ mutation, document: contradict(sound, m) })),
);

describe('the published JSON Schema of a case, judged by ajv', () => {
  it(`agrees on ${SOUND} sound cases (seed ${SEED})`, () => {
    for (const document of cases) {
      expect(validate(document), say(validate.errors)).toBe(true);
      expect(caseSchema.safeParse(document).success).toBe(true);
      expect(rulesOf(document)).toEqual([]);
    }
  });

  it('refuses every mistake of shape at the very places that the service names', () => {
    for (const { document, mutation, pointer, problems } of shapeMutants) {
      expect(caseSchema.safeParse(document).success, mutation.mistake).toBe(false);
      expect(validate(document), mutation.mistake).toBe(false);
      const named = problems.filter(({ rule }) => !isBeyond(rule));
      expect(new Set(named.map((problem) => problem.pointer)), mutation.mistake).toEqual(
        new Set((validate.errors ?? []).map(pointerOf)),
      );
      expect(named.some((problem) => problem.pointer.startsWith(pointer))).toBe(true);
    }
  });

  it.each(SHAPE_MUTATIONS.map(({ mistake, rule }) => ({ mistake, rule })))(
    'has met $mistake, which is $rule',
    ({ mistake, rule }) => {
      const met = shapeMutants.filter(({ mutation }) => mutation.mistake === mistake);
      expect(met.length).toBeGreaterThan(0);
      const accepted = ['half of a character', 'a control character'].includes(mistake)
        ? 'ill-formed-text'
        : rule;
      for (const { problems } of met) {
        expect(problems.map((problem) => problem.rule)).toContain(accepted);
      }
    },
  );

  it('meets each kind of field with each mistake that it can have', () => {
    const wanted = SHAPE_MUTATIONS.flatMap(({ mistake, kinds }) =>
      kinds.map((kind) => `${kind}: ${mistake}`),
    );
    const met = new Set(shapeMutants.map(({ kind, mutation }) => `${kind}: ${mutation.mistake}`));
    const never = wanted.filter((pair) => !met.has(pair) && !CANNOT_BE.includes(pair));
    expect(never).toEqual([]);
  });

  it('is tried on at least 1,000 documents, half of them with mistakes', () => {
    expect(cases.length + shapeMutants.length).toBeGreaterThanOrEqual(1000);
    expect(shapeMutants.length).toBeGreaterThanOrEqual(500);
  });
});

/** No required field of the case is of these kinds. */
const CANNOT_BE = ['list', 'list of words', 'date'].map(
  (kind) => `${kind}: a required field is left out`,
);

describe('what JSON Schema cannot say', () => {
  it('is accepted by the schema and refused by the service, for rules of the list alone', () => {
    for (const { document, mutation } of crossMutants) {
      expect(validate(document), `${mutation.mistake} ${say(validate.errors)}`).toBe(true);
      const rules = rulesOf(document);
      expect(rules, mutation.mistake).toContain(mutation.rule);
      expect(rules.filter((rule) => !isBeyond(rule))).toEqual([]);
    }
  });

  const sent = JSON.stringify(JSON.parse(readFileSync('examples/cases/minimal.json', 'utf8')));
  it.each([
    ['repeated-key', sent.replace('{', '{"schema":"case/1",')],
    ['number-out-of-range', sent.replace(/"revision":\d+/, '"revision":1.00000000000000000001')],
    ['number-out-of-range', sent.replace(/"revision":\d+/, '"revision":1.000000000000000000000')],
    ['byte-order-mark', `\ufeff${sent}`],
    ['not-utf-8', Buffer.from(sent.replace(/"value":"[^"]*"/, '"value":"é"'), 'latin1')],
  ])('lets %s pass, which stands in the list', (rule, body) => {
    const bytes = Buffer.from(body);
    // What a lenient reader makes of the same bytes: no mark, other encodings, the last key.
    const lenient = bytes.toString(rule === 'not-utf-8' ? 'latin1' : 'utf8').replace('\ufeff', '');
    expect(validate(JSON.parse(lenient)), say(validate.errors)).toBe(true);
    const checked = parseCase(bytes);
    expect(checked.ok ? [] : checked.problems.map((problem) => problem.rule)).toEqual([rule]);
    expect(isBeyond(rule)).toBe(true);
  });

  it('is a list without an idle row: each has been met above', () => {
    const crossed = new Set(CROSS_MUTATIONS.map(({ rule }) => rule));
    const fields = WHAT_JSON_SCHEMA_CANNOT_SAY.filter(({ kind }) => kind === 'fields');
    expect(new Set(fields.map(({ rule }) => rule))).toEqual(crossed);
    expect(crossed).toEqual(new Set(CROSS_CHECKS.map(({ rule }) => rule)));
    const bytes = WHAT_JSON_SCHEMA_CANNOT_SAY.filter(({ kind }) => kind === 'bytes');
    expect(bytes.map(({ rule }) => rule).sort()).toEqual(
      ['byte-order-mark', 'not-utf-8', 'number-out-of-range', 'repeated-key'].sort(),
    );
  });

  it.each(WHAT_JSON_SCHEMA_CANNOT_SAY)('is published: $rule', ({ rule, asks }) => {
    const readme = readFileSync('shared/schemas/README.md', 'utf8');
    expect(readme).toContain(`- \`${rule}\`: ${asks}`);
  });
});

function mutant(sound: object, turn: number) {
  const made = shapeMutant(published, sound, turn);
  return made === undefined ? undefined : { ...made, problems: problemsOf(made.document) };
}

function contradict(sound: object, m: number): unknown {
  const checked = caseSchema.parse(sound);
  return Object.entries(CROSS_MUTATIONS[m]?.set(checked) ?? {}).reduce<unknown>(
    (document, [path, value]) => withValue(document, path.split('.'), value),
    filled(sound),
  );
}

/** The objects that a contradiction needs, with what the schema requires of them. */
function filled(sound: object): object {
  const { specimen, safety } = Object.assign({ specimen: undefined, safety: undefined }, sound);
  return {
    ...sound,
    specimen: specimen ?? { retrieved: true },
    safety: { perforation: { occurred: true }, ...Object(safety) },
  };
}

function problemsOf(document: unknown) {
  const checked = parseCase(new TextEncoder().encode(JSON.stringify(document)));
  return checked.ok ? [] : checked.problems;
}

const rulesOf = (document: unknown): string[] => problemsOf(document).map(({ rule }) => rule);

const isBeyond = (rule: string): boolean =>
  WHAT_JSON_SCHEMA_CANNOT_SAY.some((row) => row.rule === rule);

const say = (errors: unknown): string => JSON.stringify(errors);
