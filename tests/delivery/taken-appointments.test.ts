import type { Appointment, Bundle, Provenance } from 'fhir/r4.js';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/delivery/answer.js';
import { leaveTaken } from '../../src/delivery/taken-appointments.js';
import { manualClock } from './support/manual-clock.js';

/*
 * Oracle: FHIR R4 (4.0.1), code system appointmentstatus. That a proposal which somebody has taken
 * up is not written any more is the definition of the project.
 */
const IDENTIFIER = { system: 'https://unit.example/ids/appointment', value: 'case.GAS-1.1' };
const AT = '2026-07-01T09:00:00+02:00';
const visit = (start: string) => ({ start, end: '2026-07-01T09:30:00+02:00' });
const appointment = (rest: Partial<Appointment>): Appointment => ({
  resourceType: 'Appointment',
  identifier: [IDENTIFIER],
  status: 'proposed',
  participant: [],
  ...rest,
});

const PROVENANCE: Provenance = {
  resourceType: 'Provenance',
  recorded: AT,
  agent: [],
  target: [{ reference: 'urn:uuid:a' }, { reference: 'urn:uuid:b' }],
};

const sent = (ours: Appointment): Bundle => ({
  resourceType: 'Bundle',
  type: 'transaction',
  entry: [
    { fullUrl: 'urn:uuid:a', resource: ours },
    { fullUrl: 'urn:uuid:b', resource: { resourceType: 'Patient' } },
    { fullUrl: 'urn:uuid:c', resource: PROVENANCE },
  ],
});

const answering = (answer: Answer) => ({
  clock: manualClock(),
  client: {
    capabilities: never,
    transaction: never,
    searchPatient: never,
    page: never,
    search: () => Promise.resolve(answer),
  },
});
function never(): never {
  throw new Error('nothing else is asked');
}
const holding = (...resources: readonly Appointment[]): Answer => ({
  kind: 'answered',
  status: 200,
  body: { kind: 'json', resource: { entry: resources.map((resource) => ({ resource })) } },
});

/** fullUrls of the entries that are still sent. */
async function written(ours: Appointment, answer: Answer): Promise<unknown> {
  const left = await leaveTaken(answering(answer), sent(ours), new AbortController().signal);
  return 'kind' in left ? left.failureClass : left.entry?.map(({ fullUrl }) => fullUrl);
}
const ALL = ['urn:uuid:a', 'urn:uuid:b', 'urn:uuid:c'];
const OTHERS = ['urn:uuid:b', 'urn:uuid:c'];

describe('an Appointment of ours on the server', () => {
  it.each([
    ['proposed', {}, 'proposed', {}, ALL],
    ['proposed', {}, 'cancelled', {}, ALL],
    ['proposed', {}, 'pending', {}, OTHERS],
    ['proposed', {}, 'booked', visit(AT), OTHERS],
    ['cancelled', {}, 'booked', visit(AT), OTHERS],
    ['cancelled', {}, 'proposed', {}, ALL],
    ['booked', visit(AT), 'proposed', {}, ALL],
    ['booked', visit(AT), 'booked', visit('2026-07-02T09:00:00+02:00'), ALL],
    ['booked', visit(AT), 'arrived', visit(AT), OTHERS],
    ['noshow', visit(AT), 'fulfilled', visit(AT), OTHERS],
    ['cancelled', visit(AT), 'booked', visit('2026-07-01T07:00:00Z'), ALL],
    ['cancelled', visit(AT), 'booked', visit('2026-07-02T09:00:00+02:00'), OTHERS],
  ] as const)('%s %j, there %s %j: %j', async (status, time, theirs, theirTime, urls) => {
    const there = holding(appointment({ status: theirs, ...theirTime }));
    expect(await written(appointment({ status, ...time }), there)).toEqual(urls);
  });

  it('is written where the server does not have it', async () => {
    expect(await written(appointment({}), holding())).toEqual(ALL);
    const other = appointment({ status: 'booked', identifier: [{ ...IDENTIFIER, value: 'x' }] });
    expect(await written(appointment({}), holding(other))).toEqual(ALL);
  });

  it('is no target of the Provenance once it is left out', async () => {
    const there = answering(holding(appointment({ status: 'pending' })));
    const left = await leaveTaken(there, sent(appointment({})), new AbortController().signal);
    expect(JSON.stringify(left)).not.toContain('urn:uuid:a');
  });

  it('is left out where the server cannot be asked, and waits where it is away', async () => {
    const refusal: Answer = { kind: 'answered', status: 400, body: { kind: 'empty' } };
    expect(await written(appointment({}), refusal)).toEqual(OTHERS);
    expect(await written(appointment({}), { kind: 'not-sent', fault: 'refused' })).toBe(
      'destination',
    );
  });

  it('costs no question where the record has none', async () => {
    const deps = {
      clock: manualClock(),
      client: { ...answering(holding()).client, search: never },
    };
    const bundle: Bundle = { resourceType: 'Bundle', type: 'transaction', entry: [] };
    expect(await leaveTaken(deps, bundle, new AbortController().signal)).toBe(bundle);
  });
});
