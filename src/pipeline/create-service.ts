import type { Bundle } from 'fhir/r4.js';
import { toFound, toView } from './case-view.js';
import { checkMessage } from './check-message.js';
import { createOutcomesService } from './create-outcomes-service.js';
import { createFeed, readFeed } from './feeds.js';
import { listFollowUps, readFollowUp } from './list-follow-ups.js';
import { searchKeysOf } from './naming.js';
import type { StoredCase } from './ports.js';
import { toStoredBundle } from './prepare.js';
import { receiveBooking } from './receive-booking.js';
import { type ReceiveDeps, receiveMessage } from './receive-message.js';
import type { Caller, Service } from './service.js';
import { showTo } from './show-follow-up.js';

/** The service over a store; everything that callers can ask for. */
export function createService(deps: ReceiveDeps): Service {
  const { store, settings, now } = deps;
  const readFor = async (caseId: string, caller: Caller): Promise<StoredCase | undefined> => {
    const stored = await store.read(caseId);
    return stored === undefined || isHidden(stored, caller) ? undefined : stored;
  };
  return {
    receive: (kind, bytes, caller) => receiveMessage(kind, bytes, caller, deps),
    check: (kind, bytes, caller) =>
      checkMessage(kind, bytes, {
        settings,
        caller,
        now: now(),
        entriesOf: (caseId) => store.entries(caseId),
      }),
    readCase: async (caseId, caller) => {
      const stored = await readFor(caseId, caller);
      return stored === undefined ? undefined : toView(stored, settings, now());
    },
    readBundle: async (caseId, caller): Promise<Bundle | undefined> => {
      const stored = await readFor(caseId, caller);
      return stored?.version === undefined ? undefined : toStoredBundle(stored.version, settings);
    },
    searchCases: async ({ delivery, awaiting, limit, after, ...named }, caller) => {
      const hits = await store.search({
        searchKeys: searchKeysOf(settings.secret, named),
        limit,
        ...(delivery === undefined ? {} : { delivery }),
        ...(awaiting === undefined ? {} : { awaiting }),
        ...(after === undefined ? {} : { after }),
        ...(caller.source === undefined ? {} : { source: caller.source }),
      });
      return hits.map((hit) => toFound(hit, now()));
    },
    ...followUpService(deps),
    ...createOutcomesService(deps),
    ready: () => store.ready(),
  };
}

type FollowUpService = Pick<
  Service,
  | 'receiveBooking'
  | 'listFollowUps'
  | 'readFollowUp'
  | 'createFeed'
  | 'listFeeds'
  | 'revokeFeed'
  | 'readFeed'
>;

function followUpService(deps: ReceiveDeps): FollowUpService {
  const { store, settings, now } = deps;
  return {
    receiveBooking: (id, bytes, caller) => receiveBooking(id, bytes, caller, deps),
    listFollowUps: async (query, { role }) => {
      const found = await listFollowUps(query, deps);
      if (found.kind !== 'found') return found;
      const shown = found.page.followUps.map((each) => showTo(role, each, settings.secret));
      return { kind: 'found', page: { ...found.page, followUps: shown } };
    },
    readFollowUp: async (id, { role }) => {
      const followUp = await readFollowUp(id, deps);
      return followUp === undefined ? undefined : showTo(role, followUp, settings.secret);
    },
    createFeed: (wish) => createFeed(wish, deps),
    listFeeds: () => store.feeds.list(),
    revokeFeed: (id) => store.feeds.revoke(id, now()),
    readFeed: (tokenHash) => readFeed(tokenHash, deps),
  };
}

/** Whose a case is shows when it comes; until then all who sent something about it see it. */
function isHidden({ source, version, messages }: StoredCase, caller: Caller): boolean {
  if (caller.source === undefined || caller.source === source) return false;
  return version !== undefined || messages.every((message) => message.source !== caller.source);
}
