import { type DestinationStream, type Logger, pino } from 'pino';
import { errorFields } from './error-fields.js';
import { LOG_FIELDS } from './log-fields.table.js';

/** Writes events with fields of the list, and nothing else. */
export type Log = Pick<Logger, 'debug' | 'info' | 'warn' | 'error'>;

export const LOG_LEVELS = ['silent', 'error', 'warn', 'info', 'debug'] as const;
export type LogLevel = (typeof LOG_LEVELS)[number];

/** Says nothing. */
export const SILENT_LOG: Log = pino({ enabled: false });

/**
 * A log of JSON lines: time in UTC, level, event name and the fields of the list. A sentence, a
 * field that is not in the list and a value that has not its form do not get through.
 *
 * @param destination standard output unless given
 */
export function createLog(level: LogLevel, destination?: DestinationStream): Log {
  const options = {
    level,
    base: null,
    timestamp: pino.stdTimeFunctions.isoTime,
    formatters: { level: (label: string) => ({ level: label }) },
    hooks: { logMethod },
  };
  return destination === undefined ? pino(options) : pino(options, destination);
}

/**
 * Keeps the listed fields alone: sentences and what would be filled into them are dropped. Errors
 * are replaced here, because pino by itself repeats the message of an error that it meets.
 */
function logMethod(this: Logger, args: unknown[], method: (fields: object) => void): void {
  const [fields] = args;
  method.call(this, listedFields(typeof fields === 'object' && fields !== null ? fields : {}));
}

function listedFields(fields: object): Record<string, unknown> {
  const listed: Record<string, unknown> = { event: 'unnamed' };
  for (const [name, value] of Object.entries(fields)) {
    if (name === 'err') listed[name] = errorFields(value);
    else if (Object.hasOwn(LOG_FIELDS, name) && LOG_FIELDS[name]?.(value)) listed[name] = value;
  }
  return listed;
}
