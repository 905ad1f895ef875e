import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';

const GRADE = cite('matsumotoA2010', 'grades, as quoted', 'published');
const LOOK = cite('matsumotoA2010', 'what the layer looks like; second source', 'recalled');

type Question = { readonly layer: 'transparent-blue' | 'white-web-in-blue' | 'white-without-blue' };

const FIELDS = {
  layer: {
    type: 'word',
    words: ['transparent-blue', 'white-web-in-blue', 'white-without-blue'],
    says: 'look of the submucosal layer after injection of a blue fluid',
  },
} as const satisfies FieldsOf<Question>;

const TABLE: TableOf<Question, 'F0' | 'F1' | 'F2'> = [
  [
    {
      row: 'none',
      when: { layer: { is: ['transparent-blue'] } },
      class: 'F0',
      says: 'none: transparent blue layer',
      cites: [GRADE, LOOK],
    },
  ],
  [
    {
      row: 'mild',
      when: { layer: { is: ['white-web-in-blue'] } },
      class: 'F1',
      says: 'mild: white strands like a web in the blue layer',
      cites: [GRADE, LOOK],
    },
  ],
  [
    {
      row: 'severe',
      when: { layer: { is: ['white-without-blue'] } },
      class: 'F2',
      says: 'severe: white structure like muscle, no blue layer',
      cites: [GRADE, LOOK],
    },
  ],
];

/** Source: matsumotoA2010, as quoted. Indeterminate: without the look of the layer. */
export const FIBROSIS = classRule({
  kind: 'classification',
  id: 'fibrosis',
  version: 1,
  title: 'Submucosal fibrosis',
  population: 'Colorectal dissection with a blue injection; other organs by common practice.',
  cites: [GRADE, LOOK],
  fields: FIELDS,
  contradictions: [],
  table: TABLE,
  reasonsShown: [],
  remarks: [],
});
