import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { esdDate } from './polyp-fields.js';

interface Question {
  readonly esdDate: string;
  readonly tumour: 'squamous' | 'barrett' | 'gastric' | 'colorectal' | 'other';
  readonly class: 'low-risk' | 'high-risk';
  readonly depth: 'ep' | 'lpm' | 'mm' | 'm' | 'sm' | 'mp';
}

const HIGH = { class: { is: ['high-risk'] } } as const;

const FIELDS: FieldsOf<Question> = {
  esdDate,
  tumour: {
    type: 'word',
    says: 'kind of tumour',
    words: ['squamous', 'barrett', 'gastric', 'colorectal', 'other'],
  },
  class: {
    type: 'word',
    says: 'risk by the European guideline of 2022, or what another set calls not curative',
    words: ['low-risk', 'high-risk'],
  },
  depth: {
    type: 'word',
    says: 'deepest layer reached; squamous ep, lpm, mm are m1, m2, m3',
    words: ['ep', 'lpm', 'mm', 'm', 'sm', 'mp'],
    askedWhen: [{ tumour: { is: ['squamous', 'barrett', 'colorectal'] } }],
  },
};

const leads = leadsTo<Question>;

const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('BAR-4', 'barrett-pt1b', 'Barrett, pT1b of low risk', {
      tumour: { is: ['barrett'] },
      class: { is: ['low-risk'] },
      depth: { is: ['sm'] },
    }),
  ],
  [
    leads('OES-4', 'squamous-mm-sm', 'squamous, pT1a-MM or pT1b, not treated further', {
      ...HIGH,
      tumour: { is: ['squamous'] },
      depth: { is: ['mm', 'sm'] },
    }),
  ],
  [leads('GAS-3', 'gastric', 'gastric, high risk', { ...HIGH, tumour: { is: ['gastric'] } })],
  [
    leads('COL-5', 'colorectal-pt1', 'colorectal, pT1 of high risk', {
      ...HIGH,
      tumour: { is: ['colorectal'] },
      depth: { is: ['sm'] },
    }),
  ],
  [leads('clinician', 'other', 'no row for such a tumour', {})],
];

export const WITHOUT_SURGERY = followUpRule({
  id: 'without-surgery',
  version: 1,
  title: 'Follow-up where a meeting has decided against an operation',
  population:
    'Adults after dissection of a tumour of high risk, or of a Barrett pT1b of low risk, who are ' +
    'not operated. Rows of several sources, most of them common practice.',
  cites: [cite('esdPractice', 'high risk without surgery', 'practice')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'esdDate',
});
