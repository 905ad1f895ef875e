import { describe, expect, it } from 'vitest';
import type { ScoreFinding } from '../../../src/assessment/assessment.js';
import { LIMOGES } from '../../../src/assessment/scores/limoges.table.js';
import { assessScores } from '../../../src/assessment/scores/of-record.js';
import type { ScoredReport } from '../../../src/assessment/scores/record-scores.js';
import { SITE_ORGAN, type Site } from '../../../src/contract/index.js';
import { caseWith, type Parts } from './case-draft.js';

function find(
  rule: string,
  parts: Parts,
  report?: ScoredReport,
  gastricClass?: string,
): ScoreFinding {
  const found = assessScores(caseWith(parts), report, gastricClass).find((s) => s.rule === rule);
  if (found === undefined) throw new Error('the score concerns the case');
  return found;
}

/** What came out, as one line. */
function lineOf({ outcome }: ScoreFinding): string {
  switch (outcome.kind) {
    case 'total':
      return [outcome.total, ...(outcome.group === undefined ? [] : [outcome.group])].join(' ');
    case 'indeterminate':
      return `${outcome.lowest}-${outcome.highest} without ${outcome.missing.join(', ')}`;
    case 'refused':
      return outcome.because;
  }
}

const remarksOf = ({ remarks }: ScoreFinding) => remarks.map(({ remark }) => remark);
const idsOf = (parts: Parts, report?: ScoredReport) =>
  assessScores(caseWith(parts), report, undefined).map(({ rule }) => rule);

describe('scores of a case by its organ', () => {
  const COLORECTAL = [
    'limoges',
    'kr-colorectal-bleeding',
    'colorectal-difficulty-2021',
    'colorectal-difficulty-2023',
    'colorectal-difficulty-matsumoto-2019',
  ];

  it.each([
    ['oesophagus', []],
    ['duodenum', []],
    ['stomach', ['best-j']],
    ['colon', COLORECTAL],
    ['rectum', COLORECTAL],
  ])('%s: %j', (organ, ids) => {
    expect(idsOf({ lesion: { organ } })).toEqual(ids);
  });

  it('asks the eCura score of the stomach once there is a report', () => {
    expect(idsOf({ lesion: { organ: 'stomach' } }, {})).toEqual(['ecura', 'best-j']);
    expect(idsOf({ lesion: { organ: 'colon' } }, {})).toEqual(COLORECTAL);
  });
});

const GASTRIC = { organ: 'stomach', tumour: 'gastric', stomachThird: 'upper' };
const TOLD = { haemodialysis: false, antithrombotics: [] };
const bestJ = (before: object, lesion: object = {}, lesionsInSession = 1) =>
  find('best-j', {
    before: { ...TOLD, ...before },
    lesion: { ...GASTRIC, ...lesion },
    lesionsInSession,
  });
const drug = (of: string, decision = 'continued', more: object = {}) => ({
  antithrombotics: [{ class: of, decision, ...more }],
});

