import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';
import { unfoldBuds } from './standard-field.js';

const READ = [cite('itbcc2016', 'grades of tumour budding, as quoted', 'published')];

/** Counted buds and the area of their field; the third is the count in the standard field. */
type Question = {
  readonly buds: number;
  readonly fieldMm2: number;
  readonly budsInStandardField: number;
};

const FIELDS = {
  buds: { type: 'number', unit: 'buds', whole: true, from: 0, to: 10_000, says: 'buds counted' },
  fieldMm2: {
    type: 'number',
    unit: 'mm2',
    from: 0.01,
    to: 100,
    says: 'area of the field in which they were counted',
  },
  budsInStandardField: {
    type: 'number',
    unit: 'buds',
    from: 0,
    to: 1_000_000,
    says: 'buds in the standard field, rounded down',
    askedWhen: [],
  },
} as const satisfies FieldsOf<Question>;

const TABLE: TableOf<Question, 'BD1' | 'BD2' | 'BD3'> = [
  [
    {
      row: 'high',
      when: { budsInStandardField: { atLeast: 10 } },
      class: 'BD3',
      says: '10 buds or more in the standard field',
      cites: READ,
    },
  ],
  [
    {
      row: 'intermediate',
      when: { budsInStandardField: [{ atLeast: 5 }, { below: 10 }] },
      class: 'BD2',
      says: '5 to 9 buds in the standard field',
      cites: READ,
    },
  ],
  [
    {
      row: 'low',
      when: { budsInStandardField: { below: 5 } },
      class: 'BD1',
      says: '0 to 4 buds in the standard field',
      cites: READ,
    },
  ],
];

/** Source: itbcc2016, as quoted. Indeterminate: without the count, or without its field. */
export const BUDDING_ITBCC = classRule({
  kind: 'classification',
  id: 'budding-itbcc',
  version: 1,
  title: 'Tumour budding by ITBCC 2016',
  population: 'Colorectal cancer, counted in the field with most buds at the invasive front.',
  cites: READ,
  fields: FIELDS,
  contradictions: [],
  unfold: (document) => unfoldBuds(FIELDS, document),
  table: TABLE,
  reasonsShown: [],
  remarks: [],
});
