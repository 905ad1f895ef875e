import type { Bundle } from 'fhir/r4.js';
import { invariant } from '../kernel/index.js';
import { knowledgeOf, type RecordMessage, readVersion } from '../record/index.js';
import { toAnswer, toWaiting } from './answer.js';
import { checkMessage } from './check-message.js';
import { searchKeysOf } from './naming.js';
import type { StoredCase } from './ports.js';
import { toStoredBundle } from './prepare.js';
import { type ReceiveDeps, receiveMessage } from './receive-message.js';
import type { Caller, CaseView, Service } from './service.js';

/** The service over a store; everything that callers can ask for. */
export function createService(deps: ReceiveDeps): Service {
  const { store, settings } = deps;
  const readFor = async (caseId: string, caller: Caller): Promise<StoredCase | undefined> => {
    const stored = await store.read(caseId);
    const isOthers = caller.source !== undefined && stored?.source !== caller.source;
    return isOthers ? undefined : stored;
  };
  return {
    receive: (kind, bytes, caller) => receiveMessage(kind, bytes, caller, deps),
    check: (kind, bytes, caller) =>
      checkMessage(kind, bytes, settings, async (caseId) =>
        messagesOf(await readFor(caseId, caller)),
      ),
    readCase: async (caseId, caller) => {
      const stored = await readFor(caseId, caller);
      return stored === undefined ? undefined : toView(stored);
    },
    readBundle: async (caseId, caller): Promise<Bundle | undefined> => {
      const stored = await readFor(caseId, caller);
      return stored?.version === undefined ? undefined : toStoredBundle(stored.version, settings);
    },
    searchCases: ({ delivery, limit, after, ...named }, caller) =>
      store.search({
        searchKeys: searchKeysOf(settings.secret, named),
        limit,
        ...(delivery === undefined ? {} : { delivery }),
        ...(after === undefined ? {} : { after }),
        ...(caller.source === undefined ? {} : { source: caller.source }),
      }),
    ready: () => store.ready(),
  };
}

function toView({ caseId, state, version: text, delivery, timeline }: StoredCase): CaseView {
  const standing = { caseId, delivery, timeline };
  if (text === undefined) return { ...toWaiting(state), ...standing };
  const version = readVersion(text);
  const known = knowledgeOf(version.messages);
  invariant(known !== undefined, 'a record version has its case');
  const { case: own, revision } = known.esdCase.fields;
  return {
    ...toAnswer(version),
    ...standing,
    case: { system: own.system, value: own.value },
    revision,
  };
}

const messagesOf = (stored: StoredCase | undefined): readonly RecordMessage[] =>
  stored?.version === undefined ? [] : readVersion(stored.version).messages;
