import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, laterBy, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';

interface Question {
  /** Without resection, or after complete eradication. */
  readonly stage: 'first' | 'later';
  readonly examDate: string;
  readonly barrettMaxCm: number;
  readonly histology: 'none' | 'low-grade-dysplasia' | 'high-grade-dysplasia' | 'carcinoma';
  readonly eradicationDate: string;
  readonly baselineHistology: 'low-grade-dysplasia' | 'high-grade-dysplasia' | 'carcinoma';
}

const FIRST = [{ stage: { is: ['first'] } }] as const;
const LATER = [{ stage: { is: ['later'] } }] as const;

const FIELDS: FieldsOf<Question> = {
  stage: {
    type: 'word',
    says: 'without resection, or after complete eradication',
    words: ['first', 'later'],
    assumed: [{ when: {}, value: 'first' }],
  },
  examDate: { type: 'date', says: 'day of the examination', askedWhen: FIRST },
  barrettMaxCm: {
    type: 'number',
    says: 'maximum extent of the Barrett mucosa (Prague M)',
    unit: 'cm',
    from: 0,
    to: 40,
    askedWhen: FIRST,
  },
  histology: {
    type: 'word',
    says: 'highest grade in the biopsies; none: no dysplasia',
    words: ['none', 'low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'],
    askedWhen: FIRST,
  },
  eradicationDate: {
    type: 'date',
    says: 'day on which no Barrett mucosa was left',
    askedWhen: LATER,
  },
  baselineHistology: {
    type: 'word',
    says: 'highest grade before treatment',
    words: ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'],
    askedWhen: LATER,
  },
};

const NO_DYSPLASIA = { stage: { is: ['first'] }, histology: { is: ['none'] } } as const;

const leads = leadsTo<Question>;

const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('BAR-2', 'eradicated-high', 'eradicated after high-grade dysplasia or cancer', {
      stage: { is: ['later'] },
      baselineHistology: { is: ['high-grade-dysplasia', 'carcinoma'] },
    }),
  ],
  [
    leads('BAR-3', 'eradicated-low', 'eradicated after low-grade dysplasia', {
      stage: { is: ['later'] },
      baselineHistology: { is: ['low-grade-dysplasia'] },
    }),
  ],
  [
    leads('BAR-5-none', 'below-1-cm', 'no dysplasia, shorter than 1 cm', {
      ...NO_DYSPLASIA,
      barrettMaxCm: { below: 1 },
    }),
  ],
  [
    leads('BAR-5-short', '1-to-3-cm', 'no dysplasia, 1 cm to below 3 cm', {
      ...NO_DYSPLASIA,
      barrettMaxCm: [{ atLeast: 1 }, { below: 3 }],
    }),
  ],
  [
    leads('BAR-5-long', '3-to-10-cm', 'no dysplasia, 3 cm to below 10 cm', {
      ...NO_DYSPLASIA,
      barrettMaxCm: [{ atLeast: 3 }, { below: 10 }],
    }),
  ],
  [
    leads('BAR-5-expert', '10-cm', 'no dysplasia, 10 cm or longer', {
      ...NO_DYSPLASIA,
      barrettMaxCm: { atLeast: 10 },
    }),
  ],
  [leads('clinician', 'dysplasia', 'dysplasia without resection: no row was read', {})],
];

export const ESGE_BARRETT_2023 = followUpRule({
  id: 'esge-barrett-2023',
  version: 1,
  title: 'European guideline on Barrett oesophagus, 2023',
  population: 'Adults with Barrett mucosa without dysplasia, or after its complete eradication.',
  cites: [cite('esgeBarrett2023', 'abstract, statements 1 and 2', 'published')],
  fields: FIELDS,
  table: TABLE,
  unfold: laterBy('eradicationDate'),
  anchor: 'examDate',
  laterAnchor: 'eradicationDate',
});
