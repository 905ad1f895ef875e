import { everyQuestion } from '../../support/every-question.js';

export const KINDS = ['warfarin', 'doac', 'p2y12', 'aspirin', 'cilostazol'] as const;
type Kind = (typeof KINDS)[number];
type Use = 'not-taken' | 'continued' | 'interrupted' | 'not-known';

export interface Drug {
  readonly kind: string;
  readonly interrupted?: boolean | null;
}
export interface BestJQuestion {
  readonly drugs: readonly Drug[];
  readonly haemodialysis: boolean;
  readonly lowerThird: boolean;
  readonly multiple: boolean;
  readonly sizeMm: number;
}

// Source: Hatta W et al. Gut 2021;70:476-484, groups and rates from its table of risk groups, the
// weights from the score's own calculator (second source), in plain words: warfarin and DOAC 4,
// haemodialysis 3, P2Y12 and aspirin 2, cilostazol 1, size above 30 mm 1, lower third 1, several
// tumours 1, minus 1 for each kind of drug that was interrupted. A kind whose interruption is not
// known leaves the total open by 1.
export function bestJ({
  drugs,
  haemodialysis,
  lowerThird,
  multiple,
  sizeMm,
}: BestJQuestion): string {
  let total = 0;
  let open = 0;
  for (const kind of new Set(drugs.map((drug) => drug.kind))) {
    const of = drugs.filter((drug) => drug.kind === kind);
    if (kind === 'other') continue;
    if (kind === 'warfarin' || kind === 'doac') total += 4;
    if (kind === 'p2y12' || kind === 'aspirin') total += 2;
    if (kind === 'cilostazol') total += 1;
    if (of.some(({ interrupted }) => interrupted === false)) continue;
    if (of.every(({ interrupted }) => interrupted === true)) total -= 1;
    else open += 1;
  }
  if (haemodialysis) total += 3;
  if (lowerThird) total += 1;
  if (multiple) total += 1;
  if (sizeMm > 30) total += 1;
  if (open > 0) return `indeterminate;missing=drugs;range=${total - open}-${total}`;
  if (total < 2) return `${total};low;2.8`;
  if (total < 3) return `${total};intermediate;6.1`;
  if (total < 5) return `${total};high;11.4`;
  return `${total};very-high;29.7`;
}

const INTERRUPTED: Record<Exclude<Use, 'not-taken'>, boolean | null> = {
  continued: false,
  interrupted: true,
  'not-known': null,
};

const listOf = (uses: Record<Kind, Use>): readonly Drug[] =>
  KINDS.flatMap((kind) => {
    const use = uses[kind];
    return use === 'not-taken' ? [] : [{ kind, interrupted: INTERRUPTED[use] }];
  });

const FLAGS = [false, true];
const listsOf = (uses: readonly Use[]) =>
  everyQuestion<Record<Kind, Use>>({
    warfarin: uses,
    doac: uses,
    p2y12: uses,
    aspirin: uses,
    cilostazol: uses,
  }).map(listOf);

/** Every use of the drugs beside nothing else, and every use that is known beside every item. */
export const EVERY_BEST_J: readonly BestJQuestion[] = [
  ...everyQuestion<BestJQuestion>({
    drugs: listsOf(['not-taken', 'continued', 'interrupted', 'not-known']),
    haemodialysis: [false],
    lowerThird: [false],
    multiple: [false],
    sizeMm: [30],
  }),
  ...everyQuestion<BestJQuestion>({
    drugs: listsOf(['not-taken', 'continued', 'interrupted']),
    haemodialysis: FLAGS,
    lowerThird: FLAGS,
    multiple: FLAGS,
    sizeMm: [30, 30.1],
  }),
];
