import type { SentKind } from '../../pipeline/index.js';
import type { Route } from '../route.js';
import { checkMessage } from './check-message.js';
import { receiveMessage } from './receive-message.js';

/** Where each kind of message is pushed to; `/check` behind it is the dry run. */
const PATHS = {
  case: '/cases',
  pathology: '/pathology',
  event: '/events',
  examination: '/examinations',
  withdrawal: '/withdrawals',
} as const satisfies Readonly<Record<SentKind, string>>;

const KINDS = Object.keys(PATHS) as readonly SentKind[];

/** Taking and checking, for every kind of message. */
export const messageRoutes: readonly Route[] = KINDS.flatMap((kind) => [
  receiveMessage(kind, PATHS[kind]),
  checkMessage(kind, `${PATHS[kind]}/check`),
]);
