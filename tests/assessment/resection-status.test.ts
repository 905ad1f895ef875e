import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { resectionStatus, statusOf } from '../../src/assessment/resection-status.js';
import {
  RESECTION_STATUS,
  type ResectionFacts,
} from '../../src/assessment/resection-status.table.js';
import { type CaseFields, parseCase } from '../../src/contract/index.js';
import { invariant } from '../../src/kernel/index.js';
import { everyQuestion } from '../support/every-question.js';
import { soundPathology } from './sound-pathology.js';

const STATES = ['0', '1', 'X'] as const;
const BOOLEANS = [true, false] as const;
const TOLD = everyQuestion<ResectionFacts>({
  enBloc: BOOLEANS,
  leftInPlace: BOOLEANS,
  hm: STATES,
  vm: STATES,
});
const answerTo = (facts: ResectionFacts): string => {
  const found = statusOf(facts);
  return found.kind === 'determined' ? found.value : 'indeterminate';
};

describe('resection status, against the definition of R0 in the Korean guideline of 2020, Table 1', () => {
  it('is R0 exactly where the lesion came out en bloc, none left, both margins without tumour', () => {
    const r0 = TOLD.filter((facts) => answerTo(facts) === 'R0');
    expect(r0).toEqual([{ enBloc: true, leftInPlace: false, hm: '0', vm: '0' }]);
  });

  it('cites the guideline for R0 alone, as published', () => {
    for (const { status, cites } of RESECTION_STATUS) {
      const published = cites.some(({ basis }) => basis === 'published');
      expect(published).toBe(status === 'R0');
    }
  });
});

/** R1 microscopic, R2 macroscopic: residual tumour classification of the UICC, from memory. */
describe('resection status beside R0', () => {
  it.each<[string, Partial<ResectionFacts>, string]>([
    ['tumour at the horizontal margin', { hm: '1' }, 'R1'],
    ['tumour at the vertical margin', { vm: '1' }, 'R1'],
    ['tumour at a margin of several pieces', { enBloc: false, hm: '1' }, 'R1'],
    ['a margin that cannot be assessed', { vm: 'X' }, 'RX'],
    ['free margins of several pieces', { enBloc: false }, 'RX'],
    ['a lesion left in place', { leftInPlace: true }, 'R2'],
    ['a lesion left in place, whatever its margins', { leftInPlace: true, hm: '1' }, 'R2'],
  ])('%s is so', (_name, facts, status) => {
    expect(answerTo({ enBloc: true, leftInPlace: false, hm: '0', vm: '0', ...facts })).toBe(status);
  });

  it('leaves no told case without an answer, and uses every row', () => {
    expect(TOLD.map(answerTo)).not.toContain('indeterminate');
    const used = TOLD.map((facts) => statusOf(facts)).flatMap((found) =>
      found.kind === 'determined' ? [found.value] : [],
    );
    expect(new Set(used)).toEqual(new Set(RESECTION_STATUS.map(({ status }) => status)));
  });
});

describe('resection status without a margin', () => {
  const missing = everyQuestion<ResectionFacts>({
    enBloc: BOOLEANS,
    leftInPlace: BOOLEANS,
    hm: [undefined, ...STATES],
    vm: [undefined, ...STATES],
  }).filter(({ hm, vm }) => hm === undefined || vm === undefined);

  it('is what it is with every answer that the margin can have, or indeterminate', () => {
    for (const facts of missing) {
      const completions = everyQuestion<ResectionFacts>({
        enBloc: [facts.enBloc],
        leftInPlace: [facts.leftInPlace],
        hm: facts.hm === undefined ? STATES : [facts.hm],
        vm: facts.vm === undefined ? STATES : [facts.vm],
      });
      const answers = new Set(completions.map(answerTo));
      const [only = ''] = answers;
      expect(answerTo(facts), JSON.stringify(facts)).toBe(
        answers.size === 1 ? only : 'indeterminate',
      );
    }
  });

  it('names the margins that were not told', () => {
    const base = { enBloc: true, leftInPlace: false };
    expect(statusOf({ ...base, hm: undefined, vm: '0' })).toEqual({
      kind: 'indeterminate',
      missing: ['pathology.findings.hm'],
    });
    expect(statusOf({ ...base, hm: undefined, vm: undefined })).toMatchObject({
      missing: ['pathology.findings.hm', 'pathology.findings.vm'],
    });
  });
});

/** R2 where something was left: by the outcome of the resection, or where its end says so. */
describe('resection status of a record with free margins', () => {
  const read = parseCase(readFileSync('examples/cases/stomach-differentiated.json'));
  invariant(read.ok, 'the example is sound');
  const { fields } = read.value;
  const statusBy = (outcome: Outcome, complete: boolean | undefined, findings: Draft) => {
    const { complete: _, ...resection } = fields.resection;
    const sent = {
      ...fields,
      resection: { ...resection, outcome, ...(complete === undefined ? {} : { complete }) },
    };
    return resectionStatus(sent, soundPathology(findings));
  };
  const FREE = { hm: { state: '0' }, vm: { state: '0' } };

  it.each([
    ['en-bloc', undefined, 'R0'],
    ['en-bloc', true, 'R0'],
    ['en-bloc', false, 'R2'],
    ['piecemeal', undefined, 'RX'],
    ['piecemeal', true, 'RX'],
    ['piecemeal', false, 'R2'],
    ['abandoned', undefined, 'R2'],
    ['not-started', undefined, 'R2'],
  ] as const)('%s, complete %s: %s', (outcome, complete, status) => {
    expect(statusBy(outcome, complete, FREE)).toMatchObject({ value: status });
  });

  it.each([
    [{ hm: { state: '0' }, vm: undefined }, ['pathology.findings.vm']],
    [{ hm: undefined, vm: { state: '0' } }, ['pathology.findings.hm']],
    [{ hm: undefined, vm: undefined }, ['pathology.findings.hm', 'pathology.findings.vm']],
  ])('names the margin that is missing: %j', (findings, missing) => {
    expect(statusBy('en-bloc', true, findings)).toEqual({ kind: 'indeterminate', missing });
  });
});

type Draft = Readonly<Record<string, unknown>>;
type Outcome = CaseFields['resection']['outcome'];
