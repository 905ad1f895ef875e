import type { CaseFields } from '../../contract/index.js';
import { askScore, type ScoreAnswer } from '../../rules/index.js';
import type { ScoreFinding, ScoreOutcome, Shown } from '../assessment.js';
import { type Known, RECORD_SCORES, type RecordScore, type ScoredReport } from './record-scores.js';

/**
 * The published scores that concern the organ of a case.
 *
 * Before a pathology report is known the eCura score is left out: nobody can ask it yet.
 * Source: each score's table.
 * Indeterminate: without a field that a score asks for; the finding names it as the case does,
 * and between which totals the score lies.
 *
 * @param report the pathology report in force, if there is one
 * @param gastricClass class of the case by the Japanese rule set for the stomach, where it has one
 * @returns the findings; empty for an organ without a score
 */
export function assessScores(
  fields: CaseFields,
  report: ScoredReport | undefined,
  gastricClass: string | undefined,
): readonly ScoreFinding[] {
  const known = { fields, report, gastricClass };
  return RECORD_SCORES.filter(
    ({ organs, concerns }) =>
      organs.includes(fields.lesion.organ) && (concerns === undefined || concerns(known)),
  ).map((score) => findingOf(score, known));
}

function findingOf(score: RecordScore, known: Known): ScoreFinding {
  const { rule, refused, told, remarks } = score;
  const { id, version, title, population } = rule;
  const head = { rule: id, version, title, population };
  const because = refused?.(known);
  if (because !== undefined) {
    return { ...head, outcome: { kind: 'refused', because }, remarks: [] };
  }
  const asked = askScore(rule, told(known));
  const shown: readonly Shown[] = [
    ...asked.remarks.map(({ remark, says, cites }) => ({ remark, says, cites })),
    ...remarks(known),
  ];
  return { ...head, outcome: outcomeOf(score, asked, known), remarks: shown };
}

function outcomeOf(score: RecordScore, { total, band }: ScoreAnswer, known: Known): ScoreOutcome {
  const unknown = score.unknown?.(known) ?? [];
  if (total.kind === 'indeterminate') {
    const missing = [...unknown, ...total.missing.map((field) => placeOf(score, field))];
    return { ...total, missing: [...new Set(missing)] };
  }
  if (unknown.length > 0) {
    const { total: lowest } = total;
    return { kind: 'indeterminate', missing: unknown, lowest, highest: lowest };
  }
  return {
    kind: 'total',
    total: total.total,
    ...(band === undefined ? {} : { group: band.group }),
    ...(band?.rate === undefined ? {} : { rate: band.rate }),
    ...(band?.figures === undefined ? {} : { figures: band.figures }),
    counted: total.counted.map(({ item, points, says, cites }) => ({ item, points, says, cites })),
  };
}

function placeOf({ rule, places }: RecordScore, field: string): string {
  const name = rule.nameOf?.(field) ?? field;
  return places[name] ?? name;
}
