import { isBefore } from '../compare-told.js';
import type { CrossCheck } from '../cross-check.js';
import type { ReadablePathology } from './readable-pathology.js';

/** Rules for the report as a document: project rules, no source. */
export const reportChecks: readonly CrossCheck<ReadablePathology>[] = [
  {
    rule: 'final-undated',
    message: 'A final report has no date.',
    expected: 'report.reportedAt',
    broken: ({ report = {} }) =>
      report.status === 'final' && report.reportedAt === undefined ? ['/report/reportedAt'] : [],
  },
  {
    rule: 'final-without-histology',
    message: 'A final report does not say what was found.',
    expected: 'findings.histology, not-assessable if nothing can be said',
    broken: ({ report = {}, findings = {} }) =>
      report.status === 'final' && findings.histology === undefined ? ['/findings/histology'] : [],
  },
  {
    rule: 'amendment-reason',
    message: 'A report of a higher version gives a reason, a first version has none.',
    expected: 'report.amendmentReason with a report.version above 1, and only then',
    broken: ({ report = {} }) =>
      report.version !== undefined && report.version > 1 !== (report.amendmentReason !== undefined)
        ? ['/report/amendmentReason']
        : [],
  },
  {
    rule: 'reported-before-received',
    message: 'The report was signed before the specimen was received.',
    expected: 'report.reportedAt at or after specimen.receivedAt',
    broken: ({ report = {}, specimen = {} }) =>
      isBefore(report.reportedAt, specimen.receivedAt) ? ['/report/reportedAt'] : [],
  },
  {
    rule: 'sent-before-report',
    message: 'The message was sent before the report was signed or the specimen received.',
    expected: 'sentAt at or after report.reportedAt and specimen.receivedAt',
    broken: ({ sentAt, report = {}, specimen = {} }) =>
      isBefore(sentAt, report.reportedAt) || isBefore(sentAt, specimen.receivedAt)
        ? ['/sentAt']
        : [],
  },
];
