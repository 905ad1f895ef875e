import { invariant } from '../kernel/index.js';
import { type Read, truthOf } from './condition.js';
import { type Decision, decide } from './decide.js';
import { addUp, type Total } from './points.js';
import type { Told } from './question.js';
import type { Band, ClassRule, Remark, ScoreRule } from './rule.js';

/** A class with what led to it, under a named rule. */
export interface ClassAnswer<C extends string = string> {
  readonly rule: string;
  readonly version: number;
  readonly decision: Decision<C>;
  readonly remarks: readonly Remark[];
}

/** A score with its group, or the totals between which it lies. */
export interface ScoreAnswer {
  readonly rule: string;
  readonly version: number;
  readonly total: Total;
  /** Absent where the total is, or where no groups were published. */
  readonly band?: Band;
  readonly remarks: readonly Remark[];
}

/** @throws InvariantError when the table has a gap */
export function askClass<C extends string>(rule: ClassRule<C>, told: Told): ClassAnswer<C> {
  const decision = decide(rule.table, { ...rule, told });
  const beside = decision.kind === 'decided' ? decision.class : undefined;
  return {
    rule: rule.id,
    version: rule.version,
    decision,
    remarks: remarksBeside(rule.remarks, told, beside),
  };
}

/** @throws InvariantError when the groups leave the total without one */
export function askScore(rule: ScoreRule, told: Told): ScoreAnswer {
  const total = addUp(rule.items, { ...rule, told });
  const band = total.kind === 'total' ? bandOf(rule.bands, total.total, told) : undefined;
  return {
    rule: rule.id,
    version: rule.version,
    total,
    ...(band === undefined ? {} : { band }),
    remarks: remarksBeside(rule.remarks, told, band?.group),
  };
}

function bandOf(bands: readonly Band[], total: number, told: Told): Band | undefined {
  const band = bands.find(
    ({ from, to, when = {} }) =>
      from <= total && total <= to && truthOf(when, toldOnly(told)) === true,
  );
  invariant(band !== undefined || bands.length === 0, 'a group covers every total');
  return band;
}

function remarksBeside(remarks: readonly Remark[], told: Told, beside: string | undefined) {
  return remarks.filter(
    (remark) =>
      (remark.beside === undefined || (beside !== undefined && remark.beside.includes(beside))) &&
      truthOf(remark.when, toldOnly(told)) === true,
  );
}

/** The fields as told, nothing supposed. */
const toldOnly =
  (told: Told): Read =>
  (field) =>
    told[field] ?? { needs: field };
