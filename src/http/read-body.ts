import type { IncomingMessage } from 'node:http';
import { mediaTypeRefusal } from './media-type.js';
import { Refused } from './problem-document.js';

/** The connection ended before the body did; nobody is left to be answered. */
export class RequestCut extends Error {
  override readonly name = 'RequestCut';
}

/**
 * The bytes of the body exactly as they came.
 *
 * @throws Refused when the body is too large or in a form that is not read
 * @throws RequestCut when it does not arrive whole
 */
export async function readBody(request: IncomingMessage, limitBytes: number): Promise<Uint8Array> {
  const refusal = mediaTypeRefusal(request.headers);
  if (refusal !== undefined) throw new Refused(refusal);
  if (isChunked(request) || announcedBytes(request) <= limitBytes) {
    return collect(request, limitBytes);
  }
  throw tooLarge(limitBytes);
}

/** Whether bytes may still come, more than are worth waiting for. */
export function hasMuchLeft(request: IncomingMessage, limitBytes: number): boolean {
  return !request.complete && (isChunked(request) || announcedBytes(request) > limitBytes);
}

const isChunked = ({ headers }: IncomingMessage): boolean =>
  headers['transfer-encoding'] !== undefined;

const announcedBytes = ({ headers }: IncomingMessage): number =>
  Number(headers['content-length'] ?? 0);

function collect(request: IncomingMessage, limitBytes: number): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    let size = 0;
    const settle = (done: () => void): void => {
      request.off('data', onData).off('end', onEnd).off('close', onCut).off('error', onCut);
      // An error that comes late has nobody to hear it and must not end the process.
      request.on('error', () => undefined);
      done();
    };
    const onData = (chunk: Uint8Array): void => {
      size += chunk.length;
      if (size > limitBytes) settle(() => reject(tooLarge(limitBytes)));
      else chunks.push(chunk);
    };
    const onEnd = (): void => settle(() => resolve(Buffer.concat(chunks)));
    const onCut = (): void => settle(() => reject(new RequestCut()));
    request.on('data', onData).on('end', onEnd).on('close', onCut).on('error', onCut);
  });
}

const tooLarge = (limitBytes: number): Refused =>
  new Refused({
    problem: 'body-too-large',
    detail: `A body may hold at most ${limitBytes} bytes.`,
  });
