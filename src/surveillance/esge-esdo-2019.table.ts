import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { esdDate, r0 } from './polyp-fields.js';

interface Question {
  readonly esdDate: string;
  readonly histology: 'low-grade-dysplasia' | 'high-grade-dysplasia' | 'carcinoma';
  readonly depth: 'm' | 'sm' | 'mp';
  readonly class:
    | 'very-low-risk'
    | 'low-risk'
    | 'local-risk'
    | 'high-risk'
    | 'incomplete'
    | 'no-rule'
    | 'indeterminate';
  readonly r0: boolean;
  readonly age: number;
}

/** Completed years at the dissection from which the examinations after the first are asked again. */
const STOP_AT_YEARS = 80;

const FIELDS: FieldsOf<Question> = {
  esdDate,
  histology: {
    type: 'word',
    says: 'highest grade in the specimen',
    words: ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'],
  },
  depth: { type: 'word', says: 'deepest layer reached', words: ['m', 'sm', 'mp'] },
  class: {
    type: 'word',
    says: 'class by the European guideline of 2022',
    words: [
      'very-low-risk',
      'low-risk',
      'local-risk',
      'high-risk',
      'incomplete',
      'no-rule',
      'indeterminate',
    ],
  },
  r0,
  age: {
    type: 'number',
    says: 'age at the dissection',
    unit: 'years',
    whole: true,
    from: 0,
    to: 125,
    askedWhen: [],
  },
};

const leads = leadsTo<Question>;

const TABLE: TableOf<Question, FollowUpRow> = [
  [leads('meeting', 'high-risk', 'high-risk resection', { class: { is: ['high-risk'] } })],
  [
    leads('COL-4', 'pt1-low-risk', 'pT1 of low risk, R0', {
      histology: { is: ['carcinoma'] },
      depth: { is: ['sm'] },
      class: { is: ['low-risk'] },
      r0: { is: [true] },
    }),
  ],
  [leads('clinician', 'other', 'not a pT1 of low risk with R0', {})],
];

export const ESGE_ESDO_2019 = followUpRule({
  id: 'esge-esdo-2019',
  version: 1,
  title: 'European guideline on surveillance after colorectal cancer, 2019',
  population: 'Adults after R0 resection of a colorectal pT1 cancer of low risk.',
  cites: [cite('esgeEsdo2019', 'abstract', 'published')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'esdDate',
  ending: ({ age }) => (typeof age === 'number' && age >= STOP_AT_YEARS ? ';stop=to-confirm' : ''),
});
