import { beforeAll, describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { fhirJs, medplum, officialSchema, type Peer, peerErrors } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import { graphFaults } from './graph.js';
import { bundleOfLater, LATER } from './later.js';

describe('the record of every example of what came after a dissection', () => {
  it.each(LATER)('$name, with its case alone', ({ name }) => {
    const bundle = bundleOfLater(name.replace('.json', ''), 'alone');
    expect(graphFaults(bundle)).toEqual([]);
    expect(checkBundle(bundle)).toMatchObject({ ok: true });
  });

  it.each(LATER)('$name, with all that its case has', ({ name }) => {
    const bundle = bundleOfLater(name.replace('.json', ''));
    expect(graphFaults(bundle)).toEqual([]);
    expect(checkBundle(bundle)).toMatchObject({ ok: true });
  });
});

describe('the validators of others', () => {
  let peers: readonly Peer[] = [];
  beforeAll(() => {
    peers = [officialSchema(), medplum(publishedProfiles()), fhirJs()];
  });
  const bundleOf = (name: string) =>
    JSON.parse(JSON.stringify(bundleOfLater(name.replace('.json', ''))));

  it.each(LATER)('find no error in the record of $name', ({ name }) => {
    expect(peerErrors(peers, bundleOf(name))).toEqual([]);
  });

  it('would find one in a follow-up endoscopy', () => {
    const bundle = bundleOf('examinations/stomach-first');
    const found = bundle.entry.find(({ resource }: { resource: object }) =>
      JSON.stringify(resource).includes('dr-follow-up"'),
    );
    found.resource.status = 7;
    expect(new Set(peerErrors(peers, bundle).map(({ peer }) => peer)).size).toBe(peers.length);
  });
});
