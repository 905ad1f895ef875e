import type { Problem } from '../kernel/index.js';
import type { JournalEntry } from './ports.js';

/** What the journal says to a message that has come. */
export type Admission =
  | { readonly kind: 'new' }
  /** A lower revision than the newest: kept, never applied. */
  | { readonly kind: 'stale'; readonly problem: Problem }
  | { readonly kind: 'repeat'; readonly first: JournalEntry }
  | { readonly kind: 'conflict'; readonly problem: Problem };

type Arriving = Pick<JournalEntry, 'kind' | 'naturalKey' | 'source' | 'revision' | 'hash'>;

/**
 * Decides by source, natural key, revision and content. A message that comes again gets the answer
 * that it got the first time. Whose case it is shows when the case comes: what came before it from
 * others is set aside then, and refused from then on. Appointments are told by others.
 *
 * @param entries the messages of the case in the order of their arrival
 */
export function admit(entries: readonly JournalEntry[], arriving: Arriving): Admission {
  const owner = entries.find(({ kind }) => kind === 'case');
  const isOthers = arriving.kind === 'booking';
  if (owner !== undefined && owner.source !== arriving.source && !isOthers) {
    return conflict({
      rule: 'case-of-another-source',
      pointer: '/case',
      message: 'Another source has sent this case.',
      expected: 'a case of this source',
    });
  }
  const line = entries.filter(
    (entry) =>
      entry.kind === arriving.kind &&
      entry.source === arriving.source &&
      entry.naturalKey === arriving.naturalKey,
  );
  const same = line.find(({ revision }) => revision === arriving.revision);
  if (same !== undefined && same.hash !== arriving.hash) {
    return conflict({
      rule: 'revision-used',
      pointer: '/revision',
      message: 'This revision came before with other content.',
      expected: 'the same bytes, or a higher revision',
    });
  }
  const before = same === undefined ? line : line.slice(0, line.indexOf(same));
  const isStale = newestOf(before) > arriving.revision;
  const problem = staleAfter(newestOf(line));
  if (same === undefined) return isStale ? { kind: 'stale', problem } : { kind: 'new' };
  return isStale ? conflict(problem) : { kind: 'repeat', first: same };
}

const newestOf = (line: readonly JournalEntry[]): number =>
  Math.max(0, ...line.map(({ revision }) => revision));

const staleAfter = (newest: number): Problem => ({
  rule: 'revision-stale',
  pointer: '/revision',
  message: 'A higher revision came before; this one is kept but never applied.',
  expected: `a revision above ${newest}`,
});

const conflict = (problem: Problem): Admission => ({ kind: 'conflict', problem });
