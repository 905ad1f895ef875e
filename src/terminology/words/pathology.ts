import type { PathologyFields } from '../../contract/index.js';
import { type CodeRef, setRefs } from '../code-ref.js';

type Findings = NonNullable<PathologyFields['findings']>;
type Specimen = NonNullable<PathologyFields['specimen']>;
type Background = NonNullable<PathologyFields['background']>;
type Ancillary = NonNullable<PathologyFields['ancillary']>;
type WordOf<Part, Field extends keyof Part> = NonNullable<Part[Field]> & string;
type EachOf<Part, Field extends keyof Part> =
  NonNullable<Part[Field]> extends readonly (infer Word extends string)[] ? Word : never;
type State = WordOf<Findings, 'ly'>;

const grade = setRefs('dysplasia-grade');
const layer = setRefs('invasion-depth');
const margin = setRefs('margin-status');
const budding = setRefs('budding-grade');
const status = setRefs('resection-status', {
  r0: { open: ['value-r0'] },
  r1: { open: ['value-r1'] },
  rx: { open: ['value-rx'] },
});
const state = setRefs('finding-state', {
  absent: { open: ['value-absent'] },
  present: { open: ['value-present'] },
});
const helicobacter = setRefs('helicobacter-status', {
  positive: { open: ['value-positive'] },
  negative: { open: ['value-negative'] },
});

/**
 * What the pathologist found.
 *
 * - Type: a code of ICD-O-3 morphology where its name says the type and no more; an
 *   intraepithelial neoplasia has none, because its behaviour is the grade.
 * - Mucinous and signet-ring are types, not grades, so no grade of others stands beside them.
 */
export const PATHOLOGY_WORDS = {
  amendmentReason: setRefs('amendment-reason') satisfies Record<
    WordOf<PathologyFields['report'], 'amendmentReason'>,
    CodeRef
  >,
  specimenProcedure: setRefs('specimen-procedure') satisfies Record<
    WordOf<Specimen, 'procedure'>,
    CodeRef
  >,
  stain: setRefs('special-stain') satisfies Record<EachOf<Ancillary, 'stains'>, CodeRef>,
  histology: {
    none: grade.none,
    indefinite: grade.indefinite,
    'low-grade-dysplasia': grade['low-grade'],
    'high-grade-dysplasia': grade['high-grade'],
    carcinoma: grade.carcinoma,
    'neuroendocrine-tumour': grade['neuroendocrine-tumour'],
    'other-tumour': grade['other-tumour'],
    'not-assessable': grade['not-assessable'],
  } satisfies Record<WordOf<Findings, 'histology'>, CodeRef>,
  histologicalType: setRefs('histological-type', {
    'squamous-cell-carcinoma': { open: ['morph-8070-3'] },
    'basaloid-squamous-cell-carcinoma': { open: ['morph-8083-3'] },
    'adenosquamous-carcinoma': { open: ['morph-8560-3'] },
    'tubular-adenoma': { open: ['morph-8211-0'] },
    'tubulovillous-adenoma': { open: ['morph-8263-0'] },
    'villous-adenoma': { open: ['morph-8261-0'] },
    adenocarcinoma: { open: ['morph-8140-3'] },
    'tubular-adenocarcinoma': { open: ['morph-8211-3'] },
    'papillary-adenocarcinoma': { open: ['morph-8260-3'] },
    'mucinous-adenocarcinoma': { open: ['morph-8480-3'] },
    'signet-ring-cell-carcinoma': { open: ['morph-8490-3'] },
    'serrated-adenocarcinoma': { open: ['morph-8213-3'] },
    'undifferentiated-carcinoma': { open: ['morph-8020-3'] },
  }) satisfies Record<WordOf<Findings, 'histologicalType'>, CodeRef>,
  polypType: setRefs('polyp-type') satisfies Record<WordOf<Findings, 'polypType'>, CodeRef>,
  differentiation: setRefs('differentiation-grade', {
    well: { open: ['value-grade-1'] },
    moderate: { open: ['value-grade-2'] },
    poor: { open: ['value-grade-3'] },
  }) satisfies Record<WordOf<Findings, 'differentiation'>, CodeRef>,
  gastricType: setRefs('differentiation-type') satisfies Record<
    WordOf<Findings, 'gastricType'>,
    CodeRef
  >,
  depth: {
    ep: layer.ep,
    lpm: layer.lpm,
    mm: layer.mm,
    m: layer.m,
    sm: layer.sm,
    mp: layer.mp,
    X: layer['not-assessable'],
  } satisfies Record<WordOf<Findings, 'depth'>, CodeRef>,
  barrettDepth: setRefs('barrett-layer') satisfies Record<
    WordOf<Findings, 'barrettDepth'>,
    CodeRef
  >,
  state: {
    '0': state.absent,
    '1': state.present,
    X: state['not-assessable'],
  } satisfies Record<State, CodeRef>,
  horizontalMargin: {
    '0': margin.hm0,
    '1': margin.hm1,
    X: margin.hmx,
  } satisfies Record<State, CodeRef>,
  verticalMargin: {
    '0': margin.vm0,
    '1': margin.vm1,
    X: margin.vmx,
  } satisfies Record<State, CodeRef>,
  buddingGrade: {
    '1': budding.bd1,
    '2': budding.bd2,
    '3': budding.bd3,
    X: budding['not-assessable'],
  } satisfies Record<WordOf<NonNullable<Findings['budding']>, 'grade'>, CodeRef>,
  ulcer: setRefs('ulceration') satisfies Record<WordOf<Findings, 'ulcer'>, CodeRef>,
  resectionStatus: {
    R0: status.r0,
    R1: status.r1,
    R2: status.r2,
    RX: status.rx,
  } satisfies Record<WordOf<Findings, 'resectionStatus'> | 'R2', CodeRef>,
  pT: setRefs('primary-tumour') satisfies Record<WordOf<Findings, 'pT'>, CodeRef>,
  tnmEdition: setRefs('tnm-edition') satisfies Record<WordOf<Findings, 'tnmEdition'>, CodeRef>,
  intestinalMetaplasia: setRefs('intestinal-metaplasia') satisfies Record<
    WordOf<Background, 'intestinalMetaplasia'>,
    CodeRef
  >,
  atrophy: setRefs('atrophy-grade') satisfies Record<WordOf<Background, 'atrophy'>, CodeRef>,
  stomachPart: setRefs('stomach-part') satisfies Record<
    EachOf<Background, 'metaplasiaIn'>,
    CodeRef
  >,
  gastritisStage: setRefs('gastritis-stage') satisfies Record<WordOf<Background, 'olga'>, CodeRef>,
  helicobacterFinding: {
    positive: { ...helicobacter.positive, text: 'Helicobacter pylori seen' },
    negative: { ...helicobacter.negative, text: 'Helicobacter pylori not seen' },
  } satisfies Record<WordOf<Background, 'helicobacterPylori'>, CodeRef>,
  p53: setRefs('p53-pattern') satisfies Record<WordOf<Ancillary, 'p53'>, CodeRef>,
  mismatchRepair: setRefs('mismatch-repair') satisfies Record<
    WordOf<Ancillary, 'mismatchRepair'>,
    CodeRef
  >,
  microsatellites: setRefs('microsatellites') satisfies Record<
    WordOf<Ancillary, 'microsatellites'>,
    CodeRef
  >,
  her2: setRefs('her2-score') satisfies Record<WordOf<Ancillary, 'her2'>, CodeRef>,
} as const;
