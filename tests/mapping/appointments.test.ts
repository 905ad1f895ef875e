import type { Appointment, Bundle, Task } from 'fhir/r4.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { bookingSchema, DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { sha256 } from '../../src/kernel/index.js';
import { toBundle } from '../../src/mapping/index.js';
import { parseRecordMessage } from '../../src/pipeline/parse-record-message.js';
import {
  foldRecord,
  type RecordMessage,
  type RecordView,
  viewRecord,
} from '../../src/record/index.js';
import { fhirJs, medplum, officialSchema, type Peer, peerErrors } from '../conformance/peers.js';
import { publishedProfiles } from '../conformance/published.js';
import { type BookingDraft, bookingBytes, morningOf } from '../support/bookings.js';
import { altered, example, type Sent } from '../support/example-messages.js';
import { CASE_ID, find, keyOf, resourcesOf, SETTINGS } from './records.js';

/*
 * Oracles: FHIR R4 (4.0.1), Appointment with rules app-1 to app-4, Task, the code systems
 * appointmentstatus, participationstatus, task-status and appointment-cancellation-reason; our
 * published rules dr-fol-3 to dr-fol-13; the validators of others. Which appointment is whose, and
 * that no plan changes what is booked, is the definition of the project.
 */

function message({ kind, bytes }: Sent): RecordMessage {
  const parsed = parseRecordMessage(kind, bytes);
  if (!parsed.ok) throw new Error('an example is sound');
  return parsed.value;
}

function said(item: string, draft: BookingDraft): RecordMessage {
  const bytes = bookingBytes({ sentAt: '2026-04-01T08:00:00Z', ...draft });
  const fields = bookingSchema.parse(JSON.parse(new TextDecoder().decode(bytes)));
  const named = { ...fields, source: 'scheduler', item };
  return { kind: 'booking', fields: named, decimals: {}, sha256: sha256(bytes) };
}

function recordOf(...messages: readonly RecordMessage[]): RecordView {
  const version = foldRecord(CASE_ID, messages, DEFAULT_UNIT_SETTINGS);
  if (version === undefined) throw new Error('the messages hold their case');
  return viewRecord(version, DEFAULT_UNIT_SETTINGS);
}

const ESD = message(example('case', 'stomach-differentiated'));
const REPORT = message(example('pathology', 'stomach-differentiated'));
const LOOKED = message(example('examination', 'stomach-first'));
const { source, case: named, patient } = example('pathology', 'stomach-differentiated').document;
/** The withdrawal of an example, about the case of this file. */
const WITHDRAWN = message(
  altered(example('withdrawal', 'minimal-wrong-patient'), { source, case: named, patient }),
);

const bundleOf = (isProposing: boolean, ...messages: readonly RecordMessage[]): Bundle =>
  toBundle(recordOf(...messages), { ...SETTINGS, proposedAppointments: isProposing });

const ofType = (bundle: Bundle, type: string) =>
  resourcesOf(bundle).filter(({ resourceType }) => resourceType === type);
const appointment = (bundle: Bundle, key: string): Appointment => find(bundle, 'Appointment', key);
const task = (bundle: Bundle, key: string): Task => find(bundle, 'Task', key);
const urlOf = (bundle: Bundle, type: string, key: string) =>
  bundle.entry?.find(({ resource }) => resource === find(bundle, type, key))?.fullUrl;

const FIRST = 'GAS-1.1';
const DAY = morningOf('2026-07-01');
const BOOKED = said(FIRST, DAY);
const BY_SERVER = said(FIRST, { ...DAY, appointment: 'Appointment/of-theirs' });
const CANCELLED = said(FIRST, {
  revision: 2,
  status: 'cancelled',
  reason: 'patient',
  sentAt: '2026-04-02T08:00:00Z',
});
const MISSED = said(FIRST, {
  revision: 2,
  status: 'did-not-attend',
  sentAt: '2026-07-01T12:00:00Z',
});

