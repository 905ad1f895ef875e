import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assessCurability } from '../../../src/assessment/curability/curability.js';
import { toCurabilityQuestion } from '../../../src/assessment/curability/from-record.js';
import { SETS_OF_ORGAN } from '../../../src/assessment/curability/rule-sets.js';
import {
  type CaseFields,
  type PathologyFields,
  parseCase,
  parsePathology,
} from '../../../src/contract/index.js';
import { invariant } from '../../../src/kernel/index.js';
import { answer } from '../../../src/rules/index.js';

function caseFrom(file: string): CaseFields {
  const parsed = parseCase(readFileSync(`examples/cases/${file}`));
  invariant(parsed.ok, 'the examples are valid cases');
  return parsed.value.fields;
}

function reportFrom(file: string): PathologyFields {
  const parsed = parsePathology(readFileSync(`examples/pathology/${file}`));
  invariant(parsed.ok, 'the examples are valid reports');
  return parsed.value.fields;
}

const CASE = caseFrom('stomach-differentiated.json');
const REPORT = reportFrom('stomach-differentiated.json');

type Resection = Partial<CaseFields['resection']>;
type Findings = NonNullable<PathologyFields['findings']>;

const withResection = (resection: Resection): CaseFields => ({
  ...CASE,
  resection: { ...CASE.resection, ...resection },
});
const withLesion = (lesion: Partial<CaseFields['lesion']>): CaseFields => ({
  ...CASE,
  lesion: { ...CASE.lesion, ...lesion },
});
const withFindings = (findings: Findings): PathologyFields => ({ ...REPORT, findings });

