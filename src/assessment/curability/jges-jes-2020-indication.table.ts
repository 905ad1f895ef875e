import { cite } from '../../references/index.js';
import {
  type ContradictionsOf,
  classRule,
  type FieldsOf,
  type TableOf,
} from '../../rules/index.js';

/** What is seen of a squamous lesion before treatment. */
export interface IndicationQuestion {
  readonly cDepth: 'ep' | 'lpm' | 'mm' | 'sm';
  readonly cSmDepthUm: number;
  readonly circumferencePercent: number;
  readonly lengthMm: number;
}

export type IndicationClass = 'indicated' | 'not-indicated';

const SOURCE = cite(
  'jgesJes2020',
  'as in the abstract of Mini-invasive Surg 2021;5:36',
  'published',
);
const COMPLEMENT = cite('jgesJes2020', 'not among the indications', 'derived');

const fields: FieldsOf<IndicationQuestion> = {
  cDepth: {
    type: 'word',
    says: 'depth of invasion as estimated before treatment',
    words: ['ep', 'lpm', 'mm', 'sm'],
  },
  cSmDepthUm: {
    type: 'number',
    says: 'submucosal invasion as estimated before treatment',
    unit: 'um',
    whole: true,
    from: 0,
    to: 50_000,
    askedWhen: [{ cDepth: { is: ['sm'] } }],
  },
  circumferencePercent: {
    type: 'number',
    says: 'share of the circumference that the lesion takes; 100 is all of it',
    unit: 'percent',
    from: 0,
    to: 100,
  },
  lengthMm: {
    type: 'number',
    says: 'long axis of the lesion',
    unit: 'mm',
    from: 0.1,
    to: 1000,
  },
};

const contradictions: ContradictionsOf<IndicationQuestion> = [
  {
    rule: 'depth-outside-submucosa',
    field: 'cSmDepthUm',
    when: { cDepth: { is: ['ep', 'lpm', 'mm'] }, cSmDepthUm: { above: 0 } },
    message: 'A depth within the submucosa is estimated of a tumour that invades it.',
    expected: 'the depth sm, or cSmDepthUm absent',
  },
];

const table: TableOf<IndicationQuestion, IndicationClass> = [
  [
    {
      row: 'deep-submucosa',
      when: { cDepth: { is: ['sm'] }, cSmDepthUm: { above: 200 } },
      class: 'not-indicated',
      reason: 'deeper-than-sm1',
      says: 'More than 200 um deep in the submucosa.',
      cites: [COMPLEMENT],
    },
    {
      row: 'whole-circumference-deep',
      when: { cDepth: { is: ['mm', 'sm'] }, circumferencePercent: { atLeast: 100 } },
      class: 'not-indicated',
      reason: 'whole-circumference',
      says: 'The whole circumference, deeper than the lamina propria.',
      cites: [COMPLEMENT],
    },
    {
      row: 'whole-circumference-long',
      when: { circumferencePercent: { atLeast: 100 }, lengthMm: { above: 50 } },
      class: 'not-indicated',
      reason: 'whole-circumference',
      says: 'The whole circumference, and longer than 50 mm.',
      cites: [COMPLEMENT],
    },
  ],
  [
    {
      row: 'part-of-circumference',
      when: { circumferencePercent: { below: 100 } },
      class: 'indicated',
      says: 'Part of the circumference, at most 200 um deep in the submucosa.',
      cites: [SOURCE],
    },
    {
      row: 'whole-circumference-short',
      when: { circumferencePercent: { atLeast: 100 } },
      class: 'indicated',
      says: 'The whole circumference, no deeper than the lamina propria, at most 50 mm long.',
      cites: [SOURCE],
    },
  ],
];

/** Which squamous lesions of the oesophagus to dissect, by the Japanese guideline. */
export const JGES_JES_2020_INDICATION = classRule<IndicationClass>({
  kind: 'rule-set',
  id: 'jges-jes-2020-indication',
  version: 1,
  title: 'Indication for dissection of squamous oesophageal cancer, Japan 2020',
  population:
    'Superficial squamous cancer of the oesophagus before treatment. Not for Barrett cancer.',
  cites: [SOURCE],
  fields,
  contradictions,
  table,
  reasonsShown: [],
  remarks: [],
});
