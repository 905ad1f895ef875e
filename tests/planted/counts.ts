import { readFileSync } from 'node:fs';

/** How many changes are made of one kind, and how many of them change no answer. */
export interface Counts {
  readonly made: number;
  readonly unnoticed: number;
}

const KINDS = ['tables', 'absence', 'schedules', 'contradictions'] as const;

/** The counts that `README.md` beside this file gives for a kind of change. */
export function countsInReadme(kind: (typeof KINDS)[number]): Counts {
  const [row] = readFileSync('tests/planted/README.md', 'utf8').match(rowOf(kind)) ?? [];
  const [made = 0, noticed = 0, unnoticed = 0] = (row?.match(/\d+(?= \|)/g) ?? []).map(Number);
  if (made === 0 || made !== noticed + unnoticed) throw new Error(`no sound row of ${kind}`);
  return { made, unnoticed };
}

const rowOf = (kind: string): RegExp => new RegExp(`^\\| ${kind} .*$`, 'm');

/** All kinds together. */
export function totalInReadme(): Counts {
  const all = KINDS.map(countsInReadme);
  const sum = (of: keyof Counts) => all.reduce((sofar, counts) => sofar + counts[of], 0);
  return { made: sum('made'), unnoticed: sum('unnoticed') };
}
