import type {
  ADVISERS,
  Agent,
  ANTITHROMBOTIC_INDICATIONS,
  AntithromboticClass,
  ASA_CLASSES,
  BIOPSY_RESULTS,
  DRUG_DECISIONS,
  EARLIER_ATTEMPTS,
  HELICOBACTER_STATES,
  INDICATIONS,
  PREMEDICATIONS,
  SEDATIONS,
  SEXES,
  THROMBOTIC_RISKS,
} from '../../contract/index.js';
import { type CodeRef, type Others, setRefs } from '../code-ref.js';

const ANTIPLATELET: Others = { broader: ['value-antiplatelet-product'] };
const ANTICOAGULANT: Others = { broader: ['value-anticoagulant-product'] };

/** Drugs and their classes; no code of others for the drug itself, only for its wide group. */
const drug = setRefs('antithrombotic', {
  aspirin: ANTIPLATELET,
  'p2y12-inhibitor': ANTIPLATELET,
  cilostazol: ANTIPLATELET,
  'other-antiplatelet': ANTIPLATELET,
  'vitamin-k-antagonist': ANTICOAGULANT,
  doac: ANTICOAGULANT,
  heparin: ANTICOAGULANT,
  clopidogrel: ANTIPLATELET,
  prasugrel: ANTIPLATELET,
  ticagrelor: ANTIPLATELET,
  dipyridamole: ANTIPLATELET,
  warfarin: ANTICOAGULANT,
  phenprocoumon: ANTICOAGULANT,
  acenocoumarol: ANTICOAGULANT,
  dabigatran: ANTICOAGULANT,
  rivaroxaban: ANTICOAGULANT,
  apixaban: ANTICOAGULANT,
  edoxaban: ANTICOAGULANT,
  'unfractionated-heparin': ANTICOAGULANT,
  'low-molecular-weight-heparin': ANTICOAGULANT,
});

const ANY_ADENOCARCINOMA: Others = {
  broader: ['morph-8140-3', 'lesion-adenocarcinoma-morphology'],
};

export const BEFORE_WORDS = {
  indication: setRefs('esd-indication') satisfies Record<(typeof INDICATIONS)[number], CodeRef>,
  /** Dysplasia has a morphology of its own in each epithelium, so none is sent for the word. */
  biopsyResult: setRefs('biopsy-result', {
    'carcinoma-squamous': { open: ['morph-8070-3', 'lesion-scc-morphology'] },
    adenocarcinoma: { open: ['morph-8140-3', 'lesion-adenocarcinoma-morphology'] },
    'adenocarcinoma-differentiated': ANY_ADENOCARCINOMA,
    'adenocarcinoma-undifferentiated': ANY_ADENOCARCINOMA,
  }) satisfies Record<(typeof BIOPSY_RESULTS)[number], CodeRef>,
  earlierAttempt: setRefs('earlier-treatment') satisfies Record<
    (typeof EARLIER_ATTEMPTS)[number],
    CodeRef
  >,
  asaClass: setRefs('asa-class', {
    I: { open: ['value-asa-1'] },
    II: { open: ['value-asa-2'] },
    III: { open: ['value-asa-3'] },
    IV: { open: ['value-asa-4'] },
    V: { open: ['value-asa-5'] },
  }) satisfies Record<(typeof ASA_CLASSES)[number], CodeRef>,
  helicobacter: setRefs('helicobacter-status', {
    positive: { open: ['value-positive'] },
    negative: { open: ['value-negative'] },
    unknown: { open: ['value-unknown'] },
  }) satisfies Record<(typeof HELICOBACTER_STATES)[number], CodeRef>,
  sedation: setRefs('sedation-depth', {
    minimal: { open: ['procedure-sedation-minimal'] },
    moderate: { open: ['procedure-sedation-conscious'] },
    deep: { open: ['procedure-sedation-deep'] },
    'monitored-anaesthesia-care': { open: ['procedure-monitored-anaesthesia-care'] },
    'general-anaesthesia': { open: ['procedure-general-anaesthesia'] },
  }) satisfies Record<(typeof SEDATIONS)[number], CodeRef>,
  premedication: setRefs('premedication') satisfies Record<
    (typeof PREMEDICATIONS)[number],
    CodeRef
  >,
  antithromboticClass: drug satisfies Record<AntithromboticClass, CodeRef>,
  agent: drug satisfies Record<Agent, CodeRef>,
  antithromboticIndication: setRefs('antithrombotic-indication') satisfies Record<
    (typeof ANTITHROMBOTIC_INDICATIONS)[number],
    CodeRef
  >,
  thromboticRisk: setRefs('thrombotic-risk') satisfies Record<
    (typeof THROMBOTIC_RISKS)[number],
    CodeRef
  >,
  drugDecision: setRefs('drug-decision') satisfies Record<(typeof DRUG_DECISIONS)[number], CodeRef>,
  adviser: setRefs('adviser') satisfies Record<(typeof ADVISERS)[number], CodeRef>,
  /** FHIR has its own code for it, so that we need none. */
  sex: {
    female: { open: ['gender-female'], text: 'Female' },
    male: { open: ['gender-male'], text: 'Male' },
    other: { open: ['gender-other'], text: 'Other' },
    unknown: { open: ['gender-unknown'], text: 'Unknown' },
  } satisfies Record<(typeof SEXES)[number], CodeRef>,
} as const;
