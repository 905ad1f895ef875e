import { describe, expect, it } from 'vitest';
import { startServer } from './support/server.js';
import {
  entry,
  observation,
  postEntry,
  putEntry,
  statusesOf,
  transactionSandbox,
  URN,
} from './support/transactions.js';

const { count, db, expectNothing, server, transact } = await transactionSandbox();

describe('transaction response, against HL7 FHIR R4 RESTful API, "Transaction Response"', () => {
  it('has one entry for each request, in their order, with status and location', async () => {
    const answer = await transact([
      { request: { method: 'GET', url: 'Observation?identifier=urn:obs|2' } },
      putEntry(observation('1', { id: 'o1' }), 'Observation/o1'),
      postEntry(observation('2')),
      { request: { method: 'GET', url: 'Patient/p' } },
    ]);
    expect(answer.status).toBe(200);
    expect(answer.json).toMatchObject({ resourceType: 'Bundle', type: 'transaction-response' });
    expect(statusesOf(answer)).toEqual(['200', '201', '201', '200']);
    const [search, put, , read] = answer.json.entry;
    expect(put.response).toMatchObject({
      location: 'Observation/o1/_history/1',
      etag: 'W/"1"',
      lastModified: (await server.get('/Observation/o1')).json.meta.lastUpdated,
    });
    expect(read.resource).toMatchObject({ resourceType: 'Patient', id: 'p' });
    // Reads come after all writes, wherever they stand ("Transaction Processing Rules").
    expect(search.resource).toMatchObject({ type: 'searchset', total: 1 });
  });

  it('gives the resources back under Prefer: return=representation', async () => {
    const answer = await transact([postEntry(observation('1'))], {
      prefer: 'return=representation',
    });
    expect(answer.json.entry[0].resource).toMatchObject({ resourceType: 'Observation' });
  });

  it('says 200 and the old version when an update changes nothing', async () => {
    const same = [putEntry(observation('1', { id: 'o1' }), 'Observation/o1')];
    const [first, again] = [await transact(same), await transact(same)];
    expect([statusesOf(first), statusesOf(again)]).toEqual([['201'], ['200']]);
    expect(again.json.entry[0].response.location).toBe('Observation/o1/_history/1');
  });

  it('takes a transaction without entries', async () => {
    const answer = await server.post('/', { resourceType: 'Bundle', type: 'transaction' });
    expect([answer.status, answer.json.type]).toEqual([200, 'transaction-response']);
  });
});

describe('links between entries, against HL7 FHIR R4 RESTful API, "transaction"', () => {
  it('gives the urn of each entry the address it has on the server, also in a circle', async () => {
    const div = `<div xmlns="http://www.w3.org/1999/xhtml"><a href="${URN}1">one</a></div>`;
    const answer = await transact([
      postEntry(observation('1', { hasMember: [{ reference: `${URN}2` }] }), `${URN}1`),
      putEntry(
        observation('2', {
          id: 'o2',
          derivedFrom: [{ reference: `${URN}1` }],
          text: { status: 'generated', div },
          extension: [{ url: 'urn:example', valueUri: `${URN}1` }],
          identifier: [{ system: 'urn:ietf:rfc:3986', value: `${URN}1` }],
        }),
        'Observation/o2',
        `${URN}2`,
      ),
    ]);
    expect(statusesOf(answer)).toEqual(['201', '201']);
    const [name] = /^Observation\/[^/]+/.exec(answer.json.entry[0].response.location) ?? [''];
    expect((await server.get(`/${name}`)).json.hasMember).toEqual([
      { reference: 'Observation/o2' },
    ]);
    const { json } = await server.get('/Observation/o2');
    expect(json.derivedFrom).toEqual([{ reference: name }]);
    expect(json.extension[0].valueUri).toBe(name);
    expect(json.text.div).toContain(`href="${name}"`);
    // An Identifier.value is a string, not one of the types whose links are replaced.
    expect(json.identifier[0].value).toBe(`${URN}1`);
  });

  it('reads a relative reference below the root of the entry that holds it', async () => {
    const other = 'https://other.example/fhir';
    const answer = await transact([
      postEntry(observation('1'), `${other}/Observation/77`),
      postEntry(
        observation('2', { derivedFrom: [{ reference: 'Observation/77' }] }),
        `${other}/Observation/78`,
      ),
    ]);
    const [one, two] = answer.json.entry.map(({ fullUrl }: { fullUrl: string }) =>
      fullUrl.slice(server.base.length),
    );
    expect((await server.get(two)).json.derivedFrom).toEqual([{ reference: one.slice(1) }]);
  });

  it('refuses the urn of no entry', async () => {
    const answer = await transact([
      postEntry(observation('1', { hasMember: [{ reference: `${URN}9` }] }), `${URN}1`),
    ]);
    const place = 'Bundle.entry[0].resource.hasMember[0]';
    await expectNothing(answer, 400, 'not-found', place);
  });

  it.each([400, 409, 422] as const)('refuses a missing target with %i, as set', async (status) => {
    const strict = await startServer(db, { missingReferenceStatus: status });
    const missing = observation('1', { subject: { reference: 'Patient/nobody' } });
    const entries = [postEntry(observation('2')), postEntry(missing)];
    const bundle = { resourceType: 'Bundle', type: 'transaction', entry: entries };
    const answer = await strict.post('/', bundle);
    await expectNothing(answer, status, 'not-found', 'Bundle.entry[1].resource.subject');
    expect(answer.text).not.toContain('nobody');
    await strict.stop();
  });

  it('knows its own absolute addresses, and lets those of others be', async () => {
    const own = { reference: `${server.base}/Patient/p` };
    const other = { reference: 'https://other.example/fhir/Patient/9' };
    const entries = [
      putEntry(observation('1', { id: 'o1', subject: own }), 'Observation/o1'),
      putEntry(observation('2', { id: 'o2', subject: other }), 'Observation/o2'),
    ];
    expect((await transact(entries)).status).toBe(200);
    expect((await server.get('/Observation?subject=Patient/p')).json.total).toBe(1);
    const gone = { reference: `${server.base}/Patient/nobody` };
    expect((await transact([postEntry(observation('3', { subject: gone }))])).status).toBe(400);
  });
});

