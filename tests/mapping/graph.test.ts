import { readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { toBundle } from '../../src/mapping/index.js';
import { fhirJs, medplum, officialSchema, type Peer, peerErrors } from '../conformance/peers.js';
import type { Draft } from '../support/consistent-case.js';
import { graphFaults } from './graph.js';
import {
  bundleOf,
  EXAMPLES,
  example,
  generated,
  type Named,
  SETTINGS,
  versionOf,
} from './records.js';

const HOW_MANY = 500;
/** The zone that the runner of all tests takes first. */
const FIRST_ZONE = /const ZONES = \['([^']+)'/.exec(
  readFileSync('scripts/test-in-time-zones.mjs', 'utf8'),
)?.[1];
/**
 * The validators of others take half a minute of one core for all cases, so they see all of them
 * in the first time zone and as many as this in the other four, and in a run without TZ. Our own
 * gate sees every case in every zone.
 */
const FOR_PEERS_ELSEWHERE = 40;
const FOR_PEERS = process.env['TZ'] === FIRST_ZONE ? HOW_MANY : FOR_PEERS_ELSEWHERE;
/** Cases of one test, so that each is short. */
const PORTION = 20;

/**
 * Warnings, never refusals: that a stopped drug has no last dose is a gap in what was told; a case
 * that tells everything has more entries than the smallest server takes.
 */
const TOLD_GAPS = ['dr-med-2'];
const VERY_FULL = ['dr-bdl-15'];

function gateFaults(bundle: Bundle, allowed = TOLD_GAPS): readonly string[] {
  const result = checkBundle(bundle);
  const warnings = result.warnings.filter(({ rule }) => !allowed.includes(rule));
  return [...(result.ok ? [] : result.problems), ...warnings].map(
    ({ rule, pointer }) => `${rule} ${pointer}`,
  );
}

function portions(cases: readonly Named[]) {
  const starts = Array.from({ length: Math.ceil(cases.length / PORTION) }, (_, i) => i * PORTION);
  return starts.map((start) => {
    const portion = cases.slice(start, start + PORTION);
    return { from: start + 1, to: start + portion.length, portion };
  });
}

describe('the Bundle of an example', () => {
  it.each(EXAMPLES)('$name is a sound graph and passes the gate', ({ text }) => {
    const bundle = bundleOf(text);
    expect(graphFaults(bundle)).toEqual([]);
    expect(gateFaults(bundle)).toEqual([]);
  });

  it.each(EXAMPLES)('$name gives the same bytes every time', ({ text }) => {
    expect(JSON.stringify(bundleOf(text))).toBe(JSON.stringify(bundleOf(text)));
  });
});

describe(`the Bundles of ${HOW_MANY} generated cases`, () => {
  it('are sound graphs, pass the gate, and are the same bytes every time', () => {
    const faults = generated(HOW_MANY).flatMap(({ name, text }) => {
      const bundle = bundleOf(text);
      const same = JSON.stringify(bundleOf(text)) === JSON.stringify(bundle);
      const found = [...graphFaults(bundle), ...gateFaults(bundle, [...TOLD_GAPS, ...VERY_FULL])];
      return [...found, ...(same ? [] : ['other bytes'])].map((fault) => `${name}: ${fault}`);
    });
    expect(faults).toEqual([]);
  }, 120_000);
});

describe('the validators of others', () => {
  let peers: readonly Peer[] = [];
  beforeAll(() => {
    peers = [officialSchema(), medplum(), fhirJs()];
  });

  it.each(EXAMPLES)('find no error in the Bundle of $name', ({ text }) => {
    expect(peerErrors(peers, JSON.parse(JSON.stringify(bundleOf(text))))).toEqual([]);
  });

  const cases = generated(FOR_PEERS);
  it.each(portions(cases))(
    'find no error in the Bundles of generated cases $from to $to',
    ({ portion }) => {
      const errors = portion.flatMap(({ name, text }) =>
        peerErrors(peers, JSON.parse(JSON.stringify(bundleOf(text)))).map((error) => ({
          name,
          ...error,
        })),
      );
      expect(errors).toEqual([]);
    },
  );

  it('see every generated case in the first time zone, and some in each other', () => {
    const seen = portions(cases).flatMap(({ portion }) => portion.map(({ text }) => text));
    expect(FIRST_ZONE).toBe('UTC');
    expect(seen).toHaveLength(process.env['TZ'] === 'UTC' ? 500 : 40);
    expect(new Set(seen).size).toBe(seen.length);
  });

  it('find no error where much is entered in error and numbers carry their decimals', () => {
    const [first, next] = [example('complete'), example('complete')];
    first.safety.perforation = { occurred: true, sizeMm: 2 };
    Object.assign(next, { revision: first.revision + 1, specimen: { retrieved: false } });
    const texts = [first, next].map((document) =>
      JSON.stringify(document).replaceAll('"doseMg":80,', '"doseMg":80.0,'),
    );
    const bundle = JSON.stringify(toBundle(versionOf(...texts), SETTINGS));
    expect(bundle).toContain('entered-in-error');
    expect(bundle).toContain('quantity-precision');
    expect(peerErrors(peers, JSON.parse(bundle))).toEqual([]);
  });

  it('would find one', () => {
    const bundle = JSON.parse(JSON.stringify(bundleOf(EXAMPLES[0]?.text ?? '')));
    bundle.entry[0].resource.status = 7;
    expect(new Set(peerErrors(peers, bundle).map(({ peer }) => peer)).size).toBe(peers.length);
  });
});

describe('the look at the graph', () => {
  const [first] = EXAMPLES;
  const faulty = (change: (bundle: Draft) => void): readonly string[] => {
    const bundle = structuredClone(bundleOf(first?.text ?? ''));
    change(bundle);
    return graphFaults(bundle).map((fault) => fault.split(':')[0] ?? '');
  };

  it.each<[string, (bundle: Draft) => void]>([
    ['not one patient', ({ entry }) => (entry[1].resource.subject = { display: 'another' })],
    ['fullUrl twice', ({ entry }) => (entry[1].fullUrl = entry[0].fullUrl)],
    [
      'identifier twice',
      ({ entry }) => (entry[1].resource.identifier = entry[0].resource.identifier),
    ],
    [
      'twins',
      ({ entry }) => {
        const { resource } = entry.find(
          ({ resource: r }: Draft) => r.resourceType === 'Observation',
        );
        entry.push({ resource: { ...resource, identifier: [{ value: 'of a twin' }] } });
      },
    ],
    ['empty', ({ entry }) => (entry[0].resource.note = [])],
    [
      'leads nowhere',
      ({ entry }) =>
        (entry[0].resource.location = {
          reference: 'urn:uuid:0a1b2c3d-0000-8000-8000-000000000000',
        }),
    ],
  ])('would name: %s', (fault, change) => {
    expect(faulty(change)).toContain(fault);
  });
});