// Source of weights and use: the calculator of the BEST-J score (second source); a drug that was
// replaced or bridged with heparin counts as interrupted; others carry no points.
describe('BEST-J score of a case', () => {
  it.each([
    [drug('vitamin-k-antagonist'), '4 high'],
    [drug('vitamin-k-antagonist', 'stopped'), '3 high'],
    [drug('doac'), '4 high'],
    [drug('doac', 'stopped'), '3 high'],
    [drug('p2y12-inhibitor'), '2 intermediate'],
    [drug('p2y12-inhibitor', 'replaced', { replacedBy: 'aspirin' }), '1 low'],
    [drug('aspirin'), '2 intermediate'],
    [drug('aspirin', 'stopped'), '1 low'],
    [drug('cilostazol'), '1 low'],
    [drug('cilostazol', 'stopped'), '0 low'],
    [drug('other-antiplatelet'), '0 low'],
    [drug('heparin', 'stopped'), '0 low'],
    [drug('vitamin-k-antagonist', 'continued', { bridged: true }), '3 high'],
    [drug('vitamin-k-antagonist', 'stopped', { bridged: false }), '3 high'],
    [{ haemodialysis: true }, '3 high'],
    [{}, '0 low'],
  ])('before %j: %s', (before, line) => {
    expect(lineOf(bestJ(before))).toBe(line);
  });

  it.each([
    [{ longAxisMm: 30 }, 1, '0 low'],
    [{ longAxisMm: 31 }, 1, '1 low'],
    [{ stomachThird: 'lower' }, 1, '1 low'],
    [{ stomachThird: 'middle', site: 'stomach-antrum' }, 1, '0 low'],
    [{ stomachThird: undefined, site: 'stomach-antrum' }, 1, '1 low'],
    [{ stomachThird: undefined, site: 'stomach-pylorus' }, 1, '1 low'],
    [{ stomachThird: undefined, site: 'stomach-cardia' }, 1, '0 low'],
    [{ stomachThird: undefined, site: 'stomach-fundus' }, 1, '0 low'],
    [{ stomachThird: undefined, site: 'stomach-body' }, 1, '0-1 without lesion.stomachThird'],
    [{ stomachThird: undefined, site: 'stomach-angulus' }, 1, '0-1 without lesion.stomachThird'],
    [{ stomachThird: undefined }, 1, '0-1 without lesion.stomachThird'],
    [{}, 2, '1 low'],
  ])('lesion %j, %i in the session: %s', (lesion, lesions, line) => {
    expect(lineOf(bestJ({}, lesion, lesions))).toBe(line);
  });

  it('names the fields of the case that are missing, in the order of the score', () => {
    expect(lineOf(find('best-j', { lesion: { organ: 'stomach', tumour: 'gastric' } }))).toBe(
      '0-18 without before.antithrombotics, before.haemodialysis, lesion.stomachThird, ' +
        'lesionsInSession',
    );
  });

  it('does not take a tumour that is not told for a gastric one', () => {
    expect(lineOf(bestJ({}, { tumour: undefined }))).toBe('0-0 without lesion.tumour');
    expect(lineOf(bestJ({}, { tumour: undefined, stomachThird: undefined }))).toBe(
      '0-1 without lesion.tumour, lesion.stomachThird',
    );
  });

  it('carries the group, the published rate with its counts, and what counted', () => {
    expect(bestJ(drug('doac'), { longAxisMm: 31 })).toMatchObject({
      version: 1,
      outcome: {
        kind: 'total',
        total: 5,
        group: 'very-high',
        rate: { percent: 29.7, events: 60, of: 202, interval: { method: 'clopper-pearson' } },
        counted: [
          { item: 'doac', points: 4 },
          { item: 'size-above-30-mm', points: 1 },
        ],
      },
    });
  });

  it('speaks of no interruption where no drug is told', () => {
    const remarks = remarksOf(find('best-j', { lesion: GASTRIC }));
    expect(remarks).toEqual(['size-through-endoscope']);
  });

  it('says how it read the size, an interruption and another vitamin K antagonist', () => {
    const ofClass = (agent?: string) =>
      remarksOf(bestJ(drug('vitamin-k-antagonist', 'stopped', agent ? { agent } : {})));
    expect(remarksOf(bestJ({}))).toEqual(['size-through-endoscope']);
    expect(remarksOf(bestJ(drug('aspirin')))).toEqual(['size-through-endoscope']);
    expect(ofClass('warfarin')).toEqual(['size-through-endoscope', 'interrupted-as-told']);
    expect(ofClass('phenprocoumon')).toContain('vitamin-k-antagonist-as-warfarin');
    expect(ofClass()).toContain('vitamin-k-antagonist-as-warfarin');
    expect(remarksOf(bestJ(drug('doac', 'continued', { bridged: true })))).toContain(
      'interrupted-as-told',
    );
  });
});

describe('remarks beside a score of the large bowel', () => {
  it.each([
    'limoges',
    'kr-colorectal-bleeding',
    'colorectal-difficulty-2021',
    'colorectal-difficulty-2023',
    'colorectal-difficulty-matsumoto-2019',
  ])('say how %s read the size', (rule) => {
    const colon = { lesion: { organ: 'colon', longAxisMm: 30 } };
    expect(remarksOf(find(rule, colon))).toEqual(['size-through-endoscope']);
  });

  it('are those of the score itself too, word by word', () => {
    const junction = { lesion: { organ: 'rectum', site: 'rectosigmoid-junction' } };
    const own = LIMOGES.remarks.map(({ remark, says, cites }) => ({ remark, says, cites }));
    expect(find('limoges', junction).remarks.slice(0, 1)).toEqual(own);
    expect(own).toHaveLength(1);
  });
});

