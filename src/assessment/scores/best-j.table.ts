import { cite } from '../../references/index.js';
import { type Band, type FieldsOf, type ItemsOf, type Rate, scoreRule } from '../../rules/index.js';
import { nameInDocument, unfoldDrugs } from './drug-list.js';

const PAPER = cite('hatta2021', 'abstract', 'published');
const WEIGHT = cite('bestJCalculator', 'weights of the items; second source', 'recalled');
const USE = cite('bestJCalculator', 'notes on the use of the items; second source', 'recalled');
const TABLE = [cite('hatta2021', 'table of risk groups', 'published')];

/** One pair of flags for each kind of drug with points; the document lists its drugs instead. */
type Question = {
  readonly warfarin: boolean;
  readonly warfarinInterrupted: boolean;
  readonly doac: boolean;
  readonly doacInterrupted: boolean;
  readonly p2y12: boolean;
  readonly p2y12Interrupted: boolean;
  readonly aspirin: boolean;
  readonly aspirinInterrupted: boolean;
  readonly cilostazol: boolean;
  readonly cilostazolInterrupted: boolean;
  readonly haemodialysis: boolean;
  readonly lowerThird: boolean;
  readonly multiple: boolean;
  readonly sizeMm: number;
};

const FIELDS = {
  warfarin: { type: 'flag', says: 'warfarin taken before the dissection, stopped or not' },
  warfarinInterrupted: {
    type: 'flag',
    says: 'warfarin stopped 3 to 5 days before, replaced or bridged with heparin',
    askedWhen: [{ warfarin: { is: [true] } }],
  },
  doac: { type: 'flag', says: 'direct oral anticoagulant taken, stopped or not' },
  doacInterrupted: {
    type: 'flag',
    says: 'direct oral anticoagulant stopped 1 to 2 days before, replaced or bridged with heparin',
    askedWhen: [{ doac: { is: [true] } }],
  },
  p2y12: { type: 'flag', says: 'P2Y12 receptor antagonist taken, stopped or not' },
  p2y12Interrupted: {
    type: 'flag',
    says: 'P2Y12 receptor antagonist stopped 5 to 7 days before, or replaced',
    askedWhen: [{ p2y12: { is: [true] } }],
  },
  aspirin: { type: 'flag', says: 'aspirin taken, stopped or not' },
  aspirinInterrupted: {
    type: 'flag',
    says: 'aspirin stopped 3 to 5 days before, or replaced',
    askedWhen: [{ aspirin: { is: [true] } }],
  },
  cilostazol: { type: 'flag', says: 'cilostazol taken, stopped or not' },
  cilostazolInterrupted: {
    type: 'flag',
    says: 'cilostazol stopped 1 day before, or replaced',
    askedWhen: [{ cilostazol: { is: [true] } }],
  },
  haemodialysis: { type: 'flag', says: 'chronic kidney disease with haemodialysis' },
  lowerThird: { type: 'flag', says: 'tumour in the lower third of the stomach' },
  multiple: { type: 'flag', says: 'several tumours resected in the session' },
  sizeMm: { type: 'number', unit: 'mm', from: 0, to: 1000, says: 'size of the tumour' },
} as const satisfies FieldsOf<Question>;

