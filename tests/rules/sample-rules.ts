import { passed } from '../../src/kernel/index.js';
import { type ClassRule, classRule, type QuantityRule, scoreRule } from '../../src/rules/index.js';

/* Invented rules of each kind, to be changed in one place at a time. */

const CITES = [{ work: 'kim2014', place: 'invented', basis: 'derived' }] as const;

const HEAD = {
  version: 1,
  title: 'An invented rule',
  population: 'Nobody.',
  cites: CITES,
  contradictions: [
    {
      rule: 'wide-and-flat',
      field: 'flat',
      when: { flat: { is: [true] }, sizeMm: { above: 90 } },
      message: 'Both cannot be.',
      expected: 'one of them',
    },
  ],
  fields: {
    sizeMm: { type: 'number', unit: 'mm', from: 0, to: 100, says: 'size' },
    flat: { type: 'flag', says: 'flat', assumed: [{ when: {}, value: false }] },
  },
} as const;

export const SAMPLE_SET: ClassRule = classRule<string>({
  ...HEAD,
  id: 'sample-set',
  kind: 'rule-set',
  table: [
    [
      {
        row: 'large',
        when: { sizeMm: { above: 20 } },
        class: 'high',
        says: 'Large.',
        cites: CITES,
      },
    ],
    [{ row: 'small', when: {}, class: 'low', says: 'Small.', cites: CITES }],
  ],
  reasonsShown: [],
  remarks: [{ remark: 'flat', when: { flat: { is: [true] } }, says: 'Flat.', cites: CITES }],
});

export const SAMPLE_SCORE = scoreRule({
  ...HEAD,
  id: 'sample-score',
  kind: 'score',
  items: [{ item: 'large', when: { sizeMm: { above: 20 } }, points: 2, says: 'L', cites: CITES }],
  bands: [
    { group: 'low', from: 0, to: 1, rate: { says: 'bled', percent: 2 }, cites: CITES },
    { group: 'high', from: 2, to: Number.POSITIVE_INFINITY, cites: CITES },
  ],
  remarks: [],
});

export const SAMPLE_QUANTITY: QuantityRule = {
  ...HEAD,
  id: 'sample-quantity',
  kind: 'quantity',
  formula: 'size x 2',
  compute: () => passed('4'),
};
