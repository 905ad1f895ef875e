import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import type { Observation } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Curability, Verdict } from '../../src/assessment/assessment.js';
import { assessCurability } from '../../src/assessment/curability/curability.js';
import { RULE_SETS } from '../../src/assessment/curability/rule-sets.js';
import { InvariantError } from '../../src/kernel/index.js';
import { toVerdict, verdictSentence } from '../../src/mapping/verdict.js';
import { CURABILITY_CLASSES, STRUCTURE } from '../../src/terminology/index.js';
import { fhirJs, medplum, officialSchema, type Peer } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import type { Draft } from '../support/consistent-case.js';
import { brokenBy, codesOf, contextOf, textsOf } from './answers.js';
import { CAUTION } from './plain-words.js';

const PRESENT = new Set(['en-bloc', 'lesion-description', 'fibrosis']);
const WAITS = contextOf('complete');
const READ = contextOf('complete', 'complete');
const CITE = { work: 'esgeEsd2022', place: 'abstract', basis: 'published' } as const;

const decided = (
  rule: string,
  word: string,
  rest: Partial<Extract<Verdict['outcome'], { kind: 'decided' }>> = {},
): Verdict => ({
  rule,
  version: 3,
  outcome: { kind: 'decided', class: word, group: 'open', reasons: [], ...rest },
  usually: 'Something follows.',
  remarks: [],
});
const open = (awaits?: 'pathology'): Verdict => ({
  rule: 'esge-esd-2022',
  version: 1,
  outcome: { kind: 'indeterminate', missing: ['ly', 'vm'], ...(awaits ? { awaits } : {}) },
  usually: '',
  remarks: [],
});
const alone = (verdict: Verdict): Curability => ({ verdict, others: [] });
const mapped = (curability: Curability, context = READ): Observation =>
  toVerdict(context, curability, PRESENT).resource;

const reason = (row: string, word?: string) => ({
  row,
  ...(word === undefined ? {} : { reason: word }),
  says: `Row ${row}.`,
  cites: [CITE],
});
const NON_CURATIVE = decided('esge-esd-2022', 'high-risk', {
  group: 'non-curative',
  reasons: [reason('ly', 'lvi'), reason('v', 'lvi'), reason('vm1', 'vertical-margin'), reason('x')],
});

describe('a verdict with a class', () => {
  const observation = mapped(alone(NON_CURATIVE));

  it('says class and coarse group in one concept, each by one code', () => {
    const { valueCodeableConcept, dataAbsentReason, status } = observation;
    expect(codesOf(valueCodeableConcept, 'curability')).toEqual(['esge-high-risk']);
    expect(codesOf(valueCodeableConcept, 'curability-group')).toEqual(['non-curative']);
    expect(valueCodeableConcept?.text).toBe('Non-curative, high risk');
    expect(dataAbsentReason).toBeUndefined();
    expect(status).toBe('final');
  });

  it('gives each reason once by its code, and every row of the table in words', () => {
    const { component = [] } = observation;
    expect(component.flatMap(({ code }) => codesOf(code, 'esd-observation'))).toEqual([
      'curability-reason',
      'curability-reason',
    ]);
    expect(
      component.flatMap((part) => codesOf(part.valueCodeableConcept, 'curability-reason')),
    ).toEqual(['lvi', 'vertical-margin']);
    const source = '[esgeEsd2022, abstract: published]';
    expect(textsOf(observation).slice(0, 4)).toEqual(
      ['ly', 'v', 'vm1', 'x'].map((row) => `Reason: Row ${row}. ${source}`),
    );
  });

  it('names its rule set with its version, what usually follows, and the caution', () => {
    const { method } = observation;
    expect(codesOf(method, 'rule')).toEqual(['esge-esd-2022']);
    expect(method?.coding?.map(({ version }) => version)).toEqual(['3']);
    expect(method?.text).toBe('ESGE 2022, version 3');
    expect(textsOf(observation).slice(4)).toEqual([
      'What usually follows: Something follows.',
      CAUTION,
    ]);
  });

  it('derives from those of its inputs that the case has, and from no other', () => {
    const named = [...PRESENT].map((key) => [
      key,
      observation.derivedFrom?.some(({ reference }) => reference === urlOf(key)),
    ]);
    expect(Object.fromEntries(named)).toEqual({
      'en-bloc': true,
      'lesion-description': true,
      fibrosis: false,
    });
    expect(observation.derivedFrom).toHaveLength(2);
    expect(toVerdict(WAITS, alone(NON_CURATIVE), new Set()).resource).not.toHaveProperty(
      'derivedFrom',
    );
  });

  it('says where other rule sets differ, and which of them are for comparison only', () => {
    const others = [
      decided('jges-jgca-2021', 'eCuraA', { group: 'curative' }),
      { ...decided('maps-iii-2025', 'low-risk', { group: 'curative' }), unconfirmed: 'not seen' },
      { ...open(), rule: 'jsccr-2019' },
    ];
    expect(textsOf(mapped({ verdict: NON_CURATIVE, others }))).toContain(
      'Other rule sets: JGES and JGCA 2021 says eCura A, group curative; ' +
        'maps-iii-2025 says low-risk, group curative (only for comparison: not seen); ' +
        'JSCCR 2019 open, not known: ly, vm.',
    );
  });

  it('shows what stands beside it, with its source', () => {
    const remarks = [{ remark: 'r', says: 'Shown beside.', cites: [CITE] }];
    expect(textsOf(mapped(alone({ ...NON_CURATIVE, remarks })))).toContain(
      'Shown beside. [esgeEsd2022, abstract: published]',
    );
  });

  it('refuses a class, a reason or a rule set that has no code: that would be our fault', () => {
    const reasons = [reason('x', 'because')];
    for (const verdict of [
      decided('esge-esd-2022', 'eCuraA'),
      decided('esge-esd-2022', 'high-risk', { reasons }),
      decided('maps-iii-2025', 'low-risk'),
    ]) {
      expect(() => mapped(alone(verdict))).toThrow(InvariantError);
    }
  });
});

