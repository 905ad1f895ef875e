import type { ReviewContext } from '../../../src/assessment/review/facts.js';
import type { UnitSettings } from '../../../src/contract/index.js';

/** Fields to set in an example, by dotted path; `undefined` takes one away. */
export type Fields = Readonly<Record<string, unknown>>;

/** A row of the review: what fires it, and the nearest that does not. */
export interface Sample {
  /** Title of the row. */
  readonly row: string;
  /** File of `examples/cases`. */
  readonly base: string;
  readonly fires: Fields;
  /** Each in place of fields of `fires`. */
  readonly silent: readonly Fields[];
  readonly context?: ReviewContext;
  readonly silentContexts?: readonly ReviewContext[];
  readonly unit?: Partial<UnitSettings>;
  readonly silentUnits?: readonly Partial<UnitSettings>[];
  /** The row speaks without these as well. */
  readonly notNeeded?: readonly string[];
}

const GASTRIC = 'stomach-differentiated.json';
const SQUAMOUS = 'oesophagus-squamous.json';
const BARRETT = 'oesophagus-barrett.json';
const DUODENUM = 'duodenum.json';
const COLON = 'colon-caecum.json';
const RECTUM = 'rectum.json';
const NEVER_STARTED = 'colon-never-started.json';
/** The day and clock of the gastric case: cut 10:41, specimen out 11:35, scope out 11:37. */
const D = '2026-02-03T';