const ITEMS: ItemsOf<Question> = [
  {
    item: 'warfarin',
    when: { warfarin: { is: [true] } },
    points: 4,
    says: 'warfarin',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'warfarin-interrupted',
    when: { warfarin: { is: [true] }, warfarinInterrupted: { is: [true] } },
    points: -1,
    says: 'warfarin was interrupted',
    cites: [PAPER, WEIGHT, USE],
  },
  {
    item: 'doac',
    when: { doac: { is: [true] } },
    points: 4,
    says: 'direct oral anticoagulant',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'doac-interrupted',
    when: { doac: { is: [true] }, doacInterrupted: { is: [true] } },
    points: -1,
    says: 'the direct oral anticoagulant was interrupted',
    cites: [PAPER, WEIGHT, USE],
  },
  {
    item: 'p2y12',
    when: { p2y12: { is: [true] } },
    points: 2,
    says: 'P2Y12 receptor antagonist',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'p2y12-interrupted',
    when: { p2y12: { is: [true] }, p2y12Interrupted: { is: [true] } },
    points: -1,
    says: 'the P2Y12 receptor antagonist was interrupted',
    cites: [PAPER, WEIGHT, USE],
  },
  {
    item: 'aspirin',
    when: { aspirin: { is: [true] } },
    points: 2,
    says: 'aspirin',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'aspirin-interrupted',
    when: { aspirin: { is: [true] }, aspirinInterrupted: { is: [true] } },
    points: -1,
    says: 'aspirin was interrupted',
    cites: [PAPER, WEIGHT, USE],
  },
  {
    item: 'cilostazol',
    when: { cilostazol: { is: [true] } },
    points: 1,
    says: 'cilostazol',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'cilostazol-interrupted',
    when: { cilostazol: { is: [true] }, cilostazolInterrupted: { is: [true] } },
    points: -1,
    says: 'cilostazol was interrupted',
    cites: [PAPER, WEIGHT, USE],
  },
  {
    item: 'haemodialysis',
    when: { haemodialysis: { is: [true] } },
    points: 3,
    says: 'chronic kidney disease with haemodialysis',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'lower-third',
    when: { lowerThird: { is: [true] } },
    points: 1,
    says: 'lower third of the stomach',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'multiple-tumours',
    when: { multiple: { is: [true] } },
    points: 1,
    says: 'several tumours resected in the session',
    cites: [PAPER, WEIGHT],
  },
  {
    item: 'size-above-30-mm',
    when: { sizeMm: { above: 30 } },
    points: 1,
    says: 'tumour larger than 30 mm',
    cites: [PAPER, WEIGHT],
  },
];

/** A rate of bleeding with its exact interval, as the table of the paper prints it. */
const bled = (
  percent: number,
  [events, of]: readonly [number, number],
  [lowerPercent, upperPercent]: readonly [number, number],
): Rate => ({
  says: 'bled after the dissection',
  percent,
  events,
  of,
  interval: { lowerPercent, upperPercent, levelPercent: 95, method: 'clopper-pearson' },
});

const BANDS: readonly Band[] = [
  { group: 'low', from: 0, to: 1, rate: bled(2.8, [175, 6267], [2.4, 3.2]), cites: TABLE },
  { group: 'intermediate', from: 2, to: 2, rate: bled(6.1, [65, 1059], [4.8, 7.8]), cites: TABLE },
  { group: 'high', from: 3, to: 4, rate: bled(11.4, [87, 760], [9.3, 13.9]), cites: TABLE },
  {
    group: 'very-high',
    from: 5,
    to: Number.POSITIVE_INFINITY,
    rate: bled(29.7, [60, 202], [23.5, 36.5]),
    cites: TABLE,
  },
];

/** Source: hatta2021; weights from a second source. Indeterminate: without one of its items. */
export const BEST_J = scoreRule({
  kind: 'score',
  id: 'best-j',
  version: 1,
  title: 'BEST-J score: bleeding after dissection of early gastric cancer',
  population:
    'Early gastric cancer treated by dissection, Japan: 8291 patients (derivation), 2029 ' +
    '(external validation, c 0.70). In 161 European patients the area under the curve was 0.907 ' +
    'and a total of 3 or more the best cut. Not for other organs or tumours.',
  cites: [PAPER, ...TABLE, WEIGHT, USE, cite('bestJEurope2024', 'abstract', 'published')],
  fields: FIELDS,
  contradictions: [],
  unfold: (document) => unfoldDrugs(FIELDS, document),
  lists: {
    drugs:
      'drugs taken before the dissection, each with kind (warfarin, doac, p2y12, aspirin, ' +
      'cilostazol or other) and interrupted (true or false); [] for none',
  },
  nameOf: nameInDocument,
  items: ITEMS,
  bands: BANDS,
  remarks: [],
});
