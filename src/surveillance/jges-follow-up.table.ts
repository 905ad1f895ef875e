import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import {
  NOT_BACK,
  type Organ,
  organ,
  type Tumour,
  tumour,
  WITHOUT_CLASS,
} from './after-class-fields.js';
import { followUpRule, leadsTo, nullAs } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { esdDate } from './polyp-fields.js';

const JES_CLASSES = [
  'curative',
  'undetermined',
  'additional-treatment',
  ...WITHOUT_CLASS,
  NOT_BACK,
] as const;

interface JesQuestion {
  readonly organ: Organ;
  readonly tumour: Tumour;
  readonly esdDate: string;
  readonly class: (typeof JES_CLASSES)[number];
  readonly iodineVoiding: 'few' | 'many';
}

const JES_FIELDS: FieldsOf<JesQuestion> = {
  organ,
  tumour,
  esdDate,
  class: { type: 'word', says: 'class by jges-jes-2020; null: not back', words: JES_CLASSES },
  iodineVoiding: {
    type: 'word',
    says: 'lesions that iodine leaves unstained',
    words: ['few', 'many'],
    assumed: [{ when: {}, value: 'few' }],
  },
};

const SQUAMOUS = { organ: { is: ['oesophagus'] }, tumour: { is: ['squamous'] } } as const;

const jes = leadsTo<JesQuestion>;

const JES_TABLE: TableOf<JesQuestion, FollowUpRow> = [
  [jes('pathology', 'not-back', 'pathology is not back', { class: { is: [NOT_BACK] } })],
  [jes('clinician', 'no-class', 'no class', { class: { is: WITHOUT_CLASS } })],
  [
    jes('OES-3', 'curative-few', 'curative, few unstained lesions', {
      ...SQUAMOUS,
      class: { is: ['curative'] },
      iodineVoiding: { is: ['few'] },
    }),
  ],
  [
    jes('OES-3-many', 'curative-many', 'curative, many unstained lesions', {
      ...SQUAMOUS,
      class: { is: ['curative'] },
    }),
  ],
  [
    jes('OES-4', 'untreated', 'pT1a-MM or pT1b without further treatment', {
      ...SQUAMOUS,
      class: { is: ['undetermined', 'additional-treatment'] },
    }),
  ],
  [jes('clinician', 'other', 'no row for such a tumour', {})],
];

export const JGES_JES_2020_FOLLOW_UP = followUpRule({
  id: 'jges-jes-2020-follow-up',
  version: 1,
  title: 'Follow-up by class of the Japanese oesophageal guideline of 2020',
  population:
    'Adults after dissection of a squamous lesion of the oesophagus; without further treatment.',
  cites: [cite('oesophagusReview2024', 'abstract', 'published')],
  fields: JES_FIELDS,
  table: JES_TABLE,
  unfold: nullAs('class', NOT_BACK),
  anchor: 'esdDate',
});

const JGCA_CLASSES = [
  'eCuraA',
  'eCuraB',
  'eCuraC-1',
  'eCuraC-2',
  ...WITHOUT_CLASS,
  NOT_BACK,
] as const;

interface JgcaQuestion {
  readonly organ: Organ;
  readonly tumour: Tumour;
  readonly esdDate: string;
  readonly class: (typeof JGCA_CLASSES)[number];
}

const JGCA_FIELDS: FieldsOf<JgcaQuestion> = {
  organ,
  tumour,
  esdDate,
  class: { type: 'word', says: 'class by jges-jgca-2021; null: not back', words: JGCA_CLASSES },
};

const GASTRIC = { organ: { is: ['stomach'] }, tumour: { is: ['gastric'] } } as const;

const jgca = leadsTo<JgcaQuestion>;

const JGCA_TABLE: TableOf<JgcaQuestion, FollowUpRow> = [
  [jgca('pathology', 'not-back', 'pathology is not back', { class: { is: [NOT_BACK] } })],
  [jgca('clinician', 'no-class', 'no class', { class: { is: WITHOUT_CLASS } })],
  [jgca('GAS-4', 'a', 'eCuraA', { ...GASTRIC, class: { is: ['eCuraA'] } })],
  [jgca('GAS-5', 'b', 'eCuraB', { ...GASTRIC, class: { is: ['eCuraB'] } })],
  [jgca('GAS-6', 'c1', 'eCuraC-1, followed', { ...GASTRIC, class: { is: ['eCuraC-1'] } })],
  [jgca('GAS-7', 'c2', 'eCuraC-2, not operated', { ...GASTRIC, class: { is: ['eCuraC-2'] } })],
  [jgca('clinician', 'other', 'no row for such a tumour', {})],
];

export const JGES_JGCA_2021_FOLLOW_UP = followUpRule({
  id: 'jges-jgca-2021-follow-up',
  version: 1,
  title: 'Follow-up by class of the Japanese gastric guidelines of 2021',
  population: 'Adults after dissection of a gastric lesion; eCuraC-2 only when not operated.',
  cites: [cite('jgca2021', 'follow-up by class; second source', 'recalled')],
  fields: JGCA_FIELDS,
  table: JGCA_TABLE,
  unfold: nullAs('class', NOT_BACK),
  anchor: 'esdDate',
});
