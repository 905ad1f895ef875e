import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';

interface Question {
  readonly examDate: string;
  readonly dysplasia: 'none' | 'low-grade' | 'high-grade';
  readonly gastritisStage: '0' | 'I' | 'II' | 'III' | 'IV';
  readonly extent: 'none' | 'one-site' | 'antrum-and-corpus';
  readonly metaplasia: 'none' | 'complete' | 'incomplete';
  readonly helicobacterGastritis: boolean;
  readonly familyHistory: boolean;
}

const FIELDS: FieldsOf<Question> = {
  examDate: { type: 'date', says: 'day of the examination' },
  dysplasia: {
    type: 'word',
    says: 'dysplasia in a biopsy, without a visible lesion',
    words: ['none', 'low-grade', 'high-grade'],
    assumed: [{ when: {}, value: 'none' }],
  },
  gastritisStage: {
    type: 'word',
    says: 'the higher of the stages of atrophy (OLGA) and metaplasia (OLGIM)',
    words: ['0', 'I', 'II', 'III', 'IV'],
    assumed: [{ when: {}, value: '0' }],
  },
  extent: {
    type: 'word',
    says: 'where atrophy or metaplasia was found',
    words: ['none', 'one-site', 'antrum-and-corpus'],
    assumed: [{ when: {}, value: 'none' }],
  },
  metaplasia: {
    type: 'word',
    says: 'type of intestinal metaplasia',
    words: ['none', 'complete', 'incomplete'],
    assumed: [{ when: {}, value: 'none' }],
  },
  helicobacterGastritis: {
    type: 'flag',
    says: 'gastritis by Helicobacter pylori that persists',
    assumed: [{ when: {}, value: false }],
  },
  familyHistory: {
    type: 'flag',
    says: 'gastric cancer in a relative of the first degree',
    assumed: [{ when: {}, value: false }],
  },
};

const leads = leadsTo<Question>;
const ONE_SITE = { extent: { is: ['one-site'] } } as const;
const ANY_TYPE = { metaplasia: { is: ['complete', 'incomplete'] } } as const;

const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('MUCOSA-high-grade', 'high-grade', 'high-grade dysplasia without a visible lesion', {
      dysplasia: { is: ['high-grade'] },
    }),
  ],
  [
    leads('MUCOSA-low-grade', 'low-grade', 'low-grade dysplasia without a visible lesion', {
      dysplasia: { is: ['low-grade'] },
    }),
  ],
  [
    leads('MUCOSA-advanced', 'stage', 'stage III or IV', {
      gastritisStage: { is: ['III', 'IV'] },
    }),
    leads('MUCOSA-advanced', 'extent', 'antrum and corpus', {
      extent: { is: ['antrum-and-corpus'] },
    }),
  ],
  [
    leads('MUCOSA-limited', 'incomplete', 'metaplasia at one site, incomplete', {
      ...ONE_SITE,
      metaplasia: { is: ['incomplete'] },
    }),
    leads('MUCOSA-limited', 'gastritis', 'metaplasia at one site and persistent gastritis', {
      ...ONE_SITE,
      ...ANY_TYPE,
      helicobacterGastritis: { is: [true] },
    }),
    leads('MUCOSA-limited', 'family', 'metaplasia at one site and a family history', {
      ...ONE_SITE,
      ...ANY_TYPE,
      familyHistory: { is: [true] },
    }),
  ],
  [leads('MUCOSA-none', 'not-advanced', 'neither advanced nor at risk', {})],
];

export const BACKGROUND_MUCOSA = followUpRule({
  id: 'background-mucosa',
  version: 1,
  title: 'Background mucosa of the stomach, by stage, place and type',
  population: 'Adults with atrophy or metaplasia of the stomach, beside any other plan.',
  cites: [cite('mapsIi2019', 'abstract', 'published')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'examDate',
});
