import type { Bundle } from 'fhir/r4.js';
import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import { describe, expect, it } from 'vitest';
import { checkPublication } from '../../src/conformance/index.js';
import { toPublication } from '../../src/measure/index.js';
import type { OutcomeQuery } from '../../src/outcomes/index.js';
import { fhirJs, medplum, officialSchema, type Peer } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import { CASES, HIDE, REPORTING, reported, YEAR } from './reported.js';

const PEERS: readonly Peer[] = [officialSchema(), medplum(publishedProfiles()), fhirJs()];
const SECRET = 'an invented secret of thirty-two characters';

const publication = (query: OutcomeQuery = YEAR, secret = SECRET, reporting = REPORTING): Bundle =>
  toPublication(reported(CASES, query, HIDE, reporting), secret);

const said = (bundle: Bundle, path: string) =>
  fhirpath.evaluate(structuredClone(bundle), path, {}, r4, { async: false });

/** The type of an entry says only that it is some resource. */
const asFhir = (resource: unknown) => JSON.parse(JSON.stringify(resource));

const ids = (bundle: Bundle) => said(bundle, 'entry.fullUrl');
const urls = (bundle: Bundle) => said(bundle, 'entry.request.url');
const keysIn = (bundle: unknown) => {
  const checked = checkPublication(bundle);
  return checked.ok ? [] : [...new Set(checked.problems.map(({ rule }) => rule))];
};

describe('outcomes as a transaction', () => {
  it('pass the gate', () => {
    expect(keysIn(publication())).toEqual([]);
    expect(keysIn(publication({ ...YEAR, by: ['organ', 'operator'] }))).toEqual([]);
  });

  it.each(PEERS)('are valid R4 by $name', ({ validate }) => {
    const [measure, report] = publication().entry ?? [];
    expect(measure?.resource?.resourceType).toBe('Measure');
    for (const one of [measure, report]) expect(validate(asFhir(one?.resource))).toEqual([]);
  });

  // FHIR R4 (4.0.1), http: conditional update (no id in the body, a search as URL) and
  // transaction; Bundle, bdl-3 and bdl-7. The fourth is project definition.
  const CONSTRAINTS = [
    'entry.resource.id.empty()',
    'entry.all(request.exists())',
    "entry.request.all(method = 'PUT' and url.matches('^[A-Z][A-Za-z]+[?]identifier=[^&= ]+$'))",
    "entry.fullUrl.isDistinct() and entry.fullUrl.all(matches('^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$'))",
  ];
  const broken: readonly [string, (bundle: Bundle) => void][] = [
    [CONSTRAINTS[0] ?? '', ({ entry }) => Object.assign(entry?.[0]?.resource ?? {}, { id: 'x' })],
    [CONSTRAINTS[1] ?? '', ({ entry }) => delete entry?.[1]?.request],
    [CONSTRAINTS[2] ?? '', ({ entry }) => Object.assign(entry?.[1]?.request ?? {}, { url: 'A' })],
    [CONSTRAINTS[3] ?? '', ({ entry }) => Object.assign(entry?.[1] ?? {}, entry?.[0])],
  ];
  it.each(broken)('hold %s, which a fault would break', (constraint, spoil) => {
    const bundle = publication();
    expect(said(bundle, constraint)).toEqual([true]);
    spoil(bundle);
    expect(said(bundle, constraint)).toEqual([false]);
  });

  // FHIR R4 (4.0.1), search, "Escaping Search Parameters": a value with one of these needs escaping,
  // which not every server undoes.
  it('are found by a system and a value that need no escaping', () => {
    for (const url of urls(publication({ ...YEAR, by: ['organ', 'operator'] }))) {
      const token = new URLSearchParams(String(url).split('?')[1]).get('identifier') ?? '';
      expect(token.split('|')).toHaveLength(2);
      expect(token).not.toMatch(/[$,\\]/);
    }
  });

  it('keep their identity when they are counted again', () => {
    const later = { ...REPORTING, countedAt: '2027-02-02T00:00:00Z' };
    const again = publication(YEAR, SECRET, later);
    expect(ids(again)).toEqual(ids(publication()));
    expect(urls(again)).toEqual(urls(publication()));
    expect(said(again, 'entry.resource.date')).not.toEqual(
      said(publication(), 'entry.resource.date'),
    );
  });

  it.each([
    ['period', publication({ ...YEAR, from: '2024-01-01' })],
    ['grouping', publication({ ...YEAR, by: ['organ'] })],
    [
      'unit',
      publication(YEAR, SECRET, { ...REPORTING, identifierBase: 'https://other.example/d' }),
    ],
  ])('stand beside those of another %s, under the same Measure', (_what, other) => {
    const [measure, report] = ids(publication());
    expect(ids(other)[0]).toBe(measure);
    expect(ids(other)[1]).not.toBe(report);
    expect(urls(other)[0]).toBe(urls(publication())[0]);
    expect(urls(other)[1]).not.toBe(urls(publication())[1]);
  });

  it('are the same by two groups in either order', () => {
    const one = publication({ ...YEAR, by: ['organ', 'operator'] });
    const other = publication({ ...YEAR, by: ['operator', 'organ'] });
    expect(ids(one)).toEqual(ids(other));
  });

  it('have ids of reports that nobody guesses without the secret, and one id of the Measure', () => {
    const other = ids(publication(YEAR, 'another secret of more than 32 characters'));
    expect(other[0]).toBe(ids(publication())[0]);
    expect(other[1]).not.toBe(ids(publication())[1]);
  });
});

