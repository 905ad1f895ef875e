import type { Logger } from 'pino';

/** What the store needs of a logger: event names and numbers, never content. */
export type StoreLog = Pick<Logger, 'info' | 'warn' | 'error'>;

const say = (): void => undefined;

/** For callers that do not want to hear anything. */
export const SILENT: StoreLog = { info: say, warn: say, error: say };
