import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { toBundle } from '../../src/mapping/index.js';
import type { Draft } from '../support/consistent-case.js';
import { graphFaults } from './graph.js';
import {
  bundleOfRevisions,
  example,
  find,
  keyOf,
  resourcesOf,
  SETTINGS,
  versionOf,
} from './records.js';

/** The same case again, as revision 3, with a change. */
function revised(change: (next: Draft) => void): readonly [Draft, Draft] {
  const first = example('complete');
  const next = structuredClone(first);
  next.revision = first.revision + 1;
  next.sentAt = '2026-06-09T19:40:00+02:00';
  change(next);
  return [first, next];
}

const inError = (bundle: Bundle): readonly string[] =>
  resourcesOf(bundle)
    .filter(
      ({ status, verificationStatus }) =>
        (status ?? verificationStatus?.coding[0].code) === 'entered-in-error',
    )
    .map((resource) => `${resource.resourceType} ${keyOf(resource)}`);

const correctedItems = (bundle: Bundle): readonly string[] =>
  resourcesOf(bundle)
    .filter(({ status }) => status === 'corrected')
    .map(keyOf);

const isSound = (bundle: Bundle): void => {
  expect(graphFaults(bundle)).toEqual([]);
  expect(checkBundle(bundle)).toMatchObject({ ok: true });
};

describe('what a later revision no longer says is entered in error (FHIR R4, status codes)', () => {
  it.each<[string, (next: Draft) => void, readonly string[]]>([
    ['a knife', (next) => next.equipment.knives.pop(), ['Device knife-hook-or-triangle']],
    ['a vessel', (next) => next.safety.vessels.pop(), ['Procedure vessel.3']],
    ['an image', (next) => next.lesion.images.pop(), ['Media image.6']],
    ['a finding', (next) => delete next.after.diet, ['Observation diet']],
    ['a drug', (next) => next.before.antithrombotics.pop(), ['MedicationStatement aspirin']],
  ])('%s', (_name, change, gone) => {
    const bundle = bundleOfRevisions(
      ...revised((next) => {
        change(next);
        delete next.after.dietFromOn;
      }),
    );
    expect(inError(bundle)).toEqual(gone);
    isSound(bundle);
  });

  it('a perforation: its Condition loses the clinical status (R4 rule con-5)', () => {
    const [first, next] = revised((n) => (n.safety.perforation = { occurred: false }));
    first.safety.perforation = { occurred: true, sizeMm: 2 };
    const bundle = bundleOfRevisions(first, next);
    const condition = find(bundle, 'Condition', 'perforation');
    expect(condition.verificationStatus.coding[0].code).toBe('entered-in-error');
    expect(condition.clinicalStatus).toBeUndefined();
    expect(find(bundle, 'Procedure', '').complicationDetail).toBeUndefined();
    expect(find(bundle, 'Observation', 'perforation').status).toBe('corrected');
    isSound(bundle);
  });

  it('a specimen, with its request', () => {
    const bundle = bundleOfRevisions(...revised((n) => (n.specimen = { retrieved: false })));
    expect(inError(bundle)).toEqual(
      expect.arrayContaining(['Specimen specimen', 'ServiceRequest pathology']),
    );
    expect(find(bundle, 'Observation', 'specimen-retrieved').status).toBe('corrected');
    isSound(bundle);
  });

  it('and nothing of it where nothing was dropped', () => {
    const bundle = bundleOfRevisions(...revised(() => {}));
    expect(inError(bundle)).toEqual([]);
    expect(correctedItems(bundle)).toEqual([]);
    isSound(bundle);
  });
});

describe('an Observation is corrected', () => {
  it('where a later revision says something else, and there alone', () => {
    const bundle = bundleOfRevisions(...revised((n) => (n.dissection.fibrosis = 'F2')));
    expect(correctedItems(bundle)).toEqual(['fibrosis']);
    isSound(bundle);
  });

  it('and stays so in a third revision that agrees with the second', () => {
    const [first, second] = revised((n) => (n.dissection.fibrosis = 'F2'));
    const third = { ...structuredClone(second), revision: second.revision + 1 };
    expect(correctedItems(bundleOfRevisions(first, second, third))).toEqual(['fibrosis']);
  });

  it('where a number follows from others that were corrected', () => {
    const bundle = bundleOfRevisions(...revised((n) => (n.specimen.longAxisMm = 58)));
    expect(correctedItems(bundle)).toEqual(
      expect.arrayContaining(['specimen-dimensions', 'specimen-area', 'dissection-speed']),
    );
    isSound(bundle);
  });
});

