import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';

/** From which age the examinations of a rule set are asked again; they are never cancelled. */
export interface StopRule {
  /** Completed years on the day of the examination. */
  readonly fromYears: number;
  /** Whether the first examination of a series stays, whatever the age. */
  readonly keepsFirst: boolean;
  readonly says: string;
  readonly cites: readonly Citation[];
}

const DERIVED = cite('esdPractice', 'no published limit: the clinician is asked', 'derived');

/** For sets without a limit of their own. */
export const OTHER_STOP: StopRule = {
  fromYears: 80,
  keepsFirst: false,
  says: 'No published limit: the clinician is asked from 80 years on.',
  cites: [DERIVED],
};

/**
 * By the rule set of the row. That of the stomach by MAPS III is not applied as long as that set
 * is disabled; no message tells the life expectancy.
 */
export const STOP_RULES: Readonly<Record<string, StopRule>> = {
  'esge-esdo-2019': {
    fromYears: 80,
    keepsFirst: true,
    says: 'After the first examination, surveillance halts at 80 years.',
    cites: [cite('esgeEsdo2019', 'abstract: halt at 80 years', 'published')],
  },
  'esge-pps-2020': {
    fromYears: 80,
    keepsFirst: false,
    says: 'Surveillance halts at 80 years, or earlier with a limited life expectancy.',
    cites: [cite('esgePolypectomy2020', 'halt at 80 years; second source', 'recalled')],
  },
  'bsg-2019': {
    fromYears: 75,
    keepsFirst: false,
    says: 'Surveillance stops at 75 years, or with a life expectancy below 10 years.',
    cites: [cite('bsg2020', 'stop at 75 years; from memory', 'recalled')],
  },
};

/** Barrett mucosa without dysplasia: of its rows alone. */
export const BARRETT_STOP: StopRule = {
  fromYears: 75,
  keepsFirst: false,
  says: 'Surveillance may stop at 75 years, or with a life expectancy below 5 years.',
  cites: [cite('esgeBarrett2023', 'abstract: age 75 at the last surveillance', 'published')],
};

/** Why the first check after piecemeal or local-risk resection stays. */
export const FIRST_STAYS: Citation = cite(
  'esdPractice',
  'no stop before the first check of a piecemeal or local-risk resection',
  'derived',
);
