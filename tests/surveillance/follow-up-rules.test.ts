import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { answer, type ClassRule } from '../../src/rules/index.js';
import { FOLLOW_UP_RULES } from '../../src/surveillance/index.js';

interface Example {
  readonly id: string;
  readonly inputs_json: string;
  readonly rule_or_score: string;
  readonly expected: string;
  readonly source: string;
}

const ruleOf = (id: string) => FOLLOW_UP_RULES.find((rule) => rule.id === id);

function answerOf(id: string, question: object): string {
  const rule = ruleOf(id);
  if (rule === undefined) return 'no such rule';
  const result = answer(rule, question);
  return result.ok ? result.value.answer : result.problems.map((p) => p.rule).join(',');
}

const examples = parse<Example>(readFileSync('tests/published/worked-examples.csv'), {
  columns: true,
}).filter(({ rule_or_score }) => ruleOf(rule_or_score) !== undefined);

describe('follow-up, against worked examples', () => {
  it('has examples to look at', () => {
    expect(examples.length).toBeGreaterThanOrEqual(17);
  });

  it.each(examples)('$id of $rule_or_score ($source)', (example) => {
    const question = JSON.parse(example.inputs_json) as object;
    expect(answerOf(example.rule_or_score, question)).toBe(example.expected);
  });
});

const ON = '2024-03-15';
/** Dates by hand: whole months from 15 March 2024. */
const DATE = {
  0: ON,
  2: '2024-05-15',
  3: '2024-06-15',
  4: '2024-07-15',
  6: '2024-09-15',
  12: '2025-03-15',
  36: '2027-03-15',
  60: '2029-03-15',
} as const;
type Months = keyof typeof DATE;
const windowOf = (min: Months, target: Months, max: Months, then: string) =>
  `min=${DATE[min]};target=${DATE[target]};max=${DATE[max]};then=${then}`;

const esge = (organ: string, tumour: string, found: string | null, more: object = {}) =>
  ['esge-esd-2022-follow-up', { organ, tumour, esdDate: ON, class: found, ...more }] as const;
const polyp = (sizeMm: number, polypType: string, histology: string, enBloc: boolean) => ({
  esdDate: ON,
  sizeMm,
  polypType,
  histology,
  enBloc,
});

const unoperated = (tumour: string, found: string, depth: string) =>
  ['without-surgery', { esdDate: ON, tumour, class: found, depth }] as const;
const inSitu = (histology: string, depth: string, enBloc: boolean) =>
  ['jges-colorectal-2020', { esdDate: ON, histology, depth, enBloc }] as const;
const mucosa = (more: object) => ['background-mucosa', { examDate: ON, ...more }] as const;

