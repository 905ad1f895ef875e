import type { AntithromboticClass, CaseFields, Site } from '../../contract/index.js';
import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { Morphology } from './colorectal-difficulty-matsumoto-2019.table.js';
import type { Place } from './colorectal-fields.table.js';
import type { DrugKind } from './drug-list.js';

type Paris = NonNullable<CaseFields['lesion']['paris']>;
type Lst = NonNullable<CaseFields['lesion']['lstType']>;

/**
 * The place of each colorectal site. The valve belongs to the caecum; the anal canal is reached
 * from the rectum and counts as such.
 *
 * Source: ICD-O-3 topography C18.0 for the valve, from memory; the anal canal: common practice.
 */
export const PLACE_OF_SITE: Partial<Record<Site, Place>> = {
  caecum: 'caecum',
  'ileocaecal-valve': 'caecum',
  'ascending-colon': 'ascending',
  'hepatic-flexure': 'hepatic-flexure',
  'transverse-colon': 'transverse',
  'splenic-flexure': 'splenic-flexure',
  'descending-colon': 'descending',
  'sigmoid-colon': 'sigmoid',
  'rectosigmoid-junction': 'rectosigmoid',
  'rectum-upper': 'rectum',
  'rectum-middle': 'rectum',
  'rectum-lower': 'rectum',
  'anal-canal': 'rectum',
};

/**
 * Whether a gastric site lies in the lower third, where the third is not told. Body and angulus
 * reach into two thirds and stay open.
 *
 * Source: Japanese classification of gastric carcinoma, thirds of the curvatures, from memory.
 */
export const LOWER_THIRD_OF_SITE: Partial<Record<Site, boolean>> = {
  'stomach-cardia': false,
  'stomach-fundus': false,
  'stomach-antrum': true,
  'stomach-pylorus': true,
};

/** Laterally spreading tumours of a known type. */
export const MORPHOLOGY_OF_LST: Partial<Record<Lst, Morphology>> = {
  'lst-g-h': 'LST-G',
  'lst-g-m': 'LST-G',
  'lst-ng-f': 'LST-NG-F',
  'lst-ng-pd': 'LST-NG-PD',
};

/**
 * Paris types that no laterally spreading tumour has, so that a case that names no such tumour
 * has none. The others leave it open.
 *
 * Source: Paris types of laterally spreading tumours (0-IIa, mixed types), from memory.
 */
export const MORPHOLOGY_OF_PARIS: Partial<Record<Paris, Morphology>> = {
  '0-Ip': 'protruded',
  '0-Isp': 'protruded',
  '0-Is': 'protruded',
  '0-IIc': 'depressed',
  '0-III': 'depressed',
  '0-IIc+III': 'depressed',
};

/** The kind of each class of drugs in the BEST-J score; `other` has no points. */
export const KIND_OF_CLASS: Readonly<Record<AntithromboticClass, DrugKind>> = {
  aspirin: 'aspirin',
  'p2y12-inhibitor': 'p2y12',
  cilostazol: 'cilostazol',
  'other-antiplatelet': 'other',
  'vitamin-k-antagonist': 'warfarin',
  doac: 'doac',
  heparin: 'other',
};

/** Classes that act on platelets. */
export const ANTIPLATELETS: readonly AntithromboticClass[] = [
  'aspirin',
  'p2y12-inhibitor',
  'cilostazol',
  'other-antiplatelet',
];

/** Where a case tells what a score asks for. */
export const CASE_FIELD: Readonly<Record<string, string>> = {
  drugs: 'before.antithrombotics',
  antithrombotic: 'before.antithrombotics',
  antiplatelet: 'before.antithrombotics',
  haemodialysis: 'before.haemodialysis',
  asa: 'before.asaClass',
  emrScar: 'before.earlierAttempts',
  precedingBiopsy: 'before.biopsyResult',
  age: 'patient.bornOn',
  multiple: 'lesionsInSession',
  sizeMm: 'lesion.longAxisMm',
  circumferencePercent: 'lesion.circumferencePercent',
  dentateLine: 'lesion.touchesDentateLine',
  location: 'lesion.site',
  lowerThird: 'lesion.stomachThird',
  lst: 'lesion.lstType',
  morphology: 'lesion.lstType',
  nice: 'lesion.nice',
};

/** Where a pathology report tells what the eCura score asks for. */
export const REPORT_FIELD: Readonly<Record<string, string>> = {
  ly: 'pathology.findings.ly',
  v: 'pathology.findings.v',
  vm: 'pathology.findings.vm.state',
  sizeMm: 'pathology.findings.sizeMm',
  smDepthUm: 'pathology.findings.smDepthUm',
};

/** Something about the reading of a case that is shown beside the score. */
interface Reading {
  readonly remark: string;
  readonly says: string;
  readonly cites: readonly Citation[];
}

export const SIZE_THROUGH_ENDOSCOPE: Reading = {
  remark: 'size-through-endoscope',
  says: 'Size of the lesion as the operator estimated it through the endoscope.',
  cites: [cite('esdPractice', 'the size that is known when the score is used', 'practice')],
};

export const INTERRUPTED_AS_TOLD: Reading = {
  remark: 'interrupted-as-told',
  says:
    'A drug counts as interrupted when the case says that it was stopped, replaced or bridged ' +
    'with heparin; how many days before is not checked.',
  cites: [cite('bestJCalculator', 'notes on the use of the items; second source', 'recalled')],
};

export const AS_WARFARIN: Reading = {
  remark: 'vitamin-k-antagonist-as-warfarin',
  says: 'A vitamin K antagonist that is not named, or another than warfarin, counts as warfarin.',
  cites: [cite('hatta2021', 'an agent that the score does not name', 'derived')],
};

export const OTHER_SCAR: Reading = {
  remark: 'other-scar-not-counted',
  says: 'Only the scar of a mucosal resection counts, not that of another earlier treatment.',
  cites: [cite('matsumoto2019', 'a treatment that the abstract does not name', 'derived')],
};
