import { beforeAll, describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { fhirJs, medplum, officialSchema, type Peer, peerErrors } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import { graphFaults } from './graph.js';
import { bundleOfTexts, REPORTED } from './reported.js';

describe('the Bundle of a case with its report', () => {
  it.each(REPORTED)('$name is a sound graph and passes the gate', ({ texts }) => {
    const bundle = bundleOfTexts(texts);
    expect(graphFaults(bundle)).toEqual([]);
    expect(checkBundle(bundle)).toMatchObject({ ok: true });
  });

  it.each(REPORTED)('$name is so where the unit signs at once', ({ texts }) => {
    const bundle = bundleOfTexts(texts, { endoscopyReport: 'sign-at-once' });
    expect(graphFaults(bundle)).toEqual([]);
    expect(checkBundle(bundle, ['dr-dr-6'])).toMatchObject({ ok: true });
  });

  it.each(REPORTED)('$name gives the same bytes in any order of arrival', ({ texts }) => {
    const expected = JSON.stringify(bundleOfTexts(texts));
    expect(JSON.stringify(bundleOfTexts([...texts].reverse()))).toBe(expected);
  });
});

describe('the validators of others', () => {
  let peers: readonly Peer[] = [];
  beforeAll(() => {
    peers = [officialSchema(), medplum(publishedProfiles()), fhirJs()];
  });

  it.each(REPORTED)('find no error in the Bundle of $name', ({ texts }) => {
    const bundle = JSON.parse(JSON.stringify(bundleOfTexts(texts)));
    expect(peerErrors(peers, bundle)).toEqual([]);
  });

  it('would find one in a finding of the pathologist', () => {
    const bundle = JSON.parse(JSON.stringify(bundleOfTexts(REPORTED[0]?.texts ?? [])));
    const finding = bundle.entry.find(({ resource }: { resource: object }) =>
      JSON.stringify(resource).includes('dr-pathology-finding"'),
    );
    finding.resource.status = 7;
    expect(new Set(peerErrors(peers, bundle).map(({ peer }) => peer)).size).toBe(peers.length);
  });
});