/** Each row of the follow-up table and both sides of its borders, from the guidelines it names. */
const ROWS: readonly (readonly [string, readonly [string, object], string])[] = [
  ['OES-1', esge('oesophagus', 'squamous', 'very-low-risk'), windowOf(3, 6, 6, '12*')],
  ['OES-1', esge('oesophagus', 'squamous', 'low-risk'), windowOf(3, 6, 6, '12*')],
  ['OES-2', esge('oesophagus', 'squamous', 'local-risk'), windowOf(3, 3, 6, '6,12*')],
  ['BAR-1', esge('oesophagus', 'barrett', 'low-risk'), windowOf(2, 3, 3, '3*')],
  ['Barrett of local risk', esge('oesophagus', 'barrett', 'local-risk'), 'task=clinician-decision'],
  ['GAS-1', esge('stomach', 'gastric', 'low-risk'), windowOf(3, 6, 6, '12*')],
  ['GAS-2', esge('stomach', 'gastric', 'local-risk'), windowOf(3, 3, 6, '6,12*')],
  ['COL-1', esge('colon', 'colorectal', 'very-low-risk'), windowOf(36, 36, 36, '60,screening')],
  ['COL-4', esge('rectum', 'colorectal', 'low-risk'), windowOf(12, 12, 12, '36,60')],
  ['COL-3', esge('colon', 'colorectal', 'local-risk'), windowOf(3, 6, 6, '12,COL-1')],
  [
    'COL-2',
    esge('colon', 'colorectal', 'local-risk', { enBloc: false }),
    windowOf(3, 6, 6, '12,COL-1'),
  ],
  ['high risk', esge('colon', 'colorectal', 'high-risk'), 'task=multidisciplinary-meeting'],
  ['no class', esge('stomach', 'gastric', 'indeterminate'), 'task=clinician-decision'],
  ['no rule', esge('stomach', 'other', 'no-rule'), 'task=clinician-decision'],
  ['incomplete', esge('colon', 'colorectal', 'incomplete'), 'task=clinician-decision'],
  ['not back', esge('colon', 'colorectal', null), 'task=await-pathology'],
  ['a tumour of another organ', esge('stomach', 'squamous', 'low-risk'), 'task=clinician-decision'],
  ...(['curative', 'undetermined', 'additional-treatment'] as const).map(
    (found) =>
      [
        `jges-jes-2020 ${found}`,
        [
          'jges-jes-2020-follow-up',
          { organ: 'oesophagus', tumour: 'squamous', esdDate: ON, class: found },
        ],
        found === 'curative' ? windowOf(6, 12, 12, '12*') : windowOf(3, 6, 6, '6*'),
      ] as const,
  ),
  [
    'OES-3, many unstained lesions',
    [
      'jges-jes-2020-follow-up',
      {
        organ: 'oesophagus',
        tumour: 'squamous',
        esdDate: ON,
        class: 'curative',
        iodineVoiding: 'many',
      },
    ],
    windowOf(6, 12, 12, '6*'),
  ],
  ...(
    [
      ['eCuraA', windowOf(6, 12, 12, '12*')],
      ['eCuraB', windowOf(6, 6, 12, '6*')],
      ['eCuraC-1', windowOf(3, 6, 6, '6*')],
      ['eCuraC-2', windowOf(3, 6, 6, '6*')],
      [null, 'task=await-pathology'],
    ] as const
  ).map(
    ([found, expected]) =>
      [
        `jges-jgca-2021 ${found}`,
        [
          'jges-jgca-2021-follow-up',
          { organ: 'stomach', tumour: 'gastric', esdDate: ON, class: found },
        ],
        expected,
      ] as const,
  ),
  ...(
    [
      ['jges-jes-2020-follow-up', 'squamous', null, 'task=await-pathology'],
      ['jges-jes-2020-follow-up', 'squamous', 'incomplete', 'task=clinician-decision'],
      ['jges-jes-2020-follow-up', 'barrett', 'curative', 'task=clinician-decision'],
      ['jges-jgca-2021-follow-up', 'gastric', 'indeterminate', 'task=clinician-decision'],
      ['jges-jgca-2021-follow-up', 'other', 'eCuraA', 'task=clinician-decision'],
    ] as const
  ).map(
    ([id, tumour, found, expected]) =>
      [
        `${id}, ${tumour}, ${found}`,
        [
          id,
          {
            organ: tumour === 'squamous' || tumour === 'barrett' ? 'oesophagus' : 'stomach',
            tumour,
            esdDate: ON,
            class: found,
          },
        ],
        expected,
      ] as const,
  ),
  [
    'COL-1 from 10 mm',
    ['esge-pps-2020', polyp(10, 'adenoma', 'low-grade-dysplasia', true)],
    windowOf(36, 36, 36, '60,screening'),
  ],
  [
    'COL-1 for high grade of any size',
    ['esge-pps-2020', polyp(4, 'adenoma', 'high-grade-dysplasia', true)],
    windowOf(36, 36, 36, '60,screening'),
  ],
  [
    'COL-1 from five adenomas',
    ['esge-pps-2020', { ...polyp(5, 'adenoma', 'low-grade-dysplasia', true), count: 5 }],
    windowOf(36, 36, 36, '60,screening'),
  ],
  [
    'none up to four adenomas',
    ['esge-pps-2020', { ...polyp(5, 'adenoma', 'low-grade-dysplasia', true), count: 4 }],
    'none',
  ],
  [
    'COL-1 for a hyperplastic polyp of 10 mm',
    ['esge-pps-2020', polyp(10, 'hyperplastic', 'none', true)],
    windowOf(36, 36, 36, '60,screening'),
  ],
  [
    'none for a small serrated one without dysplasia',
    ['esge-pps-2020', polyp(9, 'sessile-serrated', 'none', true)],
    'none',
  ],
  [
    'COL-1 for a small serrated one with dysplasia',
    ['esge-pps-2020', polyp(9, 'sessile-serrated', 'low-grade-dysplasia', true)],
    windowOf(36, 36, 36, '60,screening'),
  ],
  [
    'COL-1 for a piecemeal resection below 20 mm',
    ['esge-pps-2020', polyp(19, 'adenoma', 'low-grade-dysplasia', false)],
    windowOf(36, 36, 36, '60,screening'),
  ],
  [
    'a date for each of two questions',
    ['esge-pps-2020', { firstSurveillance: ON, findings: 'none' }],
    windowOf(60, 60, 60, 'screening'),
  ],
  [
    'COL-6',
    ['bsg-2019', { esdDate: ON, sizeMm: 20, enBloc: true, r0: true }],
    windowOf(36, 36, 36, 'by-findings'),
  ],
  [
    'COL-7 when R0 is not proven',
    ['bsg-2019', { esdDate: ON, sizeMm: 20, enBloc: true }],
    windowOf(2, 4, 6, '12,36'),
  ],
  [
    'not covered below 20 mm',
    ['bsg-2019', { esdDate: ON, sizeMm: 19, enBloc: false }],
    'task=clinician-decision',
  ],
  [
    'COL-8 only from 20 mm',
    ['usmstf-2020', polyp(19, 'adenoma', 'low-grade-dysplasia', false)],
    'task=clinician-decision',
  ],
  [
    'COL-9 from 10 mm',
    ['usmstf-2020', polyp(10, 'sessile-serrated', 'none', true)],
    windowOf(36, 36, 36, 'by-findings'),
  ],
  [
    'COL-9 below 10 mm only with dysplasia',
    ['usmstf-2020', polyp(9, 'sessile-serrated', 'none', true)],
    'task=clinician-decision',
  ],
  [
    'COL-9 for dysplasia',
    ['usmstf-2020', polyp(9, 'sessile-serrated', 'high-grade-dysplasia', true)],
    windowOf(36, 36, 36, 'by-findings'),
  ],
  [
    'COL-9 for a traditional serrated one',
    ['usmstf-2020', polyp(5, 'traditional-serrated', 'none', true)],
    windowOf(36, 36, 36, 'by-findings'),
  ],
  [
    'COL-4 asks for the first check at any age, the later ones from 80 years',
    [
      'esge-esdo-2019',
      { esdDate: ON, histology: 'carcinoma', depth: 'sm', class: 'low-risk', r0: true, age: 80 },
    ],
    `${windowOf(12, 12, 12, '36,60')};stop=to-confirm`,
  ],
  [
    'COL-4 at 79 years',
    [
      'esge-esdo-2019',
      { esdDate: ON, histology: 'carcinoma', depth: 'sm', class: 'low-risk', r0: true, age: 79 },
    ],
    windowOf(12, 12, 12, '36,60'),
  ],
  [
    'no COL-4 for high risk',
    [
      'esge-esdo-2019',
      { esdDate: ON, histology: 'carcinoma', depth: 'sm', class: 'high-risk', r0: true },
    ],
    'task=multidisciplinary-meeting',
  ],
  [
    'no COL-4 without R0',
    [
      'esge-esdo-2019',
      { esdDate: ON, histology: 'carcinoma', depth: 'sm', class: 'low-risk', r0: false },
    ],
    'task=clinician-decision',
  ],
  [
    'DUO-1 for adenomas only',
    ['esge-duodenum-2021', { esdDate: ON, polypType: 'hyperplastic' }],
    'task=clinician-decision',
  ],
  [
    'BAR-2',
    ['esge-barrett-2023', { eradicationDate: ON, baselineHistology: 'carcinoma' }],
    'at=2025-03-15,2026-03-15,2027-03-15,2028-03-15,2029-03-15,2031-03-15,2034-03-15',
  ],
  [
    'BAR-3',
    ['esge-barrett-2023', { eradicationDate: ON, baselineHistology: 'low-grade-dysplasia' }],
    'at=2025-03-15,2027-03-15,2029-03-15',
  ],
  [
    'BAR-5 below 1 cm',
    ['esge-barrett-2023', { examDate: ON, barrettMaxCm: 0.9, histology: 'none' }],
    'none',
  ],
  [
    'BAR-5 from 1 cm',
    ['esge-barrett-2023', { examDate: ON, barrettMaxCm: 1, histology: 'none' }],
    windowOf(60, 60, 60, '60*'),
  ],
  [
    'BAR-5 below 10 cm',
    ['esge-barrett-2023', { examDate: ON, barrettMaxCm: 9.9, histology: 'none' }],
    windowOf(36, 36, 36, '36*'),
  ],
  [
    'no row for dysplasia without resection',
    ['esge-barrett-2023', { examDate: ON, barrettMaxCm: 4, histology: 'low-grade-dysplasia' }],
    'task=clinician-decision',
  ],
  [
    'OLGIM IV',
    ['maps-ii-2019', { examDate: ON, background: 'OLGIM-IV' }],
    windowOf(36, 36, 36, '36*'),
  ],
  ['OLGA II', ['maps-ii-2019', { examDate: ON, background: 'OLGA-II' }], 'none'],
  ['BAR-4', unoperated('barrett', 'low-risk', 'sm'), windowOf(3, 3, 6, '6*until-24,12*')],
  ['no BAR-4 within the mucosa', unoperated('barrett', 'low-risk', 'm'), 'task=clinician-decision'],
  ['OES-4 of the European set', unoperated('squamous', 'high-risk', 'mm'), windowOf(3, 6, 6, '6*')],
  ['GAS-3', unoperated('gastric', 'high-risk', 'm'), windowOf(3, 3, 6, '6*until-36,12*')],
  [
    'COL-5',
    unoperated('colorectal', 'high-risk', 'sm'),
    windowOf(3, 6, 6, '6*until-36,12*until-60'),
  ],
  ['COL-10', inSitu('carcinoma', 'm', false), windowOf(6, 6, 6, 'by-findings')],
  [
    'COL-10 for high grade',
    inSitu('high-grade-dysplasia', 'm', false),
    windowOf(6, 6, 6, 'by-findings'),
  ],
  ['no COL-10 en bloc', inSitu('carcinoma', 'm', true), 'task=clinician-decision'],
  ['no COL-10 in the submucosa', inSitu('carcinoma', 'sm', false), 'task=clinician-decision'],
  [
    'GAS-8',
    ['gastric-adenoma-practice', { esdDate: ON, histology: 'low-grade-dysplasia' }],
    windowOf(3, 6, 6, '12*'),
  ],
  [
    'GAS-8 for low grade alone',
    ['gastric-adenoma-practice', { esdDate: ON, histology: 'high-grade-dysplasia' }],
    'task=clinician-decision',
  ],
  ['stage III', mucosa({ gastritisStage: 'III' }), windowOf(36, 36, 36, '36*')],
  ['stage II', mucosa({ gastritisStage: 'II' }), 'none'],
  ['antrum and corpus', mucosa({ extent: 'antrum-and-corpus' }), windowOf(36, 36, 36, '36*')],
  ...(
    [
      { metaplasia: 'incomplete' },
      { helicobacterGastritis: true },
      { familyHistory: true },
    ] as const
  ).map(
    (more) =>
      [
        `metaplasia at one site, ${Object.keys(more).join()}`,
        mucosa({ extent: 'one-site', metaplasia: 'complete', ...more }),
        windowOf(36, 36, 36, 'by-findings'),
      ] as const,
  ),
  ['one site alone', mucosa({ extent: 'one-site', metaplasia: 'complete' }), 'none'],
  ['unseen low grade', mucosa({ dysplasia: 'low-grade' }), windowOf(0, 0, 0, '12*')],
  ['unseen high grade', mucosa({ dysplasia: 'high-grade' }), windowOf(0, 0, 0, '6*')],
];

