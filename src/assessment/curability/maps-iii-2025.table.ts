import { cite } from '../../references/index.js';
import { classRule, type FieldsOf, type TableOf } from '../../rules/index.js';
import {
  CURABILITY_CONTRADICTIONS,
  type CurabilityQuestion,
  CURABILITY_FIELDS as F,
} from './question.js';

export type MapsClass =
  | 'no-rule'
  | 'incomplete'
  | 'very-low-risk'
  | 'low-risk'
  | 'local-risk'
  | 'high-risk';

type Question = Omit<
  CurabilityQuestion,
  'differentiation' | 'undiffLengthMm' | 'undiffInSm' | 'budding'
>;

const TRANSCRIBED = cite(
  'mapsIii2025',
  'recommendations 21 to 31 and figures 8 and 9, as transcribed in a public program',
  'recalled',
);
const NOT_FREE = cite('mapsIii2025', 'a margin that cannot be assessed is not free', 'derived');
const COMPLEMENT = cite('mapsIii2025', 'in none of the other classes', 'derived');
const GAP = cite('mapsIii2025', 'outside the table', 'derived');

const fields: FieldsOf<Question> = {
  tumour: F.tumour,
  histology: F.histology,
  depth: F.depth,
  smDepthUm: F.smDepthUm,
  gastricType: F.gastricType,
  sizeMm: F.sizeMm,
  ulcer: F.ulcer,
  ly: F.ly,
  v: F.v,
  hm: F.hm,
  vm: F.vm,
  enBloc: F.enBloc,
  endoscopicallyComplete: F.endoscopicallyComplete,
};

const table: TableOf<Question, MapsClass> = [
  [
    {
      row: 'no-rule',
      when: { tumour: { is: ['squamous', 'barrett', 'colorectal', 'other'] } },
      class: 'no-rule',
      says: 'The classes were made for the stomach.',
      cites: [GAP],
    },
  ],
  [
    {
      row: 'incomplete',
      when: { endoscopicallyComplete: { is: [false] } },
      class: 'incomplete',
      says: 'Part of the lesion was left in place.',
      cites: [GAP],
    },
  ],
  [
    {
      row: 'lymphatic-invasion',
      when: { ly: { is: ['1'] } },
      class: 'high-risk',
      reason: 'lvi',
      says: 'The tumour invades lymphatic vessels.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'venous-invasion',
      when: { v: { is: ['1'] } },
      class: 'high-risk',
      reason: 'lvi',
      says: 'The tumour invades veins.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'vertical-margin',
      when: { vm: { is: ['1'] } },
      class: 'high-risk',
      reason: 'vertical-margin',
      says: 'The tumour reaches the vertical margin.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'vertical-margin-not-assessable',
      when: { vm: { is: ['X'] } },
      class: 'high-risk',
      reason: 'vertical-margin-not-assessable',
      says: 'The vertical margin cannot be assessed and counts as not free.',
      cites: [NOT_FREE],
    },
    {
      row: 'muscle-invasion',
      when: { depth: { is: ['mp'] } },
      class: 'high-risk',
      reason: 'muscle-invasion',
      says: 'The tumour invades the muscle layer.',
      cites: [COMPLEMENT],
    },
    {
      row: 'deep-submucosa',
      when: { depth: { is: ['sm'] }, smDepthUm: { above: 500 } },
      class: 'high-risk',
      reason: 'deeper-than-sm1',
      says: 'More than 500 um deep in the submucosa.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'undifferentiated-in-submucosa',
      when: { gastricType: { is: ['undifferentiated'] }, depth: { is: ['sm'] } },
      class: 'high-risk',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, in the submucosa.',
      cites: [COMPLEMENT],
    },
    {
      row: 'undifferentiated-ulcerated',
      when: { gastricType: { is: ['undifferentiated'] }, ulcer: { is: ['UL1'] } },
      class: 'high-risk',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, with an ulcer or ulcer scar.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'undifferentiated-large',
      when: { gastricType: { is: ['undifferentiated'] }, sizeMm: { above: 20 } },
      class: 'high-risk',
      reason: 'undifferentiated',
      says: 'Of undifferentiated type, and larger than 20 mm.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'submucosal-large',
      when: { depth: { is: ['sm'] }, sizeMm: { above: 30 } },
      class: 'high-risk',
      reason: 'size-limit-exceeded',
      says: 'In the submucosa and larger than 30 mm.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'ulcerated-large',
      when: { ulcer: { is: ['UL1'] }, sizeMm: { above: 30 } },
      class: 'high-risk',
      reason: 'ulcerated-size-limit',
      says: 'With an ulcer or ulcer scar, and larger than 30 mm.',
      cites: [TRANSCRIBED],
    },
  ],
  [
    {
      row: 'piecemeal',
      when: { enBloc: { is: [false] } },
      class: 'local-risk',
      reason: 'piecemeal',
      says: 'Would be of very low or low risk, but was resected piecemeal.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'horizontal-margin',
      when: { hm: { is: ['1', 'X'] } },
      class: 'local-risk',
      reason: 'horizontal-margin',
      says: 'Would be of very low or low risk, but the horizontal margin is not free.',
      cites: [TRANSCRIBED],
    },
  ],
  [
    {
      row: 'differentiated',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['m'] },
        ulcer: { is: ['UL0'] },
      },
      class: 'very-low-risk',
      says:
        'Differentiated, within the mucosa, no ulcer, of any size; en bloc, margins and vessels ' +
        'free.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'differentiated-ulcerated',
      when: {
        gastricType: { is: ['differentiated'] },
        depth: { is: ['m'] },
        ulcer: { is: ['UL1'] },
      },
      class: 'very-low-risk',
      says:
        'Differentiated, within the mucosa, with an ulcer or ulcer scar, at most 30 mm; en ' +
        'bloc, margins and vessels free.',
      cites: [TRANSCRIBED],
    },
  ],
  [
    {
      row: 'undifferentiated-small',
      when: { gastricType: { is: ['undifferentiated'] }, depth: { is: ['m'] } },
      class: 'low-risk',
      says:
        'Undifferentiated, within the mucosa, no ulcer, at most 20 mm; en bloc, margins and ' +
        'vessels free.',
      cites: [TRANSCRIBED],
    },
    {
      row: 'differentiated-sm1',
      when: { gastricType: { is: ['differentiated'] }, depth: { is: ['sm'] } },
      class: 'low-risk',
      says:
        'Differentiated, at most 500 um deep in the submucosa and 30 mm long; en bloc, margins ' +
        'and vessels free.',
      cites: [TRANSCRIBED],
    },
  ],
];

/** Curability by the European guideline of 2025 as transcribed: stomach, for comparison only. */
export const MAPS_III_2025 = classRule<MapsClass>({
  kind: 'rule-set',
  id: 'maps-iii-2025',
  version: 1,
  title: 'Curability after endoscopic resection in the stomach, European guideline 2025',
  population: 'Superficial gastric neoplasia after endoscopic resection. Not for other organs.',
  cites: [TRANSCRIBED],
  unconfirmed:
    'Known from a public transcription alone; nobody has compared it with the guideline yet.',
  fields,
  contradictions: CURABILITY_CONTRADICTIONS,
  table,
  reasonsShown: ['high-risk'],
  remarks: [],
});