describe('refusal of a score', () => {
  const OTHER_KIND =
    'The score was made for early gastric neoplasia; this tumour is of another kind.';
  const NO_WOUND = 'The dissection was never started: there is no wound that could bleed.';

  it.each(['squamous', 'barrett', 'duodenal', 'colorectal', 'other'])(
    'refuses BEST-J for a tumour %s',
    (tumour) => {
      expect(lineOf(bestJ({}, { tumour }))).toBe(OTHER_KIND);
      expect(remarksOf(bestJ({}, { tumour }))).toEqual([]);
    },
  );

  it('believes the report before the endoscopist about the kind of tumour', () => {
    const parts = { before: TOLD, lesion: GASTRIC, lesionsInSession: 1 };
    expect(lineOf(find('best-j', parts, { findings: { tumour: 'other' } }))).toBe(OTHER_KIND);
    expect(lineOf(find('best-j', parts, { findings: { tumour: 'gastric' } }))).toBe('0 low');
    expect(lineOf(find('best-j', parts, {}))).toBe('0 low');
  });

  it('refuses every score of bleeding where nothing was cut, and none of difficulty', () => {
    const outcome = 'not-started';
    expect(lineOf(find('best-j', { lesion: GASTRIC, outcome }))).toBe(NO_WOUND);
    const lines = assessScores(
      caseWith({ lesion: { organ: 'colon' }, outcome }),
      undefined,
      undefined,
    );
    expect(lines.map((score) => lineOf(score) === NO_WOUND)).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
    expect(lineOf(find('limoges', { lesion: { organ: 'colon' }, outcome: 'abandoned' }))).not.toBe(
      NO_WOUND,
    );
  });

  const FOUND = { ly: '0', v: '0', vm: { state: '0' }, sizeMm: 20, smDepthUm: 100 } as const;
  const ecura = (findings: ScoredReport['findings'], gastricClass?: string) =>
    find('ecura', { lesion: GASTRIC }, { findings }, gastricClass);

  it.each([
    [undefined, 'The score is for eCuraC-2 only, and the class of this resection is not known.'],
    ['eCuraA', 'The score is for eCuraC-2 only, and this resection is of another class.'],
    ['eCuraC-1', 'The score is for eCuraC-2 only, and this resection is of another class.'],
    ['no-rule', 'The score is for eCuraC-2 only, and this resection is of another class.'],
  ])('refuses the eCura score for class %s', (gastricClass, because) => {
    expect(lineOf(ecura(FOUND, gastricClass))).toBe(because);
  });

  it.each([
    [
      { ...FOUND, depth: 'mp' },
      'The score was made for early cancer; this tumour is deeper than the submucosa.',
    ],
    [
      { ...FOUND, histology: 'high-grade-dysplasia' },
      'The score was made for cancer; the report names none.',
    ],
    [{ ...FOUND, histology: 'none' }, 'The score was made for cancer; the report names none.'],
  ] as const)('refuses the eCura score for %j', (findings, because) => {
    expect(lineOf(ecura(findings, 'eCuraC-2'))).toBe(because);
  });

  // Source: Hatta W et al. Am J Gastroenterol 2017;112:874-881, abstract.
  it.each([
    [FOUND, '0 low'],
    [{ ...FOUND, histology: 'carcinoma', depth: 'sm', smDepthUm: 500 }, '1 low'],
    [{ ...FOUND, histology: 'not-assessable', ly: '1' }, '3 intermediate'],
    [{ ...FOUND, ly: '1', v: '1', vm: { state: 'X' } }, '5 high'],
    [{ ...FOUND, sizeMm: 31 }, '1 low'],
    [{ ...FOUND, depth: 'm', smDepthUm: undefined }, '0 low'],
    [{ ...FOUND, depth: 'sm', smDepthUm: undefined }, '0-1 without pathology.findings.smDepthUm'],
    [{ ...FOUND, ly: 'X' }, '0-3 without pathology.findings.ly'],
    [
      undefined,
      '0-7 without pathology.findings.ly, pathology.findings.v, pathology.findings.vm.state, ' +
        'pathology.findings.sizeMm, pathology.findings.smDepthUm',
    ],
  ] as const)('gives eCuraC-2 with %j the eCura score %s', (findings, line) => {
    expect(remarksOf(ecura(findings, 'eCuraC-2'))).toEqual([]);
    expect(lineOf(ecura(findings, 'eCuraC-2'))).toBe(line);
  });

  it('shows the survival beside the rate of the eCura score', () => {
    expect(ecura(FOUND, 'eCuraC-2').outcome).toMatchObject({
      rate: { percent: 2.5 },
      figures: [{ value: 99.6, unit: '%' }],
    });
  });
});

