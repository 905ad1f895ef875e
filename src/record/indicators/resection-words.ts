import type { CaseFields, PathologyFields } from '../../contract/index.js';
import type { IndicatorWord } from '../../outcomes/index.js';
import type { Assessed } from '../view.js';
import { wordOf } from './window.js';

/** Whether the dissection was begun: hybrid, converted and abandoned ones were. */
export const isAttempted = ({ resection }: CaseFields): boolean =>
  resection.outcome !== 'not-started';

/**
 * Removed in one piece, nothing left to see. Source: korea2020, Table 1; what is left is told by
 * `resection.complete` false alone (derived).
 */
export function enBlocWord(fields: CaseFields): IndicatorWord {
  if (!isAttempted(fields)) return 'not-applicable';
  return wordOf(isEnBloc(fields));
}

const isEnBloc = ({ resection }: CaseFields): boolean =>
  resection.outcome === 'en-bloc' && resection.complete !== false;

/** Source: korea2020, Table 1; a margin that cannot be assessed is not free (derived). */
export function r0Word(known: Known): IndicatorWord {
  const { fields } = known.esdCase;
  const report = finalReport(known);
  if (!isAttempted(fields)) return 'not-applicable';
  if (report === undefined) {
    return fields.resection.outcome === 'abandoned' ? 'not-applicable' : 'missing';
  }
  return wordOf(isR0(fields, report));
}

/** Source: korea2020, in principle; the class is that of the unit's rule set. */
export function curativeWord(known: Known): IndicatorWord {
  const { esdCase, assessment } = known;
  const report = finalReport(known);
  const r0 = r0Word(known);
  if (r0 === 'not-applicable' || report === undefined) return r0;
  const neoplastic = isNeoplastic(report);
  if (neoplastic === false) return 'not-applicable';
  const { outcome } = assessment.curability.verdict;
  if (outcome.kind === 'decided' && outcome.class === 'no-rule') return 'not-applicable';
  if (neoplastic === undefined) return 'missing';
  const isR0Told = isR0(esdCase.fields, report);
  if (isR0Told === false) return 'no';
  if (outcome.kind === 'indeterminate') return 'missing';
  if (outcome.group !== 'curative') return outcome.class === 'incomplete' ? 'missing' : 'no';
  return wordOf(isR0Told);
}

type Known = Pick<Assessed, 'esdCase' | 'reports' | 'assessment'>;

/** The report in force, once it is final. */
function finalReport({ reports }: Pick<Known, 'reports'>): PathologyFields | undefined {
  const report = reports[0]?.fields;
  return report?.report.status === 'final' ? report : undefined;
}

/** One sign against it is enough; without one both margins must be told. */
function isR0(fields: CaseFields, { findings = {} }: PathologyFields): boolean | undefined {
  const margins = [findings.hm?.state, findings.vm?.state];
  if (!isEnBloc(fields)) return false;
  if (margins.some((state) => state !== undefined && state !== '0')) return false;
  return margins.includes(undefined) ? undefined : true;
}

/** @returns undefined: not told, or not to be told */
function isNeoplastic({ findings = {} }: PathologyFields): boolean | undefined {
  switch (findings.histology) {
    case 'low-grade-dysplasia':
    case 'high-grade-dysplasia':
    case 'carcinoma':
    case 'neuroendocrine-tumour':
    case 'other-tumour':
      return true;
    case 'none':
      return false;
    case 'indefinite':
    case 'not-assessable':
    case undefined:
      return undefined;
  }
}
