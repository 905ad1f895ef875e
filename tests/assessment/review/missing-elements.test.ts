import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { CASE_ELEMENTS, DRUG_ELEMENTS } from '../../../src/assessment/review/elements.table.js';
import { missingElements } from '../../../src/assessment/review/missing-elements.js';
import { type CaseFields, caseSchema, parseCase } from '../../../src/contract/index.js';
import { withValue } from '../../contract/places.js';
import record from '../../published/record-elements.json' with { type: 'json' };
import type { SchemaNode } from '../../support/from-json-schema.js';
import { sampleCases } from '../../support/generate-case.js';

type Fields = Readonly<Record<string, unknown>>;

function caseOf(file: string, fields: Fields = {}): CaseFields {
  const sound: unknown = JSON.parse(readFileSync(`examples/cases/${file}`, 'utf8'));
  const changed = Object.entries(fields).reduce(
    (document, [path, value]) => withValue(document, path.split('.'), value),
    sound,
  );
  const checked = parseCase(new TextEncoder().encode(JSON.stringify(changed)));
  if (!checked.ok) throw new Error(JSON.stringify(checked.problems));
  return checked.value.fields;
}

const namesIn = (sent: CaseFields): readonly string[] =>
  missingElements(sent).map(({ element }) => element);

const IMAGES = ['landmark', 'lesion-before', 'resection-bed', 'specimen'].map((shows, i) => ({
  shows,
  url: `https://images.example/EX-C-2026-000/${i}`,
}));
const FILLED = {
  'lesion.images': IMAGES,
  'team.traineePercent': 0,
  'before.premedication': [],
  'dissection.fat': 'little',
};

/** Complete records of each kind: an example, with what it leaves out. */
const COMPLETE: readonly { readonly file: string; readonly fill: Fields }[] = [
  { file: 'complete.json', fill: {} },
  { file: 'oesophagus-barrett.json', fill: FILLED },
  { file: 'stomach-differentiated.json', fill: FILLED },
  { file: 'duodenum.json', fill: FILLED },
  { file: 'colon-caecum.json', fill: { ...FILLED, 'lesion.wall': 'posterior' } },
  { file: 'rectum.json', fill: { ...FILLED, 'lesion.clockHour': 3, 'lesion.wall': undefined } },
  { file: 'colon-piecemeal.json', fill: { ...FILLED, 'lesion.wall': 'anterior' } },
  { file: 'stomach-abandoned.json', fill: FILLED },
  {
    file: 'colon-never-started.json',
    fill: {
      'lesion.images': IMAGES.slice(0, 2),
      'before.premedication': [],
      'lesion.wall': 'left',
      'team.assistants': [],
    },
  },
];

/** Places where the record would hold the element; a place in a list is the list. */
const dotted = (pointer: string): string =>
  pointer
    .replace(/\/\*.*$/, '')
    .slice(1)
    .replaceAll('/', '.');

/** A field that its part is never without: the whole part is left out. */
const PARENT: Readonly<Record<string, string>> = {
  '/equipment/endoscope/kind': 'equipment.endoscope',
  '/markers/placed': 'markers',
  '/safety/perforation/occurred': 'safety.perforation',
  '/safety/closure/kind': 'safety.closure',
  '/specimen/retrieved': 'specimen',
};

describe('a complete record', () => {
  it.each(COMPLETE)('lacks nothing: $file', ({ file, fill }) => {
    expect(namesIn(caseOf(file, fill))).toEqual([]);
  });

  const without = (pointers: readonly string[]): Fields =>
    Object.fromEntries(pointers.map((pointer) => [PARENT[pointer] ?? dotted(pointer), undefined]));
  const asked = CASE_ELEMENTS.filter(({ word }) => word === undefined);

  it.each(asked)('without $element lacks it, and that alone', ({ element, pointers }) => {
    const found = COMPLETE.flatMap(({ file, fill }) => {
      const missing = missingElements(caseOf(file, { ...fill, ...without(pointers) }));
      const others = missing.filter((one) => one.element !== element);
      const apart = others.filter((one) => !one.pointers.some((p) => pointers.includes(p)));
      if (!pointers.some((pointer) => pointer in PARENT)) expect(apart).toEqual([]);
      return missing.filter((one) => one.element === element);
    });
    expect(found.length).toBeGreaterThan(0);
    for (const one of found) expect(one.pointers).toEqual(pointers);
  });

  it.each(IMAGES)('shows a picture of the $shows', ({ shows }) => {
    const others = IMAGES.filter((image) => image.shows !== shows);
    const found = missingElements(
      caseOf('rectum.json', { ...COMPLETE[5]?.fill, 'lesion.images': others }),
    );
    expect(found).toHaveLength(1);
    expect(found[0]?.pointers).toEqual(['/lesion/images']);
  });

  it('has one of several places where one would do', () => {
    const [first] = missingElements(
      caseOf('rectum.json', { ...COMPLETE[5]?.fill, 'lesion.clockHour': undefined }),
    );
    expect(first).toEqual({
      element: 'position on the wall',
      need: 'conditional',
      pointers: ['/lesion/wall', '/lesion/clockHour'],
    });
  });
});

