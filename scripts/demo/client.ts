import { readFileSync } from 'node:fs';
import type { Bundle } from 'fhir/r4.js';
import type { CaseView, FoundCase, SentKind } from '../../src/pipeline/index.js';
import type { Running } from '../../src/serve.js';

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
}

/** The service as its callers see it: over HTTP. */
export interface Client {
  readonly base: string;
  /** @throws Error when it is refused, or not delivered in time */
  push(kind: SentKind, body: Uint8Array<ArrayBuffer>): Promise<Pushed>;
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

export function createClient({ port, oneTimeKeys }: Running): Client {
  const base = `http://127.0.0.1:${port}`;
  const keyOf = (role: string): string =>
    oneTimeKeys.find(({ stored }) => stored.role === role)?.key ?? '';
  const call = (role: string, path: string, body?: Uint8Array<ArrayBuffer> | string) =>
    fetch(base + path, {
      ...(body === undefined ? {} : { method: 'POST', body }),
      headers: { authorization: `Bearer ${keyOf(role)}`, 'content-type': 'application/json' },
    });
  const read = async <T>(role: string, path: string, body?: string): Promise<T> => {
    const response = await call(role, path, body);
    if (!response.ok) throw new Error(`${path} answers ${response.status}`);
    return response.json() as Promise<T>;
  };
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
      const bundle = await read<Bundle>('records-team', `${location}/bundle`);
      return { ...pushed, bundle, ...(await awaits(sent.case)) };
    },
  };
}

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
