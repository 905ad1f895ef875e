import type { Bundle } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { fhirJs, medplum, officialSchema, type Peer, peerErrors } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import type { Draft } from '../support/consistent-case.js';
import { bundleOfLater, LATER } from './later.js';
import { bundleOf, EXAMPLES, example, find, keyOf, resourcesOf, versionOf } from './records.js';
import { bundleOfTexts, REPORTED } from './reported.js';

const PEERED = [
  ...EXAMPLES.map(({ name, text }) => ({ name, texts: [text] })),
  ...REPORTED,
  ...LATER.map(({ name, all }) => ({ name, texts: all })),
];

const textsOf = (report: string): readonly string[] => {
  const found = REPORTED.find(({ name }) => name === `${report}.json`);
  if (found === undefined) throw new Error(`no report ${report}`);
  return found.texts;
};

const planned = (bundle: Bundle): readonly Draft[] =>
  resourcesOf(bundle).filter(
    ({ resourceType, intent }) => resourceType === 'ServiceRequest' && intent === 'plan',
  );

const request = (bundle: Bundle, key: string): Draft => find(bundle, 'ServiceRequest', key);

/** Key and status of each request. */
const standing = (bundle: Bundle) =>
  Object.fromEntries(planned(bundle).map((one) => [keyOf(one), one.status]));

const urlOf = (bundle: Bundle, key: string) =>
  bundle.entry?.find(({ resource }) => resource === request(bundle, key))?.fullUrl;

describe('the follow-up requests of every example', () => {
  it.each(PEERED)('$name: one a plan item, all of one plan number, each for its reason', (one) => {
    const bundle = bundleOfTexts(one.texts);
    const requests = planned(bundle);
    const asked = versionOf(...one.texts).now.plan.items.map(({ key }) => key);
    const found = requests.map(keyOf);
    expect(found).toEqual(expect.arrayContaining(asked));
    expect(new Set(found).size).toBe(found.length);
    for (const { reasonReference, supportingInfo, requisition } of requests) {
      expect(reasonReference).toHaveLength(1);
      expect(supportingInfo).toHaveLength(1);
      expect(requisition.value).toMatch(/^[0-9a-f-]{36}$/);
    }
    for (const { key, due, says } of versionOf(...one.texts).now.plan.items) {
      const { occurrencePeriod, note } = request(bundle, key);
      expect([occurrencePeriod?.start, occurrencePeriod?.end]).toEqual([
        due?.earliest,
        due?.latest,
      ]);
      expect(note.map(({ text }: Draft) => text)).toEqual(expect.arrayContaining([...says]));
    }
    const active = requests.filter(({ status }) => status === 'active');
    expect(new Set(active.map(({ requisition }) => requisition.value)).size).toBeLessThan(2);
  });

  describe('under the validators of others', () => {
    let peers: readonly Peer[] = [];
    beforeAll(() => {
      peers = [officialSchema(), medplum(publishedProfiles()), fhirJs()];
    });
    const only = (bundle: Bundle): Bundle => ({
      resourceType: 'Bundle',
      type: 'collection',
      entry: planned(bundle).map((one) => ({ resource: JSON.parse(JSON.stringify(one)) })),
    });

    it.each(PEERED)('$name is without an error', ({ texts }) => {
      expect(peerErrors(peers, only(bundleOfTexts(texts)))).toEqual([]);
    });

    it('one would be found: a request without an intent, one of no kind of ours', () => {
      const bundle = only(bundleOfTexts(textsOf('colon-caecum')));
      const [first] = resourcesOf(bundle);
      Reflect.deleteProperty(first ?? {}, 'intent');
      expect(peerErrors(peers, bundle)).not.toEqual([]);
    });
  });
});

