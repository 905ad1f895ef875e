import type { RecordVersion } from '../record/index.js';
import type { KeptMessage } from './ports.js';
import type { ListedMessage } from './service.js';

type SetAside = RecordVersion['setAside'];

/**
 * Every message of a case, with what became of it.
 *
 * @param messages in the order of arrival
 * @param setAside undefined while the case itself has not come
 */
export function listMessages(
  messages: readonly KeptMessage[],
  setAside: SetAside | undefined,
): readonly ListedMessage[] {
  return messages.map((message) => {
    const { kind, source, naturalKey, revision, sentAt, receivedAt } = message;
    const key = identifierIn(naturalKey);
    return {
      kind,
      source,
      ...(key === undefined ? {} : { key }),
      ...(kind === 'booking' ? { item: naturalKey } : {}),
      revision,
      sentAt,
      receivedAt,
      standing: standingOf(message, messages, setAside),
    };
  });
}

function standingOf(
  message: KeptMessage,
  messages: readonly KeptMessage[],
  setAside: SetAside | undefined,
): ListedMessage['standing'] {
  const isReplaced = messages.some(
    (other) => isOfLine(other, message) && other.revision > message.revision,
  );
  if (isReplaced) return 'superseded';
  if (setAside === undefined) return 'waiting';
  const isAside = setAside.some(
    ({ kind, source, key }) =>
      kind === message.kind && source === message.source && textOf(key) === message.naturalKey,
  );
  return isAside ? 'set-aside' : 'applied';
}

const isOfLine = (one: KeptMessage, other: KeptMessage): boolean =>
  one.kind === other.kind && one.source === other.source && one.naturalKey === other.naturalKey;

const textOf = (key: SetAside[number]['key']): string =>
  key === undefined ? '' : `${key.system}|${key.value}`;

/** No identifier system contains the bar. */
function identifierIn(naturalKey: string): ListedMessage['key'] {
  const bar = naturalKey.indexOf('|');
  if (bar < 0) return undefined;
  return { system: naturalKey.slice(0, bar), value: naturalKey.slice(bar + 1) };
}
