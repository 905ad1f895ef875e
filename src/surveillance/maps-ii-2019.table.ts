import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';

const BACKGROUNDS = [
  'none',
  'OLGA-0',
  'OLGA-I',
  'OLGA-II',
  'OLGA-III',
  'OLGA-IV',
  'OLGIM-0',
  'OLGIM-I',
  'OLGIM-II',
  'OLGIM-III',
  'OLGIM-IV',
] as const;

interface Question {
  readonly examDate: string;
  readonly background: (typeof BACKGROUNDS)[number];
}

const FIELDS: FieldsOf<Question> = {
  examDate: { type: 'date', says: 'day of the examination' },
  background: {
    type: 'word',
    says: 'stage of atrophy (OLGA) or intestinal metaplasia (OLGIM); none: neither',
    words: BACKGROUNDS,
  },
};

const leads = leadsTo<Question>;

const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('MUCOSA-advanced', 'advanced', 'stage III or IV', {
      background: { is: ['OLGA-III', 'OLGA-IV', 'OLGIM-III', 'OLGIM-IV'] },
    }),
  ],
  [leads('MUCOSA-none', 'not-advanced', 'stage below III', {})],
];

export const MAPS_II_2019 = followUpRule({
  id: 'maps-ii-2019',
  version: 1,
  title: 'European guideline on precancerous conditions of the stomach, 2019',
  population: 'Adults with atrophy or intestinal metaplasia of the stomach, beside any other plan.',
  cites: [cite('mapsIi2019', 'abstract', 'published')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'examDate',
});
