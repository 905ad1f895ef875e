import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { caseSchema, parseCase } from '../../src/contract/index.js';
import type { SchemaNode } from '../support/from-json-schema.js';
import { caseMessages, SEED, sampleCases } from '../support/generate-case.js';
import { type Place, placesOf, valueAt, withValue } from './places.js';
import { SHAPE_MUTATIONS } from './shape-mutations.table.js';

const schema: SchemaNode = JSON.parse(JSON.stringify(z.toJSONSchema(caseSchema, { io: 'input' })));
const minimal = readFileSync('examples/cases/minimal.json', 'utf8');

function problemsOf(document: unknown) {
  const text = typeof document === 'string' ? document : JSON.stringify(document);
  const checked = parseCase(new TextEncoder().encode(text));
  return checked.ok ? [] : checked.problems;
}

const pointerOf = ({ path }: Place): string => path.map((key) => `/${key}`).join('');
const leavesOf = (document: unknown): readonly Place[] =>
  placesOf(schema, document).filter(
    ({ kind }) => !['object', 'list', 'list of words'].includes(kind),
  );

// Oracle: what was broken is known, because the test broke it.
describe('all problems of a case', () => {
  it('are named at once, one field broken in each part of the message', () => {
    for (const [turn, sound] of sampleCases(20).entries()) {
      const broken = Object.keys(sound).flatMap((part) => {
        const inPart = leavesOf(sound).filter(({ path }) => path[0] === part);
        return inPart.slice(turn % Math.max(1, inPart.length)).slice(0, 1);
      });
      const document = broken.reduce<unknown>((d, { path }) => withValue(d, path, null), sound);
      const named = problemsOf(document).map(({ pointer }) => pointer);
      expect(named).toEqual(expect.arrayContaining(broken.map(pointerOf)));
      expect(broken.length).toBeGreaterThan(6);
    }
  });

  it('join faults of the JSON, of shape, and contradictions of the sound fields', () => {
    const text = minimal
      .replace('"longAxisMm": 20', '"longAxisMm": 20, "shortAxisMm": 25, "clockHour": 13')
      .replace('"revision": 1', '"revision": 1e400')
      .replace('"outcome": "en-bloc"', '"outcome": "en-bloc", "pieces": 2, "pieces": 3')
      .replace('EX-D-02', 'EX-D-\\u0000');
    expect(
      problemsOf(text)
        .map(({ rule, pointer }) => `${rule} ${pointer}`)
        .sort(),
    ).toEqual(
      [
        'number-out-of-range /revision',
        'repeated-key /resection/pieces',
        'ill-formed-text /team/operator/value',
        'out-of-range /lesion/clockHour',
        'axes-order /lesion/shortAxisMm',
      ].sort(),
    );
  });

  it('name one place for one reason alone', () => {
    for (const sound of sampleCases(4)) {
      for (const place of leavesOf(sound)) {
        const named = problemsOf(withValue(sound, place.path, null));
        expect(named.filter(({ pointer }) => pointer === pointerOf(place))).toHaveLength(1);
      }
    }
  });
});

describe('a problem', () => {
  const CANARY = 'Canary Q. Person 19570230';

  it('never holds the text that was sent, in whichever field it came', () => {
    let tried = 0;
    for (const sound of sampleCases(6)) {
      for (const { path } of placesOf(schema, sound)) {
        if (path.length === 0) continue;
        const problems = problemsOf(withValue(sound, path, ` ${CANARY} `));
        expect(problems.length).toBeGreaterThan(0);
        expect(JSON.stringify(problems)).not.toContain('Canary');
        expect(JSON.stringify(problems)).not.toContain('19570230');
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(400);
    expect(JSON.stringify([{ message: `no ${CANARY}` }])).toContain('Canary'); // it would be seen
  });

  it('never holds the number that was sent', () => {
    for (const sound of sampleCases(6)) {
      for (const { path } of leavesOf(sound)) {
        const problems = problemsOf(withValue(sound, path, -98765.4321));
        expect(JSON.stringify(problems)).not.toContain('98765');
      }
    }
    expect(JSON.stringify(problemsOf(minimal.replace('20', '19570230195702301957')))).not.toContain(
      '19570230',
    );
  });

  it('says what would have been accepted: words, both ends and unit, or the way to write', () => {
    const expected = (change: string, by: string) =>
      problemsOf(minimal.replace(change, by)).map((problem) => problem.expected);
    expect(expected('"organ": "stomach"', '"organ": "liver"')).toEqual([
      'one of: oesophagus, stomach, duodenum, colon, rectum',
    ]);
    expect(expected('"longAxisMm": 20', '"longAxisMm": 0')).toEqual([
      'a number above 0 and at most 1000 (mm)',
    ]);
    expect(expected('"longAxisMm": 20', '"longAxisMm": "20"')).toEqual([
      'a number above 0 and at most 1000 (mm)',
    ]);
    expect(expected('"longAxisMm": 20', '"longAxisMm": 20, "clockHour": 13')).toEqual([
      'a whole number from 1 to 12',
    ]);
    expect(expected('"revision": 1,', '')).toEqual(['a whole number from 1 to 1000000']);
    expect(expected('T09:12:00+02:00', 'T09:12')).toEqual([
      'a date and time with seconds and offset, such as 2026-03-29T09:30:00+02:00',
    ]);
    expect(expected('"outcome"', '"result": 1, "outcome"')).toEqual([
      'only the fields: outcome, technique, pieces, complete, convertedTo, reason',
    ]);
  });

  it('is a sentence, and what it expects is never the language of the program', () => {
    for (const [i, sound] of sampleCases(40).entries()) {
      const mutation = SHAPE_MUTATIONS[i % SHAPE_MUTATIONS.length];
      for (const place of placesOf(schema, sound)) {
        if (mutation?.kinds.includes(place.kind) !== true) continue;
        const value = mutation.instead(valueAt(sound, place.path), place);
        for (const problem of problemsOf(withValue(sound, place.path, value))) {
          expect(problem.message).toMatch(/^[A-Z][^{}]*\.$/);
          expect(problem.expected).not.toMatch(
            /undefined|\bnull\b|invalid input|received|string|\^|\$/i,
          );
          expect(problem.expected.length).toBeGreaterThan(2);
        }
      }
    }
  });

  it.each(['null', '[]', '"case"', '1', 'true'])(
    'is one wrong type when the body is %s',
    (text) => {
      expect(problemsOf(text)).toMatchObject([
        {
          rule: 'wrong-type',
          pointer: '',
          expected: expect.stringMatching(/^an object with schema/),
        },
      ]);
    },
  );
});

describe('a case that has passed', () => {
  it('is every message that fits the schema and contradicts itself nowhere', () => {
    fc.assert(
      fc.property(caseMessages(), (message) => {
        expect(problemsOf(message)).toEqual([]);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });

  it('keeps every field as it was sent, and the decimals of 20.50', () => {
    const checked = parseCase(
      new TextEncoder().encode(minimal.replace('"longAxisMm": 20', '"longAxisMm": 20.50')),
    );
    expect(checked).toEqual({
      ok: true,
      value: {
        fields: { ...JSON.parse(minimal), lesion: { organ: 'stomach', longAxisMm: 20.5 } },
        decimals: { '/lesion/longAxisMm': 2 },
      },
    });
  });

  it('accepts centimetres sent as millimetres: a warning of the review, no refusal (CC-15)', () => {
    expect(problemsOf(minimal.replace('"longAxisMm": 20', '"longAxisMm": 2.0'))).toEqual([]);
  });
});