/** Elements of the published table that are not asked in this form, each with its reason. */
const NOT_ASKED: Readonly<Record<string, string>> = {
  '/lesion/organ': 'required by the contract',
  '/lesion/longAxisMm': 'required by the contract',
  '/times/scopeInAt': 'required by the contract',
  '/times/scopeOutAt': 'required by the contract',
  '/resection/outcome': 'required by the contract',
  '/team/operator': 'required by the contract',
  '/lesion/images/*/url': 'required by the contract for each picture',
  '/before/antithrombotics/*/class': 'required by the contract',
  '/before/antithrombotics/*/decision': 'required by the contract',
};

describe(`${record.work}`, () => {
  const asked = [...CASE_ELEMENTS, ...DRUG_ELEMENTS].flatMap(({ pointers }) => pointers);
  const published = record.elements.filter(({ section }) => section !== '2');

  it.each(published)('$group: $element is asked for', ({ pointers }) => {
    for (const pointer of pointers.filter((one) => NOT_ASKED[one] === undefined)) {
      expect(
        asked.some((one) => one === pointer || pointer.startsWith(`${one}/*`)),
        pointer,
      ).toBe(true);
    }
  });

  it.each(published)('$group: $element is $need', ({ pointers, need }) => {
    const rows = CASE_ELEMENTS.filter((row) => row.pointers.some((one) => pointers.includes(one)));
    // The picture of the bed and the inspection stand in required rows of the table.
    for (const row of rows) expect(row.need, row.element).toBe(need);
  });
});

interface Border {
  readonly element: string;
  readonly file: string;
  readonly asked: Fields;
  readonly notAsked: readonly Fields[];
}
const gone = (...paths: readonly string[]): Fields =>
  Object.fromEntries(paths.map((path) => [path, undefined]));
const NEVER: Fields = {
  resection: { outcome: 'not-started', reason: 'not-lifting' },
  specimen: undefined,
  'times.firstIncisionAt': undefined,
  'times.dissectionEndAt': undefined,
};