/** Source: FHIR R4, value sets observation-status and data-absent-reason. */
describe('a verdict without a class', () => {
  it.each<[string, string, Verdict, string, object, string]>([
    [
      'waits for pathology',
      'complete',
      open('pathology'),
      'preliminary',
      STRUCTURE.absent.tempUnknown,
      'Pathology is awaited; not known: ly, vm.',
    ],
    [
      'lacks fields of a report',
      'complete',
      open(),
      'final',
      STRUCTURE.absent.unknown,
      'Open, not known: ly, vm.',
    ],
    ...['stomach-abandoned', 'colon-never-started', 'colon-specimen-not-retrieved'].map(
      (name): [string, string, Verdict, string, object, string] => [
        'has no specimen',
        name,
        open('pathology'),
        'final',
        STRUCTURE.absent.notPerformed,
        'No class, because there is no specimen.',
      ],
    ),
  ])('%s (%s)', (_name, example, verdict, status, absent, note) => {
    const observation = mapped(alone(verdict), contextOf(example));
    expect(observation.status).toBe(status);
    expect(observation.dataAbsentReason).toEqual(absent);
    expect(observation).not.toHaveProperty('valueCodeableConcept');
    expect(observation).not.toHaveProperty('component');
    expect(textsOf(observation)).toEqual([note, CAUTION]);
    expect(codesOf(observation.method, 'rule')).toEqual(['esge-esd-2022']);
  });

  it.each(['no-rule', 'incomplete'])('is not one that says %s: that is an answer', (word) => {
    const observation = mapped(
      alone(decided('esge-esd-2022', word)),
      contextOf('stomach-abandoned'),
    );
    expect(codesOf(observation.valueCodeableConcept, 'curability')).toEqual([word]);
    expect(observation.status).toBe('final');
  });
});

describe('a class before the final report', () => {
  it.each([
    ['no report', contextOf('complete')],
    ['an interim report', contextOf('rectum', 'rectum-interim')],
  ])('is preliminary with %s', (_name, context) => {
    const observation = mapped(alone(NON_CURATIVE), context);
    expect(observation.status).toBe('preliminary');
    expect(codesOf(observation.valueCodeableConcept, 'curability')).toEqual(['esge-high-risk']);
    expect(brokenBy(observation)).toEqual([]);
  });

  it.each(['no-rule', 'incomplete'])('is final where no report could change it: %s', (word) => {
    expect(mapped(alone(decided('esge-esd-2022', word)), WAITS).status).toBe('final');
  });
});

