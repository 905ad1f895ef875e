import { describe, expect, it } from 'vitest';
import { checkBundle } from '../../src/conformance/index.js';
import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import { toBundle } from '../../src/mapping/index.js';
import { createService } from '../../src/pipeline/index.js';
import { prepare } from '../../src/pipeline/prepare.js';
import { mappingSettings } from '../../src/pipeline/settings.js';
import { readVersion, viewRecord } from '../../src/record/index.js';
import { resourcesOf } from '../mapping/records.js';
import { type BookingDraft, book, morningOf } from '../support/bookings.js';
import { altered, example, type Sent } from '../support/example-messages.js';
import { memoryStore } from '../support/memory-store.js';

/*
 * What a scheduler says goes the whole way: every Bundle that it leads to passes the checks of
 * `conformance`, which are held against the official schema and other validators in its own tests.
 */

const NOW = '2028-06-01T12:00:00.000Z';
const SECRET = 'a-secret-of-the-tests-that-is-long-enough';
const at = (on: string) => ({ sentAt: `${on}T08:00:00Z` });

const ESD = example('case', 'stomach-differentiated').document;

/** A case and its report, and then what is said of its first look. */
const COURSES: Readonly<Record<string, readonly BookingDraft[]>> = {
  booked: [morningOf('2026-07-20')],
  'booked outside': [morningOf('2026-12-20')],
  moved: [morningOf('2026-12-20'), { status: 'moved', ...morningOf('2026-07-20') }],
  cancelled: [morningOf('2026-07-20'), { status: 'cancelled', reason: 'patient' }],
  missed: [morningOf('2026-07-20'), { status: 'did-not-attend', ...at('2026-07-21') }],
  'cancelled before anybody told us': [{ status: 'cancelled', reason: 'unit' }],
  'held by the server': [{ ...morningOf('2026-12-20'), appointment: 'Appointment/7' }],
};

/** What comes after it. */
const LATER: Readonly<Record<string, readonly Sent[]>> = {
  'and nothing else': [],
  'and the look itself': [example('examination', 'stomach-first')],
  'and the case is taken back': [
    altered(example('withdrawal', 'minimal-wrong-patient'), {
      ...{ source: ESD.source, case: ESD.case, ...at('2026-09-01') },
      patient: { system: ESD.patient.system, value: ESD.patient.value },
    }),
  ],
};

async function versionAfter(drafts: readonly BookingDraft[], later: readonly Sent[]) {
  const store = memoryStore(() => NOW);
  const settings = {
    unit: { ...DEFAULT_UNIT_SETTINGS, proposedAppointments: true },
    ...{ secret: SECRET, softwareVersion: '0' },
  };
  const service = createService({ store, settings, now: () => NOW });
  let caseId = '';
  const push = async ({ kind, bytes }: Sent) => {
    const receipt = await service.receive(kind, bytes, {});
    if (receipt.kind !== 'accepted') throw new Error(JSON.stringify(receipt));
    caseId = receipt.receipt.caseId;
  };
  await push(example('case', 'stomach-differentiated'));
  await push(example('pathology', 'stomach-differentiated'));
  for (const [i, draft] of drafts.entries()) {
    const said = { ...at('2026-05-01'), ...draft, revision: i + 1 };
    const receipt = await book(service, { caseId, item: 'GAS-1.1' }, SECRET, said);
    expect(receipt.kind).toBe('accepted');
  }
  for (const message of later) await push(message);
  const version = (await store.read(caseId))?.version;
  if (version === undefined) throw new Error('the case has a record');
  return { version: readVersion(version), settings };
}

const PAIRS = Object.entries(COURSES).flatMap(([course, drafts]) =>
  Object.entries(LATER).map(([then, later]) => ({ course, then, drafts, later })),
);

describe('an appointment on its way to the FHIR server', () => {
  it.each(PAIRS)('$course, $then: makes a sound Bundle', async ({ drafts, later }) => {
    const { version, settings } = await versionAfter(drafts, later);
    const prepared = prepare(version, settings);
    expect(prepared.ok ? [] : prepared.problems).toEqual([]);
  });

  // FHIR R4, code systems appointmentstatus and task-status.
  it.each([
    ['booked', 'booked', undefined],
    ['booked outside', 'booked', 'requested'],
    ['moved', 'booked', 'completed'],
    ['cancelled', 'cancelled', undefined],
    ['missed', 'noshow', undefined],
  ])('%s is an Appointment that is %s; the task to look at it: %s', async (course, said, task) => {
    const { version, settings } = await versionAfter(COURSES[course] ?? [], []);
    const prepared = prepare(version, settings);
    const resources = prepared.ok ? resourcesOf(prepared.value.bundle) : [];
    const appointments = resources.filter((each) => each.resourceType === 'Appointment');
    expect(appointments.map(({ status }) => status)).toEqual([said]);
    const checks = resources
      .filter((each) => each.resourceType === 'Task')
      .filter(({ code }) => JSON.stringify(code).includes('"booking-check"'));
    expect(checks.map(({ status }) => status)).toEqual(task === undefined ? [] : [task]);
  });

  it('would be refused with a begin and no end: FHIR R4 app-2', async () => {
    const { version, settings } = await versionAfter(COURSES.booked ?? [], []);
    const bundle = toBundle(viewRecord(version, settings.unit), mappingSettings(settings));
    const broken: typeof bundle = JSON.parse(JSON.stringify(bundle));
    for (const appointment of resourcesOf(broken)) {
      if (appointment.resourceType === 'Appointment') delete appointment.end;
    }
    expect(checkBundle(bundle, []).ok).toBe(true);
    const checked = checkBundle(broken, []);
    expect(checked.ok ? [] : checked.problems.map(({ rule }) => rule)).toContain('app-2');
  });
});