describe('follow-up, against the rows of the guidelines', () => {
  it.each(ROWS)('%s', (_, [id, question], expected) => {
    expect(answerOf(id, question)).toBe(expected);
  });

  it('would see a window that is moved by a month', () => {
    const [id, question] = esge('stomach', 'gastric', 'low-risk');
    expect(answerOf(id, question)).not.toBe(windowOf(3, 6, 12, '12*'));
  });

  it('reaches every row of every rule set', () => {
    const asked = [
      ...ROWS.map(([, question]) => question),
      ...examples.map((e) => [e.rule_or_score, JSON.parse(e.inputs_json) as object] as const),
    ];
    const reached = new Set(
      asked.flatMap(([id, question]) => {
        const rule = ruleOf(id);
        const result = rule === undefined ? undefined : answer(rule, question);
        return result?.ok ? result.value.reasons.map(({ row }) => `${id} ${row}`) : [];
      }),
    );
    const rows = FOLLOW_UP_RULES.filter((rule): rule is ClassRule => rule.kind === 'follow-up');
    const all = rows.flatMap(({ id, table }) => table.flat().map(({ row }) => `${id} ${row}`));
    expect(all.filter((row) => !reached.has(row))).toEqual([]);
  });

  it('names the date that it needs, and gives none without it', () => {
    const question = { organ: 'stomach', tumour: 'gastric', class: 'low-risk' };
    expect(answerOf('esge-esd-2022-follow-up', question)).toBe('indeterminate;missing=esdDate');
    expect(answerOf('esge-pps-2020', { findings: 'none', firstSurveillance: null })).toBe(
      'indeterminate;missing=firstSurveillance',
    );
  });

  it('keeps the day of the month, or takes the last one', () => {
    const on = { ...esge('stomach', 'gastric', 'low-risk')[1], esdDate: '2023-08-31' };
    expect(answerOf('esge-esd-2022-follow-up', on)).toBe(
      'min=2023-11-30;target=2024-02-29;max=2024-02-29;then=12*',
    );
  });

  it.each([
    ['2024-02-30', 'bad-format'],
    ['15.03.2024', 'bad-format'],
  ])('refuses %s as a date', (esdDate, rule) => {
    expect(answerOf('esge-duodenum-2021', { esdDate, polypType: 'adenoma' })).toBe(rule);
  });

  it.each([null, undefined, 'esdDate', 80, true, []])(
    'refuses %j, which has no fields',
    (document) => {
      for (const rule of FOLLOW_UP_RULES) {
        expect(answer(rule, document)).toMatchObject({
          ok: false,
          problems: [{ rule: 'wrong-type', pointer: '' }],
        });
      }
    },
  );

  it('takes the stage that is told before the one that the fields suggest', () => {
    const polyp = { esdDate: ON, sizeMm: 9, polypType: 'adenoma', histology: 'none', enBloc: true };
    const both = { ...polyp, firstSurveillance: ON, findings: 'none' };
    expect(answerOf('esge-pps-2020', { ...both, stage: 'first' })).toBe('none');
    expect(answerOf('esge-pps-2020', both)).toBe(windowOf(60, 60, 60, 'screening'));
  });
});
