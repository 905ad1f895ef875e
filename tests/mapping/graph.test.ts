import type { Bundle } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { toBundle } from '../../src/mapping/index.js';
import { fhirJs, medplum, officialSchema, type Peer, peerErrors } from '../conformance/peers.js';
import type { Draft } from '../support/consistent-case.js';
import { graphFaults } from './graph.js';
import { bundleOf, EXAMPLES, example, generated, SETTINGS, versionOf } from './records.js';

const HOW_MANY = 500;
/** The validators of others are slow; the gate sees every case. */
const FOR_PEERS = 40;

/** That a stopped drug has no last dose is a gap in what was told: a warning, never a refusal. */
const TOLD_GAPS = ['dr-med-2'];

function gateFaults(bundle: Bundle): readonly string[] {
  const result = checkBundle(bundle);
  const warnings = result.warnings.filter(({ rule }) => !TOLD_GAPS.includes(rule));
  return [...(result.ok ? [] : result.problems), ...warnings].map(
    ({ rule, pointer }) => `${rule} ${pointer}`,
  );
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
      const found = [...graphFaults(bundle), ...gateFaults(bundle)];
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

  it(`find no error in the Bundles of ${FOR_PEERS} generated cases`, () => {
    const errors = generated(FOR_PEERS).flatMap(({ text }) =>
      peerErrors(peers, JSON.parse(JSON.stringify(bundleOf(text)))),
    );
    expect(errors).toEqual([]);
  }, 120_000);

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
