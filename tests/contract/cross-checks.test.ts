import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CROSS_CHECKS, parseCase } from '../../src/contract/index.js';
import { withValue } from './places.js';

const sound: object = JSON.parse(
  readFileSync('examples/cases/stomach-differentiated.json', 'utf8'),
);
const D = '2026-02-03T';
const antithrombotic = (drugClass: string, agent?: string) => ({
  class: drugClass,
  decision: 'stopped',
  ...(agent === undefined ? {} : { agent }),
});
type Fields = Readonly<Record<string, unknown>>;

interface Edge {
  readonly rule: string;
  readonly says: string;
  readonly last: Fields;
  readonly beyond: Fields;
}

/**
 * The last value that is no contradiction, and the first that is one. CC rules: common practice,
 * no source. Axes and area: the refusals of quality section 3 (short above long, above 400 cm2).
 */
const EDGES: readonly Edge[] = [
  {
    rule: 'CC-01',
    says: 'the scope may be out in the minute in which the specimen is free',
    last: { 'times.dissectionEndAt': `${D}11:37:00+01:00`, 'specimen.retrievedAt': undefined },
    beyond: { 'times.dissectionEndAt': `${D}11:37:01+01:00`, 'specimen.retrievedAt': undefined },
  },
  {
    rule: 'CC-01',
    says: 'first injection and first cut may fall together',
    last: { 'times.firstInjectionAt': `${D}09:41:00Z` },
    beyond: { 'times.firstInjectionAt': `${D}09:41:01Z` },
  },
  {
    rule: 'CC-01',
    says: 'cut and end of the dissection may not',
    last: { 'times.firstIncisionAt': `${D}11:21:59+01:00` },
    beyond: { 'times.firstIncisionAt': `${D}11:22:00+01:00` },
  },
  {
    rule: 'CC-01',
    says: 'the bed may be seen last when the scope goes out',
    last: { 'safety.siteInspection.inspectedAt': `${D}11:37:00+01:00` },
    beyond: { 'safety.siteInspection.inspectedAt': `${D}11:37:00.1+01:00` },
  },
  {
    rule: 'CC-01',
    says: 'a perforation may not precede the scope',
    last: { 'safety.perforation': { occurred: true, at: `${D}10:22:00+01:00` } },
    beyond: { 'safety.perforation': { occurred: true, at: `${D}10:21:59+01:00` } },
  },
  {
    rule: 'CC-01',
    says: 'an incident belongs between scope in and out',
    last: { 'dissection.incidents': [{ kind: 'desaturation', at: `${D}10:22:00+01:00` }] },
    beyond: { 'dissection.incidents': [{ kind: 'desaturation', at: `${D}10:22:00+02:00` }] },
  },
  {
    rule: 'CC-01',
    says: 'a vessel is treated between scope in and out',
    last: { 'safety.vessels': [{ means: 'clip', at: `${D}11:37:00+01:00` }] },
    beyond: { 'safety.vessels': [{ means: 'clip', at: `${D}11:38:00+01:00` }] },
  },
  {
    rule: 'sent-before-end',
    says: 'a case may be sent as the scope goes out, by instant',
    last: { sentAt: `${D}10:37:00Z` },
    beyond: { sentAt: `${D}10:36:59Z` },
  },
  {
    rule: 'born-after-procedure',
    says: 'one may be born on the day',
    last: { 'patient.bornOn': '2026-02-03' },
    beyond: { 'patient.bornOn': '2026-02-04' },
  },
  ...['lesion', 'defect', 'specimen'].map((part) => ({
    rule: 'axes-order',
    says: `both axes of the ${part} may be equal`,
    last: { [`${part}.longAxisMm`]: 60, [`${part}.shortAxisMm`]: 60 },
    beyond: { [`${part}.longAxisMm`]: 60, [`${part}.shortAxisMm`]: 60.1 },
  })),
  {
    rule: 'axes-order',
    says: 'both axes of the lesion on the specimen may be equal',
    last: { 'specimen.lesionLongAxisMm': 12, 'specimen.lesionShortAxisMm': 12 },
    beyond: { 'specimen.lesionLongAxisMm': 12, 'specimen.lesionShortAxisMm': 12.1 },
  },
  {
    rule: 'area-limit',
    says: '225 x 226 mm are 399.4 cm2, 226 x 226 mm are 401.1 cm2',
    last: { 'specimen.longAxisMm': 226, 'specimen.shortAxisMm': 225 },
    beyond: { 'specimen.longAxisMm': 226, 'specimen.shortAxisMm': 226 },
  },
  {
    rule: 'area-limit',
    says: 'a piece is bounded as a specimen is',
    last: { 'specimen.pieces': [{ longAxisMm: 226, shortAxisMm: 225 }] },
    beyond: { 'specimen.pieces': [{ longAxisMm: 226, shortAxisMm: 226 }] },
  },
  {
    rule: 'CC-03',
    says: 'a lesion may fill its specimen',
    last: { 'specimen.lesionLongAxisMm': 33 },
    beyond: { 'specimen.lesionLongAxisMm': 33.5 },
  },
  {
    rule: 'CC-03',
    says: 'and in the short axis',
    last: { 'specimen.lesionLongAxisMm': 30, 'specimen.lesionShortAxisMm': 28 },
    beyond: { 'specimen.lesionLongAxisMm': 30, 'specimen.lesionShortAxisMm': 28.5 },
  },
  {
    rule: 'CC-03',
    says: 'of pieces nobody asks it',
    last: {
      'resection.outcome': 'piecemeal',
      'resection.pieces': 2,
      'specimen.lesionLongAxisMm': 40,
    },
    beyond: { 'specimen.lesionLongAxisMm': 40 },
  },
  {
    rule: 'CC-07',
    says: 'Prague C may be M',
    last: { 'lesion.pragueCircumferentialCm': 3, 'lesion.pragueMaximumCm': 3 },
    beyond: { 'lesion.pragueCircumferentialCm': 3.5, 'lesion.pragueMaximumCm': 3 },
  },
  {
    rule: 'PC-12',
    says: 'one knife with a channel is enough',
    last: {
      'injection.routes': ['through-knife'],
      'equipment.knives': [
        { kind: 'insulated-tip', injectionChannel: false },
        { kind: 'needle', injectionChannel: true },
      ],
    },
    beyond: {
      'injection.routes': ['through-knife'],
      'equipment.knives': [
        { kind: 'insulated-tip', injectionChannel: false },
        { kind: 'needle', injectionChannel: false },
      ],
    },
  },
  {
    rule: 'PC-12',
    says: 'a knife of which nobody told may have one, and a list without knives tells nothing',
    last: { 'injection.routes': ['through-knife'], 'equipment.knives': [{ kind: 'needle' }] },
    beyond: {
      'injection.routes': ['needle', 'through-knife'],
      'equipment.knives': [{ kind: 'needle', injectionChannel: false }],
    },
  },
  {
    rule: 'PC-15',
    says: 'an accessory may fill the channel',
    last: {
      'equipment.endoscope.channelMm': 3.2,
      'equipment.accessories': [{ kind: 'snare', minChannelMm: 3.2 }],
    },
    beyond: {
      'equipment.endoscope.channelMm': 3.2,
      'equipment.accessories': [{ kind: 'snare', minChannelMm: 3.3 }],
    },
  },
  {
    rule: 'PC-15',
    says: 'a knife as well, and a second endoscope may have had the wider channel',
    last: {
      'equipment.endoscope.channelMm': 2.8,
      'equipment.knives': [{ kind: 'needle', injectionChannel: true, minChannelMm: 3.2 }],
      'equipment.accessories': [],
      'dissection.incidents': [{ kind: 'endoscope-exchanged' }],
    },
    beyond: {
      'equipment.endoscope.channelMm': 2.8,
      'equipment.knives': [{ kind: 'needle', injectionChannel: true, minChannelMm: 3.2 }],
      'equipment.accessories': [],
      'dissection.incidents': [{ kind: 'desaturation' }],
    },
  },
  {
    rule: 'CC-02',
    says: 'en bloc is one piece, not two',
    last: { 'resection.pieces': 1 },
    beyond: { 'resection.pieces': 2 },
  },
  {
    rule: 'CC-02',
    says: 'one piece of a piecemeal resection may leave something behind',
    last: { 'resection.outcome': 'piecemeal', 'resection.complete': false },
    beyond: { 'resection.outcome': 'piecemeal', 'resection.complete': true },
  },
  {
    rule: 'outcome-complete',
    says: 'who gave up left something to see',
    last: { resection: { outcome: 'abandoned', complete: false } },
    beyond: { resection: { outcome: 'abandoned', complete: true } },
  },
  {
    rule: 'not-started-cut',
    says: 'fluid may be injected without a cut',
    last: {
      resection: { outcome: 'not-started' },
      'times.firstIncisionAt': undefined,
      'times.dissectionEndAt': undefined,
      specimen: { retrieved: false },
    },
    beyond: {
      resection: { outcome: 'not-started' },
      'times.dissectionEndAt': undefined,
      specimen: { retrieved: false },
    },
  },
  {
    rule: 'specimen-not-retrieved',
    says: 'a lost specimen may be denied its handling and its pieces',
    last: { specimen: { retrieved: false, pinned: false, oriented: false, pieces: [] } },
    beyond: { specimen: { retrieved: false, pinned: true } },
  },
  {
    rule: 'CC-09',
    says: 'a target sign (III) is no hole, a hole (IV) is a perforation',
    last: { 'safety.muscleInjury': 'III' },
    beyond: { 'safety.muscleInjury': 'IV' },
  },
  {
    rule: 'CC-09',
    says: 'a hole with contamination (V) is one, too, unless nobody answered',
    last: { 'safety.muscleInjury': 'V', 'safety.perforation': undefined },
    beyond: { 'safety.muscleInjury': 'V' },
  },
  {
    rule: 'CC-12',
    says: 'the pylorus is the stomach, the bulb is not',
    last: { 'lesion.site': 'stomach-pylorus' },
    beyond: { 'lesion.site': 'duodenum-bulb' },
  },
  {
    rule: 'agent-class',
    says: 'an agent may be left out, not mixed up',
    last: { 'before.antithrombotics': [antithrombotic('heparin')] },
    beyond: { 'before.antithrombotics': [antithrombotic('heparin', 'warfarin')] },
  },
  {
    rule: 'repeated-drug',
    says: 'two heparins are two drugs, one of them twice is none',
    last: {
      'before.antithrombotics': [
        antithrombotic('heparin', 'unfractionated-heparin'),
        antithrombotic('heparin', 'low-molecular-weight-heparin'),
      ],
    },
    beyond: {
      'before.antithrombotics': [
        antithrombotic('heparin', 'unfractionated-heparin'),
        antithrombotic('heparin', 'unfractionated-heparin'),
      ],
    },
  },
];

