import { type Assessment, assess } from '../assessment/index.js';
import {
  type CaseFields,
  checkAgainstCase,
  parseCase,
  parsePathology,
  type UnitSettings,
} from '../contract/index.js';
import type { Problem } from '../kernel/index.js';
import {
  type FollowUpPlan,
  type KnownForPlan,
  planFacts,
  planFollowUp,
} from '../surveillance/index.js';

/** What a case means, with its pathology report where there is one; or what is wrong with them. */
export type AssessedRecord =
  | {
      readonly kind: 'invalid';
      readonly message: 'case' | 'pathology';
      readonly problems: readonly Problem[];
    }
  | {
      readonly kind: 'assessed';
      readonly fields: CaseFields;
      readonly assessment: Assessment;
      readonly plan: FollowUpPlan;
    };

/**
 * Assesses a case without keeping anything.
 *
 * @param pathology bytes of a `pathology` message on the specimen of this case
 */
export function assessRecord(
  esdCase: Uint8Array,
  pathology: Uint8Array | undefined,
  unit: UnitSettings,
): AssessedRecord {
  const parsed = parseCase(esdCase);
  if (!parsed.ok) return { kind: 'invalid', message: 'case', problems: parsed.problems };
  const { fields } = parsed.value;
  if (pathology === undefined) {
    return assessed(fields, [], assess({ fields }, unit), unit);
  }
  const report = parsePathology(pathology);
  if (!report.ok) return { kind: 'invalid', message: 'pathology', problems: report.problems };
  const problems = isSame(report.value.fields.case, fields.case)
    ? checkAgainstCase(report.value.fields, fields)
    : [OF_ANOTHER_CASE];
  if (problems.length > 0) return { kind: 'invalid', message: 'pathology', problems };
  const assessment = assess({ fields, report: report.value.fields }, unit);
  return assessed(fields, [report.value], assessment, unit);
}

function assessed(
  fields: CaseFields,
  reports: KnownForPlan['reports'],
  assessment: Assessment,
  unit: UnitSettings,
): AssessedRecord {
  const known = { esdCase: { fields }, reports, events: [], examinations: [], assessment };
  return { kind: 'assessed', fields, assessment, plan: planFollowUp(planFacts(known), unit) };
}

const isSame = (one: CaseFields['case'], other: CaseFields['case']): boolean =>
  one.system === other.system && one.value === other.value;

const OF_ANOTHER_CASE: Problem = {
  rule: 'report-of-another-case',
  pointer: '/case',
  message: 'This report is on the specimen of another case.',
  expected: 'the identifier of the case beside it',
};