describe('age in the Limoges score', () => {
  const limoges = (patient: object, scopeInAt?: string) =>
    lineOf(
      find('limoges', {
        patient,
        before: { antithrombotics: [], asaClass: 'I' },
        lesion: { organ: 'colon' },
        ...(scopeInAt === undefined ? {} : { scopeInAt }),
      }),
    );

  // Source: the calendar; 29 February is passed on 1 March of a common year.
  it.each([
    ['1951-03-01', '2026-03-01T09:00:00+01:00', '1 low-medium'],
    ['1951-03-02', '2026-03-01T09:00:00+01:00', '0 low-medium'],
    ['1951-02-28', '2026-03-01T09:00:00+01:00', '1 low-medium'],
    ['1950-12-31', '2026-01-01T00:30:00+14:00', '1 low-medium'],
    ['1951-01-02', '2026-01-01T23:30:00-11:00', '0 low-medium'],
    ['1948-02-29', '2023-02-28T09:00:00+01:00', '0 low-medium'],
    ['1948-02-29', '2023-03-01T09:00:00+01:00', '1 low-medium'],
  ])('born on %s, dissected at %s: %s', (bornOn, scopeInAt, line) => {
    expect(limoges({ bornOn }, scopeInAt)).toBe(line);
  });

  it('takes the stated age where there is no date of birth, and the date where there is one', () => {
    expect(limoges({ ageYears: 75 })).toBe('1 low-medium');
    expect(limoges({ ageYears: 74 })).toBe('0 low-medium');
    expect(limoges({ ageYears: 75, bornOn: '1990-01-01' })).toBe('0 low-medium');
    expect(limoges({})).toBe('0-1 without patient.bornOn');
  });
});

describe('drugs, class and place in the scores of bleeding', () => {
  const of = (rule: string, classes: readonly string[] | undefined, lesion: object = {}) =>
    lineOf(
      find(rule, {
        patient: { ageYears: 50 },
        before: {
          asaClass: 'II',
          ...(classes === undefined
            ? {}
            : { antithrombotics: classes.map((c) => ({ class: c, decision: 'stopped' })) }),
        },
        lesion: { organ: 'colon', site: 'descending-colon', ...lesion },
      }),
    );

  it.each([
    [[], '0 low-medium', '0'],
    [['aspirin'], '1 low-medium', '0'],
    [['heparin'], '1 low-medium', '0'],
    [['aspirin', 'doac'], '1 low-medium', '0'],
    [['p2y12-inhibitor'], '1 low-medium', '1'],
    [['cilostazol'], '1 low-medium', '1'],
    [['other-antiplatelet'], '1 low-medium', '1'],
    [['aspirin', 'p2y12-inhibitor'], '1 low-medium', '1'],
    [undefined, '0-1 without before.antithrombotics', '0-1 without before.antithrombotics'],
  ])('%j: Limoges %s, Korean %s', (classes, inLimoges, inKorea) => {
    expect(of('limoges', classes)).toBe(inLimoges);
    expect(of('kr-colorectal-bleeding', classes)).toBe(inKorea);
  });

  it.each([
    ['I', '0 low-medium'],
    ['II', '0 low-medium'],
    ['III', '2 low-medium'],
    ['IV', '2 low-medium'],
    ['V', '2 low-medium'],
    [undefined, '0-2 without before.asaClass'],
  ])('ASA class %s: %s', (asaClass, line) => {
    const before = { antithrombotics: [], ...(asaClass === undefined ? {} : { asaClass }) };
    const lesion = { organ: 'colon', longAxisMm: 50 };
    expect(lineOf(find('limoges', { patient: { ageYears: 50 }, before, lesion }))).toBe(line);
  });

  it('counts a lesion of more than 50 mm', () => {
    expect(of('limoges', [], { longAxisMm: 50.1 })).toBe('3 low-medium');
  });

  it('takes a place that is not told from the organ, which leaves the colon open', () => {
    const site = undefined;
    expect(of('limoges', [], { site })).toBe('0 low-medium');
    expect(of('kr-colorectal-bleeding', [], { site })).toBe('0-2 without lesion.site');
    expect(of('limoges', [], { site, organ: 'rectum' })).toBe('1 low-medium');
    expect(of('kr-colorectal-bleeding', [], { site, organ: 'rectum' })).toBe('2');
  });
});

