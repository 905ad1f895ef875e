import type { Organ } from '../../src/contract/index.js';
import {
  COMMON,
  EXPERTS_TRAINEES,
  GASTRIC_OPERATORS,
  GASTRIC_TRAINEES,
  INVENTED,
  LOW_VOLUME,
  RECTAL_FIBROSIS,
  UNTUTORED,
} from './sources.table.js';

/** Where an operator stands on the way of learning, by the number of dissections until then. */
export type Phase = 'first-twenty' | 'until-forty' | 'from-forty';

interface PhaseRow {
  readonly phase: Phase;
  readonly fromCases: number;
  readonly toCases: number;
  readonly from: string;
}

/** Ascending, without gaps. The borders of 20 and 40 cases. */
export const PHASES: readonly PhaseRow[] = [
  { phase: 'first-twenty', fromCases: 0, toCases: 20, from: LOW_VOLUME },
  { phase: 'until-forty', fromCases: 20, toCases: 40, from: LOW_VOLUME },
  { phase: 'from-forty', fromCases: 40, toCases: Infinity, from: LOW_VOLUME },
];

interface Rate {
  readonly percent: number;
  readonly from: string;
}

interface ByPhase {
  readonly 'first-twenty': Rate;
  readonly 'until-forty': Rate;
  readonly 'from-forty': Rate;
}

/** What severe fibrosis takes from the share of en bloc resections: 86.4 / 96.6. */
export const SEVERE_EN_BLOC_FACTOR = { factor: 86.4 / 96.6, from: `${RECTAL_FIBROSIS}; derived` };

/** Of 100 attempted lesions without severe fibrosis, those that come out in one piece. */
export const EN_BLOC: Readonly<Record<Organ, ByPhase>> = {
  oesophagus: {
    'first-twenty': { percent: 90, from: INVENTED },
    'until-forty': { percent: 95, from: INVENTED },
    'from-forty': { percent: 97.5, from: INVENTED },
  },
  stomach: {
    'first-twenty': { percent: 90, from: INVENTED },
    'until-forty': { percent: 95, from: INVENTED },
    'from-forty': { percent: 97.5, from: INVENTED },
  },
  duodenum: {
    'first-twenty': { percent: 75, from: INVENTED },
    'until-forty': { percent: 84, from: INVENTED },
    'from-forty': { percent: 92, from: INVENTED },
  },
  colon: {
    'first-twenty': { percent: 81.9, from: UNTUTORED },
    'until-forty': { percent: 94.7, from: EXPERTS_TRAINEES },
    'from-forty': { percent: 95.6, from: EXPERTS_TRAINEES },
  },
  rectum: {
    'first-twenty': { percent: 81.9, from: UNTUTORED },
    'until-forty': { percent: 94.7, from: EXPERTS_TRAINEES },
    'from-forty': { percent: 96.6, from: RECTAL_FIBROSIS },
  },
};

/** Of 100 lesions that were brought to a dissection. */
export const NOT_STARTED: Rate = { percent: 0.4, from: INVENTED };
/** Of 100 that did not come out in one piece, those that were given up; the rest is piecemeal. */
export const ABANDONED: Rate = { percent: 18, from: INVENTED };
/** Of 100 piecemeal resections, those that leave nothing to see. */
export const PIECEMEAL_COMPLETE: Rate = { percent: 90, from: INVENTED };
/** Of 100 dissections that end with the snare. */
export const HYBRID = {
  enBloc: { percent: 6, from: INVENTED },
  piecemeal: { percent: 55, from: INVENTED },
};

