import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RECORD } from './support/record.js';
import { sandboxDatabase } from './support/sandbox-database.js';
import { startServer, type TestServer } from './support/server.js';

const postgres = await sandboxDatabase();
let server: TestServer;

beforeAll(async () => {
  server = await startServer(postgres.db);
  const entry = RECORD.map((resource) => ({
    resource,
    request: { method: 'PUT', url: `${resource.resourceType}/${resource.id}` },
  }));
  const answer = await server.post('/', { resourceType: 'Bundle', type: 'transaction', entry });
  expect(answer.json).toMatchObject({ type: 'transaction-response' });
});

afterAll(async () => {
  await server.stop();
});

interface Entry {
  readonly resource: { readonly resourceType: string; readonly id: string };
  readonly search: { readonly mode: string };
}

const entries = async (type: string, form: string): Promise<readonly Entry[]> => {
  const { json, status } = await server.search(type, form);
  expect(status).toBe(200);
  return json.entry ?? [];
};

const ids = async (type: string, form: string) =>
  (await entries(type, form)).map(({ resource }) => resource.id);

const names = (all: readonly Entry[], mode: string) =>
  all
    .filter(({ search }) => search.mode === mode)
    .map(({ resource }) => `${resource.resourceType}/${resource.id}`)
    .sort();

describe('tokens, against HL7 FHIR R4 Search, section "token"', () => {
  it.each([
    ['[code]', 'code=en-bloc', ['en-bloc', 'en-bloc-2', 'foreign']],
    ['[system]|[code]', 'code=urn:items|en-bloc', ['en-bloc', 'en-bloc-2']],
    ['|[code]', 'code=|en-bloc', ['foreign']],
    ['[system]|', 'code=http://loinc.org|', ['en-bloc']],
    ['a comma as or', 'code=urn:items|bleeding,|en-bloc', ['bleeding', 'foreign']],
    ['a repetition as and', 'code=urn:items|en-bloc&code=http://loinc.org|', ['en-bloc']],
    ['two parameters as and', 'code=urn:items|en-bloc&value-concept=yes', ['en-bloc']],
    ['a code element', 'status=preliminary,registered', ['bleeding']],
    [':not, also where there is no value', 'value-concept:not=yes', ['bleeding', 'en-bloc-2']],
    [':missing', 'value-concept:missing=true', ['bleeding']],
    ['an identifier', 'identifier=urn:obs|a%5C,b', ['foreign']],
    ['an identifier with a bar', 'identifier=urn:obs|c%5C|d', ['bleeding']],
    ['_id', '_id=bleeding,foreign', ['bleeding', 'foreign']],
    ['_tag', '_tag=urn:revision|3', ['en-bloc']],
    ['_profile', '_profile=https://unit.example/StructureDefinition/a', ['en-bloc']],
  ])('%s', async (_what, form, expected) => {
    expect(await ids('Observation', form)).toEqual(expected);
  });
});

describe('references, against HL7 FHIR R4 Search, section "reference"', () => {
  it.each([
    ['Type/id', 'subject=Patient/p1', ['bleeding', 'en-bloc', 'foreign']],
    ['id alone', 'subject=p1', ['bleeding', 'en-bloc', 'foreign']],
    [':Type', 'subject:Patient=p1', ['bleeding', 'en-bloc', 'foreign']],
    [':Type of another', 'subject:Device=p1', []],
    ['patient', 'patient=p1', ['bleeding', 'en-bloc', 'foreign']],
    ['an address elsewhere', 'focus=https://other.example/fhir/Condition/9', ['bleeding']],
    [':identifier', 'performer:identifier=urn:staff|7', ['en-bloc']],
    ['several', 'part-of=Procedure/esd&focus=Condition/lesion', ['en-bloc']],
    ['specimen', 'specimen=Specimen/A', ['en-bloc-2']],
    ['encounter', 'encounter=Encounter/e', ['en-bloc']],
  ])('%s', async (_what, form, expected) => {
    expect(await ids('Observation', form)).toEqual(expected);
  });

  it('the own absolute address', async () => {
    const form = `subject=${encodeURIComponent(`${server.base}/Patient/p1`)}`;
    expect(await ids('Observation', form)).toEqual(['bleeding', 'en-bloc', 'foreign']);
  });

  it('patient leaves out a subject that is no patient', async () => {
    expect(await ids('Observation', 'subject=Device/d')).toEqual(['en-bloc-2']);
    expect(await ids('Observation', 'patient=d')).toEqual([]);
  });
});

describe('texts, against HL7 FHIR R4 Search, section "string"', () => {
  it.each([
    ['the start of a part, whatever case and accents', 'name=ev', ['p1', 'p2']],
    ['accents', 'family=muller', ['p2']],
    [':contains', 'given:contains=eve', ['p1', 'p3']],
    [':exact', 'given:exact=Evelyn', ['p1']],
    [':exact, another case', 'given:exact=evelyn', []],
    ['a percent sign is no wildcard', 'family=%25', []],
  ])('%s', async (_what, form, expected) => {
    expect(await ids('Patient', form)).toEqual(expected);
  });
});