describe('a transaction that cannot be carried out leaves nothing behind', () => {
  const good = () => postEntry(observation('1'));
  const procedure = { resourceType: 'Procedure', status: 'completed' };

  it.each([
    ['a method that there is not', { request: { method: 'DELETE', url: 'Patient/p' } }, 405],
    ['a read of nothing', { request: { method: 'GET', url: 'Patient/none' } }, 404],
    ['a type that is not kept', entry({ resourceType: 'Claim' }, put('Claim/1')), 404],
    ['another type than the address', entry(procedure, put('Observation/1')), 400],
    ['another id than the address', entry({ ...procedure, id: 'a' }, put('Procedure/b')), 400],
    ['no resource', { request: { method: 'POST', url: 'Procedure' } }, 400],
    ['no request (bdl-3)', { resource: procedure }, 400],
    ['an empty list', postEntry({ ...procedure, ...{ note: [] } }), 400],
    ['an empty text', postEntry({ ...procedure, ...{ status: '' } }), 400],
    ['a NUL', postEntry({ ...procedure, ...{ status: 'a\u0000b' } }), 400],
    ['a condition it does not know', entry(procedure, { ...post(), ifNoneMatch: '*' }), 400],
    ['text that is no reference', postEntry({ ...procedure, ...{ subject: ref('x y') } }), 400],
    ['two times one fullUrl (bdl-7)', { ...good(), fullUrl: `${URN}1` }, 400],
  ])('%s', async (_what, bad, status) => {
    const answer = await transact([{ ...good(), fullUrl: `${URN}1` }, bad]);
    expect(answer.status).toBe(status);
    expect(answer.json.resourceType).toBe('OperationOutcome');
    expect([await count('Observation'), await count('Procedure')]).toEqual([0, 0]);
  });

  it('and the same transaction without the bad entry is carried out', async () => {
    expect((await transact([good(), postEntry(procedure)])).status).toBe(200);
    expect([await count('Observation'), await count('Procedure')]).toEqual([1, 1]);
  });

  it.each(['batch', 'collection', undefined])('a Bundle of type %s', async (type) => {
    const answer = await server.post('/', { resourceType: 'Bundle', type, entry: [good()] });
    await expectNothing(answer, 400, 'not-supported');
  });

  it('never half: many at once that contradict each other end as one of them', async () => {
    const pair = (value: string) =>
      ['o1', 'o2'].map((id) => putEntry(observation(value, { id }), `Observation/${id}`));
    const values = Array.from({ length: 12 }, (_, index) => String(index));
    const answers = await Promise.all(values.map((value) => transact(pair(value))));
    expect(answers.map(({ status }) => status)).toEqual(values.map(() => 200));
    const [one, two] = [await server.get('/Observation/o1'), await server.get('/Observation/o2')];
    expect(one.json.identifier).toEqual(two.json.identifier);
    expect(one.json.meta.versionId).toBe(two.json.meta.versionId);
  });
});

function put(url: string) {
  return { method: 'PUT', url };
}

function post() {
  return { method: 'POST', url: 'Procedure' };
}

function ref(reference: string) {
  return { reference };
}
