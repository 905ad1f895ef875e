import type { Session } from '../capacity/index.js';
import type { Role, StoredKey, UnitSettings } from '../contract/index.js';
import type { Checked, Problem } from '../kernel/index.js';
import type { UnitReport } from '../measure/index.js';
import type {
  AssessedRecord,
  DryRun,
  ExpectedLoad,
  FactsChecked,
  FollowUp,
  FollowUpQuery,
  OutcomeQuestion,
  OutcomesService,
  Proposal,
  Published,
  Reassessed,
  ReassessOptions,
} from '../pipeline/index.js';
import type { Rule } from '../rules/index.js';

/**
 * 0 done; 1 found invalid, or failed; 2 called wrongly; 3 could not reach or read something;
 * 129 and 130 stopped by SIGHUP and SIGINT.
 */
export type ExitCode = 0 | 1 | 2 | 3 | 129 | 130;

/** What a command sees of its surroundings: data to `out`, talk to `err`. */
export interface World {
  readonly out: (text: string) => void;
  readonly outBytes: (bytes: Uint8Array) => void;
  readonly err: (text: string) => void;
  /** Waits until the reader of `out` has taken enough of it; for what is long. */
  readonly taken: () => Promise<void>;
  readonly readFile: (path: string) => Promise<Uint8Array>;
  readonly readStdin: () => Promise<Uint8Array>;
  /** Whether `out` is a screen, which shows text alone. */
  readonly terminal: boolean;
  /** Whether `out` shows colours. */
  readonly colour: boolean;
}

/** What the commands call; whoever gives it loads as late as possible what stands behind. */
export interface Work {
  readonly version: string;
  /** A dry run of a message, of whatever kind it says it is. */
  readonly check: (bytes: Uint8Array, unit: UnitSettings) => Promise<DryRun>;
  readonly assessRecord: (
    esdCase: Uint8Array,
    pathology: Uint8Array | undefined,
    unit: UnitSettings,
  ) => Promise<AssessedRecord>;
  readonly rules: () => Promise<RuleBook>;
  /** Checks and reads the MeasureReport of a unit. */
  readonly readUnitReport: (bytes: Uint8Array) => Promise<Checked<UnitReport>>;
  /** Looks at every case of the configured database; tells of each. */
  readonly reassess: (
    options: ReassessOptions,
    tell: (one: Reassessed) => void,
  ) => Promise<ExitCode>;
  /**
   * Lets a command read the follow-ups of the configured database.
   *
   * @returns what `read` returns, or why the database cannot be had
   */
  readonly followUps: (read: (lists: FollowUpLists) => Promise<ExitCode>) => Promise<ExitCode>;
  /**
   * Lets a command read the outcomes of the configured database.
   *
   * @returns what `read` returns, or why the database cannot be had
   */
  readonly outcomes: (read: (outcomes: OutcomesService) => Promise<ExitCode>) => Promise<ExitCode>;
  /** Puts the outcomes of a period on the configured FHIR server; tells what became of them. */
  readonly publishOutcomes: (
    question: OutcomeQuestion,
    tell: (publication: Publication) => ExitCode,
  ) => Promise<ExitCode>;
  /** Makes the facts of every case of the configured database again; tells of each. */
  readonly verifyFacts: (
    options: { readonly repair: boolean },
    tell: (one: FactsChecked) => void,
  ) => Promise<ExitCode>;
  /** Runs until it is told to stop. */
  readonly serve: () => Promise<ExitCode>;
  /** Shows the configuration without secrets. */
  readonly printConfig: () => Promise<ExitCode>;
  readonly keys: KeyWork;
}

/** What became of outcomes that were to be put on a FHIR server; `invalid`: no such report is made. */
export type Publication =
  | Published
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] };

/** The follow-ups of every case that is kept. */
export interface FollowUpLists {
  /** YYYY-MM-DD. */
  readonly today: string;
  /** All that match, in the order of the list. */
  readonly matching: (query: Omit<FollowUpQuery, 'limit' | 'after'>) => AsyncIterable<FollowUp>;
  /** Those whose id begins so, of any state. */
  readonly find: (id: string) => Promise<readonly FollowUp[]>;
  /** @returns undefined when no session is left from this day on */
  readonly propose: (sessions: readonly Session[], fromOn: string) => Promise<Proposal | undefined>;
  readonly forecast: (fromOn: string, months?: number) => Promise<ExpectedLoad>;
}

/** Every rule that can be asked, and what stands beside each answer. */
export interface RuleBook {
  readonly rules: readonly Rule[];
  readonly caution: string;
}

export interface KeyWork {
  /** Where the keys are kept. */
  readonly file: () => Promise<string>;
  readonly list: () => Promise<readonly StoredKey[]>;
  /** @returns the key, for this one time, and its id */
  readonly add: (role: Role, source: string | undefined) => Promise<MadeKey>;
  /** @returns false when there is no key of this id */
  readonly revoke: (id: string) => Promise<boolean>;
}

export interface MadeKey {
  readonly id: string;
  readonly key: string;
}

/** One command: what follows its name, and what it says when asked for help. */
export interface Command {
  readonly help: string;
  readonly run: (args: readonly string[], world: World, work: Work) => Promise<ExitCode>;
}

/** The command was called in a way that it does not offer. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