describe('a verdict and scores after a correction', () => {
  const statusOf = (bundle: Bundle, key: string): unknown =>
    find(bundle, 'Observation', key).status;
  /** The case with another lesion, so that other scores concern it. */
  const moved = (name: string, change: (next: Draft) => void): Bundle => {
    const first = example(name);
    const next = structuredClone(first);
    next.revision = first.revision + 1;
    change(next);
    return bundleOfRevisions(first, next);
  };

  it('scores that no longer concern the organ are entered in error, new ones are final', () => {
    const bundle = moved('rectum', (next) => {
      next.lesion = { ...example('stomach-two-lesions-first').lesion };
    });
    const scores = (status: string): readonly string[] =>
      resourcesOf(bundle)
        .filter((r) => r.status === status && /-score|-risk\./.test(keyOf(r)))
        .map(keyOf);
    expect(scores('entered-in-error')).toEqual([
      'bleeding-risk-score.limoges',
      'bleeding-risk-score.kr-colorectal-bleeding',
      'difficulty-score.colorectal-difficulty-2021',
      'difficulty-score.colorectal-difficulty-2023',
      'difficulty-score.colorectal-difficulty-matsumoto-2019',
    ]);
    expect(scores('final')).toEqual(['bleeding-risk-score.best-j']);
    isSound(bundle);
  });

  it('a score with other points is corrected', () => {
    const bundle = moved('rectum', (next) => (next.lesion.longAxisMm = 49));
    expect(statusOf(bundle, 'bleeding-risk-score.limoges')).toBe('corrected');
    isSound(bundle);
  });

  it('a verdict that was preliminary is final for the first time, not corrected', () => {
    const bundle = moved('complete', (next) => (next.specimen = { retrieved: false }));
    const verdict = find(bundle, 'Observation', 'curability');
    expect(verdict.status).toBe('final');
    expect(verdict.dataAbsentReason.coding[0].code).toBe('not-performed');
    isSound(bundle);
  });

  it('a verdict that was final and now waits for pathology is preliminary', () => {
    const first = { ...example('complete'), specimen: { retrieved: false } };
    const found = { ...example('complete'), revision: first.revision + 1 };
    const again = bundleOfRevisions(first, found);
    expect(statusOf(again, 'curability')).toBe('preliminary');
    expect(find(again, 'DiagnosticReport', 'endoscopy').status).toBe('preliminary');
    isSound(again);
  });

  it('a class that becomes another class is corrected', () => {
    const bundle = moved('stomach-abandoned', (next) => (next.lesion.tumour = 'other'));
    const verdict = find(bundle, 'Observation', 'curability');
    expect(verdict.valueCodeableConcept.coding[0].code).toBe('no-rule');
    expect(verdict.status).toBe('corrected');
    expect(find(bundle, 'DiagnosticReport', 'endoscopy').conclusionCode).toEqual([
      verdict.valueCodeableConcept,
    ]);
    isSound(bundle);
  });
});

describe('the order in which revisions arrive', () => {
  const [first, second] = revised((n) => {
    n.equipment.knives.pop();
    n.dissection.fibrosis = 'F2';
  });
  const third = structuredClone(second);
  third.revision = second.revision + 1;
  third.sentAt = '2026-06-10T08:00:00+02:00';
  third.safety.vessels.pop();
  const [a, b, c] = [first, second, third].map((document) => JSON.stringify(document));

  it.each([
    [b, a, c],
    [c, b, a],
    [a, c, b],
    [b, c, a],
    [c, a, b],
  ])('does not change a byte (permutation %#)', (...order) => {
    const inOrder = [a, b, c].map(String);
    const expected = JSON.stringify(toBundle(versionOf(...inOrder), SETTINGS));
    expect(JSON.stringify(toBundle(versionOf(...order.map(String)), SETTINGS))).toBe(expected);
  });

  it('would show if it did: another last revision gives other bytes', () => {
    const [two, three] = [
      [a, b],
      [a, b, c],
    ].map((texts) => JSON.stringify(toBundle(versionOf(...texts.map(String)), SETTINGS)));
    expect(two).not.toBe(three);
  });

  it('gives an update of the third state, with the tag of that state on every resource', () => {
    const bundle = toBundle(versionOf(String(c), String(a), String(b)), SETTINGS);
    const tags = resourcesOf(bundle).map(({ meta }) => meta.tag[0].code);
    expect(new Set(tags)).toEqual(new Set(['3']));
    expect(find(bundle, 'Provenance', '').activity.coding[0].code).toBe('UPDATE');
    isSound(bundle);
  });
});
