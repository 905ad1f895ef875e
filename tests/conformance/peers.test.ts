import { describe, expect, it } from 'vitest';
import { type Edit, edited } from '../faults/edit.js';
import {
  allPeerErrors,
  fhirJs,
  medplum,
  officialSchema,
  PEER_MISTAKES,
  type Peer,
  peerErrors,
} from './peers.js';
import { publishedProfiles } from './published.js';
import { SAMPLES } from './sample-variants.js';

const PEERS: readonly Peer[] = [officialSchema(), medplum(publishedProfiles()), fhirJs()];

describe.each(PEERS)('the validator $name', (peer) => {
  it.each(Object.entries(SAMPLES))('finds no fault in the sample "%s"', (_name, sample) => {
    expect(peerErrors([peer], sample())).toEqual([]);
  });

  it('would find one', () => {
    const broken = edited(SAMPLES.pending(), [{ at: 'Procedure.esd/subject' }]);
    expect(peerErrors([peer], broken)).not.toEqual([]);
  });
});

describe('the published profiles, under a validator of others', () => {
  const peers = [medplum(publishedProfiles())];

  it.each<[string, Edit]>([
    ['a body site', { at: 'Procedure.esd/bodySite' }],
    ['a coding of our own', { at: 'Observation.fibrosis/code', set: { text: 'Fibrosis' } }],
    ['the request of a specimen', { at: 'Specimen.A/request' }],
    ['a dosage', { at: 'MedicationAdministration.injectate/dosage' }],
    ['where an image belongs to', { at: 'Media.bed/partOf' }],
    ['an activity', { at: 'Provenance.state-1/activity' }],
  ])('demand %s', (_name, edit) => {
    expect(peerErrors(peers, edited(SAMPLES.pending(), [edit]))).not.toEqual([]);
  });
});

describe('what is not believed of the validators', () => {
  it.each(PEER_MISTAKES)('$message is met, and has a reason', ({ message, reason }) => {
    const raw = allPeerErrors(PEERS, SAMPLES.pending());
    expect(raw.some((error) => message.test(error.message))).toBe(true);
    expect(reason.length).toBeGreaterThan(40);
  });
});
