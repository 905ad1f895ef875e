import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type SyntheticMessage, syntheticCase } from '../../scripts/synthetic/synthetic-case.js';
import { LAST_DAY, UNITS } from '../../scripts/synthetic/units.table.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { takeIn } from '../../src/pipeline/index.js';
import { SEED } from '../support/generate-case.js';
import { WANTED } from './samples.js';

const SETTINGS = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};
const NOW = '2026-07-02T06:00:00Z';

/** As the service would take them; what it makes of them is another matter. */
const taken = (messages: readonly SyntheticMessage[]) =>
  takeIn(
    messages.map(({ kind, text }) => ({ kind, bytes: new TextEncoder().encode(text) })),
    { settings: SETTINGS, now: NOW },
  );

// Oracle of shape: ajv, another implementation of JSON Schema draft 2020-12.
const ajv = new Ajv2020({ allErrors: true, strict: true, strictTypes: false });
formats.default(ajv);
const SCHEMAS = Object.fromEntries(
  ['case', 'pathology', 'event', 'examination'].map((kind) => {
    const file = `shared/schemas/${kind}-1.schema.json`;
    return [kind, ajv.compile(JSON.parse(readFileSync(file, 'utf8')))];
  }),
);

const anyCase = fc.record({
  seed: fc.integer({ min: 0, max: 2_147_483_647 }),
  index: fc.integer({ min: 0, max: 999_999 }),
  units: fc.constantFrom(UNITS, UNITS.slice(0, 1), UNITS.slice(2)),
  untilOn: fc.constantFrom(LAST_DAY, '2020-02-29', '2018-03-01'),
});

describe('messages of invented cases', () => {
  it('pass the published schemas, whatever the seed', () => {
    fc.assert(
      fc.property(anyCase, ({ index, ...wanted }) => {
        for (const { kind, text } of syntheticCase(wanted, index)) {
          const validate = SCHEMAS[kind];
          expect(validate?.(JSON.parse(text)), JSON.stringify(validate?.errors)).toBe(true);
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('are taken by the contract, each beside those before it, whatever the seed', async () => {
    await fc.assert(
      fc.asyncProperty(anyCase, async ({ index, ...wanted }) => {
        const result = await taken(syntheticCase(wanted, index));
        expect(result.ok ? [] : result.problems).toEqual([]);
      }),
      { seed: SEED, numRuns: 120 },
    );
  });

  it('would be refused if one of them named another patient', async () => {
    const [own, ...later] = syntheticCase(WANTED, 7);
    expect(own).toBeDefined();
    expect(later.length).toBeGreaterThan(0);
    if (own === undefined) return;
    const moved = later.map(({ kind, text }) => ({
      kind,
      text: text.replace('INVENTED-P-', 'X-'),
    }));
    const result = await taken([own, ...moved]);
    expect(result.ok ? [] : result.problems.map(({ rule }) => rule)).toContain('patient-differs');
  });

  it('would be refused by the schema if a word were not of the contract', () => {
    const [own] = syntheticCase(WANTED, 7);
    const document = JSON.parse(own?.text ?? '{}');
    expect(SCHEMAS['case']?.({ ...document, lesion: { ...document.lesion, organ: 'liver' } })).toBe(
      false,
    );
  });

  it('say that they are invented in their source and in every identifier', () => {
    for (let index = 0; index < 100; index += 1) {
      for (const { text } of syntheticCase(WANTED, index)) {
        const values = [...text.matchAll(/"system":"([^"]*)","value":"([^"]*)"/g)];
        expect(text).toMatch(/"source":"invented-(vale|ridge|shore)-\d+"/);
        expect(values.length).toBeGreaterThanOrEqual(2);
        for (const [, system, value] of values) {
          expect(system).toMatch(/^urn:oid:2\.999\.77\./);
          expect(value).toMatch(/^INVENTED-/);
        }
      }
    }
  });

  it('are the same for the same seed and number alone', () => {
    expect(syntheticCase(WANTED, 3)).toEqual(syntheticCase(WANTED, 3));
    expect(syntheticCase(WANTED, 3)).not.toEqual(syntheticCase({ ...WANTED, seed: 2 }, 3));
    expect(syntheticCase(WANTED, 3)).not.toEqual(syntheticCase(WANTED, 4));
  });

  it('are not sent after the last day', () => {
    const wanted = { ...WANTED, untilOn: '2019-06-30' };
    for (let index = 0; index < 200; index += 1) {
      for (const { text } of syntheticCase(wanted, index)) {
        expect(Date.parse(JSON.parse(text).sentAt)).toBeLessThan(
          Date.parse('2019-07-01T00:00:00Z'),
        );
      }
    }
  });
});
