import { StoreUnavailable } from '../kernel/index.js';
import { type CaseFacts, foldRecord, presentOf } from '../record/index.js';
import { factsOf } from './facts-of.js';
import { toMessage } from './parse-record-message.js';
import type { RecordStore } from './ports.js';
import type { PipelineSettings } from './settings.js';

/** The facts as they lie in the store. */
export interface FactsStore {
  /**
   * Cases and rows of facts, in the order of case ids: also cases without a row, and rows without
   * a case.
   *
   * @param after the last id seen
   */
  page(limit: number, after?: string): Promise<readonly StoredFacts[]>;
  /** Writes a row, unless a message has come since. @returns whether it was written */
  repair(facts: CaseFacts): Promise<boolean>;
}

export interface StoredFacts {
  readonly caseId: string;
  /** By the names of the facts, whatever lies there; absent: there is no row. */
  readonly facts?: Readonly<Record<string, unknown>>;
}

/** A case whose facts were made again from the messages of its journal. */
export interface FactsChecked {
  readonly caseId: string;
  /**
   * `differ`: some facts are not what the messages say; `absent`: there should be a row and is
   * none; `stray`: there is a row without a case; `failed`: a fault of ours.
   */
  readonly kind: 'same' | 'differ' | 'absent' | 'stray' | 'failed';
  /** Names of the facts that differ. */
  readonly facts: readonly string[];
  readonly repaired: boolean;
  readonly error?: unknown;
}

interface Deps {
  readonly store: Pick<RecordStore, 'entries'>;
  readonly facts: FactsStore;
  readonly settings: PipelineSettings;
}

const CASES_AT_ONCE = 200;

/**
 * Makes the facts of every case again from the bytes in the journal, and compares.
 *
 * @param repair writes what differs or is absent; a stray row stays for a person to look at
 * @throws StoreUnavailable; what was written until then stays
 */
export async function* recomputeFacts(
  deps: Deps,
  { repair = false }: { readonly repair?: boolean } = {},
): AsyncGenerator<FactsChecked> {
  let after: string | undefined;
  for (;;) {
    const rows = await deps.facts.page(CASES_AT_ONCE, after);
    for (const row of rows) yield await lookAt(row, deps, repair);
    after = rows.at(-1)?.caseId;
    if (rows.length < CASES_AT_ONCE) return;
  }
}

async function lookAt(row: StoredFacts, deps: Deps, repair: boolean): Promise<FactsChecked> {
  const { caseId } = row;
  try {
    const made = await madeAnew(caseId, deps);
    const found = compare(row, made);
    const wants = made !== undefined && (found.kind === 'differ' || found.kind === 'absent');
    return { ...found, repaired: repair && wants && (await deps.facts.repair(made)) };
  } catch (error) {
    if (error instanceof StoreUnavailable) throw error;
    return { caseId, kind: 'failed', facts: [], repaired: false, error };
  }
}

/** @returns undefined where the case itself has not come */
async function madeAnew(caseId: string, { store, settings }: Deps): Promise<CaseFacts | undefined> {
  const messages = (await store.entries(caseId)).map(toMessage);
  if (messages.length === 0) return undefined;
  const version = foldRecord(caseId, messages, settings.unit);
  return version && factsOf(version, presentOf(version), settings.secret);
}

function compare(
  { caseId, facts }: StoredFacts,
  made: CaseFacts | undefined,
): Omit<FactsChecked, 'repaired'> {
  if (made === undefined) {
    return { caseId, kind: facts === undefined ? 'same' : 'stray', facts: [] };
  }
  if (facts === undefined) return { caseId, kind: 'absent', facts: [] };
  const differing = Object.entries(made)
    .filter(([name, value]) => facts[name] !== value)
    .map(([name]) => name);
  return { caseId, kind: differing.length === 0 ? 'same' : 'differ', facts: differing };
}