describe('every colorectal site', () => {
  const SITES = Object.entries(SITE_ORGAN).filter(([, o]) => o === 'colon' || o === 'rectum');
  const difficulty = (rule: string, site: string, organ: string) =>
    lineOf(
      find(rule, {
        before: { biopsyResult: 'not-taken', earlierAttempts: [] },
        lesion: {
          organ,
          site,
          circumferencePercent: 20,
          touchesDentateLine: false,
          lstType: 'lst-g-h',
          nice: '2',
        },
      }),
    );

  /** Points of the place in the scores of 2021, 2023 and 2019; without an entry none. */
  const POINTS: Partial<Record<Site, readonly [number, number, number]>> = {
    caecum: [1, 2, 0],
    'ileocaecal-valve': [1, 2, 0],
    'hepatic-flexure': [2, 2, 2],
    'splenic-flexure': [2, 2, 2],
    'transverse-colon': [0, 0, 1],
  };

  it.each(SITES)('%s of the %s has the points of its place', (site, organ) => {
    const expected = Object.entries(POINTS).find(([name]) => name === site)?.[1] ?? [0, 0, 0];
    const totals = [
      'colorectal-difficulty-2021',
      'colorectal-difficulty-2023',
      'colorectal-difficulty-matsumoto-2019',
    ].map((rule) => Number(difficulty(rule, site, organ).split(' ')[0]));
    expect(totals).toEqual(expected);
  });
});

