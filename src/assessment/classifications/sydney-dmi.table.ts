import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';

const READ = [cite('burgess2017', 'abstract', 'published')];

type Question = {
  readonly sign: 'normal' | 'muscle-visible' | 'plane-lost' | 'target' | 'hole';
  readonly contamination: boolean;
};

const FIELDS = {
  sign: {
    type: 'word',
    words: ['normal', 'muscle-visible', 'plane-lost', 'target', 'hole'],
    says: 'what the wound bed shows at its worst place',
  },
  contamination: {
    type: 'flag',
    says: 'contents of the gut left through the hole',
    askedWhen: [{ sign: { is: ['hole'] } }],
  },
} as const satisfies FieldsOf<Question>;

const TABLE: TableOf<Question, '0' | 'I' | 'II' | 'III' | 'IV' | 'V'> = [
  [
    {
      row: 'normal',
      when: { sign: { is: ['normal'] } },
      class: '0',
      says: 'normal defect, blue bed',
      cites: [cite('burgess2017', 'grade 0; second source', 'recalled')],
    },
  ],
  [
    {
      row: 'muscle-visible',
      when: { sign: { is: ['muscle-visible'] } },
      class: 'I',
      says: 'muscle visible and intact',
      cites: READ,
    },
  ],
  [
    {
      row: 'plane-lost',
      when: { sign: { is: ['plane-lost'] } },
      class: 'II',
      says: 'submucosal plane lost, fibrosis, no proof that the muscle is injured',
      cites: READ,
    },
  ],
  [
    {
      row: 'target',
      when: { sign: { is: ['target'] } },
      class: 'III',
      says: 'target sign: the muscle is injured',
      cites: READ,
    },
  ],
  [
    {
      row: 'hole-with-contamination',
      when: { sign: { is: ['hole'] }, contamination: { is: [true] } },
      class: 'V',
      says: 'hole through the wall with contamination',
      cites: READ,
    },
  ],
  [
    {
      row: 'hole-without-contamination',
      when: { sign: { is: ['hole'] }, contamination: { is: [false] } },
      class: 'IV',
      says: 'hole through the wall without contamination',
      cites: READ,
    },
  ],
];

/** Source: burgess2017. Indeterminate: without the sign, or a hole without its contamination. */
export const SYDNEY_DMI = classRule({
  kind: 'classification',
  id: 'sydney-dmi',
  version: 1,
  title: 'Sydney classification of deep mural injury',
  population:
    'Wounds of mucosal resection in the colon; its use after dissection is common practice. ' +
    'Grades III to V are significant.',
  cites: READ,
  fields: FIELDS,
  contradictions: [],
  table: TABLE,
  reasonsShown: [],
  remarks: [],
});
