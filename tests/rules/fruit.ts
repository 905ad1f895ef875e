import type { Fields } from '../../src/rules/index.js';
import type { Question, Samples, Told } from '../../src/rules/question.js';

/** Made-up fields of each kind. */
export const FIELDS: Fields = {
  kind: { type: 'word', says: 'kind of fruit', words: ['apple', 'pear'] },
  part: {
    type: 'word',
    says: 'part of the fruit; an apple has no neck',
    words: ['core', 'flesh', 'neck'],
    only: [
      { when: { kind: { is: ['apple'] } }, words: ['core', 'flesh'] },
      { when: { kind: { is: ['pear'] } }, words: ['flesh', 'neck'] },
    ],
  },
  spots: {
    type: 'word',
    says: 'spots; X: cannot be told',
    words: ['none', 'some', 'X'],
    unknown: ['X'],
    assumed: [{ when: { peeled: { is: [true] } }, value: 'none' }],
  },
  peeled: { type: 'flag', says: 'without its skin', assumed: [{ when: {}, value: false }] },
  weightG: {
    type: 'number',
    says: 'weight',
    unit: 'g',
    whole: true,
    from: 0,
    to: 1000,
    askedWhen: [{ kind: { is: ['pear'] } }, { part: { is: ['core'] } }],
  },
  pickedOn: { type: 'date', says: 'day of the harvest' },
};

const SAMPLES: Samples = { weightG: [0, 99, 100] };

export const question = (told: Told): Question => ({ fields: FIELDS, told, samples: SAMPLES });
