import type { Bundle } from 'fhir/r4.js';
import { assess } from '../../src/assessment/index.js';
import {
  DEFAULT_UNIT_SETTINGS,
  type EsdCase,
  isUnreadable,
  parseCase,
} from '../../src/contract/index.js';
import { type Checked, sha256 } from '../../src/kernel/index.js';
import {
  type Answer,
  type CaseView,
  createOutcomesService,
  type Service,
  type StoredFeed,
} from '../../src/pipeline/index.js';
import { planFacts, planFollowUp } from '../../src/surveillance/index.js';

export const CASE_ID = '0b54d9a2-6f0e-8c11-9b7d-2f3f5a6b7c8d';
export const CAUTION = 'Decision support: a person decides.';
const RECEIVED_AT = '2026-03-03T12:10:00.000Z';

const FEED: StoredFeed = {
  id: CASE_ID,
  createdAt: RECEIVED_AT,
  expiresAt: '2027-03-03T12:10:00.000Z',
};

const BUNDLE: Bundle = { resourceType: 'Bundle', type: 'transaction', entry: [] };

/** A service that keeps messages in memory; reads them with the real contract. */
export function createServiceDouble(overrides: Partial<Service> = {}): Service {
  const kept = new Map<number, { readonly sha256: string; readonly esdCase: EsdCase }>();
  const newest = () => kept.get(Math.max(0, ...kept.keys()));
  return {
    receive: async (_kind, bytes, caller) => {
      const parsed = parseCase(bytes);
      if (!parsed.ok) return { kind: refusedKind(parsed), problems: parsed.problems };
      const { fields } = parsed.value;
      if (fields.source !== caller.source) return { kind: 'forbidden', problem: FORBIDDEN };
      const hash = sha256(bytes);
      const before = kept.get(fields.revision);
      if (before !== undefined && before.sha256 !== hash) {
        return { kind: 'conflict', problem: CONFLICT };
      }
      kept.set(fields.revision, { sha256: hash, esdCase: parsed.value });
      const { revision } = fields;
      const own = { system: fields.case.system, value: fields.case.value };
      return {
        kind: before === undefined ? 'accepted' : 'repeated',
        receipt: {
          caseId: CASE_ID,
          case: own,
          kind: 'case',
          revision,
          sha256: hash,
          receivedAt: RECEIVED_AT,
        },
        view: answerTo(parsed.value),
      };
    },
    check: async (_kind, bytes) => {
      const parsed = parseCase(bytes);
      return parsed.ok
        ? { kind: 'valid', view: answerTo(parsed.value), warnings: [], bundle: BUNDLE }
        : { kind: refusedKind(parsed), problems: parsed.problems };
    },
    readCase: async (caseId, caller) => {
      const stored = newest();
      if (caseId !== CASE_ID || stored === undefined) return undefined;
      const { fields } = stored.esdCase;
      if (caller.source !== undefined && caller.source !== fields.source) return undefined;
      return viewOf(stored.esdCase);
    },
    readBundle: async (caseId) => (caseId === CASE_ID ? BUNDLE : undefined),
    searchCases: async () => [
      { caseId: CASE_ID, state: 1, delivery: 'queued', receivedAt: RECEIVED_AT },
    ],
    receiveBooking: async () => ({ kind: 'not-found' }),
    listFollowUps: async () => ({ kind: 'found', page: { followUps: [], cursor: 'c' } }),
    readFollowUp: async () => undefined,
    createFeed: async () => FEED,
    listFeeds: async () => [FEED],
    revokeFeed: async () => undefined,
    readFeed: async () => undefined,
    ...NO_OUTCOMES,
    ready: () => Promise.resolve(),
    ...overrides,
  };
}

const none = () => Promise.resolve([]);
const NOTHING = { cells: [], values: [], firstChecks: [], watched: [] };

/** Outcomes of no case at all. */
const NO_OUTCOMES = createOutcomesService({
  store: {
    outcomes: {
      read: (work) => work({ tally: async () => NOTHING, cells: none, inOrder: none }),
    },
    facts: async function* () {},
  },
  settings: { unit: DEFAULT_UNIT_SETTINGS, secret: 'x'.repeat(32), softwareVersion: '0' },
  now: () => RECEIVED_AT,
});

const refusedKind = (parsed: Extract<Checked<EsdCase>, { readonly ok: false }>) =>
  isUnreadable(parsed.problems) ? ('unreadable' as const) : ('invalid' as const);

const answerTo = ({ fields }: EsdCase): Answer => ({
  state: 1,
  ...judged(fields),
  caution: CAUTION,
});

function judged(fields: EsdCase['fields']): Pick<Answer, 'assessment' | 'plan'> {
  const assessment = assess({ fields }, DEFAULT_UNIT_SETTINGS);
  const known = { esdCase: { fields }, reports: [], events: [], examinations: [], assessment };
  return { assessment, plan: planFollowUp(planFacts(known), DEFAULT_UNIT_SETTINGS) };
}

const viewOf = (esdCase: EsdCase): CaseView => ({
  ...answerTo(esdCase),
  caseId: CASE_ID,
  case: esdCase.fields.case,
  revision: esdCase.fields.revision,
  delivery: { name: 'queued', state: 1, since: RECEIVED_AT, attempts: 0 },
  messages: [],
  timeline: [{ at: RECEIVED_AT, event: 'received', state: 1 }],
});

const FORBIDDEN = {
  rule: 'source-mismatch',
  pointer: '/source',
  message: 'This source is not the one of the API key.',
  expected: 'the source of the API key',
};

const CONFLICT = {
  rule: 'revision-used',
  pointer: '/revision',
  message: 'This revision came before with other content.',
  expected: 'the same bytes, or a higher revision',
};
