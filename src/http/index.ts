export { ACCESS, accessTo } from './access.table.js';
export { type AppParts, createApp } from './create-app.js';
export { createHttpServer, type Listening, listen, type ServerLimits } from './create-server.js';
export {
  type Authenticator,
  createAuthenticator,
  KeysUnavailable,
  type Principal,
} from './keys/authenticator.js';
export {
  addKey,
  followKeyFile,
  KeyFileRefused,
  readKeyFile,
  revokeKey,
} from './keys/key-file.js';
export { makeOneTimeKeys, type OneTimeKeys } from './keys/one-time-keys.js';
export type { NewKey } from './keys/secret-key.js';
export { createLog, LOG_LEVELS, type Log, type LogLevel, SILENT_LOG } from './log/create-log.js';
export { PROBLEM_BASE, PROBLEM_TYPES, type ProblemName } from './problem-types.table.js';
export type { Health } from './route.js';
export type { SendLimits } from './send.js';
