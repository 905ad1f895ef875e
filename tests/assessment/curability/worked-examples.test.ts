import { describe, expect, it } from 'vitest';
import { CURABILITY_RULES } from '../../../src/assessment/index.js';
import { examplesOf, shortAnswer } from '../scores/ask.js';

const examples = examplesOf(CURABILITY_RULES);

describe('curability against the worked examples', () => {
  it.each(examples)('$id: $expected ($source; $read_or_memory)', (example) => {
    expect(shortAnswer(example.of, JSON.parse(example.inputs_json))).toBe(example.expected);
  });

  it('have an example of every set that they know', () => {
    expect([...new Set(examples.map(({ of }) => of.id))]).toEqual([
      'esge-esd-2022',
      'jges-jgca-2021',
      'jsccr-2019',
      'jges-jes-2020',
      'jges-jes-2020-indication',
    ]);
  });
});

/** The example ESGE-05, and one with several reasons that the conventions spell out. */
const SM1 = {
  tumour: 'gastric',
  histology: 'carcinoma',
  depth: 'sm',
  smDepthUm: 500,
  gastricType: 'differentiated',
  sizeMm: 30,
  ulcer: 'UL0',
  ly: '0',
  v: '0',
  hm: '0',
  vm: '0',
  enBloc: true,
  endoscopicallyComplete: true,
};
const [europe] = CURABILITY_RULES;

describe('the text of an answer', () => {
  const ask = (change: object) =>
    europe === undefined ? 'no rule' : shortAnswer(europe, { ...SM1, ...change });

  // Worked examples, conventions of curability: several reasons, always in this order.
  it('names all reasons in their order', () => {
    const several = { ly: '1', smDepthUm: 700, vm: '1' };
    expect(ask(several)).toBe('high-risk;lvi,vertical-margin,deeper-than-sm1');
    expect(ask({ ...several, v: '1', hm: 'X', enBloc: false })).toBe(
      'high-risk;lvi,vertical-margin,deeper-than-sm1,margin-or-piecemeal-with-sm',
    );
    expect(ask({ sizeMm: 31, ulcer: 'UL1' })).toBe(
      'high-risk;size-limit-exceeded,ulcerated-submucosal',
    );
  });

  it('names no reason where each possible value has another one', () => {
    expect(ask({ depth: 'm', smDepthUm: undefined, gastricType: 'undifferentiated' })).not.toBe(
      'high-risk',
    );
    const { smDepthUm: _, sizeMm: __, ...told } = SM1;
    const small = { ...told, depth: 'm', gastricType: 'undifferentiated' };
    expect(europe && shortAnswer(europe, small)).toBe('high-risk');
  });

  it('names missing fields in the order of the table', () => {
    const { ly: _, ...told } = SM1;
    expect(europe && shortAnswer(europe, { ...told, smDepthUm: null, v: 'X' })).toBe(
      'indeterminate;missing=smDepthUm,ly,v',
    );
  });

  it.each([
    ['an unknown field', { polypType: 'adenoma' }, '(unknown-field /polypType)'],
    ['a field of another set', { undiffInSm: false }, '(unknown-field /undiffInSm)'],
    ['a word outside the list', { ulcer: 'UL2' }, '(not-in-list /ulcer)'],
    ['a layer of another organ', { depth: 'lpm' }, '(not-in-list /depth)'],
    ['a depth of part of a micrometre', { smDepthUm: 0.5 }, '(wrong-type /smDepthUm)'],
    ['a size of nothing', { sizeMm: 0 }, '(out-of-range /sizeMm)'],
    ['a grade as text', { budding: '1' }, '(not-in-list /budding)'],
    ['a flag as text', { enBloc: 'true' }, '(wrong-type /enBloc)'],
  ])('refuses %s', (_what, change, refusal) => {
    expect(ask(change)).toBe(refusal);
  });

  it.each([
    [{ histology: 'high-grade-dysplasia', depth: 'm', smDepthUm: 0, ly: '1' }, 'ly'],
    [{ histology: 'low-grade-dysplasia', depth: 'm', smDepthUm: 0, v: '1' }, 'v'],
  ])('refuses vessel invasion of a dysplasia within the mucosa: %o', (change, field) => {
    expect(ask(change)).toBe(`(vessel-invasion-in-dysplasia /${field})`);
    expect(ask({ ...change, [field]: '0' })).toBe('very-low-risk');
  });

  it.each(['m', 'mp'])('refuses a depth within the submucosa beside the layer %s', (depth) => {
    expect(ask({ depth, smDepthUm: 1 })).toBe('(depth-outside-submucosa /smDepthUm)');
    expect(ask({ depth, smDepthUm: 0 })).not.toContain('(');
  });

  it('refuses an undifferentiated part in the submucosa of a lesion above it', () => {
    const japan = CURABILITY_RULES.find(({ id }) => id === 'jges-jgca-2021');
    const { smDepthUm: _, ...told } = SM1;
    const asked = { ...told, depth: 'm', undiffInSm: true };
    expect(japan && shortAnswer(japan, asked)).toBe(
      '(undifferentiated-part-outside-submucosa /undiffInSm)',
    );
    expect(japan && shortAnswer(japan, { ...asked, undiffInSm: false })).toBe('eCuraA');
  });

  it('refuses a depth within the submucosa before treatment beside another layer', () => {
    const indication = CURABILITY_RULES.find(({ id }) => id === 'jges-jes-2020-indication');
    const asked = { cDepth: 'mm', cSmDepthUm: 1, circumferencePercent: 20, lengthMm: 20 };
    expect(indication && shortAnswer(indication, asked)).toBe(
      '(depth-outside-submucosa /cSmDepthUm)',
    );
    expect(indication && shortAnswer(indication, { ...asked, cSmDepthUm: 0 })).toBe('indicated');
  });
});
