import { readFileSync } from 'node:fs';
import type { Appointment, Bundle, Resource } from 'fhir/r4.js';
import type { CaseView, FollowUp, FoundCase, SentKind } from '../../src/pipeline/index.js';
import type { Calls } from './call.js';

/** What became of one message. */
export interface Pushed {
  /** 202 the first time, 200 when it was there already. */
  readonly status: number;
  /** The sender's number of an event or an examination. */
  readonly key?: string;
  /** Path of the case. */
  readonly location: string;
  /** Once it is delivered, or waits for its case. */
  readonly view: CaseView;
  /** Absent while the case has not come. */
  readonly bundle?: Bundle;
  /** Whole days that the specimen has waited for its final report; absent where none waits. */
  readonly awaitsPathologyDays?: number;
  /** Of a booking: the Appointment as the FHIR server has it. */
  readonly appointment?: Appointment;
}

/** The service as its callers see it: over HTTP. */
export interface Client {
  readonly base: string;
  /** @throws Error when it is refused, or not delivered in time */
  push(kind: SentKind, body: Uint8Array<ArrayBuffer>): Promise<Pushed>;
  /**
   * Says something of the appointment for an item of the plan of a case.
   *
   * @param location path of the case
   * @param item its key
   * @throws Error when it is refused, or not delivered in time
   */
  book(location: string, item: string, body: Uint8Array<ArrayBuffer>): Promise<Pushed>;
}

interface Numbered {
  readonly system: string;
  readonly value: string;
}
interface Sent {
  readonly case: Numbered;
  readonly event?: Numbered;
  readonly examination?: Numbered;
}

const PATHS = {
  case: '/cases',
  pathology: '/pathology',
  event: '/events',
  examination: '/examinations',
  withdrawal: '/withdrawals',
} as const satisfies Readonly<Record<SentKind, string>>;

const DELIVERED_WITHIN_MS = 60_000;
const ASK_AGAIN_MS = 50;

export function createClient({ base, call, read }: Calls, fhirBase: string): Client {
  const settled = async (location: string): Promise<CaseView> => {
    const deadline = Date.now() + DELIVERED_WITHIN_MS;
    for (;;) {
      const view = await read<CaseView>('note-system', location);
      const { name, reason = 'no reason', state } = view.delivery;
      if (name === 'waiting-case') return view;
      if (name === 'delivered' && state === view.state) return view;
      if (Date.now() > deadline || name === 'dead-letter') {
        throw new Error(`${location} is ${name}: ${reason}`);
      }
      await new Promise((resolve) => setTimeout(resolve, ASK_AGAIN_MS));
    }
  };
  const bundleOf = (location: string) => read<Bundle>('records-team', `${location}/bundle`);
  const awaits = async (number: Sent['case']) => {
    type Found = { readonly cases: readonly FoundCase[] };
    const question = JSON.stringify({ case: number });
    const { cases } = await read<Found>('note-system', '/cases/search', question);
    const days = cases[0]?.awaitsPathologyDays;
    return days === undefined ? {} : { awaitsPathologyDays: days };
  };
  return {
    base,
    push: async (kind, body) => {
      const { status, headers, text } = await answered(call('note-system', PATHS[kind], body));
      const location = headers.get('location');
      if (location === null) throw new Error(`a ${kind} was refused: ${text}`);
      const sent: Sent = JSON.parse(new TextDecoder().decode(body));
      const key = (sent.event ?? sent.examination)?.value;
      const view = await settled(location);
      const pushed = { status, location, view, ...(key === undefined ? {} : { key }) };
      if ('waitingFor' in view) return pushed;
      return { ...pushed, bundle: await bundleOf(location), ...(await awaits(sent.case)) };
    },
    book: async (location, item, body) => {
      const id = await followUpId(read, location, item);
      const sent = await answered(call('scheduler', `/follow-ups/${id}/booking`, body));
      if (sent.status >= 400) throw new Error(`a booking was refused: ${sent.text}`);
      const view = await settled(location);
      const bundle = await bundleOf(location);
      const appointment = await appointmentOf(fhirBase, bundle, item);
      return { status: sent.status, location, view, bundle, appointment };
    },
  };
}

/** The id that a scheduler takes from its list; the list of the records team tells the key too. */
async function followUpId(read: Calls['read'], location: string, item: string): Promise<string> {
  type Listed = { readonly followUps: readonly FollowUp[]; readonly next?: string };
  const every = 'state=provisional,open,to-confirm,done,superseded,revoked&limit=500';
  for (let after = ''; ; ) {
    const { followUps, next } = await read<Listed>('records-team', `/follow-ups?${every}${after}`);
    const found = followUps.find((one) => location.endsWith(one.caseId) && one.item.key === item);
    if (found !== undefined) return found.id;
    if (next === undefined) throw new Error(`no follow-up ${item}`);
    after = `&after=${next}`;
  }
}

/** Read from the FHIR server by the number that our Bundle gave it. */
async function appointmentOf(fhirBase: string, sent: Bundle, item: string): Promise<Appointment> {
  const numbers = (sent.entry ?? []).flatMap(({ resource }) =>
    isAppointment(resource) ? (resource.identifier ?? []) : [],
  );
  const { system, value } = numbers.find((one) => one.value?.endsWith(`.${item}`)) ?? {};
  const query = new URLSearchParams({ identifier: `${system}|${value}` });
  const response = await fetch(`${fhirBase}/Appointment?${query}`);
  const found = (await response.json()) as Bundle<Appointment>;
  const [appointment] = (found.entry ?? []).flatMap(({ resource }) => resource ?? []);
  if (appointment === undefined) throw new Error(`no Appointment for ${item}`);
  return appointment;
}

const isAppointment = (resource: Resource | undefined): resource is Appointment =>
  resource?.resourceType === 'Appointment';

async function answered(call: Promise<Response>) {
  const response = await call;
  return { status: response.status, headers: response.headers, text: await response.text() };
}

/** The invented patients, who must be on the server before their cases can be. */
export async function putPatients(fhirBase: string): Promise<void> {
  const response = await fetch(fhirBase, {
    method: 'POST',
    headers: { 'content-type': 'application/fhir+json' },
    body: readFileSync('examples/patients.json'),
  });
  if (!response.ok) throw new Error(`the sandbox refused the patients: ${response.status}`);
}
