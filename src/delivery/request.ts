import type { Answer, AnswerBody } from './answer.js';
import { faultOf } from './fault.table.js';

export interface RequestSettings {
  /** Checked base URL, without a trailing slash. */
  readonly baseUrl: string;
  /** From the first byte out to the last byte in, milliseconds. */
  readonly deadlineMs: number;
  /** Largest answer that is read, bytes after decompression. */
  readonly maxAnswerBytes: number;
  /** Headers that prove who we are; none for an open server. */
  readonly authorize: () => Promise<Readonly<Record<string, string>>>;
  /** W3C Trace Context header of the work that this request belongs to. */
  readonly traceparent?: () => string;
}

export interface FhirRequest {
  readonly method: 'GET' | 'POST';
  /** Appended to the base URL: '' or a path that begins with '/'. */
  readonly path: string;
  readonly body?: string;
  readonly contentType?: string;
  readonly prefer?: string;
}

const FHIR_JSON = 'application/fhir+json';
const JSON_TYPE = /^application\/(?:fhir\+json|json)\s*(?:;|$)/i;

/**
 * Sends one request and reads the whole answer. Never throws for what the network or the
 * server does. Redirects are not followed: credentials must not travel to another host.
 *
 * @param signal ends the request early; the answer is then `lost`, `stopped`
 */
export async function send(
  settings: RequestSettings,
  request: FhirRequest,
  signal?: AbortSignal,
): Promise<Answer> {
  const headers = await headersFor(settings, request).catch(() => undefined);
  if (headers === undefined) return { kind: 'not-sent', fault: 'no-authorization' };

  const deadline = startDeadline(settings.deadlineMs, signal);
  try {
    const response = await fetch(`${settings.baseUrl}${request.path}`, {
      method: request.method,
      headers,
      redirect: 'manual',
      signal: deadline.signal,
      ...(request.body === undefined ? {} : { body: request.body }),
    });
    return await readAnswer(response, settings.maxAnswerBytes);
  } catch (error) {
    return faultOf(error);
  } finally {
    deadline.end();
  }
}

/**
 * One total deadline, joined with an outer signal. `AbortSignal.any` over `AbortSignal.timeout`
 * would read shorter, but holds its sources weakly: the timer could be collected unfired.
 */
function startDeadline(ms: number, outer: AbortSignal | undefined) {
  const controller = new AbortController();
  const onTimeout = () => controller.abort(new DOMException('deadline', 'TimeoutError'));
  const onOuter = () => controller.abort();
  const timer = setTimeout(onTimeout, ms);
  if (outer?.aborted === true) onOuter();
  outer?.addEventListener('abort', onOuter, { once: true });
  return {
    signal: controller.signal,
    end: () => {
      clearTimeout(timer);
      outer?.removeEventListener('abort', onOuter);
    },
  };
}

async function headersFor(
  settings: RequestSettings,
  request: FhirRequest,
): Promise<Record<string, string>> {
  const traceparent = settings.traceparent?.();
  return {
    accept: FHIR_JSON,
    ...(request.body === undefined ? {} : { 'content-type': request.contentType ?? FHIR_JSON }),
    ...(request.prefer === undefined ? {} : { prefer: request.prefer }),
    ...(traceparent === undefined ? {} : { traceparent }),
    ...(await settings.authorize()),
  };
}

async function readAnswer(response: Response, maxBytes: number): Promise<Answer> {
  const { status } = response;
  let text: string | undefined;
  try {
    text = await readText(response, maxBytes);
  } catch (error) {
    return faultOf(error, status);
  }
  if (text === undefined) return { kind: 'lost', fault: 'oversized', status };

  const body = readBody(text, response.headers.get('content-type'));
  if (body.kind === 'broken' && response.ok) return { kind: 'lost', fault: 'unreadable', status };
  const readable: AnswerBody = body.kind === 'broken' ? { kind: 'other' } : body;
  const retryAfter = response.headers.get('retry-after');
  return {
    kind: 'answered',
    status,
    body: readable,
    ...(retryAfter === null ? {} : { retryAfter }),
  };
}

/** @returns undefined as soon as the answer grows beyond the limit; the rest is not fetched */
async function readText(response: Response, maxBytes: number): Promise<string | undefined> {
  if (response.body === null) return '';
  const decoder = new TextDecoder();
  let text = '';
  let bytes = 0;
  for await (const chunk of response.body) {
    bytes += chunk.byteLength;
    if (bytes > maxBytes) return undefined;
    text += decoder.decode(chunk, { stream: true });
  }
  return text + decoder.decode();
}

/** `broken`: it claims to be JSON and is not. */
function readBody(text: string, contentType: string | null): AnswerBody | { kind: 'broken' } {
  if (text.trim() === '') return { kind: 'empty' };
  if (!JSON_TYPE.test(contentType ?? '')) return { kind: 'other' };
  try {
    return { kind: 'json', resource: JSON.parse(text) };
  } catch {
    return { kind: 'broken' };
  }
}
