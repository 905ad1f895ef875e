import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { SCORES, VERDICT_INPUTS } from '../../src/mapping/answers.table.js';
import type { Draft } from '../support/consistent-case.js';
import { everyQuestion } from '../support/every-question.js';
import { codesOf } from './answers.js';
import { find, keyOf, resourcesOf } from './records.js';
import { bundleOfDocuments, reported } from './reported.js';

const STATES = ['0', '1', 'X', undefined] as const;

/** Every pair of margins with free vessels, and every pair of vessels with free margins. */
const COMBINATIONS = [
  ...everyQuestion({ hm: STATES, vm: STATES, ly: ['0'] as const, v: ['0'] as const }),
  ...everyQuestion({ hm: ['0'] as const, vm: ['0'] as const, ly: STATES, v: STATES }),
];

/** Reports of both kinds of epithelium and of a dysplasia, each curative as it stands. */
const CURATIVE = ['oesophagus-barrett', 'stomach-differentiated', 'colon-sigmoid'];

describe('whatever vessels and margins show', () => {
  it.each(CURATIVE)('%s passes the gate, curative only with R0 and free vessels', (name) => {
    const [esd = {}, report = {}] = reported(name);
    const groups = COMBINATIONS.flatMap(({ hm, vm, ly, v }) => {
      const isDysplasia = report.findings.histology !== 'carcinoma';
      if (isDysplasia && (ly === '1' || v === '1')) return [];
      const changed = structuredClone(report);
      Object.assign(changed.findings, {
        hm: hm === undefined ? undefined : { state: hm },
        vm: vm === undefined ? undefined : { state: vm },
        ly,
        v,
        resectionStatus: undefined,
      });
      const bundle = bundleOfDocuments([esd, changed]);
      expect(checkBundle(bundle)).toMatchObject({ ok: true });
      const verdict = find(bundle, 'Observation', 'curability').valueCodeableConcept;
      const [group] = codesOf(verdict, 'curability-group');
      return [{ group, isClear: hm === '0' && vm === '0', isFree: ly === '0' && v === '0' }];
    });
    const curative = groups.filter(({ group }) => group === 'curative');
    expect(curative.length).toBeGreaterThan(0);
    expect(curative.filter(({ isClear }) => !isClear)).toEqual([]);
    if (name !== 'colon-sigmoid') {
      expect(curative.filter(({ isFree }) => !isFree)).toEqual([]);
    }
  });
});

describe('what an answer rests on', () => {
  const bundle = bundleOfDocuments(reported('stomach-high-risk'));
  const urls = new Map(
    (bundle.entry ?? []).flatMap(({ fullUrl, resource }): [string, string][] =>
      resource?.resourceType === 'Observation' ? [[fullUrl ?? '', keyOf(resource)]] : [],
    ),
  );
  const inputsOf = (key: string): readonly (string | undefined)[] =>
    find(bundle, 'Observation', key).derivedFrom.map(({ reference }: Draft) => urls.get(reference));

  it('the verdict names every finding in the specimen that its rule set asks for', () => {
    expect(inputsOf('curability')).toEqual(
      VERDICT_INPUTS.filter((item) => [...urls.values()].includes(item)),
    );
    expect(inputsOf('curability')).toEqual(
      expect.arrayContaining([
        'histology',
        'invasion-depth',
        'lymphatic-invasion',
        'vertical-margin',
      ]),
    );
  });

  it('the eCura score names the five findings that it counts (Hatta 2017: size, ly, v, vm, depth)', () => {
    const score = find(bundle, 'Observation', 'node-risk.ecura');
    expect(score.status).toBe('final');
    expect(inputsOf('node-risk.ecura')).toEqual(SCORES['ecura']?.inputs);
    expect(SCORES['ecura']?.inputs).toHaveLength(5);
  });

  it('nothing is a result of both reports', () => {
    const results = resourcesOf(bundle)
      .filter(({ resourceType }) => resourceType === 'DiagnosticReport')
      .flatMap(({ result }) => result.map(({ reference }: Draft) => reference));
    expect(new Set(results).size).toBe(results.length);
  });
});

/** Source: ICD-10 (WHO), categories D00 to D09 in situ, C15 to C20 malignant, D12 benign. */
describe('the lesion after its histology', () => {
  it.each([
    ['stomach-high-risk', 'C16.3', 'confirmed'],
    ['colon-sigmoid', 'D12.5', 'confirmed'],
    ['duodenum', 'D01.4', 'confirmed'],
    ['rectum-final', 'C20', 'confirmed'],
    ['rectum-interim', 'C20', 'provisional'],
    ['minimal', undefined, 'provisional'],
  ])('%s has %s and is %s', (name, code, verification) => {
    const lesion = find(bundleOfDocuments(reported(name)), 'Condition', 'lesion');
    const icd = lesion.code.coding.find(({ system }: Draft) => system.endsWith('/icd-10'));
    if (code !== undefined) expect(icd.code).toBe(code);
    expect(lesion.verificationStatus.coding[0].code).toBe(verification);
  });

  it('is in situ where the pT is pTis, and has no code of a tumour where none was found', () => {
    const codeAfter = (change: (findings: Draft) => void): readonly string[] => {
      const [esd = {}, report = {}] = reported('colon-sigmoid');
      const changed = structuredClone(report);
      changed.findings.histologicalType = undefined;
      changed.findings.polypType = undefined;
      change(changed.findings);
      const { code } = find(bundleOfDocuments([esd, changed]), 'Condition', 'lesion');
      return code.coding.map((one: Draft) => one.code);
    };
    expect(codeAfter((f) => Object.assign(f, { histology: 'carcinoma', pT: 'pTis' }))).toContain(
      'D01.0',
    );
    expect(codeAfter((f) => Object.assign(f, { histology: 'carcinoma' }))).toContain('D01.0');
    expect(codeAfter((f) => Object.assign(f, { histology: 'none' }))).toEqual(['dissected-lesion']);
  });
});