/** Conditions of the published table; the last that is asked and the first that is not. */
const BORDERS: readonly Border[] = [
  {
    element: 'type of laterally spreading tumour', // colorectum from 10 mm
    file: 'rectum.json',
    asked: { ...gone('lesion.lstType'), 'lesion.longAxisMm': 10, 'lesion.shortAxisMm': 8 },
    notAsked: [
      { 'lesion.longAxisMm': 9.9 },
      { 'lesion.paris': '0-Ip' },
      { 'lesion.paris': '0-Isp' },
      { 'lesion.paris': '0-III' },
      { 'lesion.tumour': 'other' },
      { 'lesion.organ': 'stomach', 'lesion.site': undefined },
    ],
  },
  {
    element: 'prophylaxis of a stricture', // wide defect of a tube organ
    file: 'oesophagus-squamous.json',
    asked: { ...gone('safety.stricturePrevention'), 'defect.circumferencePercent': 75 },
    notAsked: [
      { 'defect.circumferencePercent': 74.9 },
      { 'safety.stricturePrevention': [] },
      { 'lesion.organ': 'stomach', 'lesion.site': undefined },
    ],
  },
  {
    element: 'supervisor',
    file: 'rectum.json',
    asked: { 'team.traineePercent': 1 },
    notAsked: [{ 'team.traineePercent': 0 }, { 'team.traineePercent': undefined }],
  },
  {
    element: 'coagulation of visible vessels',
    file: 'rectum.json',
    asked: { 'safety.siteInspection': { visibleVessels: true } },
    notAsked: [
      { 'safety.siteInspection': { visibleVessels: false } },
      { 'safety.siteInspection': { visibleVessels: true, coagulated: false } },
      { 'safety.siteInspection': {} },
    ],
  },
  {
    element: 'number of pieces',
    file: 'rectum.json',
    asked: { resection: { outcome: 'piecemeal' } },
    notAsked: [{ resection: { outcome: 'en-bloc' } }, { resection: { outcome: 'abandoned' } }],
  },
  {
    element: 'why the dissection was not completed',
    file: 'rectum.json',
    asked: { resection: { outcome: 'abandoned' } },
    notAsked: [
      { resection: { outcome: 'piecemeal' } },
      { resection: { outcome: 'abandoned', reason: 'bleeding' } },
    ],
  },
  {
    element: 'why the dissection was not completed',
    file: 'colon-never-started.json',
    asked: { resection: { outcome: 'not-started' } },
    notAsked: [{ resection: { outcome: 'not-started', reason: 'not-lifting' } }],
  },
  {
    element: 'time of the end of dissection',
    file: 'rectum.json',
    asked: gone('times.dissectionEndAt'),
    notAsked: [{ resection: { outcome: 'abandoned' } }, NEVER],
  },
  {
    element: 'fibrosis',
    file: 'rectum.json',
    asked: { ...gone('dissection.fibrosis'), resection: { outcome: 'abandoned' } },
    notAsked: [NEVER],
  },
  {
    element: 'acid suppression',
    file: 'duodenum.json',
    asked: gone('after.acidSuppression'),
    notAsked: [{ 'lesion.organ': 'colon', 'lesion.site': undefined }, NEVER],
  },
  {
    element: 'tattoo near the lesion',
    file: 'rectum.json',
    asked: gone('before.tattooNearLesion'),
    notAsked: [{ 'lesion.organ': 'duodenum', 'lesion.site': undefined }],
  },
  {
    element: 'distance from the anal verge',
    file: 'rectum.json',
    asked: gone('lesion.distanceFromAnalVergeCm'),
    notAsked: [{ 'lesion.organ': 'stomach', 'lesion.site': undefined }],
  },
  {
    element: 'distance from the incisors',
    file: 'oesophagus-squamous.json',
    asked: gone('lesion.distanceFromIncisorsCm'),
    notAsked: [{ 'lesion.organ': 'stomach', 'lesion.site': undefined }],
  },
  {
    element: 'position on the wall', // tube organs
    file: 'duodenum.json',
    asked: gone('lesion.wall', 'lesion.clockHour'),
    notAsked: [{ 'lesion.organ': 'stomach', 'lesion.site': undefined }],
  },
  {
    element: 'share of the circumference that the wound takes', // tube organs
    file: 'rectum.json',
    asked: { defect: { longAxisMm: 70, shortAxisMm: 60 } },
    notAsked: [
      { 'lesion.organ': 'stomach', 'lesion.site': undefined },
      { defect: { longAxisMm: 70, widthMm: 60, lumenDiameterMm: 40 } },
      { resection: { outcome: 'abandoned' } },
    ],
  },
  {
    element: 'JNET, Kudo or NICE type', // colorectum
    file: 'rectum.json',
    asked: gone('lesion.jnet', 'lesion.kudo', 'lesion.nice'),
    notAsked: [
      { 'lesion.nice': '2' },
      { 'lesion.jnet': '2A' },
      { 'lesion.kudo': 'IV' },
      { 'lesion.tumour': 'other' },
    ],
  },
  {
    element: 'type of the intrapapillary loops', // squamous
    file: 'oesophagus-squamous.json',
    asked: gone('lesion.ipcl'),
    notAsked: [{ 'lesion.tumour': 'barrett' }, { 'lesion.tumour': undefined }],
  },
  {
    element: 'vessel pattern', // stomach
    file: 'stomach-differentiated.json',
    asked: gone('lesion.vesselPattern'),
    notAsked: [{ 'lesion.tumour': 'other' }],
  },
  ...['Circumferential', 'Maximum'].map((which) => ({
    element: `Prague ${which.charAt(0)}`, // Barrett
    file: 'oesophagus-barrett.json',
    asked: gone(`lesion.prague${which}Cm`),
    notAsked: [{ 'lesion.tumour': 'squamous' }],
  })),
  {
    element: 'Paris type',
    file: 'rectum.json',
    asked: gone('lesion.paris'),
    notAsked: [{ 'lesion.tumour': 'other' }],
  },
  {
    element: 'predicted depth',
    file: 'rectum.json',
    asked: gone('lesion.predictedDepth'),
    notAsked: [{ 'lesion.tumour': 'other' }],
  },
  {
    element: 'container',
    file: 'rectum.json',
    asked: { specimen: { retrieved: true } },
    notAsked: [{ specimen: { retrieved: false } }],
  },
  {
    element: 'whether the specimen was retrieved',
    file: 'rectum.json',
    asked: gone('specimen'),
    notAsked: [{ resection: { outcome: 'abandoned' } }],
  },
  {
    element: 'long axis of the lesion on the specimen',
    file: 'rectum.json',
    asked: { specimen: { retrieved: true } },
    notAsked: [{ resection: { outcome: 'piecemeal' } }],
  },
  {
    element: 'photograph of the bed',
    file: 'rectum.json',
    asked: { 'lesion.images': [] },
    notAsked: [NEVER],
  },
];

