import type { Bundle } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import { addressBundle } from '../../src/delivery/address.js';
import { readTransactionResponse } from '../../src/delivery/transaction-response.js';
import { doneResponse, RECORD_NUMBER, sampleBundle } from './support/sample-bundle.js';

const sent = addressBundle(sampleBundle(), 'client-id', { kind: 'logical' });
const conditional = addressBundle(sampleBundle(), 'conditional', { kind: 'logical' });
const done = doneResponse(sent);

/** The answer with another response in one place. */
const withResponse = (index: number, response: object): Bundle => ({
  ...done,
  entry: (done.entry ?? []).map((entry, at) =>
    at === index ? { response: { status: '200', ...response } } : entry,
  ),
});

describe('a transaction response, against FHIR R4 http (transaction response, create, update)', () => {
  it('is done when each entry has succeeded', () => {
    const reading = readTransactionResponse(done, sent);
    expect(reading).toMatchObject({ kind: 'done', created: 5, updated: 0 });
    expect(reading).toHaveProperty('locations.0', `${sent.entry?.[0]?.request?.url}/_history/1`);
  });

  it('is done by identifier too, and knows the ids that the server gave', () => {
    const reading = readTransactionResponse(doneResponse(conditional), conditional);
    expect(reading).toHaveProperty('locations.1', 'Condition/id-1/_history/1');
  });

  it('reads an absolute location', () => {
    const url = sent.entry?.[0]?.request?.url;
    const location = `https://server.example/fhir/${url}/_history/7`;
    const reading = readTransactionResponse(withResponse(0, { location }), sent);
    expect(reading).toHaveProperty('locations.0', `${url}/_history/7`);
  });

  it('needs no location after an update: only a create has to give one', () => {
    const reading = readTransactionResponse(withResponse(0, {}), sent);
    expect(reading).toMatchObject({ kind: 'done', created: 4, updated: 1 });
    expect(reading).toHaveProperty('locations.0', sent.entry?.[0]?.request?.url);
  });

  it('keeps no location that could hold more than type and id', () => {
    const location = `Procedure?identifier=${RECORD_NUMBER}`;
    const reading = readTransactionResponse(withResponse(0, { location }), sent);
    expect(JSON.stringify(reading)).not.toContain(RECORD_NUMBER);
  });
});

describe('a 2xx that is no success', () => {
  const first = done.entry?.slice(0, 1) ?? [];
  const rest = done.entry?.slice(1) ?? [];
  it.each([
    ['an OperationOutcome', { resourceType: 'OperationOutcome' }, 'no-bundle'],
    ['nothing', undefined, 'no-bundle'],
    ['a batch-response', { ...done, type: 'batch-response' }, 'not-a-transaction'],
    ['no type', { ...done, type: undefined }, 'not-a-transaction'],
    ['an entry less', { ...done, entry: rest }, 'entry-count'],
    ['an entry more', { ...done, entry: [...first, ...first, ...rest] }, 'entry-count'],
    ['entries in another order', { ...done, entry: [...rest, ...first] }, 'entry-order'],
    ['a 201 without location', withResponse(2, { status: '201' }), 'no-location'],
    ['a status that is none', withResponse(2, { status: 'OK' }), 'entry-0'],
    ['an entry that was throttled', withResponse(2, { status: '429' }), 'entry-429'],
    ['an entry that failed', withResponse(2, { status: '503 Unavailable' }), 'entry-503'],
  ])('%s', (_what, body, fault) => {
    expect(readTransactionResponse(body, sent)).toMatchObject({ kind: 'not-conformant', fault });
  });

  it.each([400, 413, 415, 422])('an entry with %i, which sending again cannot change', (status) => {
    const outcome = {
      resourceType: 'OperationOutcome',
      issue: [{ code: 'invariant', diagnostics: RECORD_NUMBER }],
    };
    const body = withResponse(2, { status: String(status), outcome });
    const reading = readTransactionResponse(body, sent);
    expect(reading).toMatchObject({ kind: 'entry-refused', status });
    expect(reading).toHaveProperty('reason', expect.stringContaining('entry 2 (Observation)'));
    expect(JSON.stringify(reading)).not.toContain(RECORD_NUMBER);
  });

  it('an entry that misses its patient', () => {
    const issue = [{ code: 'not-found', diagnostics: 'Patient/1 not found' }];
    const outcome = { resourceType: 'OperationOutcome', issue };
    const body = withResponse(0, { status: '404', outcome });
    expect(readTransactionResponse(body, sent)).toMatchObject({ kind: 'patient-missing' });
  });
});
