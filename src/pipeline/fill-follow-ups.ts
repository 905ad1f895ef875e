import { StoreUnavailable } from '../kernel/index.js';
import { foldRecord, presentOf } from '../record/index.js';
import { toMessage } from './parse-record-message.js';
import type { ReceiveDeps } from './receive-message.js';
import { rowsOfFollowUps } from './rows-of-follow-ups.js';

/** What came of filling the list. */
export interface FilledFollowUps {
  readonly filled: number;
  /** Cases whose plan could not be made, with why: faults of ours. */
  readonly failed: readonly { readonly caseId: string; readonly error: unknown }[];
}

const CASES_AT_ONCE = 100;

/**
 * Stores the follow-ups of cases that were saved before there was a list of them, each in a commit
 * of its own: whoever is cut short goes on where it ended.
 *
 * @param mayGoOn asked before each case
 * @throws StoreUnavailable; what was filled until then stays
 */
export async function fillFollowUps(
  deps: Omit<ReceiveDeps, 'now'>,
  mayGoOn: () => boolean = () => true,
): Promise<FilledFollowUps> {
  const failed: { caseId: string; error: unknown }[] = [];
  let filled = 0;
  let after: string | undefined;
  for (;;) {
    const caseIds = await deps.store.followUps.unfilled(CASES_AT_ONCE, after);
    for (const caseId of caseIds) {
      if (!mayGoOn()) return { filled, failed };
      try {
        await fillOne(caseId, deps);
        filled += 1;
      } catch (error) {
        if (error instanceof StoreUnavailable) throw error;
        failed.push({ caseId, error });
      }
    }
    after = caseIds.at(-1);
    if (caseIds.length < CASES_AT_ONCE) return { filled, failed };
  }
}

/** As this release plans the same messages. */
function fillOne(caseId: string, { store, settings }: Omit<ReceiveDeps, 'now'>): Promise<void> {
  return store.inCase(caseId, async (journal) => {
    const messages = (await journal.entries()).map(toMessage);
    const version = foldRecord(caseId, messages, settings.unit);
    if (version === undefined) return;
    const { fields } = presentOf(version).esdCase;
    const followUps = rowsOfFollowUps(version, fields, settings.secret);
    await journal.saveFollowUps(version.state, followUps);
  });
}