// Common practice, no source: the conditions of the published table, and what has no answer.
describe('what is asked only of some cases', () => {
  it.each(BORDERS)('$element, in $file', ({ element, file, asked, notAsked }) => {
    expect(namesIn(caseOf(file, asked))).toContain(element);
    for (const change of notAsked) {
      const sent = caseOf(file, { ...asked, ...change });
      expect(namesIn(sent), JSON.stringify(change)).not.toContain(element);
    }
  });
});

describe('the elements of an antithrombotic drug', () => {
  const ofDrug = (drug: Fields): readonly string[] => {
    const fill = { ...COMPLETE[2]?.fill, 'before.antithrombotics': [drug] };
    return namesIn(caseOf('stomach-differentiated.json', fill));
  };
  const known = { indication: 'atrial-fibrillation', thromboticRisk: 'low' };

  it.each([
    {
      drug: { class: 'aspirin', decision: 'continued' },
      lacks: ['indication of aspirin', 'thrombotic risk of aspirin'],
    },
    { drug: { class: 'aspirin', decision: 'continued', ...known }, lacks: [] },
    {
      drug: { class: 'aspirin', decision: 'continued', ...known, thromboticRisk: 'high' },
      lacks: ['who advised on aspirin'],
    },
    {
      drug: { class: 'doac', decision: 'stopped', ...known },
      lacks: [
        'agent of the direct oral anticoagulant',
        'time of the last dose of the direct oral anticoagulant',
        'creatinine clearance of the direct oral anticoagulant',
        'planned or actual restart of the direct oral anticoagulant',
      ],
    },
    {
      drug: { class: 'vitamin-k-antagonist', agent: 'warfarin', decision: 'replaced', ...known },
      lacks: [
        'time of the last dose of warfarin',
        'INR of warfarin',
        'date of the INR of warfarin',
        'bridging of warfarin',
        'planned or actual restart of warfarin',
      ],
    },
    {
      drug: { class: 'vitamin-k-antagonist', agent: 'warfarin', decision: 'continued', ...known },
      lacks: ['INR of warfarin', 'date of the INR of warfarin'],
    },
    {
      drug: {
        class: 'p2y12-inhibitor',
        agent: 'ticagrelor',
        decision: 'stopped',
        ...known,
        lastDoseAt: '2026-01-25T08:00:00+01:00',
        restartPlannedOn: '2026-02-04',
      },
      lacks: [],
    },
    {
      drug: {
        class: 'doac',
        agent: 'edoxaban',
        decision: 'replaced',
        ...known,
        lastDoseAt: '2026-01-25T08:00:00+01:00',
        creatinineClearanceMlPerMin: 0,
        restartedAt: '2026-02-06T08:00:00+01:00',
      },
      lacks: [],
    },
  ])('$drug.class $drug.decision: $lacks', ({ drug, lacks }) => {
    expect(ofDrug(drug)).toEqual(lacks);
  });

  it('are named with the entry that they belong to', () => {
    const drugs = [
      { class: 'cilostazol', decision: 'continued', ...known },
      { class: 'doac', agent: 'apixaban', decision: 'continued', ...known },
    ];
    const fill = { ...COMPLETE[2]?.fill, 'before.antithrombotics': drugs };
    expect(missingElements(caseOf('stomach-differentiated.json', fill))).toEqual([
      {
        element: 'creatinine clearance of apixaban',
        need: 'conditional',
        pointers: ['/before/antithrombotics/1/creatinineClearanceMlPerMin'],
      },
    ]);
  });
});

const schema: SchemaNode = JSON.parse(JSON.stringify(z.toJSONSchema(caseSchema, { io: 'input' })));

describe('over 500 generated cases', () => {
  it('never throws, never changes a case, and names each place once', () => {
    let most = 0;
    for (const document of sampleCases(500)) {
      const sent = caseSchema.parse(document);
      const before = structuredClone(sent);
      const found = missingElements(sent);
      most = Math.max(most, found.length);
      expect(sent).toEqual(before);
      const names = found.map(({ element }) => element);
      expect(new Set(names).size).toBe(names.length);
      for (const { pointers } of found)
        for (const p of pointers) expect(placeOf(p), p).toBeDefined();
    }
    expect(most).toBeGreaterThan(20);
    expect(placeOf('/lesion/longAxisCm')).toBeUndefined(); // the oracle sees what is not there
  });
});

function placeOf(pointer: string): SchemaNode | undefined {
  return pointer
    .split('/')
    .slice(1)
    .reduce<SchemaNode | undefined>(
      (node, key) => (/^(\*|\d+)$/.test(key) ? node?.items : node?.properties?.[key]),
      schema,
    );
}