describe('the questions that a records team asks', () => {
  it.each([
    ['Procedure', 'code=urn:items|esd&date=ge2026-01-01&date=lt2027-01-01&status=completed', 'esd'],
    ['Procedure', 'performer=Practitioner/dr', 'esd'],
    ['ServiceRequest', 'code=urn:items|histology&status=active&authored=lt2026-02-01', 'order'],
    ['ServiceRequest', 'occurrence=lt2027-01-01&requisition=urn:plan|1&intent=plan', 'check'],
    ['Condition', 'code=urn:items|lesion&onset-date=2026-01', 'lesion'],
    ['DiagnosticReport', 'result=Observation/en-bloc&issued=2026-01-06', 'report'],
    ['DiagnosticReport', 'based-on=ServiceRequest/order&specimen=Specimen/A', 'report'],
    ['Specimen', 'collected=2026-01-05&identifier=urn:jar|A', 'A'],
    ['Appointment', 'based-on=ServiceRequest/check&status=proposed&patient=p1', 'slot'],
    ['Provenance', 'target=Procedure/esd&_tag=urn:delivery|c1.1', 'prov'],
    ['MedicationAdministration', 'context=Encounter/e&effective-time=2026-01-05', 'lift'],
    ['MedicationStatement', 'part-of=Procedure/esd&status=stopped', 'aspirin'],
    ['Task', 'focus=ServiceRequest/order&status=requested&code=await', 'wait'],
    ['Device', 'identifier=urn:device|c1.knife1', 'd'],
    ['Encounter', 'identifier=urn:session|1&patient=p1', 'e'],
    ['Practitioner', 'identifier=urn:staff|7', 'dr'],
    ['Organization', 'identifier=urn:unit|1', 'unit'],
  ])('%s?%s', async (type, form, id) => {
    expect(await ids(type, form)).toEqual([id]);
  });

  it('count without the resources', async () => {
    const { json } = await server.search('Observation', 'code=urn:items|en-bloc&_summary=count');
    expect(json).toMatchObject({ resourceType: 'Bundle', type: 'searchset', total: 2 });
    expect(json.entry).toBeUndefined();
    expect((await server.search('Observation', '_count=0')).json.entry).toBeUndefined();
  });

  it('the whole record of a case comes by _revinclude, each resource once', async () => {
    const form =
      'identifier=urn:case|c1&_revinclude=Observation:part-of&_revinclude=Provenance:target' +
      '&_include=Procedure:subject&_include=Procedure:performer&_include=Procedure:patient';
    const all = await entries('Procedure', form);
    expect(names(all, 'match')).toEqual(['Procedure/esd']);
    expect(names(all, 'include')).toEqual([
      'Observation/bleeding',
      'Observation/en-bloc',
      'Patient/p1',
      'Practitioner/dr',
      'Provenance/prov',
    ]);
  });
});

describe('_include and _revinclude, against HL7 FHIR R4 Search', () => {
  it('follow the one target type that was named', async () => {
    const patients = await entries('Observation', '_include=Observation:subject:Patient');
    expect(names(patients, 'include')).toEqual(['Patient/p1']);
    const devices = await entries('Observation', '_include=Observation:subject:Device');
    expect(names(devices, 'include')).toEqual(['Device/d']);
  });

  it('do not bring a match a second time', async () => {
    const all = await entries('Observation', '_include=Observation:has-member');
    expect(names(all, 'match')).toContain('Observation/foreign');
    expect(names(all, 'include')).toEqual([]);
    const one = await entries('Observation', '_id=bleeding&_include=Observation:has-member');
    expect(names(one, 'include')).toEqual(['Observation/foreign']);
  });

  it.each(['Observation:nothing', 'Observation:code', 'Claim:patient', '*', 'Observation'])(
    'refuse %s',
    async (value) => {
      const { status, json } = await server.search('Observation', `_include=${value}`);
      expect([status, json.issue[0].code]).toEqual([400, 'not-supported']);
    },
  );
});

describe('forms of a search, against HL7 FHIR R4 RESTful API, "search"', () => {
  it('GET and POST mean the same, and parameters of address and body go together', async () => {
    const get = await server.get('/Observation?code=urn:items%7Cen-bloc&value-concept=yes');
    expect(get.json.entry.map((entry: Entry) => entry.resource.id)).toEqual(['en-bloc']);
    const both = await fetch(`${server.base}/Observation/_search?value-concept=yes`, {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
      body: 'code=urn:items|en-bloc',
    });
    expect(await both.json()).toMatchObject({ total: 1 });
  });

  it('the self link says what was understood', async () => {
    const headers = { prefer: 'handling=lenient' };
    const { json } = await server.get('/Observation?status=final&colour=red', headers);
    const self = json.link.find((link: { relation: string }) => link.relation === 'self');
    expect(self.url).toBe(`${server.base}/Observation?status=final`);
  });

  it('an unknown parameter is refused, and left out under Prefer: handling=lenient', async () => {
    const strict = await server.get('/Observation?colour=red');
    expect([strict.status, strict.json.issue[0].code]).toEqual([400, 'not-supported']);
    expect(strict.text).not.toContain('red');
    const lenient = await server.get('/Observation?colour=red', { prefer: 'handling=lenient' });
    expect([lenient.status, lenient.json.total]).toEqual([200, 4]);
  });

  it.each([
    'code:in=x',
    'subject:above=Patient/p1',
    'part-of:Procedure.performer=x',
    'code:text=x',
  ])('a modifier or chain that is not supported is refused even then: %s', async (query) => {
    const answer = await server.get(`/Observation?${query}`, { prefer: 'handling=lenient' });
    expect([answer.status, answer.json.issue[0].code]).toEqual([400, 'not-supported']);
  });

  it('finds the newest version alone', async () => {
    const changed = { resourceType: 'Organization', id: 'other', name: 'Before' };
    await server.put('/Organization/other', changed);
    await server.put('/Organization/other', { ...changed, name: 'After' });
    expect(await ids('Organization', 'name=before')).toEqual([]);
    expect(await ids('Organization', 'name=after')).toEqual(['other']);
  });
});
