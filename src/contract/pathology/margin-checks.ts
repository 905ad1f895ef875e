import type { CrossCheck } from '../cross-check.js';
import type { ReadablePathology } from './readable-pathology.js';
import type { State } from './words.table.js';

export const marginChecks: readonly CrossCheck<ReadablePathology>[] = [
  {
    rule: 'CC-06',
    message: 'The stated resection status contradicts the margins or the pieces.',
    expected: 'R0 of one piece with both margins free; R1 unless both margins of it are free',
    broken: ({ specimen = {}, findings = {} }) => {
      const states = [findings.hm?.state, findings.vm?.state];
      const pieces = Math.max(specimen.piecesReceived ?? 0, specimen.pieces?.length ?? 0);
      const isFree = states.every((state) => state === '0');
      const contradicts =
        findings.resectionStatus === 'R0'
          ? pieces > 1 || states.some((state) => state === '1' || state === 'X')
          : findings.resectionStatus === 'R1' && pieces === 1 && isFree;
      return contradicts ? ['/findings/resectionStatus'] : [];
    },
  },
  {
    rule: 'margin-parts',
    message: 'The state of the margin contradicts what is said of carcinoma and dysplasia at it.',
    expected: '1 if either is 1, otherwise X if either is X, otherwise 0',
    broken: (sent) =>
      margins(sent).flatMap(({ state, carcinoma, dysplasia, at }) =>
        fits(state, [carcinoma, dysplasia]) ? [] : [`${at}/state`],
      ),
  },
  {
    rule: 'margin-distance',
    message: 'Only from a free margin does the tumour keep a distance.',
    expected: 'a distance above 0 with state 0, a distance of 0 with state 1, none with state X',
    broken: (sent) =>
      margins(sent).flatMap(({ state, distance, distanceAt }) =>
        state === undefined || distance === undefined || state === (distance > 0 ? '0' : '1')
          ? []
          : [distanceAt],
      ),
  },
];

interface Margin {
  readonly at: string;
  readonly state: State | undefined;
  readonly carcinoma: State | undefined;
  readonly dysplasia: State | undefined;
  readonly distance: number | undefined;
  readonly distanceAt: string;
}

type WithMargins = Pick<NonNullable<ReadablePathology['findings']>, 'hm' | 'vm'>;

function margins({ specimen = {}, findings = {} }: ReadablePathology): readonly Margin[] {
  return [
    ...marginsOf(findings, '/findings'),
    ...(specimen.pieces ?? []).flatMap((piece, i) => marginsOf(piece, `/specimen/pieces/${i}`)),
  ];
}

function marginsOf({ hm, vm }: WithMargins, at: string): readonly Margin[] {
  return [
    {
      at: `${at}/hm`,
      state: hm?.state,
      carcinoma: hm?.carcinoma,
      dysplasia: hm?.dysplasia,
      distance: hm?.distanceMm,
      distanceAt: `${at}/hm/distanceMm`,
    },
    {
      at: `${at}/vm`,
      state: vm?.state,
      carcinoma: vm?.carcinoma,
      dysplasia: vm?.dysplasia,
      distance: vm?.distanceUm,
      distanceAt: `${at}/vm/distanceUm`,
    },
  ];
}

/** From free to involved; the whole is as bad as its worst part. */
const WORSENING: readonly State[] = ['0', 'X', '1'];

/** A part that was not told may be as bad as the whole, but the whole hides no part. */
function fits(whole: State | undefined, parts: readonly (State | undefined)[]): boolean {
  const told = parts.filter((part) => part !== undefined);
  if (whole === undefined || told.length === 0) return true;
  const worst = Math.max(...told.map((part) => WORSENING.indexOf(part)));
  const all = told.length === parts.length;
  return all ? WORSENING[worst] === whole : WORSENING.indexOf(whole) >= worst;
}