/** Every way in which an Appointment can stand, with what it is told of. */
const RECORDS: Readonly<Record<string, readonly [boolean, readonly RecordMessage[]]>> = {
  proposed: [true, [ESD, REPORT]],
  booked: [false, [ESD, REPORT, BOOKED]],
  'cancelled by the scheduler': [true, [ESD, REPORT, BOOKED, CANCELLED]],
  missed: [true, [ESD, REPORT, BOOKED, MISSED]],
  'held by another system': [true, [ESD, REPORT, BY_SERVER]],
  'answered while proposed': [true, [ESD, REPORT, LOOKED]],
  'booked on a draft': [true, [ESD, said('provisional.1', DAY)]],
  'withdrawn while proposed': [true, [ESD, REPORT, WITHDRAWN]],
  'withdrawn while booked': [true, [ESD, REPORT, BOOKED, WITHDRAWN]],
};

describe('appointments and tasks of a record', () => {
  let peers: readonly Peer[] = [];
  beforeAll(() => {
    peers = [officialSchema(), medplum(publishedProfiles()), fhirJs()];
  });
  const only = (bundle: Bundle): Bundle => ({
    resourceType: 'Bundle',
    type: 'collection',
    entry: [...ofType(bundle, 'Appointment'), ...ofType(bundle, 'Task')].map((one) => ({
      resource: JSON.parse(JSON.stringify(one)),
    })),
  });

  it.each(Object.entries(RECORDS))(
    '%s: pass the gate and the validators of others',
    (_, record) => {
      const [isProposing, messages] = record;
      const bundle = bundleOf(isProposing, ...messages);
      expect(ofType(bundle, 'Appointment').length).toBeGreaterThan(0);
      const checked = checkBundle(JSON.parse(JSON.stringify(bundle)));
      // How large a record is says nothing of its appointments.
      const said = checked.warnings.filter(({ rule }) => rule !== 'dr-bdl-15');
      expect([checked.ok, said]).toEqual([true, []]);
      expect(peerErrors(peers, only(bundle))).toEqual([]);
    },
  );

  it('would be found: an appointment without participant, a task without intent', () => {
    const wrong = only(bundleOf(false, ESD, REPORT, BOOKED));
    const [booked] = resourcesOf(wrong);
    Reflect.deleteProperty(booked ?? {}, 'participant');
    expect(peerErrors(peers, wrong)).not.toEqual([]);
    const other = only(bundleOf(true, ESD, REPORT, BOOKED, WITHDRAWN));
    for (const one of ofType(other, 'Task')) Reflect.deleteProperty(one, 'intent');
    expect(peerErrors(peers, other)).not.toEqual([]);
  });
});

describe('a proposal', () => {
  it('stands for each open examination, for the days of its request and without a time', () => {
    const bundle = bundleOf(true, ESD, REPORT);
    const open = recordOf(ESD, REPORT).now.plan.items.filter(
      ({ kind, state }) => kind === 'endoscopy' && state === 'open',
    );
    expect(open.length).toBeGreaterThan(0);
    expect(ofType(bundle, 'Appointment').map(keyOf)).toEqual(open.map(({ key }) => key));
    for (const { key, proposed, due } of open) {
      const one = appointment(bundle, key);
      expect(one).toMatchObject({
        status: 'proposed',
        basedOn: [{ reference: urlOf(bundle, 'ServiceRequest', key) }],
        participant: [{ status: 'needs-action', actor: { type: 'Patient' } }],
        requestedPeriod: [{ start: (proposed ?? due)?.earliest, end: (proposed ?? due)?.latest }],
      });
      expect(one).not.toHaveProperty('start');
    }
  });

  it('is made only where the unit wants it', () => {
    expect(ofType(bundleOf(false, ESD, REPORT), 'Appointment')).toEqual([]);
  });

  it('is never made on what is provisional: nobody books it', () => {
    expect(ofType(bundleOf(true, ESD), 'Appointment')).toEqual([]);
  });

  it('is cancelled with a reason once an examination has answered it', () => {
    const bundle = bundleOf(true, ESD, REPORT, LOOKED);
    expect(appointment(bundle, FIRST)).toMatchObject({
      status: 'cancelled',
      cancelationReason: { coding: [{ code: 'other' }] },
    });
  });

  it('is cancelled once another system holds a booked one', () => {
    const bundle = bundleOf(true, ESD, REPORT, BY_SERVER);
    expect(appointment(bundle, FIRST).status).toBe('cancelled');
    expect(ofType(bundleOf(false, ESD, REPORT, BY_SERVER), 'Appointment')).toEqual([]);
  });

  it('is cancelled, not entered in error, when the case is taken back', () => {
    const bundle = bundleOf(true, ESD, REPORT, WITHDRAWN);
    expect(appointment(bundle, FIRST)).toMatchObject({
      status: 'cancelled',
      cancelationReason: { coding: [{ code: 'other' }] },
    });
  });
});

