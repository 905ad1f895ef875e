import type { ServerResponse } from 'node:http';
import type { Bundle } from 'fhir/r4.js';
import { doneResponse, PATIENT } from './sample-bundle.js';
import {
  capabilityStatement,
  patients,
  reply,
  type SeenRequest,
  type StubServer,
  startStub,
} from './stub-server.js';

/** A server that keeps what it is sent by `Type/id`, whatever becomes of the answer. */
export interface RecordingServer {
  readonly stub: StubServer;
  /** Texts of the resources, by address. */
  readonly kept: Map<string, string>;
  /** Transactions that arrived, in order, with the case that each is about. */
  readonly posts: string[];
  /** Most transactions of one case that were being answered at the same time. */
  mostOfOneCase: number;
  /** Says how a transaction is answered; it has been kept by then. */
  answer: (caseId: string, finish: () => void, response: ServerResponse) => void;
}

export async function startRecordingServer(): Promise<RecordingServer> {
  const open = new Map<string, number>();
  const server: RecordingServer = {
    stub: await startStub(),
    kept: new Map(),
    posts: [],
    mostOfOneCase: 0,
    answer: (_caseId, finish) => finish(),
  };
  const transact = (request: SeenRequest, response: ServerResponse) => {
    const sent: Bundle = JSON.parse(request.body);
    for (const { request: write, resource } of sent.entry ?? []) {
      server.kept.set(write?.url ?? '', JSON.stringify(resource));
    }
    const caseId = sent.identifier?.value ?? '';
    server.posts.push(caseId);
    open.set(caseId, (open.get(caseId) ?? 0) + 1);
    server.mostOfOneCase = Math.max(server.mostOfOneCase, open.get(caseId) ?? 0);
    response.on('close', () => open.set(caseId, (open.get(caseId) ?? 0) - 1));
    server.answer(caseId, () => reply(response, 200, doneResponse(sent)), response);
  };
  server.stub.script = (request, response) => {
    if (request.url === '/fhir/metadata') return reply(response, 200, capabilityStatement());
    if (request.url === '/fhir') return transact(request, response);
    reply(response, 200, patients(PATIENT.identifier ?? {}, 'p-1'));
  };
  return server;
}
