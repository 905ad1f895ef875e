import type { Answer } from './answer.js';
import { type PatientIdentifier, patientSearchBody } from './patient.js';
import { type RequestSettings, send } from './request.js';

/** The few requests that we make of a FHIR server. None of them throws. */
export interface FhirClient {
  /** `GET /metadata` */
  capabilities(signal?: AbortSignal): Promise<Answer>;
  /** `POST /` with a transaction Bundle as JSON text */
  transaction(bundle: string, signal?: AbortSignal): Promise<Answer>;
  /** `POST /Patient/_search`; the identifier stands in the body alone */
  searchPatient(patient: PatientIdentifier, signal?: AbortSignal): Promise<Answer>;
  /** `POST /<type>/_search` with form-encoded criteria */
  search(type: string, criteria: string, signal?: AbortSignal): Promise<Answer>;
  /** `GET` of a further page of a search, by its path below the base */
  page(path: string, signal?: AbortSignal): Promise<Answer>;
}

export interface FhirClientConfig {
  /** Checked by `checkBaseUrl`. */
  readonly baseUrl: string;
  /** Headers that prove who we are. */
  readonly authorize?: RequestSettings['authorize'];
  /** Of one request in all, 30 s unless given. Below 10 s a slow connect counts as unknown. */
  readonly deadlineMs?: number;
  /** 20 MB unless given. */
  readonly maxAnswerBytes?: number;
  readonly traceparent?: () => string;
}

const DEADLINE_MS = 30_000;
const MAX_ANSWER_BYTES = 20 * 1024 * 1024;
const FORM = 'application/x-www-form-urlencoded';

/** For a server that wants one fixed token. */
export function bearerToken(token: string): RequestSettings['authorize'] {
  const headers = { authorization: `Bearer ${token}` };
  return () => Promise.resolve(headers);
}

export function createFhirClient(config: FhirClientConfig): FhirClient {
  const settings: RequestSettings = {
    baseUrl: config.baseUrl,
    deadlineMs: config.deadlineMs ?? DEADLINE_MS,
    maxAnswerBytes: config.maxAnswerBytes ?? MAX_ANSWER_BYTES,
    authorize: config.authorize ?? (() => Promise.resolve({})),
    ...(config.traceparent === undefined ? {} : { traceparent: config.traceparent }),
  };
  const search: FhirClient['search'] = (type, criteria, signal) =>
    send(
      settings,
      {
        method: 'POST',
        path: `/${type}/_search`,
        body: criteria,
        contentType: FORM,
        prefer: 'handling=strict',
      },
      signal,
    );
  return {
    capabilities: (signal) => send(settings, { method: 'GET', path: '/metadata' }, signal),
    transaction: (body, signal) =>
      send(settings, { method: 'POST', path: '', body, prefer: 'return=minimal' }, signal),
    searchPatient: (patient, signal) => search('Patient', patientSearchBody(patient), signal),
    search,
    page: (path, signal) => send(settings, { method: 'GET', path }, signal),
  };
}
