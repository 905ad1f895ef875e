import { type Chance, chanceOf } from './chance.js';
import { BEGINS } from './course.table.js';
import { type DrawnLesion, type DrawnPatient, drawLesion, drawPatient } from './draw-lesion.js';
import { type DrawnProcedure, drawProcedure } from './draw-procedure.js';
import { type DrawnTissue, drawTissue } from './draw-tissue.js';
import { DAY_MS, MINUTE_MS, startOfDay } from './instants.js';
import {
  CASES_OF_A_SET,
  FIRST_DAY,
  type InventedOperator,
  type InventedUnit,
} from './units.table.js';

/** Times of the procedure, ms of UTC. */
export interface DrawnTimes {
  readonly inMs: number;
  readonly injectionMs: number;
  readonly incisionMs: number;
  readonly endMs: number;
  readonly outMs: number;
}

/** Everything that chance has decided of a case before it ended. */
export interface DrawnCase {
  /** Seed and number, as its identifiers carry them. */
  readonly name: string;
  readonly unit: InventedUnit;
  /** Number of the set of units, from 1. */
  readonly set: number;
  readonly operator: InventedOperator;
  readonly times: DrawnTimes;
  readonly patient: DrawnPatient;
  readonly lesion: DrawnLesion;
  readonly procedure: DrawnProcedure;
  readonly tissue: DrawnTissue;
  /** Another stream of chance of this case. */
  chance(purpose: string): Chance;
}

/** What a run of the generator is asked for. */
export interface Wanted {
  readonly seed: number;
  /** Units to draw from. */
  readonly units: readonly InventedUnit[];
  /** The last day of which there are messages, YYYY-MM-DD. */
  readonly untilOn: string;
}

/** @param index number of the case, from 0; the same in every run with this seed and these units */
export function drawCase({ seed, units, untilOn }: Wanted, index: number): DrawnCase {
  const chance = (purpose: string): Chance => chanceOf(seed, index, purpose);
  const unit = chance('unit').pick(units.map((value) => ({ value, weight: value.share })));
  const beginMs = drawBegin(unit, untilOn, chance('day'));
  const operator = drawOperator(unit, beginMs, chance('operator'));
  const lesion = drawLesion(chance('lesion'));
  const procedure = drawProcedure(
    lesion,
    casesBefore(operator, unit, beginMs),
    chance('procedure'),
  );
  return {
    name: caseName(seed, index),
    unit,
    set: 1 + Math.floor(index / CASES_OF_A_SET),
    operator,
    times: drawTimes(beginMs, procedure, chance('times')),
    patient: drawPatient(chance('patient')),
    lesion,
    procedure,
    tissue: drawTissue(lesion, procedure, chance('tissue')),
    chance,
  };
}

/** A working day of the span and an hour of it; the last day is left for the message itself. */
function drawBegin({ offsetHours }: InventedUnit, untilOn: string, chance: Chance): number {
  const days = (Date.parse(untilOn) - Date.parse(FIRST_DAY)) / DAY_MS - 2;
  const day = Date.parse(FIRST_DAY) + chance.whole(0, days) * DAY_MS;
  const weekday = new Date(day).getUTCDay();
  const back = weekday === 0 ? 2 : weekday === 6 ? 1 : 0;
  const on = new Date(Math.max(Date.parse(FIRST_DAY), day - back * DAY_MS))
    .toISOString()
    .slice(0, 10);
  const minute = chance.whole(BEGINS.fromHour * 60, BEGINS.toHour * 60);
  return startOfDay(on, offsetHours) + minute * MINUTE_MS;
}

function drawOperator(unit: InventedUnit, atMs: number, chance: Chance): InventedOperator {
  const there = unit.operators.filter(
    ({ joinedOn }) => startOfDay(joinedOn, unit.offsetHours) <= atMs,
  );
  return chance.pick(there.map((value) => ({ value, weight: value.casesPerYear })));
}

/** Dissections of an operator until then, as the table says; not a count of generated cases. */
export function casesBefore(
  { casesBefore: before, casesPerYear, joinedOn }: InventedOperator,
  { offsetHours }: InventedUnit,
  atMs: number,
): number {
  const years = (atMs - startOfDay(joinedOn, offsetHours)) / (365.25 * DAY_MS);
  return Math.floor(before + casesPerYear * Math.max(0, years));
}

function drawTimes(inMs: number, { dissectionMin }: DrawnProcedure, chance: Chance): DrawnTimes {
  const injectionMs = inMs + chance.whole(8, 25) * MINUTE_MS;
  const incisionMs = injectionMs + chance.whole(2, 8) * MINUTE_MS;
  const endMs = incisionMs + Math.round(dissectionMin * 60) * 1000;
  return { inMs, injectionMs, incisionMs, endMs, outMs: endMs + chance.whole(4, 30) * MINUTE_MS };
}

/** Seed and number, as every identifier of the case carries them. */
export const caseName = (seed: number, index: number): string =>
  `${seed}-${String(index).padStart(7, '0')}`;
