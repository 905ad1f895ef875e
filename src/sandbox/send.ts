import type { Response } from 'express';
import { alteredBundle } from './altered-bundle.js';
import type { Alteration, Fault, Faults } from './faults.js';
import { isObject, type Json } from './json.js';
import type { Reply } from './reply.js';

/** On every answer, so that nobody takes the sandbox for a server of a hospital. */
const LABEL = { name: 'Demonstration', value: 'not for use with real patients' } as const;

const CONTENT_TYPE = 'application/fhir+json; charset=utf-8';

/** Sends an answer as it is. */
export function send(response: Response, { status, headers, body }: Reply): void {
  const bytes = body === undefined ? undefined : Buffer.from(JSON.stringify(body));
  writeHead(response, status, headers, bytes);
  response.end(bytes);
}

/**
 * Lets a request meet a fault before anything is done.
 *
 * @returns false when the fault comes later, and the request is to be carried out
 */
export function meetEarly(response: Response, fault: Fault, faults: Faults): boolean {
  if (fault.kind === 'answer') {
    const { status, headers = {}, body } = fault;
    writeHead(response, status, headers, body === undefined ? undefined : Buffer.from(body));
    response.end(body);
    return true;
  }
  if ((fault.kind !== 'hang' && fault.kind !== 'cut') || fault.committed) return false;
  breakOff(response, fault.kind, faults);
  return true;
}

/** Sends an answer as the fault has it. */
export function sendFaulty(response: Response, reply: Reply, fault: Fault, faults: Faults): void {
  const bytes = Buffer.from(JSON.stringify(reply.body ?? ''));
  switch (fault.kind) {
    case 'answer':
      send(response, reply);
      break;
    case 'hang':
    case 'cut':
      breakOff(response, fault.kind, faults);
      break;
    case 'truncate':
      writeHead(response, reply.status, reply.headers, bytes);
      response.write(bytes.subarray(0, bytes.length / 2), () => response.destroy());
      break;
    case 'drip':
      writeHead(response, reply.status, reply.headers, bytes);
      drip(response, bytes, fault.everyMs);
      break;
    case 'alter':
      send(response, { ...reply, body: altered(bytes, fault.how) });
      break;
  }
}

function altered(bytes: Buffer, how: Alteration): object {
  const body: Json = JSON.parse(bytes.toString());
  return isObject(body) ? alteredBundle(body, how) : {};
}

function breakOff(response: Response, how: 'hang' | 'cut', faults: Faults): void {
  if (how === 'cut') response.destroy();
  else faults.hanging(() => response.destroy());
}

function drip(response: Response, bytes: Buffer, everyMs: number): void {
  let sent = 0;
  const timer = setInterval(() => {
    response.write(bytes.subarray(sent, ++sent));
    if (sent < bytes.length) return;
    clearInterval(timer);
    response.end();
  }, everyMs);
  response.on('close', () => clearInterval(timer));
}

function writeHead(
  response: Response,
  status: number,
  headers: Readonly<Record<string, string>>,
  bytes: Buffer | undefined,
): void {
  response.status(status);
  response.setHeader(LABEL.name, LABEL.value);
  response.setHeader('Cache-Control', 'no-store');
  if (bytes !== undefined) {
    response.setHeader('Content-Type', CONTENT_TYPE);
    response.setHeader('Content-Length', bytes.length);
  }
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
}