describe('the verdict in one sentence', () => {
  it.each<[Verdict, string, string, string?]>([
    [
      NON_CURATIVE,
      'complete',
      'Curability by ESGE 2022: Non-curative, high risk, because: lymphatic or venous invasion, ' +
        'vertical margin involved.',
      'complete',
    ],
    [
      decided('jges-jgca-2021', 'eCuraC-2', {
        group: 'non-curative',
        reasons: [reason('x', 'undifferentiated-not-r0')],
      }),
      'complete',
      'Curability by JGES and JGCA 2021: eCura C-2, because: undifferentiated without R0.',
      'complete',
    ],
    [
      decided('jges-jgca-2021', 'eCuraA'),
      'complete',
      'Curability by JGES and JGCA 2021: eCura A.',
      'complete',
    ],
    [
      decided('jges-jgca-2021', 'eCuraA'),
      'rectum',
      'Preliminary curability by JGES and JGCA 2021: eCura A.',
      'rectum-interim',
    ],
    [
      open('pathology'),
      'rectum',
      'Curability: open until the final report is back.',
      'rectum-interim',
    ],
    [open('pathology'), 'complete', 'Curability: open until pathology is back.'],
    [open(), 'complete', 'Curability by ESGE 2022: open, not known: ly, vm.'],
    [
      open('pathology'),
      'colon-specimen-not-retrieved',
      'Curability: no class, because there is no specimen.',
    ],
  ])('%#', (verdict, example, sentence, report) => {
    expect(verdictSentence(contextOf(example, report), alone(verdict))).toBe(sentence);
  });
});

interface Example {
  readonly id: string;
  readonly inputs_json: string;
  readonly rule_or_score: keyof typeof RULE_SETS;
  readonly expected: string;
  readonly source: string;
}

const EXAMPLES = parse<Example>(readFileSync('tests/published/worked-examples.csv', 'utf8'), {
  columns: true,
}).filter(({ rule_or_score }) => Object.hasOwn(RULE_SETS, rule_or_score));

describe('the published worked examples as Observations', () => {
  let peers: readonly Peer[] = [];
  beforeAll(() => {
    peers = [officialSchema(), medplum(publishedProfiles()), fhirJs()];
  });
  /** Complaints of the validators of others; a link into the Bundle is all they may not know. */
  const complaints = (observation: Observation) =>
    peers
      .flatMap(({ validate }) => validate(observation))
      .filter((message) => !message.includes('Invalid reference: got "urn:uuid:'));

  const observationOf = ({ rule_or_score, inputs_json }: Example): Observation => {
    const told: Draft = JSON.parse(inputs_json);
    const organ = { gastric: 'stomach', colorectal: 'colon' }[String(told.tumour)] ?? 'oesophagus';
    const asked = organ === 'stomach' || organ === 'colon' ? organ : 'oesophagus';
    return mapped(assessCurability(told, asked, rule_or_score, false));
  };

  it('are many, of every class that is sent but those of the Korean set and one of Japan', () => {
    expect(EXAMPLES.length).toBeGreaterThan(50);
    const sent = new Set(EXAMPLES.map(({ expected }) => expected.split(';')[0]));
    const wanted = Object.entries(CURABILITY_CLASSES)
      .filter(([set]) => set !== 'kr-2020')
      .flatMap(([, classes]) => Object.keys(classes));
    expect(wanted.filter((word) => !sent.has(word))).toEqual(['curative']);
  });

  it.each(EXAMPLES)('$id: $expected ($source)', (example) => {
    const observation = observationOf(example);
    const [word = ''] = example.expected.split(';');
    const code = CURABILITY_CLASSES[example.rule_or_score]?.[word]?.local?.code;
    expect(codesOf(observation.valueCodeableConcept, 'curability')).toEqual(
      word === 'indeterminate' ? [] : [code],
    );
    expect(brokenBy(observation)).toEqual([]);
    expect(complaints(observation)).toEqual([]);
  });

  it('would not pass with a wrong status, a class without its group, or no method', () => {
    const [example] = EXAMPLES;
    if (example === undefined) throw new Error('there is an example');
    const { method: _method, ...nameless } = observationOf(example);
    expect(brokenBy(nameless)).toContain('dr-r-rul-1');
    expect(complaints(nameless)).not.toEqual([]);
    const awaited = mapped(alone(open('pathology')), WAITS);
    expect(brokenBy(awaited)).toEqual([]);
    expect(brokenBy({ ...awaited, status: 'final' })).toEqual(['dr-r-cur-2']);
    const { valueCodeableConcept } = mapped(alone(NON_CURATIVE));
    const coding = valueCodeableConcept?.coding?.slice(0, 1);
    const ungrouped = { ...mapped(alone(NON_CURATIVE)), valueCodeableConcept: { coding } };
    expect(brokenBy(ungrouped)).toEqual(['dr-r-cur-1']);
  });
});

/** The keyed link to an Observation of the example. */
function urlOf(key: string): string | undefined {
  const inputs = new Set([key]);
  return toVerdict(WAITS, alone(open()), inputs).resource.derivedFrom?.[0]?.reference;
}