describe('what a scheduler has told', () => {
  it('is the appointment of the request, with its time, whatever the unit proposes', () => {
    for (const isProposing of [true, false]) {
      expect(appointment(bundleOf(isProposing, ESD, REPORT, BOOKED), FIRST)).toMatchObject({
        status: 'booked',
        start: DAY.startsAt,
        end: DAY.endsAt,
        participant: [{ status: 'accepted' }],
      });
    }
  });

  it('is cancelled with the reason that was told, and keeps its time', () => {
    expect(appointment(bundleOf(false, ESD, REPORT, BOOKED, CANCELLED), FIRST)).toMatchObject({
      status: 'cancelled',
      cancelationReason: { coding: [{ code: 'pat', display: 'Patient' }] },
      start: DAY.startsAt,
    });
  });

  it('is a noshow where the patient did not come, and the request is urgent then', () => {
    const bundle = bundleOf(false, ESD, REPORT, BOOKED, MISSED);
    expect(appointment(bundle, FIRST).status).toBe('noshow');
    expect(find(bundle, 'ServiceRequest', FIRST).priority).toBe('urgent');
  });

  it('stays booked when the case is taken back, and a task says so', () => {
    const bundle = bundleOf(false, ESD, REPORT, BOOKED, WITHDRAWN);
    expect(appointment(bundle, FIRST).status).toBe('booked');
    expect(task(bundle, `booking-check-${FIRST}`)).toMatchObject({
      status: 'requested',
      intent: 'plan',
      focus: { reference: urlOf(bundle, 'ServiceRequest', FIRST) },
    });
  });

  it('stays booked when the plan drops its request, and a task says so', () => {
    const early = said('provisional.1', DAY);
    const bundle = bundleOf(true, ESD, early, REPORT);
    expect(find(bundle, 'ServiceRequest', 'provisional.1').status).toBe('revoked');
    expect(appointment(bundle, 'provisional.1').status).toBe('booked');
    const check = task(bundle, 'booking-check-provisional.1');
    expect(check.focus?.reference).toBe(urlOf(bundle, 'ServiceRequest', 'provisional.1'));
    expect(check.status).toBe('requested');
    expect(ofType(bundle, 'ServiceRequest').map(keyOf)).not.toContain(keyOf(check));
  });

  it('gives way where the scheduler names an Appointment of its own later', () => {
    const later = said(FIRST, {
      ...morningOf('2026-07-02'),
      revision: 2,
      status: 'moved',
      sentAt: '2026-04-03T08:00:00Z',
      appointment: 'Appointment/of-theirs',
    });
    expect(appointment(bundleOf(false, ESD, REPORT, BOOKED, later), FIRST).status).toBe(
      'cancelled',
    );
  });
});

describe('a task of the plan', () => {
  it('stands beside its request, about it, with its days and its state', () => {
    const bundle = bundleOf(false, ESD, REPORT);
    const tasks = recordOf(ESD, REPORT).now.plan.items.filter(({ kind }) => kind === 'task');
    expect(ofType(bundle, 'Task').map(keyOf)).toEqual(tasks.map(({ key }) => key));
    for (const { key, due, urgency } of tasks) {
      const one = task(bundle, key);
      const request = find(bundle, 'ServiceRequest', key);
      expect(one.focus?.reference).toBe(urlOf(bundle, 'ServiceRequest', key));
      expect([one.restriction?.period?.start, one.priority]).toEqual([due?.earliest, urgency]);
      expect(one.code).toEqual(request.code);
      expect(one).not.toHaveProperty('owner');
    }
  });
});
