import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, laterBy, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import {
  enBloc,
  esdDate,
  type PolypHistology,
  type PolypType,
  polypHistology,
  polypType,
  r0,
  SERRATED,
  sizeMm,
} from './polyp-fields.js';

interface Question {
  /** After the resection, or at the first surveillance examination. */
  readonly stage: 'first' | 'later';
  readonly esdDate: string;
  readonly sizeMm: number;
  readonly polypType: PolypType;
  readonly histology: PolypHistology;
  readonly enBloc: boolean;
  readonly count: number;
  readonly r0: boolean;
  readonly firstSurveillance: string;
  readonly findings: 'none' | 'needing-surveillance';
}

const FIRST = [{ stage: { is: ['first'] } }] as const;
const LATER = [{ stage: { is: ['later'] } }] as const;

const FIELDS: FieldsOf<Question> = {
  stage: {
    type: 'word',
    says: 'after the resection, or at the first surveillance',
    words: ['first', 'later'],
    assumed: [{ when: {}, value: 'first' }],
  },
  esdDate: { ...esdDate, askedWhen: FIRST },
  sizeMm: { ...sizeMm, askedWhen: FIRST },
  polypType: { ...polypType, askedWhen: FIRST },
  histology: { ...polypHistology, askedWhen: FIRST },
  enBloc: { ...enBloc, askedWhen: FIRST },
  count: {
    type: 'number',
    says: 'adenomas found at the same examination',
    unit: 'adenomas',
    whole: true,
    from: 0,
    to: 1000,
    assumed: [{ when: {}, value: 1 }],
  },
  r0: { ...r0, askedWhen: [] },
  firstSurveillance: {
    type: 'date',
    says: 'day of the first surveillance',
    askedWhen: LATER,
  },
  findings: {
    type: 'word',
    says: 'what the first surveillance found',
    words: ['none', 'needing-surveillance'],
    askedWhen: LATER,
  },
};

const leads = leadsTo<Question>;

/** Within a step every row leads to the same row of the follow-up table. */
const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('COL-1-clear', 'later-clear', 'nothing found at the first surveillance', {
      stage: { is: ['later'] },
      findings: { is: ['none'] },
    }),
  ],
  [
    leads('COL-1-found', 'later-found', 'something found that needs surveillance', {
      stage: { is: ['later'] },
      findings: { is: ['needing-surveillance'] },
    }),
  ],
  [
    leads('COL-2', 'piecemeal', 'piecemeal, 20 mm or more', {
      sizeMm: { atLeast: 20 },
      enBloc: { is: [false] },
    }),
  ],
  [
    leads('COL-1', 'adenoma-size', 'adenoma of 10 mm or more', {
      polypType: { is: ['adenoma'] },
      sizeMm: { atLeast: 10 },
    }),
    leads('COL-1', 'high-grade', 'high-grade dysplasia or intramucosal carcinoma', {
      histology: { is: ['high-grade-dysplasia', 'carcinoma'] },
    }),
    leads('COL-1', 'serrated-size', 'serrated, 10 mm or more', {
      polypType: { is: SERRATED },
      sizeMm: { atLeast: 10 },
    }),
    leads('COL-1', 'serrated-dysplasia', 'serrated with dysplasia', {
      polypType: { is: SERRATED },
      histology: { is: ['low-grade-dysplasia'] },
    }),
    leads('COL-1', 'many-adenomas', 'five adenomas or more, whatever was resected', {
      count: { atLeast: 5 },
    }),
  ],
  [leads('COL-1-none', 'none', 'nothing that needs surveillance', {})],
];

export const ESGE_PPS_2020 = followUpRule({
  id: 'esge-pps-2020',
  version: 1,
  title: 'European guideline on surveillance after polypectomy, 2020',
  population: 'Adults after complete removal of colorectal polyps without invasive cancer.',
  cites: [cite('esgePolypectomy2020', 'statements on surveillance', 'published')],
  fields: FIELDS,
  table: TABLE,
  unfold: laterBy('firstSurveillance'),
  anchor: 'esdDate',
  laterAnchor: 'firstSurveillance',
});
