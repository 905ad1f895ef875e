import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';

const READ = [cite('iacopini2017', 'definition of a difficult dissection', 'published')];
const COMPLEMENT = [cite('iacopini2017', 'definition, by complement', 'derived')];

type Question = {
  readonly outcome: 'en-bloc' | 'piecemeal' | 'converted-to-emr' | 'abandoned';
  readonly speedCm2PerMin: number;
};

const FIELDS = {
  outcome: {
    type: 'word',
    words: ['en-bloc', 'piecemeal', 'converted-to-emr', 'abandoned'],
    says: 'how the dissection ended',
  },
  speedCm2PerMin: {
    type: 'number',
    unit: 'cm2/min',
    from: 0,
    to: 10,
    says: 'speed of the dissection',
    askedWhen: [{ outcome: { is: ['en-bloc'] } }],
  },
} as const satisfies FieldsOf<Question>;

const TABLE: TableOf<Question, 'difficult' | 'not-difficult' | 'no-rule'> = [
  [
    {
      row: 'slow',
      when: { outcome: { is: ['en-bloc'] }, speedCm2PerMin: { below: 0.07 } },
      class: 'difficult',
      says: 'en bloc, slower than 0.07 cm2/min',
      cites: READ,
    },
    {
      row: 'converted',
      when: { outcome: { is: ['converted-to-emr'] } },
      class: 'difficult',
      says: 'converted to mucosal resection',
      cites: READ,
    },
    {
      row: 'abandoned',
      when: { outcome: { is: ['abandoned'] } },
      class: 'difficult',
      says: 'abandoned',
      cites: READ,
    },
  ],
  [
    {
      row: 'quick',
      when: { outcome: { is: ['en-bloc'] }, speedCm2PerMin: { atLeast: 0.07 } },
      class: 'not-difficult',
      says: 'en bloc, 0.07 cm2/min or faster',
      cites: COMPLEMENT,
    },
  ],
  [
    {
      row: 'piecemeal',
      when: { outcome: { is: ['piecemeal'] } },
      class: 'no-rule',
      says: 'the definition does not name a piecemeal dissection that was not converted',
      cites: COMPLEMENT,
    },
  ],
];

/** Source: iacopini2017. Indeterminate: without the outcome, or en bloc without the speed. */
export const DIFFICULT_ESD = classRule({
  kind: 'classification',
  id: 'difficult-esd',
  version: 1,
  title: 'Difficult dissection, after it has ended',
  population: 'Colorectal dissection by one European operator.',
  cites: READ,
  fields: FIELDS,
  contradictions: [],
  table: TABLE,
  reasonsShown: [],
  remarks: [],
});
