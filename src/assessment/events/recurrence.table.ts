import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';

export type Recurrence = 'yes' | 'no' | 'uncertain';

const SOURCE = [cite('esdPractice', 'neoplasia at the scar: tissue before look', 'practice')];

type Question = {
  readonly look: 'none' | 'inflammation' | 'uncertain' | 'residual-or-recurrent-neoplasia';
  readonly tissue:
    | 'not-taken'
    | 'pending'
    | 'no-neoplasia'
    | 'serrated-without-dysplasia'
    | 'indefinite'
    | 'low-grade-dysplasia'
    | 'high-grade-dysplasia'
    | 'carcinoma'
    | 'not-assessable';
};

const FIELDS = {
  look: {
    type: 'word',
    words: ['none', 'inflammation', 'uncertain', 'residual-or-recurrent-neoplasia'],
    says: 'what the scar looked like',
  },
  tissue: {
    type: 'word',
    words: [
      'not-taken',
      'pending',
      'no-neoplasia',
      'serrated-without-dysplasia',
      'indefinite',
      'low-grade-dysplasia',
      'high-grade-dysplasia',
      'carcinoma',
      'not-assessable',
    ],
    says: 'what was found in tissue of the scar',
  },
} as const satisfies FieldsOf<Question>;

const NEOPLASIA = ['low-grade-dysplasia', 'high-grade-dysplasia', 'carcinoma'] as const;
const FREE = ['no-neoplasia', 'serrated-without-dysplasia'] as const;
const WITHOUT_ANSWER = ['not-taken', 'pending', 'not-assessable'] as const;

const TABLE: TableOf<Question, Recurrence> = [
  [
    {
      row: 'in-tissue',
      when: { tissue: { is: NEOPLASIA } },
      class: 'yes',
      says: 'dysplasia or carcinoma in tissue of the scar',
      cites: SOURCE,
    },
  ],
  [
    {
      row: 'indefinite-tissue',
      when: { tissue: { is: ['indefinite'] } },
      class: 'uncertain',
      says: 'tissue that is indefinite for dysplasia',
      cites: SOURCE,
    },
  ],
  [
    {
      row: 'free-tissue-of-a-neoplastic-look',
      when: { tissue: { is: FREE }, look: { is: ['residual-or-recurrent-neoplasia'] } },
      class: 'uncertain',
      says: 'it looks neoplastic, and its tissue is free',
      cites: SOURCE,
    },
  ],
  [
    {
      row: 'free-tissue',
      when: { tissue: { is: FREE }, look: { is: ['none', 'inflammation', 'uncertain'] } },
      class: 'no',
      says: 'tissue of the scar is free of neoplasia',
      cites: SOURCE,
    },
  ],
  [
    {
      row: 'neoplastic-look',
      when: { tissue: { is: WITHOUT_ANSWER }, look: { is: ['residual-or-recurrent-neoplasia'] } },
      class: 'yes',
      says: 'it looks neoplastic, and no tissue answers',
      cites: SOURCE,
    },
  ],
  [
    {
      row: 'uncertain-look',
      when: { tissue: { is: WITHOUT_ANSWER }, look: { is: ['uncertain'] } },
      class: 'uncertain',
      says: 'its look does not decide, and no tissue answers',
      cites: SOURCE,
    },
  ],
  [
    {
      row: 'clean-look',
      when: { tissue: { is: WITHOUT_ANSWER }, look: { is: ['none', 'inflammation'] } },
      class: 'no',
      says: 'it looks free of neoplasia, and no tissue answers',
      cites: SOURCE,
    },
  ],
];

/** Common practice, no source. Indeterminate: without look or tissue, where both are needed. */
export const SCAR_RECURRENCE = classRule<Recurrence>({
  kind: 'classification',
  id: 'scar-recurrence',
  version: 1,
  title: 'Neoplasia at the scar of a dissection',
  population: 'A follow-up endoscopy that saw the scar. Tissue that is pending may change it.',
  cites: SOURCE,
  fields: FIELDS,
  contradictions: [],
  table: TABLE,
  reasonsShown: [],
  remarks: [],
});
