/**
 * Counts what is there against what should be.
 *
 * @param expected names, each of which should be there once
 * @param found names as often as they are there
 * @returns what is missing, doubled or uninvited; nothing when each is there exactly once
 */
export function censusFaults(
  expected: readonly string[],
  found: readonly string[],
): readonly string[] {
  const times = new Map<string, number>();
  for (const name of found) times.set(name, (times.get(name) ?? 0) + 1);
  const asked = new Set(expected);
  return [
    ...[...asked].flatMap((name) => faultsOf(name, times.get(name) ?? 0)),
    ...[...times.keys()].filter((name) => !asked.has(name)).map((name) => `${name} is uninvited`),
  ];
}

function faultsOf(name: string, times: number): readonly string[] {
  if (times === 1) return [];
  return [times === 0 ? `${name} is missing` : `${name} is there ${times} times`];
}
