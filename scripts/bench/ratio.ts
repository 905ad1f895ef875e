/** How two contenders compare over paired rounds. */
export interface Ratio {
  readonly median: number;
  readonly p10: number;
  readonly p90: number;
  /** Best round of the one over best round of the other. */
  readonly minByMin: number;
}

export function ratio(ours: readonly number[], theirs: readonly number[]): Ratio {
  const paired = ours.map((ms, i) => ms / (theirs[i] ?? Number.NaN));
  return {
    median: quantile(paired, 0.5),
    p10: quantile(paired, 0.1),
    p90: quantile(paired, 0.9),
    minByMin: Math.min(...ours) / Math.min(...theirs),
  };
}

/** One goal in one line; lower is better. */
export function showRatio(
  name: string,
  { median, p10, p90, minByMin }: Ratio,
  { goal, stretch }: { readonly goal: number; readonly stretch: number },
): string {
  const verdict = median <= stretch ? 'ok, stretch' : median <= goal ? 'ok' : 'missed';
  return (
    `${name} ${short(median)} (goal <= ${goal}, stretch <= ${stretch}) ${verdict}` +
    `  [p10-p90 ${short(p10)}-${short(p90)}, min/min ${short(minByMin)}]`
  );
}

/** Median, p10 to p90 and least of a list of times. */
export function spread(list: readonly number[]): string {
  const [median, p10, p90] = [0.5, 0.1, 0.9].map((q) => short(quantile(list, q)));
  return `${median} (p10-p90 ${p10}-${p90}, least ${short(Math.min(...list))})`;
}

function quantile(list: readonly number[], q: number): number {
  const rising = [...list].sort((a, b) => a - b);
  return rising[Math.round((rising.length - 1) * q)] ?? Number.NaN;
}

const short = (n: number): string => n.toPrecision(3);