// Dates by hand from the day of the dissection; months are calendar months.
describe('windows', () => {
  it.each([
    // Source: ESGE and ESDO 2019, abstract: after a low-risk T1 cancer at 1 year. Of 2026-03-03.
    ['colon-caecum', 'COL-4.1', '2027-03-03', '2027-03-03'],
    // Source: ESGE polypectomy 2020: 3 years after en bloc resection. Of 2026-03-10.
    ['colon-sigmoid', 'COL-1.1', '2029-03-10', '2029-03-10'],
    // Source: the same: 3 to 6 months after piecemeal resection. Of 2026-03-24.
    ['colon-piecemeal', 'COL-2.1', '2026-06-24', '2026-09-24'],
    // Source: ESGE ESD 2022, from memory: 3 to 6 months. Of 2026-02-03.
    ['stomach-differentiated', 'GAS-1.1', '2026-05-03', '2026-08-03'],
    // Source: ESGE duodenum 2021, second source: 3 months. Of 2026-02-24.
    ['duodenum', 'DUO-1.1', '2026-05-24', '2026-05-24'],
    // Common practice, no source: a meeting 2 to 4 weeks after the report of 2026-02-19.
    ['stomach-undifferentiated', 'meeting.1', '2026-03-05', '2026-03-19'],
  ])('%s asks for %s from %s to %s', (report, key, start, end) => {
    expect(request(bundleOfTexts(textsOf(report)), key)).toMatchObject({
      status: 'active',
      intent: 'plan',
      occurrencePeriod: { start, end },
    });
  });
});

describe('statuses', () => {
  it('drafts what may follow while pathology is awaited', () => {
    expect(standing(bundleOf(JSON.stringify(example('colon-caecum'))))).toEqual({
      'pathology.1': 'active',
      'provisional.1': 'draft',
    });
  });

  it('replaces the draft when pathology is back', () => {
    const bundle = bundleOfTexts(textsOf('colon-caecum'));
    expect(standing(bundle)).toEqual({
      'pathology.1': 'completed',
      'provisional.1': 'revoked',
      'COL-4.1': 'active',
    });
    const { replaces } = request(bundle, 'COL-4.1');
    expect(replaces).toMatchObject([{ reference: urlOf(bundle, 'provisional.1') }]);
    expect(JSON.stringify(request(bundle, 'provisional.1').note)).toContain(
      'Pathology has arrived.',
    );
  });

  it('asks for the meeting at once after a high-risk resection', () => {
    const bundle = bundleOfTexts(textsOf('stomach-undifferentiated'));
    expect(request(bundle, 'meeting.1')).toMatchObject({ status: 'active', priority: 'urgent' });
    expect(request(bundle, 'MUCOSA-advanced.1').priority).toBe('routine');
  });

  it('holds what a person confirms first', () => {
    expect(standing(bundleOfLater('events/rectum-lost'))).toMatchObject({ 'COL-3.1': 'on-hold' });
  });

  it('revokes what is to come when the patient has died, and nothing stays active', () => {
    const statuses = new Set(Object.values(standing(bundleOfLater('events/stomach-death'))));
    expect([...statuses].filter((status) => status !== 'completed')).toEqual(['revoked']);
  });

  it('revokes a request that an amended report leaves without a plan; it was no error', () => {
    const bundle = bundleOfTexts(textsOf('colon-perforation-closed-amended'));
    expect(standing(bundle)).toMatchObject({ 'COL-1.1': 'revoked', 'COL-4.1': 'active' });
  });

  it('enters every request of a withdrawn case in error', () => {
    const found = Object.values(standing(bundleOfLater('withdrawals/minimal-wrong-patient')));
    expect(new Set(found)).toEqual(new Set(['entered-in-error']));
  });
});

describe('the number of a plan', () => {
  const numberOf = (bundle: Bundle) => planned(bundle)[0]?.requisition.value;

  it('is the same in any order of arrival', () => {
    const texts = textsOf('colon-caecum');
    expect(numberOf(bundleOfTexts([...texts].reverse()))).toBe(numberOf(bundleOfTexts(texts)));
  });

  it('is another one where the plan is another', () => {
    const [esdCase = ''] = textsOf('colon-caecum');
    expect(numberOf(bundleOf(esdCase))).not.toBe(numberOf(bundleOfTexts(textsOf('colon-caecum'))));
  });
});
