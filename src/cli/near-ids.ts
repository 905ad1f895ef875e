const MOST = 5;

/** Ids that somebody may have meant: with a part in common, or a few letters away. */
export function nearIds(asked: string, ids: readonly string[]): readonly string[] {
  const text = asked.toLowerCase();
  const parts = text.split('-').filter((part) => part.length > 2);
  return ids
    .map((id) => ({ id, far: distance(text, id), shares: parts.some((part) => id.includes(part)) }))
    .filter(({ id, far, shares }) => shares || far <= Math.max(2, id.length / 3))
    .sort((a, b) => a.far - b.far)
    .slice(0, MOST)
    .map(({ id }) => id);
}

/** Letters to add, drop or change to make one of the other (Levenshtein 1966). */
function distance(one: string, other: string): number {
  let row = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const changed = (row[j - 1] ?? 0) + (one[i - 1] === other[j - 1] ? 0 : 1);
      next.push(Math.min(changed, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[other.length] ?? 0;
}