describe('the edges of the rules across fields', () => {
  it.each(EDGES)('$rule: $says', ({ rule, last, beyond }) => {
    expect(rulesOf(changed(last))).toEqual([]);
    expect(new Set(rulesOf(changed(beyond)))).toEqual(new Set([rule]));
  });

  it('are known for every rule', () => {
    expect(new Set(EDGES.map(({ rule }) => rule))).toEqual(
      new Set(CROSS_CHECKS.map(({ rule }) => rule)),
    );
  });
});

/** Fields that no case is without. */
const REQUIRED = /^(sentAt|lesion\.longAxisMm|resection|resection\.outcome)$/;

/** A field that is absent was not told: no rule may read it as a "no". */
describe('the rules across fields, where fields are missing', () => {
  it.each(
    EDGES.flatMap(({ rule, beyond }) =>
      Object.keys(beyond).map((field) => ({ rule, field, beyond })),
    ).filter(({ field, beyond }) => beyond[field] !== undefined && !REQUIRED.test(field)),
  )('$rule is silent, or another field still speaks, without $field', ({ rule, field, beyond }) => {
    const rules = rulesOf(changed({ ...beyond, [field]: undefined }));
    expect(rules.filter((named) => named !== rule)).toEqual([]);
  });

  it('say nothing of a case with required fields alone', () => {
    const minimal = JSON.parse(readFileSync('examples/cases/minimal.json', 'utf8'));
    expect(CROSS_CHECKS.flatMap(({ broken }) => broken(minimal))).toEqual([]);
    expect(CROSS_CHECKS.flatMap(({ broken }) => broken({}))).toEqual([]);
  });
});

function changed(fields: Fields): unknown {
  return Object.entries(fields).reduce<unknown>(
    (document, [path, value]) => withValue(document, path.split('.'), value),
    sound,
  );
}

function rulesOf(document: unknown): readonly string[] {
  const checked = parseCase(new TextEncoder().encode(JSON.stringify(document)));
  return checked.ok ? [] : checked.problems.map(({ rule }) => rule);
}
