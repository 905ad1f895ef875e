import type { IncomingMessage, ServerResponse } from 'node:http';
import { exchangeOf } from './exchange.js';
import type { Log } from './log/create-log.js';

/** One line for one request: never its URL, its headers or its body. */
export function logExchange(
  request: IncomingMessage,
  response: ServerResponse,
  log: Log,
  nowMs: number,
): void {
  const { startedMs, ...fields } = exchangeOf(request);
  const answered = response.writableFinished;
  const line = {
    event: 'request',
    method: request.method,
    ...fields,
    ...(answered ? { status: response.statusCode } : { class: 'cut' }),
    durationMs: Math.round((nowMs - startedMs) * 10) / 10,
  };
  if (answered && response.statusCode >= 500) log.error(line);
  else log.info(line);
}
