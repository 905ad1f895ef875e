import type { ExitCode, FollowUpLists } from './cli/index.js';
import { invariant } from './kernel/index.js';
import { onRecords } from './on-records.js';
import {
  expectedLoad,
  type FollowUp,
  type FollowUpQuery,
  type FoundFollowUps,
  listFollowUps,
  proposeDays,
  readFollowUp,
  todayAt,
} from './pipeline/index.js';
import type { Say } from './run-service.js';

/** Lets a command read the follow-ups of the database that the environment names. */
export const readFollowUps = (
  read: (lists: FollowUpLists) => Promise<ExitCode>,
  err: Say,
): Promise<ExitCode> =>
  onRecords(async (records) => {
    const lists = listsOf({
      today: todayAt(records),
      page: (query) => listFollowUps(query, records),
      one: (id) => readFollowUp(id, records),
    });
    return read(lists);
  }, err);

/** Where follow-ups are read. */
export interface FollowUpSource {
  /** YYYY-MM-DD. */
  readonly today: string;
  readonly page: (query: FollowUpQuery) => Promise<FoundFollowUps>;
  readonly one: (id: string) => Promise<FollowUp | undefined>;
}

const PAGE = 500;
const WHOLE_ID = 36;
const EVERY_STATE: NonNullable<FollowUpQuery['states']> = [
  ...(['provisional', 'open', 'to-confirm', 'done', 'superseded', 'revoked'] as const),
];

/** Whole lists out of pages. */
export function listsOf({ today, page, one }: FollowUpSource): FollowUpLists {
  async function* matching(
    query: Omit<FollowUpQuery, 'limit' | 'after'>,
  ): AsyncGenerator<FollowUp> {
    let after: string | undefined;
    do {
      const at = after === undefined ? {} : { after };
      const found = await page({ ...query, ...at, limit: PAGE });
      invariant(found.kind === 'found', 'a query of ours is a sound one');
      yield* found.page.followUps;
      after = found.page.next;
    } while (after !== undefined);
  }
  const beginningWith = async (id: string): Promise<readonly FollowUp[]> => {
    const every = await all(matching({ states: EVERY_STATE }));
    return every.filter((each) => each.id.startsWith(id));
  };
  const examinations = () => all(matching({ kind: 'endoscopy' }));
  return {
    today,
    matching,
    find: async (id) => {
      if (id.length < WHOLE_ID) return beginningWith(id);
      const found = await one(id);
      return found === undefined ? [] : [found];
    },
    propose: async (sessions, fromOn) => proposeDays(await examinations(), sessions, fromOn),
    forecast: async (fromOn, months) => expectedLoad(await examinations(), fromOn, months),
  };
}

async function all<T>(many: AsyncIterable<T>): Promise<readonly T[]> {
  const found: T[] = [];
  for await (const each of many) found.push(each);
  return found;
}
