import { describe, expect, it } from 'vitest';
import { addressBundle } from '../../src/delivery/address.js';
import type { Answer, AnswerBody } from '../../src/delivery/answer.js';
import { classifyReading, classifyTransaction } from '../../src/delivery/classify.js';
import { doneResponse, RECORD_NUMBER, sampleBundle } from './support/sample-bundle.js';

const NOW = Date.UTC(2026, 2, 2, 9, 0, 0);
const sent = addressBundle(sampleBundle(), 'client-id', { kind: 'logical' });

const json = (resource: unknown): AnswerBody => ({ kind: 'json', resource });
const outcome = (issue: object): AnswerBody =>
  json({ resourceType: 'OperationOutcome', issue: [issue] });
const answered = (status: number, body: AnswerBody = { kind: 'empty' }): Answer => ({
  kind: 'answered',
  status,
  body,
});
const judge = (answer: Answer) => classifyTransaction(answer, sent, NOW);

/**
 * The table of status classes of the project: what was seen, its class, and whether the target
 * is wrongly set up. Source: project definition.
 */
describe('what came back, by the table of status classes', () => {
  it.each([
    ['refused', 'destination', false],
    ['dns', 'destination', false],
    ['tls', 'destination', false],
    ['connect-timeout', 'destination', false],
    ['unreachable', 'destination', false],
    ['no-authorization', 'destination', false],
    ['address-refused', 'destination', true],
  ] as const)('%s before a byte was sent: %s', (fault, failureClass, hold) => {
    expect(judge({ kind: 'not-sent', fault })).toMatchObject({ failureClass, fault, hold });
  });

  it.each(['cut', 'timeout', 'oversized', 'unreadable', 'stopped'] as const)(
    '%s after bytes were sent: unknown',
    (fault) => {
      expect(judge({ kind: 'lost', fault })).toMatchObject({ failureClass: 'unknown', fault });
    },
  );

  it.each([
    [502, 'unknown', false],
    [504, 'unknown', false],
    [401, 'destination', true],
    [403, 'destination', true],
    [404, 'destination', true],
    [405, 'destination', true],
    [301, 'destination', true],
    [302, 'destination', true],
    [307, 'destination', true],
    [308, 'destination', true],
    [408, 'bounded', false],
    [425, 'bounded', false],
    [500, 'bounded', false],
    [429, 'destination', false],
    [503, 'destination', false],
    [409, 'bounded', false],
    [412, 'bounded', false],
    [400, 'case', false],
    [413, 'case', false],
    [415, 'case', false],
    [422, 'case', false],
  ])('%i: %s', (status, failureClass, hold) => {
    expect(judge(answered(status))).toMatchObject({ failureClass, hold, status });
  });

  it('a body that is no FHIR makes 200, 400 and 422 unknown: somebody else spoke', () => {
    for (const status of [200, 400, 422]) {
      expect(judge(answered(status, { kind: 'other' }))).toMatchObject({
        failureClass: 'unknown',
        fault: 'unreadable',
        status,
      });
    }
    expect(judge(answered(413, { kind: 'other' }))).toMatchObject({ failureClass: 'case' });
    expect(judge(answered(503, { kind: 'other' }))).toMatchObject({ failureClass: 'destination' });
  });

  it('Retry-After becomes a wait, for 429 and 503 (RFC 9110, 10.2.3; RFC 6585, 4)', () => {
    for (const status of [429, 503]) {
      const answer: Answer = { kind: 'answered', status, body: { kind: 'empty' }, retryAfter: '7' };
      expect(judge(answer)).toMatchObject({ waitMs: 7_000 });
      expect(judge(answered(status))).not.toHaveProperty('waitMs');
    }
  });
});

describe('a transaction that was answered with 2xx', () => {
  it('is delivered when all of it is there', () => {
    const verdict = judge(answered(200, json(doneResponse(sent))));
    expect(verdict).toMatchObject({ kind: 'delivered', detail: '5 created, 0 updated' });
  });

  it.each([
    ['a batch-response', json({ ...doneResponse(sent), type: 'batch-response' })],
    ['an entry less', json({ ...doneResponse(sent), entry: [] })],
    ['an entry of 503', json(doneResponse(sent, '503'))],
    ['no body', { kind: 'empty' } as const],
    ['another resource', outcome({ code: 'informational' })],
  ])('is not conformant with %s', (_what, body) => {
    expect(judge(answered(200, body))).toMatchObject({ failureClass: 'non-conformant-server' });
  });

  it('is the fault of the case when an entry is refused for good', () => {
    const body = json(doneResponse(sent, '422'));
    expect(judge(answered(200, body))).toMatchObject({ failureClass: 'case', fault: 'entry-422' });
  });
});

describe('a refusal that names the patient', () => {
  const missing = outcome({ code: 'processing', diagnostics: 'Resource Patient/1 not found' });
  const several = outcome({ code: 'multiple-matches', diagnostics: 'Patient?identifier=x' });

  it.each([400, 404, 409, 412, 422])('waits for it: %i', (status) => {
    expect(judge(answered(status, missing))).toMatchObject({ kind: 'waiting-patient' });
  });

  it.each([401, 403, 500, 503])('says nothing of the patient with %i', (status) => {
    expect(judge(answered(status, missing))).toMatchObject({ kind: 'failed' });
  });

  it.each([400, 404, 412])('needs a person when there are several: %i', (status) => {
    expect(judge(answered(status, several))).toMatchObject({
      failureClass: 'ambiguous',
      hold: false,
    });
  });

  it('needs a person when an identifier has several matches', () => {
    const body = outcome({ code: 'multiple-matches' });
    expect(judge(answered(412, body))).toMatchObject({ failureClass: 'ambiguous' });
  });
});

describe('the reason that is kept', () => {
  it('names what was refused and where, and nothing that the server wrote', () => {
    const verdict = judge(
      answered(
        422,
        outcome({
          code: 'value',
          expression: ['Bundle.entry[1].resource'],
          diagnostics: `Patient?identifier=${RECORD_NUMBER} is odd`,
          details: { text: RECORD_NUMBER },
        }),
      ),
    );
    const reason =
      'The FHIR server refused the content of the record (422): value at Bundle.entry[1].resource.';
    expect(verdict).toMatchObject({ failureClass: 'case', reason });
    expect(JSON.stringify(verdict)).not.toContain(RECORD_NUMBER);
  });
});

describe('a search that failed', () => {
  it.each([
    [{ kind: 'lost', fault: 'timeout' }, 'destination'],
    [{ kind: 'lost', fault: 'cut' }, 'destination'],
    [{ kind: 'lost', fault: 'oversized' }, 'unknown'],
    [{ kind: 'not-sent', fault: 'refused' }, 'destination'],
    [answered(200, { kind: 'other' }), 'unknown'],
    [answered(400), 'bounded'],
    [answered(401), 'destination'],
    [answered(503), 'destination'],
  ] as const)('%j: %s', (answer, failureClass) => {
    expect(classifyReading(answer, NOW)).toMatchObject({ failureClass });
  });
});
