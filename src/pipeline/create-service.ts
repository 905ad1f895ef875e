import type { Bundle } from 'fhir/r4.js';
import { readVersion } from '../record/index.js';
import { checkCase, toAnswer } from './check-case.js';
import { searchKeysOf } from './naming.js';
import type { StoredCase } from './ports.js';
import { toStoredBundle } from './prepare.js';
import { type ReceiveDeps, receiveCase } from './receive-case.js';
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
    receiveCase: (bytes, caller) => receiveCase(bytes, caller, deps),
    checkCase: (bytes) => checkCase(bytes, settings),
    readCase: async (caseId, caller) => {
      const stored = await readFor(caseId, caller);
      return stored === undefined ? undefined : toView(stored);
    },
    readBundle: async (caseId, caller): Promise<Bundle | undefined> => {
      const stored = await readFor(caseId, caller);
      return stored === undefined ? undefined : toStoredBundle(stored.version, settings);
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

function toView(stored: StoredCase): CaseView {
  const version = readVersion(stored.version);
  const { fields } = version.current.esdCase;
  return {
    caseId: stored.caseId,
    case: { system: fields.case.system, value: fields.case.value },
    revision: fields.revision,
    ...toAnswer(version),
    delivery: stored.delivery,
    timeline: stored.timeline,
  };
}
