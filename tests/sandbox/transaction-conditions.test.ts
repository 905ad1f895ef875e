import { describe, expect, it } from 'vitest';
import { startServer } from './support/server.js';
import {
  observation,
  postEntry,
  putEntry,
  statusesOf,
  transactionSandbox,
  URN,
} from './support/transactions.js';

const { count, db, expectNothing, server, transact } = await transactionSandbox();

describe('conditional references, against HL7 FHIR R4, "Conditional References"', () => {
  const conditional = (query: string) => ({ subject: { reference: `Patient?${query}` } });

  it('become literal, also when their target comes in the same transaction', async () => {
    const q = { resourceType: 'Patient', identifier: [{ system: 'urn:mrn', value: '2' }] };
    const answer = await transact([
      putEntry(
        observation('1', { id: 'o1', ...conditional('identifier=urn:mrn|1') }),
        'Observation/o1',
      ),
      putEntry(
        observation('2', { id: 'o2', ...conditional('identifier=urn%3Amrn%7C2') }),
        'Observation/o2',
      ),
      postEntry(q),
    ]);
    expect(answer.status).toBe(200);
    expect((await server.get('/Observation/o1')).json.subject.reference).toBe('Patient/p');
    const [name] = /^Patient\/[^/]+/.exec(answer.json.entry[2].response.location) ?? [];
    expect((await server.get('/Observation/o2')).json.subject.reference).toBe(name);
    expect((await server.get('/Observation?subject=Patient/p')).json.total).toBe(1);
  });

  it('make no version when they come to the same as before', async () => {
    const content = observation('1', { id: 'o1', ...conditional('identifier=urn:mrn|1') });
    const entries = [putEntry(content, 'Observation/o1')];
    await transact(entries);
    const again = await transact(entries);
    expect(again.json.entry[0].response.etag).toBe('W/"1"');
  });

  it('fail the whole transaction without a match, naming the type and not the value', async () => {
    const answer = await transact([
      postEntry(observation('1')),
      postEntry(observation('2', conditional('identifier=urn:mrn|987'))),
    ]);
    await expectNothing(answer, 400, 'not-found', 'Bundle.entry[1].resource.subject');
    expect(answer.json.issue[0].diagnostics).toContain('Patient');
    expect(answer.text).not.toContain('987');
  });

  it('fail the whole transaction with several matches', async () => {
    const twin = { resourceType: 'Patient', identifier: [{ system: 'urn:mrn', value: '1' }] };
    await server.post('/Patient', twin);
    const answer = await transact([
      postEntry(observation('1')),
      postEntry(observation('2', conditional('identifier=urn:mrn|1'))),
    ]);
    await expectNothing(answer, 412, 'multiple-matches', 'Bundle.entry[1].resource.subject');
  });

  it('are for transactions alone, and can be switched off', async () => {
    const content = observation('1', conditional('identifier=urn:mrn|1'));
    expect((await server.post('/Observation', content)).status).toBe(400);
    const lacking = await startServer(db, { supports: { conditionalReference: false } });
    const bundle = { resourceType: 'Bundle', type: 'transaction', entry: [postEntry(content)] };
    await expectNothing(await lacking.post('/', bundle), 400, 'not-supported');
    await lacking.stop();
  });
});

describe('identities, against HL7 FHIR R4 RESTful API, "Transaction Processing Rules"', () => {
  const find = (value: string) => `Observation?identifier=urn:obs|${value}`;

  it('overlap when two entries name one resource', async () => {
    const answer = await transact([
      putEntry(observation('1', { id: 'o1' }), 'Observation/o1'),
      putEntry(observation('2', { id: 'o1' }), 'Observation/o1'),
    ]);
    await expectNothing(answer, 400, 'duplicate', 'Bundle.entry[1]');
  });

  it('overlap when two conditions come to one new resource', async () => {
    const twice = [putEntry(observation('1'), find('1')), putEntry(observation('1'), find('1'))];
    await expectNothing(await transact(twice), 400, 'duplicate');
    const mixed = [postEntry(observation('1')), putEntry(observation('1'), find('1'))];
    await expectNothing(await transact(mixed), 400, 'duplicate');
    const ifNoneExist = 'identifier=urn:obs|1';
    const creates = [1, 2].map(() => postEntry(observation('1'), undefined, { ifNoneExist }));
    await expectNothing(await transact(creates), 400, 'duplicate');
  });

  it('overlap when a condition and an id come to one old resource', async () => {
    await server.put('/Observation/o1', observation('1', { id: 'o1' }));
    const answer = await transact([
      putEntry(observation('1', { id: 'o1', status: 'amended' }), 'Observation/o1'),
      putEntry(observation('1', { status: 'corrected' }), find('1')),
    ]);
    expect([answer.status, answer.json.issue[0].code]).toEqual([400, 'duplicate']);
    expect((await server.get('/Observation/o1')).json.status).toBe('final');
  });

  it('are told apart by their conditions, and the same is sent again without doubles', async () => {
    const all = ['1', '2', '3'].map((value, index) =>
      putEntry(
        observation(value, index === 0 ? {} : { derivedFrom: [{ reference: `${URN}1` }] }),
        find(value),
        `${URN}${value}`,
      ),
    );
    expect(statusesOf(await transact(all))).toEqual(['201', '201', '201']);
    expect(statusesOf(await transact(all))).toEqual(['200', '200', '200']);
    expect(await count('Observation')).toBe(3);
  });
});

describe('conditions on versions and existence, against the same page', () => {
  it('ifNoneExist finds the old resource, and links lead to it', async () => {
    const ifNoneExist = 'identifier=urn:mrn|1';
    const twin = { resourceType: 'Patient', identifier: [{ system: 'urn:mrn', value: '1' }] };
    const answer = await transact([
      postEntry(twin, `${URN}1`, { ifNoneExist }),
      putEntry(observation('1', { id: 'o1', subject: { reference: `${URN}1` } }), 'Observation/o1'),
    ]);
    expect(statusesOf(answer)).toEqual(['200', '201']);
    expect((await server.get('/Observation/o1')).json.subject.reference).toBe('Patient/p');
    expect(await count('Patient')).toBe(1);
  });

  it('a stale ifMatch fails the whole transaction with 412', async () => {
    const stale = { resourceType: 'Patient', id: 'p', active: true };
    const answer = await transact([
      postEntry(observation('1')),
      putEntry(stale, 'Patient/p', undefined, { ifMatch: 'W/"9"' }),
    ]);
    await expectNothing(answer, 412, 'conflict', 'Bundle.entry[1]');
    const good = { ifMatch: 'W/"1"' };
    const second = await transact([putEntry(stale, 'Patient/p', undefined, good)]);
    expect(second.json.entry[0].response.etag).toBe('W/"2"');
  });

  it('several matches of ifNoneExist or of a conditional update fail it with 412', async () => {
    const p2 = { resourceType: 'Patient', identifier: [{ system: 'urn:mrn', value: '1' }] };
    await server.post('/Patient', p2);
    const ifNoneExist = 'identifier=urn:mrn|1';
    const create = [postEntry(observation('1')), postEntry(p2, undefined, { ifNoneExist })];
    await expectNothing(await transact(create), 412, 'multiple-matches', 'Bundle.entry[1]');
    const update = [postEntry(observation('1')), putEntry(p2, `Patient?${ifNoneExist}`)];
    await expectNothing(await transact(update), 412, 'multiple-matches', 'Bundle.entry[1]');
  });
});