describe('the gate of outcomes', () => {
  // The rules: FHIR R4 (4.0.1), Bundle, Measure (mea-1), MeasureReport.measure with its version;
  // the profile of the report; project definition for what may be in it.
  it.each<[string, (bundle: Bundle) => unknown]>([
    ['publication-entries', ({ entry }) => entry?.reverse()],
    ['publication-entries', ({ entry }) => entry?.pop()],
    ['publication-entries', ({ entry }) => entry?.push(structuredClone(entry[1] ?? {}))],
    [
      'publication-measure',
      ({ entry }) => Object.assign(entry?.[0]?.resource ?? {}, { version: '2' }),
    ],
    [
      'r4-resource-type',
      ({ entry }) => Object.assign(entry?.[0] ?? {}, { resource: { resourceType: 'Patient' } }),
    ],
    [
      'r4-required',
      ({ entry }) =>
        Object.assign(entry?.[1] ?? {}, { resource: { resourceType: 'MeasureReport' } }),
    ],
    ['bdl-3', ({ entry }) => delete entry?.[0]?.request],
    [
      'mea-1',
      ({ entry }) =>
        Object.assign(entry?.[0]?.resource ?? {}, { group: [{ stratifier: [{ id: 'a' }] }] }),
    ],
    [
      'dr-r-out-9',
      ({ entry }) =>
        Object.assign(entry?.[1]?.resource ?? {}, {
          period: { start: '2025-01-01', end: '2025-12' },
        }),
    ],
    [
      'profile-shape',
      ({ entry }) => Object.assign(entry?.[1]?.resource ?? {}, { type: 'individual' }),
    ],
  ])('finds %s', (rule, spoil) => {
    const bundle = publication();
    spoil(bundle);
    expect(keysIn(bundle)).toEqual([rule]);
  });

  it('says where in the transaction', () => {
    const bundle = publication();
    Object.assign(bundle.entry?.[1]?.resource ?? {}, { type: 'individual' });
    const checked = checkPublication(bundle);
    expect(!checked.ok && checked.problems[0]?.pointer).toMatch(/^\/entry\/1\/resource/);
  });

  it('refuses what is no Bundle at all', () => {
    for (const value of [undefined, null, 7, [], {}]) expect(keysIn(value)).not.toEqual([]);
  });
});
