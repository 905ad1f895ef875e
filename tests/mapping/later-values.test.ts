import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { toBundle } from '../../src/mapping/index.js';
import { sampleEvents, sampleExaminations } from '../support/generate-later.js';
import { explain, inputLeaves, type Tables } from './explain.js';
import { graphFaults } from './graph.js';
import { LATER } from './later.js';
import { EVENT_TABLES, EXAMINATION_TABLES, scopeOf } from './later-sources.js';
import { find, keyOf, resourcesOf, SETTINGS, versionOf } from './records.js';

const HOW_MANY = 90;
const named = (kind: string, pairs: ReturnType<typeof sampleEvents>) =>
  pairs.map((pair, i) => ({
    name: `generated ${kind} ${i + 1}`,
    texts: pair.map((document) => JSON.stringify(document)),
  }));
const examplesOf = (folder: string) =>
  LATER.filter(({ name }) => name.startsWith(folder)).map(({ name, esdCase, text }) => ({
    name,
    texts: [esdCase, text],
  }));

const EVENTS = [...examplesOf('events/'), ...named('event', sampleEvents(HOW_MANY))];
const EXAMINATIONS = [
  ...examplesOf('examinations/'),
  ...named('examination', sampleExaminations(HOW_MANY)),
];

/** What says that an event happened, or that there are new lesions, is no field by itself. */
const SAID_BY_ITSELF =
  /^Observation (readmission|emergency-visit|lost-to-follow-up|follow-up-declined|metachronous-lesions|death|scar-treatment)\./;

function unexplained(
  texts: readonly string[],
  tables: Tables,
  change: (bundle: Bundle) => void = () => {},
) {
  const version = versionOf(...texts);
  const bundle: Bundle = structuredClone(toBundle(version, SETTINGS));
  change(bundle);
  const [message] = [...version.now.events, ...version.now.examinations];
  const { lost, stray } = explain(
    version,
    SETTINGS,
    bundle,
    tables,
    scopeOf(message?.fields ?? {}),
  );
  const values = stray.filter((place) => /\/value[A-Z]/.test(place));
  return { lost, stray: values.filter((place) => !SAID_BY_ITSELF.test(place)) };
}

describe.each([
  ['event', EVENTS, EVENT_TABLES],
  ['examination', EXAMINATIONS, EXAMINATION_TABLES],
] as const)(
  'every field of an %s is in the record, and its findings say nothing else',
  (_kind, samples, tables) => {
    it('in examples and generated messages of every shape, whose Bundles pass the gate', () => {
      expect(samples.length).toBeGreaterThan(60);
      const faults = samples.flatMap(({ name, texts }) => {
        const { lost, stray } = unexplained(texts, tables);
        const bundle = toBundle(versionOf(...texts), SETTINGS);
        const gate = checkBundle(bundle);
        const refused = gate.ok ? [] : gate.problems.map(({ rule }) => rule);
        return [...lost, ...stray, ...refused, ...graphFaults(bundle)].map(
          (fault) => `${name}: ${fault}`,
        );
      });
      expect(faults).toEqual([]);
    }, 120_000);

    it('is asked of every field that the contract has', () => {
      const told = new Set(
        samples.flatMap(({ texts }) =>
          inputLeaves(JSON.parse(texts.at(-1) ?? '')).map(({ pattern }) => pattern),
        ),
      );
      const known = new Set([...tables.fields, ...tables.journalOnly].map(({ at }) => at));
      expect([...told].filter((pattern) => !known.has(pattern))).toEqual([]);
      expect([...known].filter((pattern) => !told.has(pattern))).toEqual([]);
    });
  },
);

describe('the account of what came later rejects', () => {
  const textsOf = (name: string) => {
    const found = [...EVENTS, ...EXAMINATIONS].find((one) => one.name === name);
    if (found === undefined) throw new Error(`no example ${name}`);
    return found.texts;
  };
  const keyFrom = (bundle: Bundle, start: string): string =>
    resourcesOf(bundle)
      .map(keyOf)
      .find((key) => key.startsWith(`${start}.`)) ?? '';
  const observation = (bundle: Bundle, start: string) =>
    find(bundle, 'Observation', keyFrom(bundle, start));

  it.each<[string, string, (bundle: Bundle) => void]>([
    [
      'a number',
      'events/stomach-bleeding.json',
      (b) => (observation(b, 'haemoglobin-course').component[0].valueQuantity.value = 9),
    ],
    [
      'a word',
      'events/stomach-bleeding.json',
      (b) => (observation(b, 'event-course').component[1].valueCodeableConcept.text = 'None'),
    ],
    [
      'a decision',
      'events/rectum-meeting.json',
      (b) => (observation(b, 'meeting-decision').valueCodeableConcept.text = 'Surgery'),
    ],
    [
      'a finding of an examination',
      'examinations/oesophagus-barrett.json',
      (b) => (observation(b, 'barrett-left').component[0].valueQuantity.value = 5),
    ],
  ])('%s that differs', (_name, name, change) => {
    const tables = name.startsWith('events/') ? EVENT_TABLES : EXAMINATION_TABLES;
    const { lost, stray } = unexplained(textsOf(name), tables, change);
    expect(lost).not.toEqual([]);
    expect(stray).not.toEqual([]);
  });
});