describe('look of a colorectal lesion in the scores of difficulty', () => {
  const of = (rule: string, lesion: object, before: object = {}) =>
    lineOf(
      find(rule, {
        before: { biopsyResult: 'not-taken', earlierAttempts: [], ...before },
        lesion: {
          organ: 'colon',
          site: 'ascending-colon',
          circumferencePercent: 20,
          nice: '2',
          ...lesion,
        },
      }),
    );
  const in2021 = (lesion: object) => of('colorectal-difficulty-2021', lesion);
  const in2023 = (lesion: object, before?: object) =>
    of('colorectal-difficulty-2023', { lstType: 'lst-g-h', ...lesion }, before);
  const in2019 = (lesion: object, before?: object) =>
    of('colorectal-difficulty-matsumoto-2019', lesion, before);

  const OPEN_2021 = '0-1 without lesion.lstType';
  const OPEN_2019 = '0-3 without lesion.lstType';
  it.each([
    [{ lstType: 'lst-g-h' }, '0 easy', '0 low'],
    [{ lstType: 'lst-g-m' }, '0 easy', '0 low'],
    [{ lstType: 'lst-ng-f' }, '1 intermediate', '1 low'],
    [{ lstType: 'lst-ng-pd' }, '1 intermediate', '3 intermediate'],
    [{ lstType: 'lst' }, OPEN_2021, OPEN_2019],
    [{ lstType: 'lst', paris: '0-Is' }, OPEN_2021, OPEN_2019],
    [{ lstType: 'lst-ng-pd', paris: '0-Is' }, '1 intermediate', '3 intermediate'],
    [{ paris: '0-Ip' }, '0 easy', '1 low'],
    [{ paris: '0-Isp' }, '0 easy', '1 low'],
    [{ paris: '0-Is' }, '0 easy', '1 low'],
    [{ paris: '0-IIc' }, '0 easy', '3 intermediate'],
    [{ paris: '0-III' }, '0 easy', '3 intermediate'],
    [{ paris: '0-IIc+III' }, '0 easy', '3 intermediate'],
    [{ paris: '0-IIa' }, OPEN_2021, OPEN_2019],
    [{ paris: '0-IIb' }, OPEN_2021, OPEN_2019],
    [{ paris: '0-IIa+IIc' }, OPEN_2021, OPEN_2019],
    [{ paris: '0-IIc+IIa' }, OPEN_2021, OPEN_2019],
    [{ paris: '0-Is+IIa' }, OPEN_2021, OPEN_2019],
    [{}, OPEN_2021, OPEN_2019],
  ])('%j: 2021 %s, 2019 %s', (lesion, of2021, of2019) => {
    expect(in2021(lesion)).toBe(of2021);
    expect(in2019(lesion)).toBe(of2019);
  });

  it.each([
    [{ nice: '1' }, '0 easy'],
    [{ nice: '2' }, '0 easy'],
    [{ nice: '3' }, '3 intermediate'],
    [{ nice: undefined }, '0-3 without lesion.nice'],
    [{ circumferencePercent: 67 }, '3 intermediate'],
    [{ circumferencePercent: undefined }, '0-3 without lesion.circumferencePercent'],
    [{ longAxisMm: 50 }, '3 intermediate'],
  ])('%j: 2023 %s', (lesion, line) => {
    expect(in2023(lesion)).toBe(line);
  });

  it.each([
    [{ biopsyResult: 'not-taken' }, '0 easy'],
    [{ biopsyResult: 'low-grade-dysplasia' }, '1 easy'],
    [{ biopsyResult: 'not-taken', earlierAttempts: [{ kind: 'biopsy' }] }, '1 easy'],
    [{ biopsyResult: undefined }, '0 easy'],
    [{ biopsyResult: undefined, earlierAttempts: [{ kind: 'emr' }] }, '0 easy'],
    [{ biopsyResult: undefined, earlierAttempts: undefined }, '0-1 without before.biopsyResult'],
  ])('a biopsy before, by %j: 2023 %s', (before, line) => {
    expect(in2023({}, before)).toBe(line);
  });

  it.each([
    [{ earlierAttempts: [{ kind: 'emr' }] }, '4 intermediate'],
    [{ earlierAttempts: [{ kind: 'biopsy' }, { kind: 'emr' }] }, '4 intermediate'],
    [{ earlierAttempts: [{ kind: 'polypectomy' }] }, '0 low'],
    [{ earlierAttempts: undefined }, '0-4 without before.earlierAttempts'],
  ])('an earlier resection, by %j: 2019 %s', (before, line) => {
    expect(in2019({ lstType: 'lst-g-h' }, before)).toBe(line);
  });

  it.each([
    [[{ kind: 'polypectomy' }], true],
    [[{ kind: 'esd' }], true],
    [[{ kind: 'esd' }, { kind: 'emr' }], false],
    [[{ kind: 'biopsy' }], false],
    [[], false],
  ])('says of %j whether a scar of another kind was left out: %s', (earlierAttempts, isSaid) => {
    const rule = 'colorectal-difficulty-matsumoto-2019';
    const remarks = remarksOf(
      find(rule, { before: { earlierAttempts }, lesion: { organ: 'colon' } }),
    );
    expect(remarks.includes('other-scar-not-counted')).toBe(isSaid);
    expect(remarks).toContain('size-through-endoscope');
  });

  it.each([
    [{ organ: 'colon', site: 'sigmoid-colon' }, '0 easy'],
    [{ organ: 'rectum', site: 'rectum-lower' }, '0-1 without lesion.touchesDentateLine'],
    [{ organ: 'rectum', site: 'rectum-lower', touchesDentateLine: true }, '1 intermediate'],
    [{ organ: 'rectum', site: 'rectum-lower', touchesDentateLine: false }, '0 easy'],
  ])('dentate line, %j: 2021 %s', (lesion, line) => {
    expect(in2021({ lstType: 'lst-g-h', ...lesion })).toBe(line);
  });
});
