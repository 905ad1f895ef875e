import type { CaseFields, UnitSettings } from '../../contract/index.js';
import { DRUG_CLASS_NAMES, EDITION_NAMES } from './drug-names.table.js';
import { calendarDays, daysUntilDate, minutesIfTold } from './spans.js';

export type Drug = NonNullable<NonNullable<CaseFields['before']>['antithrombotics']>[number];

/** What the checks of one antithrombotic drug look at; `undefined` was not told. */
export interface DrugFacts {
  readonly edition: UnitSettings['antithromboticEdition'];
  /** For the sentence: the edition; the agent, or its class in words. */
  readonly guideline: string;
  readonly drug: string;
  readonly drugClass: Drug['class'];
  readonly agent: Drug['agent'];
  readonly decision: Drug['decision'];
  readonly thromboticRisk: Drug['thromboticRisk'];
  readonly advisedBy: Drug['advisedBy'];
  readonly bridged: boolean | undefined;
  /** From last dose to scope in: days by the calendar, and hours; negative when taken later. */
  readonly daysStopped: number | undefined;
  readonly hoursStopped: number | undefined;
  /** Not told where it was measured by the day of the last dose: that is the INR under treatment. */
  readonly inrWhileStopped: number | undefined;
  readonly creatinineClearanceMlPerMin: number | undefined;
  /** Days by the calendar from scope out to the restart, the planned one if it is not told. */
  readonly restartDays: number | undefined;
  readonly plannedRestartDays: number | undefined;
  readonly restartedAfterEndMin: number | undefined;
  readonly restartedAfterLastDoseMin: number | undefined;
  readonly besideP2Y12: boolean;
}

const MINUTES_PER_HOUR = 60;

/**
 * Reads one antithrombotic drug of a case.
 *
 * Source: the fields of the case, and arithmetic.
 */
export function drugFacts(drug: Drug, sent: CaseFields, unit: UnitSettings): DrugFacts {
  const { times, before } = sent;
  const { lastDoseAt, restartedAt, restartPlannedOn } = drug;
  const stoppedMin = minutesIfTold(lastDoseAt, times.scopeInAt);
  const plannedRestartDays =
    restartPlannedOn === undefined ? undefined : daysUntilDate(times.scopeOutAt, restartPlannedOn);
  const restartedDays =
    restartedAt === undefined ? undefined : calendarDays(times.scopeOutAt, restartedAt);
  return {
    edition: unit.antithromboticEdition,
    guideline: EDITION_NAMES[unit.antithromboticEdition],
    drug: drug.agent ?? DRUG_CLASS_NAMES[drug.class],
    drugClass: drug.class,
    agent: drug.agent,
    decision: drug.decision,
    thromboticRisk: drug.thromboticRisk,
    advisedBy: drug.advisedBy,
    bridged: drug.replacedBy === 'heparin' ? true : drug.bridged,
    daysStopped:
      lastDoseAt === undefined ? undefined : 0 - calendarDays(times.scopeInAt, lastDoseAt),
    hoursStopped: stoppedMin === undefined ? undefined : stoppedMin / MINUTES_PER_HOUR,
    inrWhileStopped: inrWhileStopped(drug),
    creatinineClearanceMlPerMin: drug.creatinineClearanceMlPerMin,
    restartDays: restartedDays ?? plannedRestartDays,
    plannedRestartDays,
    restartedAfterEndMin: minutesIfTold(times.scopeOutAt, restartedAt),
    restartedAfterLastDoseMin: minutesIfTold(lastDoseAt, restartedAt),
    besideP2Y12: before?.antithrombotics?.some((one) => one.class === 'p2y12-inhibitor') === true,
  };
}

function inrWhileStopped({ inr, inrOn, lastDoseAt }: Drug): number | undefined {
  const underTreatment =
    inrOn !== undefined && lastDoseAt !== undefined && daysUntilDate(lastDoseAt, inrOn) <= 0;
  return underTreatment ? undefined : inr;
}