describe('the question of curability that a record asks', () => {
  // Source: definition of dysplasia, neoplasia confined to the epithelium (WHO); from memory.
  it.each([
    ['low-grade-dysplasia', 'gastric', 'm'],
    ['high-grade-dysplasia', 'squamous', 'ep'],
    ['carcinoma', 'gastric', undefined],
  ] as const)('%s of a %s tumour without a depth lies in %s', (histology, tumour, depth) => {
    const question = toCurabilityQuestion(CASE, withFindings({ tumour, histology }));
    expect(question['depth']).toBe(depth);
  });

  it.each([
    ['en-bloc', undefined, true, true],
    ['en-bloc', true, true, true],
    ['en-bloc', false, true, false],
    ['piecemeal', true, false, true],
    ['piecemeal', false, false, false],
    ['piecemeal', undefined, false, undefined],
    ['abandoned', undefined, false, false],
    ['not-started', undefined, false, false],
  ] as const)('outcome %s, complete %s: en bloc %s, nothing left %s', (...row) => {
    const [outcome, complete, enBloc, endoscopicallyComplete] = row;
    const { complete: _, ...resection } = CASE.resection;
    const told = complete === undefined ? {} : { complete };
    const fields = { ...CASE, resection: { ...resection, outcome, ...told } };
    expect(toCurabilityQuestion(fields, REPORT)).toMatchObject({ enBloc, endoscopicallyComplete });
  });

  it('takes every finding of the pathologist by its own name', () => {
    const findings: Findings = {
      tumour: 'gastric',
      histology: 'carcinoma',
      depth: 'sm',
      smDepthUm: 420,
      differentiation: 'moderate',
      gastricType: 'differentiated',
      undiffLengthMm: 3,
      undiffInSm: false,
      sizeMm: 17,
      ulcer: 'UL1',
      ly: '0',
      v: 'X',
      hm: { state: '0' },
      vm: { state: 'X' },
      budding: { grade: '2' },
    };
    expect(toCurabilityQuestion(CASE, withFindings(findings))).toEqual({
      ...findings,
      hm: '0',
      vm: 'X',
      budding: 2,
      enBloc: true,
      endoscopicallyComplete: true,
    });
  });

  it.each([
    ['1', 1],
    ['2', 2],
    ['3', 3],
    ['X', 'X'],
  ] as const)('reads the grade of budding %s', (grade, budding) => {
    expect(toCurabilityQuestion(CASE, withFindings({ budding: { grade } })).budding).toBe(budding);
    expect(toCurabilityQuestion(CASE, withFindings({ budding: {} })).budding).toBeUndefined();
  });

  it('knows nothing but tumour, pieces and what was left before the report', () => {
    const known = Object.entries(toCurabilityQuestion(CASE, undefined)).filter(
      ([, value]) => value !== undefined,
    );
    expect(Object.fromEntries(known)).toEqual({
      tumour: 'gastric',
      enBloc: true,
      endoscopicallyComplete: true,
    });
  });

  it('never takes size or depth from what was seen through the endoscope', () => {
    const seen = withLesion({ longAxisMm: 44, predictedDepth: 'intramucosal' });
    const { sizeMm, depth } = toCurabilityQuestion(
      { ...seen, specimen: { retrieved: true, lesionLongAxisMm: 40 } },
      withFindings({}),
    );
    expect([sizeMm, depth]).toEqual([undefined, undefined]);
  });

  it('believes the tumour of the pathologist more than that of the endoscopist', () => {
    const seen = withLesion({ tumour: 'gastric' });
    expect(toCurabilityQuestion(seen, withFindings({ tumour: 'other' })).tumour).toBe('other');
    expect(toCurabilityQuestion(seen, withFindings({})).tumour).toBe('gastric');
    const { tumour: _, ...lesion } = CASE.lesion;
    expect(toCurabilityQuestion({ ...CASE, lesion }, undefined).tumour).toBeUndefined();
  });

  // Curability rules, inputs: the duodenum and tumours of another kind have no table.
  it('calls a tumour of the duodenum, or of another kind, other', () => {
    expect(toCurabilityQuestion(withLesion({ tumour: 'duodenal' }), undefined).tumour).toBe(
      'other',
    );
    expect(toCurabilityQuestion(withLesion({ organ: 'duodenum' }), undefined).tumour).toBe('other');
    for (const histology of ['none', 'neuroendocrine-tumour', 'other-tumour'] as const) {
      expect(toCurabilityQuestion(CASE, withFindings({ histology })).tumour).toBe('other');
    }
  });

  it.each(['indefinite', 'not-assessable'] as const)('reads histology %s as not known', (word) => {
    const question = toCurabilityQuestion(CASE, withFindings({ histology: word }));
    expect([question.tumour, question.histology]).toEqual(['gastric', null]);
  });

  it.each([
    ['gastric', 'X', null],
    ['gastric', 'lpm', null],
    ['gastric', 'm', 'm'],
    ['squamous', 'm', null],
    ['squamous', 'lpm', 'lpm'],
    [undefined, 'lpm', 'lpm'],
  ] as const)('of a tumour %s, reads the depth %s as %s', (tumour, depth, read) => {
    const { tumour: _, ...lesion } = CASE.lesion;
    const fields = { ...CASE, lesion: tumour === undefined ? lesion : { ...lesion, tumour } };
    expect(toCurabilityQuestion(fields, withFindings({ depth })).depth).toBe(read);
  });
});

const PAIRS = readdirSync('examples/pathology')
  .filter((file) => readdirSync('examples/cases').includes(file))
  .map((file) => ({ file, fields: caseFrom(file), report: reportFrom(file) }));

describe('the example records', () => {
  it('ask questions that every rule set of their organ accepts', () => {
    expect(PAIRS.length).toBeGreaterThan(5);
    for (const { file, fields, report } of PAIRS) {
      const question = toCurabilityQuestion(fields, report);
      for (const rule of SETS_OF_ORGAN[fields.lesion.organ]) {
        const asked = Object.entries(question).filter(
          ([name, value]) => name in rule.fields && value !== undefined,
        );
        expect(answer(rule, Object.fromEntries(asked)), `${file}, ${rule.id}`).toMatchObject({
          ok: true,
        });
      }
    }
  });

  // Endoscopy 2022;54:591-622, abstract: a piecemeal resection is not curative, an abandoned one
  // has no class.
  it('are judged by what was resected', () => {
    const judged = (resection: Resection) => {
      const question = toCurabilityQuestion(withResection(resection), REPORT);
      return assessCurability(question, 'stomach', 'esge-esd-2022', false).verdict.outcome;
    };
    expect(judged({ outcome: 'abandoned', complete: false })).toMatchObject({
      class: 'incomplete',
      group: 'open',
    });
    expect(judged({ outcome: 'piecemeal', complete: true })).toMatchObject({
      kind: 'decided',
      group: expect.stringMatching(/^(local-risk|non-curative)$/),
    });
  });
});