/** From the prose of the practice checks; borders as the conditions draw them. */
export const CASE_SAMPLES: readonly Sample[] = [
  {
    row: 'marks close to the lesion',
    base: GASTRIC,
    fires: { 'markers.placed': true, 'markers.distanceMm': 1.9 },
    silent: [{ 'markers.distanceMm': 2 }, { 'markers.placed': false }],
  },
  ...[SQUAMOUS, GASTRIC, DUODENUM].flatMap((base) => [
    {
      row: 'marks close to the lesion',
      base,
      fires: { markers: { placed: true, distanceMm: 0 } },
      silent: [{ markers: { placed: true, distanceMm: 2.1 } }],
    },
    {
      row: 'marks far from the lesion',
      base,
      fires: { markers: { placed: true, distanceMm: 5.1 } },
      silent: [
        { markers: { placed: true, distanceMm: 5 } },
        { markers: { placed: false, distanceMm: 5.1 } },
      ],
    },
  ]),
  ...['piecemeal', 'abandoned'].flatMap((outcome) =>
    [
      { row: 'no marks in oesophagus or stomach', fires: { markers: { placed: false } } },
      { row: 'no cap', fires: { 'equipment.endoscope.cap': 'none' } },
      { row: 'nothing injected', fires: { 'injection.totalMl': 0 } },
    ].map((sample) => ({
      ...sample,
      base: GASTRIC,
      fires: { ...sample.fires, resection: { outcome } },
      silent: [
        {
          resection: { outcome: 'not-started' },
          specimen: undefined,
          'times.firstIncisionAt': undefined,
          'times.dissectionEndAt': undefined,
        },
      ],
      notNeeded: ['resection'],
    })),
  ),
  {
    row: 'marks out of sight of each other',
    base: GASTRIC,
    fires: { 'markers.nextVisibleFromEach': false },
    silent: [{ 'markers.nextVisibleFromEach': true }],
  },
  {
    row: 'no marks in oesophagus or stomach',
    base: GASTRIC,
    fires: { markers: { placed: false } },
    silent: [
      { markers: { placed: true } },
      {
        resection: { outcome: 'not-started' },
        specimen: undefined,
        'times.firstIncisionAt': undefined,
        'times.dissectionEndAt': undefined,
      },
    ],
  },
  {
    row: 'no marks in oesophagus or stomach',
    base: BARRETT,
    fires: { markers: { placed: false }, resection: { outcome: 'abandoned' } },
    silent: [{ markers: { placed: true } }],
    notNeeded: ['resection'],
  },
  {
    row: 'marks in colon or rectum',
    base: RECTUM,
    fires: { markers: { placed: true } },
    silent: [{ markers: { placed: false } }],
  },
  {
    row: 'marks in colon or rectum',
    base: COLON,
    fires: { markers: { placed: true } },
    silent: [{ markers: { placed: false } }],
  },
  {
    row: 'squamous lesion without iodine',
    base: SQUAMOUS,
    fires: { 'lesion.tumour': 'squamous', 'lesion.chromoendoscopy': ['image-enhanced'] },
    silent: [
      { 'lesion.chromoendoscopy': ['iodine'] },
      { 'lesion.tumour': 'barrett' },
      { 'before.iodineAllergy': true },
    ],
  },
  {
    row: 'gastric lesion without staining',
    base: GASTRIC,
    fires: { 'lesion.chromoendoscopy': [] },
    silent: [{ 'lesion.chromoendoscopy': ['image-enhanced'] }],
  },
  {
    row: 'iodine below the oesophagus',
    base: GASTRIC,
    fires: { 'lesion.chromoendoscopy': ['iodine', 'indigo-carmine'] },
    silent: [{ 'lesion.chromoendoscopy': ['indigo-carmine'] }],
  },
  {
    row: 'iodine below the oesophagus',
    base: RECTUM,
    fires: { 'lesion.chromoendoscopy': ['iodine'] },
    silent: [{ 'lesion.chromoendoscopy': ['crystal-violet'] }],
  },
  {
    row: 'iodine below the oesophagus',
    base: COLON,
    fires: { 'lesion.chromoendoscopy': ['iodine'] },
    silent: [{ 'lesion.chromoendoscopy': [] }],
  },
  {
    row: 'iodine on Barrett mucosa',
    base: BARRETT,
    fires: { 'lesion.tumour': 'barrett', 'lesion.chromoendoscopy': ['iodine'] },
    silent: [{ 'lesion.tumour': 'squamous' }, { 'lesion.chromoendoscopy': ['acetic-acid'] }],
  },
  {
    row: 'no cap',
    base: GASTRIC,
    fires: { 'equipment.endoscope.cap': 'none' },
    silent: [{ 'equipment.endoscope.cap': 'straight' }],
  },
  {
    row: 'viscous fluid through the knife',
    base: GASTRIC,
    fires: { 'injection.routes': ['through-knife'], 'injection.fluids': ['saline', 'hyaluronate'] },
    silent: [
      { 'injection.routes': ['needle'] },
      { 'injection.routes': ['needle', 'through-knife'] },
      { 'injection.fluids': ['saline', 'glycerol'] },
    ],
  },
  {
    row: 'viscous fluid through the knife',
    base: GASTRIC,
    fires: {
      'injection.routes': ['needle', 'through-knife'],
      'injection.fluids': ['hyaluronate', 'other-viscous'],
    },
    silent: [{ 'injection.fluids': ['other-viscous', 'saline'] }, { 'injection.fluids': [] }],
  },
  {
    row: 'no dye in the fluid',
    base: GASTRIC,
    fires: { 'injection.dye': 'none' },
    silent: [{ 'injection.dye': 'methylene-blue' }],
  },
  {
    row: 'unusual channel of a gastroscope',
    base: GASTRIC,
    fires: { 'equipment.endoscope.kind': 'gastroscope', 'equipment.endoscope.channelMm': 3.3 },
    silent: [
      ...[2.8, 3.2, 3.7, 3.8].map((channelMm) => ({ 'equipment.endoscope.channelMm': channelMm })),
      { 'equipment.endoscope.kind': 'colonoscope' },
    ],
  },
  {
    row: 'unusual channel of a gastroscope',
    base: GASTRIC,
    fires: { equipment: { endoscope: { kind: 'gastroscope', channelMm: 0.1 } } },
    silent: [{ 'equipment.endoscope.channelMm': 2.8 }],
  },
  {
    row: 'gastroscope turned back in the large bowel',
    base: RECTUM,
    fires: { 'equipment.endoscope.kind': 'gastroscope', 'position.retroflexed': true },
    silent: [{ 'equipment.endoscope.kind': 'colonoscope' }, { 'position.retroflexed': false }],
  },
  {
    row: 'gastroscope turned back in the large bowel',
    base: COLON,
    fires: { 'equipment.endoscope.kind': 'gastroscope', 'position.retroflexed': true },
    silent: [{ 'position.retroflexed': false }],
  },
  {
    row: 'room air',
    base: GASTRIC,
    fires: { 'equipment.gas': 'air' },
    silent: [{ 'equipment.gas': 'carbon-dioxide' }],
  },
  ...['oral', 'lateral'].map((firstSide) => ({
    row: 'oesophagus, first cut not on the anal side',
    base: SQUAMOUS,
    fires: { 'incision.firstSide': firstSide },
    silent: [{ 'incision.firstSide': 'anal' }],
  })),
  ...['partial', 'pocket'].map((strategy) => ({
    row: 'oesophagus, neither full circle nor tunnel',
    base: SQUAMOUS,
    fires: { 'incision.strategy': strategy },
    silent: [{ 'incision.strategy': 'circumferential' }, { 'incision.strategy': 'tunnel' }],
  })),
  {
    row: 'stomach, not the whole circle first',
    base: GASTRIC,
    fires: { 'incision.strategy': 'partial' },
    silent: ['circumferential', 'tunnel', 'pocket'].map((s) => ({ 'incision.strategy': s })),
  },
  {
    row: 'colon, whole circle first',
    base: COLON,
    fires: { 'incision.strategy': 'circumferential' },
    silent: ['partial', 'tunnel', 'pocket'].map((s) => ({ 'incision.strategy': s })),
  },
  ...[COLON, RECTUM].map((base) => ({
    row: 'large bowel, first cut not on the anal side',
    base,
    fires: {
      'incision.firstSide': 'oral',
      'incision.approach': 'forward',
      'incision.strategy': 'partial',
    },
    silent: [
      { 'incision.firstSide': 'anal' },
      { 'incision.approach': 'retroflexed' },
      { 'incision.strategy': 'pocket' },
    ],
    notNeeded: ['incision.strategy'],
  })),
  {
    row: 'large bowel, first cut not on the anal side',
    base: COLON,
    fires: {
      'incision.firstSide': 'lateral',
      'incision.approach': 'forward',
      'incision.strategy': 'pocket',
    },
    silent: [{ 'incision.firstSide': 'anal' }],
    notNeeded: ['incision.strategy'],
  },
  {
    row: 'lesion on the low side, patient not turned',
    base: GASTRIC,
    fires: {
      'position.lesionSide': 'dependent',
      'position.changed': false,
      'times.firstIncisionAt': `${D}10:40:00+01:00`,
      'times.dissectionEndAt': `${D}11:40:01+01:00`,
      'times.scopeOutAt': `${D}11:50:00+01:00`,
      sentAt: `${D}12:00:00+01:00`,
    },
    silent: [
      { 'times.dissectionEndAt': `${D}11:40:00+01:00` },
      { 'position.changed': true },
      { 'position.lesionSide': 'non-dependent' },
    ],
    notNeeded: ['times.scopeOutAt', 'sentAt'],
  },
  {
    row: 'one side far ahead',
    base: GASTRIC,
    fires: {
      'dissection.pauses': [
        { leftPercent: 20, rightPercent: 20 },
        { leftPercent: 40, rightPercent: 81 },
      ],
    },
    silent: [
      { 'dissection.pauses': [{ leftPercent: 40, rightPercent: 80 }] },
      { 'dissection.pauses': [] },
    ],
  },
  {
    row: 'one side far ahead',
    base: GASTRIC,
    fires: { 'dissection.pauses': [{ leftPercent: 90.5, rightPercent: 50 }] },
    silent: [{ 'dissection.pauses': [{ leftPercent: 90, rightPercent: 50 }] }],
  },
  {
    row: 'orientation lost, gas not let out',
    base: GASTRIC,
    fires: { 'dissection.incidents': [{ kind: 'desufflation' }, { kind: 'orientation-lost' }] },
    silent: [
      { 'dissection.incidents': [{ kind: 'orientation-lost' }, { kind: 'desufflation' }] },
      { 'dissection.incidents': [{ kind: 'hypotension' }] },
      { 'dissection.incidents': [] },
    ],
  },
  ...(['1', 'X'] as const).map((state) => ({
    row: 'high plane, deep margin not free',
    base: GASTRIC,
    fires: { 'dissection.plane': state === '1' ? 'middle-submucosa' : 'superficial-submucosa' },
    silent: [{ 'dissection.plane': 'deep-submucosa' }],
    context: { pathology: { findings: { vm: { state } } } },
    silentContexts: [{ pathology: { findings: { vm: { state: '0' } } } }, { pathology: {} }, {}],
  })),
  ...['superficial-submucosa', 'middle-submucosa'].map((plane) => ({
    row: 'high plane',
    base: GASTRIC,
    fires: { 'dissection.plane': plane },
    silent: [{ 'dissection.plane': 'deep-submucosa' }],
    silentContexts: [{ pathology: { findings: { vm: { state: '1' } } } }],
  })),
  {
    row: 'high plane',
    base: GASTRIC,
    fires: { 'dissection.plane': 'superficial-submucosa' },
    silent: [{ 'dissection.plane': 'deep-submucosa' }],
    context: { pathology: { findings: { vm: { state: '0' } } } },
    silentContexts: [{ pathology: { findings: { vm: { state: 'X' } } } }],
  },
  {
    row: 'muscle not in view',
    base: GASTRIC,
    fires: { 'dissection.muscleInView': false },
    silent: [{ 'dissection.muscleInView': true }],
  },
  {
    row: 'not injected again',
    base: GASTRIC,
    fires: {
      'injection.repeated': false,
      'times.firstIncisionAt': `${D}10:40:00+01:00`,
      'times.dissectionEndAt': `${D}11:10:01+01:00`,
    },
    silent: [{ 'times.dissectionEndAt': `${D}11:10:00+01:00` }, { 'injection.repeated': true }],
  },
  {
    row: 'vessels sealed on the side of the specimen',
    base: GASTRIC,
    fires: {
      'safety.vessels': [
        { site: 'specimen-side', means: 'knife-coagulation' },
        { site: 'specimen-side', means: 'clip' },
      ],
    },
    silent: [
      {
        'safety.vessels': [
          { site: 'specimen-side', means: 'clip' },
          { site: 'root', means: 'clip' },
        ],
      },
      { 'safety.vessels': [{ site: 'specimen-side', means: 'clip' }, { means: 'clip' }] },
      { 'safety.vessels': [] },
    ],
  },
  {
    row: 'clip on a vessel during the dissection',
    base: GASTRIC,
    fires: { 'safety.clips': [{ phase: 'during', purpose: 'vessel', count: 1 }] },
    silent: [
      { 'safety.clips': [{ phase: 'end', purpose: 'vessel', count: 1 }] },
      { 'safety.clips': [{ phase: 'during', purpose: 'perforation', count: 1 }] },
      { 'safety.clips': [] },
    ],
  },
  ...['III', 'IV', 'V'].map((muscleInjury) => ({
    row: 'injury of the muscle left open',
    base: GASTRIC,
    fires: {
      'safety.muscleInjury': muscleInjury,
      'safety.closure': { kind: 'none' },
      'safety.perforation': { occurred: true },
    },
    silent: [{ 'safety.muscleInjury': 'II' }, { 'safety.closure': { kind: 'clips' } }],
    notNeeded: ['safety.perforation'],
  })),
  {
    row: 'nothing injected',
    base: GASTRIC,
    fires: { 'injection.totalMl': 0 },
    silent: [{ 'injection.totalMl': 0.1 }],
  },
  {
    row: 'specimen out, no inspection recorded',
    base: GASTRIC,
    fires: {
      'specimen.retrievedAt': `${D}11:35:00+01:00`,
      'safety.siteInspection': { visibleVessels: false },
    },
    silent: [{ 'safety.siteInspection': { inspectedAt: `${D}11:30:00+01:00` } }],
    notNeeded: ['safety.siteInspection'],
  },
  {
    row: 'inspection after retrieval',
    base: GASTRIC,
    fires: {
      'specimen.retrievedAt': `${D}11:30:00+01:00`,
      'safety.siteInspection.inspectedAt': `${D}10:30:01Z`,
    },
    silent: [{ 'safety.siteInspection.inspectedAt': `${D}10:30:00Z` }],
  },
  {
    row: 'visible vessels left',
    base: GASTRIC,
    fires: {
      'safety.siteInspection.visibleVessels': true,
      'safety.siteInspection.coagulated': false,
    },
    silent: [
      { 'safety.siteInspection.visibleVessels': false },
      { 'safety.siteInspection.coagulated': true },
    ],
  },
  {
    row: 'specimen not pinned',
    base: GASTRIC,
    fires: { 'specimen.pinned': false },
    silent: [{ 'specimen.pinned': true }, { specimen: { retrieved: false, pinned: false } }],
  },
  {
    row: 'specimen without orientation',
    base: GASTRIC,
    fires: { 'specimen.oriented': false },
    silent: [{ 'specimen.oriented': true }, { specimen: { retrieved: false, oriented: false } }],
  },
  {
    row: 'two antiplatelet drugs continued on advice',
    base: GASTRIC,
    fires: { 'before.antithrombotics': dual('endoscopist', 'cardiologist') },
    silent: [
      { 'before.antithrombotics': dual('endoscopist', 'endoscopist') },
      { 'before.antithrombotics': dual('cardiologist', 'cardiologist').slice(0, 1) },
      { 'before.antithrombotics': dual('cardiologist', 'cardiologist', 'stopped') },
    ],
  },
  {
    row: 'two antiplatelet drugs continued without recorded advice',
    base: GASTRIC,
    fires: { 'before.antithrombotics': dual('endoscopist', undefined) },
    silent: [
      { 'before.antithrombotics': dual('cardiologist', undefined) },
      { 'before.antithrombotics': dual('endoscopist', undefined).slice(1) },
      {
        'before.antithrombotics': [
          { class: 'aspirin', decision: 'continued' },
          { class: 'vitamin-k-antagonist', decision: 'continued' },
        ],
      },
      { 'before.antithrombotics': dual('endoscopist', undefined, 'replaced') },
    ],
  },
  {
    row: 'wide wound without prophylaxis of a stricture, above-three-quarters',
    base: SQUAMOUS,
    fires: { 'defect.circumferencePercent': 75.5, 'safety.stricturePrevention': [] },
    silent: [
      { 'defect.circumferencePercent': 75 },
      { 'safety.stricturePrevention': [{ measure: 'steroid-injection' }] },
    ],
  },
  {
    row: 'wide wound without prophylaxis of a stricture, above-three-quarters',
    base: SQUAMOUS,
    fires: { 'safety.stricturePrevention': [] },
    silent: [{ 'safety.stricturePrevention': [{ measure: 'steroid-oral' }] }],
    context: { defectPercent: 75.1 },
    silentContexts: [{ defectPercent: 75 }],
  },
  {
    row: 'wide wound without prophylaxis of a stricture, from-three-quarters',
    base: SQUAMOUS,
    fires: { 'defect.circumferencePercent': 75, 'safety.stricturePrevention': [] },
    silent: [
      { 'defect.circumferencePercent': 74.9 },
      { 'safety.stricturePrevention': [{ measure: 'stent' }] },
    ],
    unit: { strictureProphylaxis: 'from-three-quarters' },
    silentUnits: [{ strictureProphylaxis: 'above-three-quarters' }],
  },
  {
    row: 'wide wound without any planned look, above-three-quarters',
    base: SQUAMOUS,
    fires: { 'defect.circumferencePercent': 76 },
    silent: [{ 'defect.circumferencePercent': 75 }],
    context: { firstLookWeeks: 'none' },
    silentContexts: [{ firstLookWeeks: 6 }, {}],
  },
  {
    row: 'wide wound without any planned look, from-three-quarters',
    base: SQUAMOUS,
    fires: { 'defect.circumferencePercent': 75 },
    silent: [{ 'defect.circumferencePercent': 74 }],
    context: { firstLookWeeks: 'none' },
    silentContexts: [{ firstLookWeeks: 6 }, {}],
    unit: { strictureProphylaxis: 'from-three-quarters' },
    silentUnits: [{}],
  },
  {
    row: 'wide wound, first look planned late, above-three-quarters',
    base: SQUAMOUS,
    fires: { 'defect.circumferencePercent': 76 },
    silent: [{ 'defect.circumferencePercent': 75 }],
    context: { firstLookWeeks: 6.1 },
    silentContexts: [{ firstLookWeeks: 6 }, { firstLookWeeks: 'none' }, {}],
  },
  {
    row: 'wide wound, first look planned late, from-three-quarters',
    base: SQUAMOUS,
    fires: { 'defect.circumferencePercent': 75 },
    silent: [{ 'defect.circumferencePercent': 74 }],
    context: { firstLookWeeks: 7 },
    silentContexts: [{ firstLookWeeks: 6 }],
    unit: { strictureProphylaxis: 'from-three-quarters' },
    silentUnits: [{}],
  },
  {
    row: 'H. pylori not known',
    base: GASTRIC,
    fires: { 'before.helicobacterPylori': 'unknown' },
    silent: [{ 'before.helicobacterPylori': 'negative' }],
  },
  {
    row: 'submucosal invasion without its depth',
    base: GASTRIC,
    fires: {},
    silent: [],
    context: { pathology: { findings: { depth: 'sm' } } },
    silentContexts: [
      { pathology: { findings: { depth: 'sm', smDepthUm: 0 } } },
      { pathology: { findings: { depth: 'm' } } },
      { pathology: { findings: {} } },
      { pathology: {} },
      {},
    ],
  },
  ...[GASTRIC, SQUAMOUS, DUODENUM].map((base) => ({
    row: 'bowel preparation in the upper tract',
    base,
    fires: { 'before.bowelPreparation': { left: 0 } },
    silent: [{ 'before.bowelPreparation': {} }],
  })),
  {
    row: 'oesophagus, far from the incisors',
    base: SQUAMOUS,
    fires: { 'lesion.distanceFromIncisorsCm': 45.1 },
    silent: [{ 'lesion.distanceFromIncisorsCm': 45 }],
  },
  {
    row: 'rectum, far from the anal verge',
    base: RECTUM,
    fires: { 'lesion.distanceFromAnalVergeCm': 20.1 },
    silent: [{ 'lesion.distanceFromAnalVergeCm': 20 }],
  },
  {
    row: 'very slow',
    base: GASTRIC,
    fires: {},
    silent: [],
    context: { speedCm2PerH: 0.49 },
    silentContexts: [{ speedCm2PerH: 0.5 }, {}],
  },
  {
    row: 'very fast',
    base: GASTRIC,
    fires: {},
    silent: [],
    context: { speedCm2PerH: 60.1 },
    silentContexts: [{ speedCm2PerH: 60 }, {}],
  },
  {
    row: 'very small lesion',
    base: GASTRIC,
    fires: { 'lesion.longAxisMm': 2.9, 'lesion.shortAxisMm': 2 },
    silent: [{ 'lesion.longAxisMm': 3 }],
    notNeeded: ['lesion.shortAxisMm'],
  },
  {
    row: 'very large lesion',
    base: GASTRIC,
    fires: { 'lesion.longAxisMm': 300.1 },
    silent: [{ 'lesion.longAxisMm': 300 }],
  },
  {
    row: 'fixed before it was retrieved',
    base: GASTRIC,
    fires: {
      'specimen.retrievedAt': `${D}11:35:00+01:00`,
      'specimen.fixedAt': `${D}10:34:59Z`,
    },
    silent: [{ 'specimen.fixedAt': `${D}10:35:00Z` }],
  },
  {
    row: 'perforation denied and described',
    base: GASTRIC,
    fires: { 'safety.perforation': { occurred: false, sizeMm: 3 } },
    silent: [
      { 'safety.perforation': { occurred: true, sizeMm: 3 } },
      { 'safety.perforation': { occurred: false } },
    ],
  },
  {
    row: 'perforation denied and described',
    base: GASTRIC,
    fires: { 'safety.perforation': { occurred: false, at: `${D}11:00:00+01:00` } },
    silent: [{ 'safety.perforation': { occurred: true, at: `${D}11:00:00+01:00` } }],
  },
  {
    row: 'en bloc, several pieces listed',
    base: GASTRIC,
    fires: { 'specimen.pieces': pieces(2) },
    silent: [
      { 'specimen.pieces': pieces(1) },
      { resection: { outcome: 'piecemeal', pieces: 2, complete: true } },
    ],
  },
  {
    row: 'age and date of birth',
    base: GASTRIC,
    fires: { 'patient.bornOn': '1960-02-04', 'patient.ageYears': 66 },
    silent: [{ 'patient.bornOn': '1960-02-03' }, { 'patient.ageYears': 65 }],
  },
  {
    row: 'age and date of birth',
    base: GASTRIC,
    fires: { 'patient.bornOn': '1960-02-03', 'patient.ageYears': 65 },
    silent: [{ 'patient.bornOn': '1960-02-04' }],
  },
];

function dual(aspirinBy: string, p2y12By: string | undefined, decision = 'continued') {
  return [
    { class: 'aspirin', decision: 'continued', advisedBy: aspirinBy },
    {
      class: 'p2y12-inhibitor',
      decision,
      ...(p2y12By === undefined ? {} : { advisedBy: p2y12By }),
    },
  ];
}

function pieces(howMany: number) {
  return Array.from({ length: howMany }, () => ({ longAxisMm: 12, shortAxisMm: 9 }));
}

/** Nothing was cut: what belongs to a dissection is not asked. */
export const NOT_STARTED: Sample = {
  row: 'none',
  base: NEVER_STARTED,
  fires: {
    'markers.placed': false,
    'injection.totalMl': 0,
    'equipment.endoscope.cap': 'none',
  },
  silent: [],
};
