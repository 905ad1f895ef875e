import type { Assessment } from '../assessment/index.js';
import { daysBetween, type Finding, roundTo } from '../kernel/index.js';
import { sizeBandOf, traineeBandOf } from '../outcomes/index.js';
import type { CaseFacts } from './case-facts.js';
import { checkFacts } from './check-facts.js';
import { awaitsPathology } from './deadlines.js';
import { indicatorWords } from './indicators/indicator-words.js';
import type { ReportMessage } from './message.js';
import type { RecordView } from './view.js';

/** Decimals that a computed number keeps in the facts. */
const DECIMALS = 3;

/**
 * The flat row of a record version.
 *
 * @param pseudonym makes a keyed pseudonym of an identifier, another one for each use of it
 */
export function toFacts(
  { version, now }: Pick<RecordView, 'version' | 'now'>,
  pseudonym: (
    identifier: { readonly system: string; readonly value: string },
    of: 'operator' | 'unit',
  ) => string,
): CaseFacts {
  const { fields } = now.esdCase;
  const { assessment, reports, withdrawal } = now;
  const { lesion, resection, specimen, dissection, safety, team, times } = fields;
  const risk = assessment.strictureRisk;
  return {
    caseId: version.caseId,
    state: version.state,
    source: fields.source,
    unit: fields.unit === undefined ? null : pseudonym(fields.unit, 'unit'),
    organ: lesion.organ,
    site: lesion.site ?? null,
    operator: pseudonym(team.operator, 'operator'),
    traineePercent: team.traineePercent ?? null,
    scopeInAt: times.scopeInAt,
    resectionOutcome: resection.outcome,
    technique: resection.technique ?? null,
    pieces: resection.pieces ?? null,
    endoscopicallyComplete: resection.complete ?? null,
    lesionLongAxisMm: lesion.longAxisMm,
    specimenLongAxisMm: specimen?.longAxisMm ?? null,
    specimenShortAxisMm: specimen?.shortAxisMm ?? null,
    specimenAreaCm2: numberOf(assessment.specimenAreaCm2),
    procedureMin: numberOf(assessment.procedureMin),
    dissectionMin: numberOf(assessment.dissectionMin),
    speedCm2PerH: numberOf(assessment.speedCm2PerH),
    defectCircumferencePercent: numberOf(mapped(assessment.defectCircumference, (c) => c.percent)),
    strictureFlag: risk?.kind === 'determined' ? risk.value.flag : null,
    fibrosis: dissection?.fibrosis ?? null,
    intraproceduralBleeding: safety?.bleeding ?? null,
    muscleInjury: safety?.muscleInjury ?? null,
    perforation: safety?.perforation?.occurred ?? null,
    specimenRetrieved: specimen?.retrieved ?? null,
    ...pathologyFacts(reports[0]),
    ...verdictFacts(assessment),
    withdrawn: withdrawal !== undefined,
    awaitsPathology: awaitsPathology(now),
    ...strataFacts(now),
    ...checkFacts(now),
    ...indicatorWords(now),
  };
}

/** By what cases are told apart when they are counted, and how long pathology took. */
function strataFacts({ esdCase: { fields }, reports }: RecordView['now']) {
  const resectedOn = fields.times.scopeOutAt.slice(0, 10);
  const report = reports[0]?.fields.report;
  const reportedAt = report?.status === 'final' ? report.reportedAt : undefined;
  return {
    resectedOn,
    tumour: fields.lesion.tumour ?? null,
    sizeBand: sizeBandOf(fields.lesion.longAxisMm),
    traineeBand: traineeBandOf(fields.team.traineePercent),
    pathologyDays:
      reportedAt === undefined ? null : daysBetween(resectedOn, reportedAt.slice(0, 10)),
  };
}

function pathologyFacts(report: ReportMessage | undefined) {
  const findings = report?.fields.findings;
  return {
    pathologyStatus: report?.fields.report.status ?? null,
    pathologyReportedAt: report?.fields.report.reportedAt ?? null,
    horizontalMargin: findings?.hm?.state ?? null,
    verticalMargin: findings?.vm?.state ?? null,
    histology: findings?.histology ?? null,
    invasionDepth: findings?.depth ?? null,
  };
}

function verdictFacts({ curability: { verdict } }: Assessment) {
  const { outcome } = verdict;
  const isDecided = outcome.kind === 'decided';
  return {
    curabilityRule: verdict.rule,
    curabilityClass: isDecided ? outcome.class : null,
    curabilityGroup: isDecided ? outcome.group : null,
  };
}

function numberOf(finding: Finding<number>): number | null {
  return finding.kind === 'determined' ? roundTo(finding.value, DECIMALS) : null;
}

function mapped<A, B>(finding: Finding<A>, change: (value: A) => B): Finding<B> {
  return finding.kind === 'determined' ? { ...finding, value: change(finding.value) } : finding;
}
