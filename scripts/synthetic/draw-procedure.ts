import type { Chance } from './chance.js';
import { PROPHYLAXIS } from './course.table.js';
import type { DrawnLesion } from './draw-lesion.js';
import {
  ABANDONED,
  BLEEDING_DURING,
  DISSECTION_LIMITS,
  EN_BLOC,
  HYBRID,
  INJURY,
  MARGIN_MM,
  NOT_STARTED,
  PHASES,
  type Phase,
  PIECEMEAL_COMPLETE,
  SEVERE_EN_BLOC_FACTOR,
  SEVERE_SPEED_FACTOR,
  SPEED,
  SPEED_SPREAD,
} from './procedure.table.js';

/** The invented dissection. Lengths in mm, times in min. */
export interface DrawnProcedure {
  readonly phase: Phase;
  readonly outcome: 'en-bloc' | 'piecemeal' | 'abandoned' | 'not-started';
  readonly hybrid: boolean;
  readonly pieces: number;
  readonly complete: boolean;
  readonly perforated: boolean;
  readonly muscleInjury: '0' | 'I' | 'II' | 'III' | 'IV';
  readonly bleeding: (typeof BLEEDING_DURING)[number]['value'];
  /** Absent where nothing came out. */
  readonly specimen?: { readonly longMm: number; readonly shortMm: number };
  readonly dissectionMin: number;
  /** Share of the circumference of an oesophagus of 20 mm that the wound takes. */
  readonly woundPercent: number;
  readonly prophylaxis: (typeof PROPHYLAXIS)[number]['value'];
}

/** @param casesBefore dissections of the operator until then */
export function phaseOf(casesBefore: number): Phase {
  const row = PHASES.find(
    ({ fromCases, toCases }) => fromCases <= casesBefore && casesBefore < toCases,
  );
  if (row === undefined) throw new RangeError('phases of learning leave no gap');
  return row.phase;
}

export function drawProcedure(
  lesion: DrawnLesion,
  casesBefore: number,
  chance: Chance,
): DrawnProcedure {
  const phase = phaseOf(casesBefore);
  const outcome = drawOutcome(lesion, phase, chance);
  const size = specimenOf(lesion, chance);
  const isOut = outcome === 'en-bloc' || outcome === 'piecemeal';
  const woundPercent = Math.min(100, Math.round((size.shortMm / (Math.PI * LUMEN_MM)) * 100));
  const hybrid = chance.happens(
    outcome === 'piecemeal' ? HYBRID.piecemeal.percent : HYBRID.enBloc.percent,
  );
  return {
    phase,
    outcome,
    hybrid: isOut && hybrid,
    pieces: outcome === 'en-bloc' ? 1 : chance.whole(2, 5),
    complete:
      outcome === 'en-bloc' ||
      (outcome === 'piecemeal' && chance.happens(PIECEMEAL_COMPLETE.percent)),
    ...drawInjury(lesion, phase, outcome, chance),
    bleeding: outcome === 'not-started' ? 'none' : chance.pick(BLEEDING_DURING),
    ...(isOut ? { specimen: size } : {}),
    dissectionMin: minutesOf(lesion, phase, size, chance),
    woundPercent,
    prophylaxis:
      isOut && lesion.organ === 'oesophagus' && woundPercent >= WIDE_PERCENT
        ? chance.pick(PROPHYLAXIS)
        : 'none',
  };
}

export const LUMEN_MM = 20;
/** Three quarters of the circumference: from here on prophylaxis is spoken of. */
export const WIDE_PERCENT = 75;

function drawOutcome(lesion: DrawnLesion, phase: Phase, chance: Chance) {
  if (chance.happens(NOT_STARTED.percent)) return 'not-started';
  const { percent } = EN_BLOC[lesion.organ][phase];
  const factor = lesion.fibrosis === 'F2' ? SEVERE_EN_BLOC_FACTOR.factor : 1;
  if (chance.happens(percent * factor)) return 'en-bloc';
  return chance.happens(ABANDONED.percent) ? 'abandoned' : 'piecemeal';
}

function specimenOf({ longMm, shortMm }: DrawnLesion, chance: Chance) {
  const aroundMm = 2 * chance.whole(MARGIN_MM.least, MARGIN_MM.most);
  return { longMm: longMm + aroundMm, shortMm: shortMm + aroundMm };
}

/** Area of the specimen as an ellipse, divided by the speed. */
function minutesOf(
  { organ, fibrosis }: DrawnLesion,
  phase: Phase,
  { longMm, shortMm }: { readonly longMm: number; readonly shortMm: number },
  chance: Chance,
): number {
  const factor = fibrosis === 'F2' ? SEVERE_SPEED_FACTOR.factor : 1;
  const median = SPEED[organ][phase].cm2PerH * factor;
  const cm2PerH = chance.logNormal(median, SPEED_SPREAD.spread);
  const areaCm2 = (Math.PI / 4) * (longMm / 10) * (shortMm / 10);
  const minutes = (areaCm2 / cm2PerH) * 60;
  return Math.min(DISSECTION_LIMITS.mostMin, Math.max(DISSECTION_LIMITS.leastMin, minutes));
}

function drawInjury(
  { organ }: DrawnLesion,
  phase: Phase,
  outcome: string,
  chance: Chance,
): Pick<DrawnProcedure, 'perforated' | 'muscleInjury'> {
  const { perforation, damage } = INJURY[organ][phase === 'from-forty' ? 'expert' : 'learner'];
  const drawn = chance.unit() * 100;
  if (outcome === 'not-started') return { perforated: false, muscleInjury: '0' };
  if (drawn < perforation.percent) return { perforated: true, muscleInjury: 'IV' };
  const isDamaged = chance.happens(damage.percent);
  const muscleInjury = isDamaged ? ((['I', 'II', 'III'] as const)[chance.whole(0, 2)] ?? 'I') : '0';
  return { perforated: false, muscleInjury };
}