/** Median speed in cm2 of specimen an hour, without severe fibrosis. */
interface Speed {
  readonly cm2PerH: number;
  readonly from: string;
}
export const SPEED: Readonly<Record<Organ, Readonly<Record<Phase, Speed>>>> = {
  oesophagus: {
    'first-twenty': { cm2PerH: 8, from: INVENTED },
    'until-forty': { cm2PerH: 10, from: INVENTED },
    'from-forty': { cm2PerH: 13, from: INVENTED },
  },
  stomach: {
    // 60 min / (5.7 min/cm2) and 60 / (4.7 min/cm2).
    'first-twenty': { cm2PerH: 60 / 5.7, from: `${GASTRIC_TRAINEES}; derived` },
    'until-forty': { cm2PerH: 60 / 4.7, from: `${GASTRIC_TRAINEES}; derived` },
    'from-forty': { cm2PerH: 19.8, from: GASTRIC_OPERATORS },
  },
  duodenum: {
    'first-twenty': { cm2PerH: 4, from: INVENTED },
    'until-forty': { cm2PerH: 6, from: INVENTED },
    'from-forty': { cm2PerH: 8, from: INVENTED },
  },
  colon: {
    // "Below 3": 2.9 is the number chosen.
    'first-twenty': { cm2PerH: 2.9, from: LOW_VOLUME },
    'until-forty': { cm2PerH: 6.7, from: EXPERTS_TRAINEES },
    'from-forty': { cm2PerH: 10.3, from: EXPERTS_TRAINEES },
  },
  rectum: {
    'first-twenty': { cm2PerH: 2.9, from: LOW_VOLUME },
    'until-forty': { cm2PerH: 6.7, from: EXPERTS_TRAINEES },
    // 24.66 mm2/min x 0.6.
    'from-forty': { cm2PerH: 24.66 * 0.6, from: `${RECTAL_FIBROSIS}; derived` },
  },
};
/** Standard deviation of the natural logarithm of the speed. */
export const SPEED_SPREAD = { spread: 0.4, from: INVENTED };
/** 16.93 / 24.66 mm2/min. */
export const SEVERE_SPEED_FACTOR = { factor: 16.93 / 24.66, from: `${RECTAL_FIBROSIS}; derived` };
/** Time from the first cut to the free specimen, min. */
export const DISSECTION_LIMITS = { leastMin: 4, mostMin: 600, from: COMMON };

/** Holes seen while the scope is in, and muscle damage short of a hole, of 100 attempted. */
interface Injury {
  readonly perforation: Rate;
  readonly damage: Rate;
}
const LEARNER: Injury = {
  perforation: { percent: 6.9, from: EXPERTS_TRAINEES },
  damage: { percent: 18.6, from: EXPERTS_TRAINEES },
};
const EXPERT: Injury = {
  perforation: { percent: 3.7, from: EXPERTS_TRAINEES },
  damage: { percent: 12.5, from: EXPERTS_TRAINEES },
};
const UPPER: Injury = {
  perforation: { percent: 2.5, from: INVENTED },
  damage: { percent: 9, from: INVENTED },
};
const UPPER_LEARNER: Injury = {
  perforation: { percent: 5, from: INVENTED },
  damage: { percent: 14, from: INVENTED },
};
export const INJURY: Readonly<Record<Organ, Readonly<Record<'learner' | 'expert', Injury>>>> = {
  oesophagus: { learner: UPPER_LEARNER, expert: UPPER },
  stomach: { learner: UPPER_LEARNER, expert: UPPER },
  duodenum: {
    learner: {
      perforation: { percent: 18, from: INVENTED },
      damage: { percent: 25, from: INVENTED },
    },
    expert: {
      perforation: { percent: 9, from: INVENTED },
      damage: { percent: 18, from: INVENTED },
    },
  },
  colon: { learner: LEARNER, expert: EXPERT },
  rectum: { learner: LEARNER, expert: EXPERT },
};

/** Worst bleeding during the dissection, of 100 attempted. */
export const BLEEDING_DURING = [
  { value: 'none', weight: 38, from: INVENTED },
  { value: 'oozing', weight: 51, from: INVENTED },
  { value: 'spurting', weight: 11, from: INVENTED },
] as const;

/** Free margin around the lesion that the specimen has, mm on each side. */
export const MARGIN_MM = { least: 2, most: 7, from: INVENTED };
