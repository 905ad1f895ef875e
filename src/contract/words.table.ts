/** The closed word lists of the messages, in the terms of the trade; lengths of lists are small. */

export const ORGANS = ['oesophagus', 'stomach', 'duodenum', 'colon', 'rectum'] as const;
export type Organ = (typeof ORGANS)[number];

/** Every site with the organ it belongs to. */
export const SITE_ORGAN = {
  'oesophagus-cervical': 'oesophagus',
  'oesophagus-upper-third': 'oesophagus',
  'oesophagus-middle-third': 'oesophagus',
  'oesophagus-lower-third': 'oesophagus',
  'oesophagus-abdominal': 'oesophagus',
  'oesophagogastric-junction': 'oesophagus',
  'stomach-cardia': 'stomach',
  'stomach-fundus': 'stomach',
  'stomach-body': 'stomach',
  'stomach-angulus': 'stomach',
  'stomach-antrum': 'stomach',
  'stomach-pylorus': 'stomach',
  'duodenum-bulb': 'duodenum',
  'duodenum-second-part': 'duodenum',
  'duodenum-third-part': 'duodenum',
  caecum: 'colon',
  'ileocaecal-valve': 'colon',
  'ascending-colon': 'colon',
  'hepatic-flexure': 'colon',
  'transverse-colon': 'colon',
  'splenic-flexure': 'colon',
  'descending-colon': 'colon',
  'sigmoid-colon': 'colon',
  'rectosigmoid-junction': 'rectum',
  'rectum-upper': 'rectum',
  'rectum-middle': 'rectum',
  'rectum-lower': 'rectum',
  'anal-canal': 'rectum',
} as const satisfies Record<string, Organ>;
export type Site = keyof typeof SITE_ORGAN;
export const SITES = Object.keys(SITE_ORGAN) as [Site, ...Site[]];

export const WALLS = [
  'anterior',
  'posterior',
  'left',
  'right',
  'lesser-curvature',
  'greater-curvature',
  'circumferential',
] as const;
export const STOMACH_THIRDS = ['upper', 'middle', 'lower'] as const;
export const SEXES = ['female', 'male', 'other', 'unknown'] as const;

export const TUMOURS = [
  'squamous',
  'barrett',
  'gastric',
  'duodenal',
  'colorectal',
  'other',
] as const;
export type Tumour = (typeof TUMOURS)[number];

export const INDICATIONS = [
  'early-carcinoma',
  'high-grade-dysplasia',
  'low-grade-dysplasia',
  'large-laterally-spreading-tumour',
  'suspected-submucosal-invasion',
  'residual-or-recurrent-lesion',
  'fibrosis-expected',
  'serrated-lesion-with-dysplasia',
  'neuroendocrine-tumour',
  'subepithelial-lesion',
  'diagnostic-resection',
] as const;
export const BIOPSY_RESULTS = [
  'not-taken',
  'no-dysplasia',
  'indefinite',
  'low-grade-dysplasia',
  'high-grade-dysplasia',
  'carcinoma-squamous',
  'adenocarcinoma',
  'adenocarcinoma-differentiated',
  'adenocarcinoma-undifferentiated',
  'sessile-serrated-lesion',
  'sessile-serrated-lesion-dysplasia',
  'neuroendocrine-tumour',
] as const;
export const EARLIER_ATTEMPTS = [
  'biopsy',
  'polypectomy',
  'emr',
  'esd',
  'ablation',
  'radiotherapy',
  'surgery',
] as const;

export const ASA_CLASSES = ['I', 'II', 'III', 'IV', 'V'] as const;
export const HELICOBACTER_STATES = ['positive', 'negative', 'eradicated', 'unknown'] as const;
export const SEDATIONS = [
  'none',
  'minimal',
  'moderate',
  'deep',
  'monitored-anaesthesia-care',
  'general-anaesthesia',
] as const;
export const GASES = ['carbon-dioxide', 'air'] as const;
export const PREMEDICATIONS = [
  'mucolytic',
  'antifoaming-agent',
  'antispasmodic',
  'antibiotic',
  'acid-suppression',
] as const;

export const ANTITHROMBOTIC_CLASSES = [
  'aspirin',
  'p2y12-inhibitor',
  'cilostazol',
  'other-antiplatelet',
  'vitamin-k-antagonist',
  'doac',
  'heparin',
] as const;
export type AntithromboticClass = (typeof ANTITHROMBOTIC_CLASSES)[number];
/** Every agent with its class. */
export const AGENT_CLASS = {
  aspirin: 'aspirin',
  clopidogrel: 'p2y12-inhibitor',
  prasugrel: 'p2y12-inhibitor',
  ticagrelor: 'p2y12-inhibitor',
  cilostazol: 'cilostazol',
  dipyridamole: 'other-antiplatelet',
  warfarin: 'vitamin-k-antagonist',
  phenprocoumon: 'vitamin-k-antagonist',
  acenocoumarol: 'vitamin-k-antagonist',
  dabigatran: 'doac',
  rivaroxaban: 'doac',
  apixaban: 'doac',
  edoxaban: 'doac',
  'unfractionated-heparin': 'heparin',
  'low-molecular-weight-heparin': 'heparin',
} as const satisfies Record<string, AntithromboticClass>;
export type Agent = keyof typeof AGENT_CLASS;
export const AGENTS = Object.keys(AGENT_CLASS) as [Agent, ...Agent[]];
export const ANTITHROMBOTIC_INDICATIONS = [
  'atrial-fibrillation',
  'mechanical-valve',
  'coronary-stent',
  'coronary-disease',
  'stroke-or-tia',
  'peripheral-artery-disease',
  'venous-thromboembolism',
  'primary-prevention',
  'other',
] as const;
export const THROMBOTIC_RISKS = ['low', 'high'] as const;
export const DRUG_DECISIONS = ['continued', 'stopped', 'replaced'] as const;
export const ADVISERS = [
  'cardiologist',
  'haematologist',
  'neurologist',
  'anaesthetist',
  'referring-physician',
  'endoscopist',
] as const;

export const PARIS_TYPES = [
  '0-Ip',
  '0-Isp',
  '0-Is',
  '0-IIa',
  '0-IIb',
  '0-IIc',
  '0-III',
  '0-IIa+IIc',
  '0-IIc+IIa',
  '0-Is+IIa',
  '0-IIc+III',
] as const;
export const LST_TYPES = ['lst', 'lst-g-h', 'lst-g-m', 'lst-ng-f', 'lst-ng-pd'] as const;
export const JNET_TYPES = ['1', '2A', '2B', '3'] as const;
export const KUDO_TYPES = ['I', 'II', 'IIIs', 'IIIL', 'IV', 'Vi', 'Vn'] as const;
export const NICE_TYPES = ['1', '2', '3'] as const;
export const IPCL_TYPES = ['A', 'B1', 'B2', 'B3'] as const;
export const PATTERNS = ['regular', 'irregular', 'absent'] as const;
export const PREDICTED_DEPTHS = [
  'intramucosal',
  'superficial-submucosal',
  'deep-submucosal',
] as const;
export const CHROMOENDOSCOPIES = [
  'iodine',
  'indigo-carmine',
  'acetic-acid',
  'crystal-violet',
  'image-enhanced',
] as const;
export const IMAGE_SUBJECTS = [
  'landmark',
  'lesion-before',
  'lesion-stained',
  'markers',
  'resection-bed',
  'specimen',
] as const;

export const ENDOSCOPES = ['gastroscope', 'colonoscope'] as const;
export const CAPS = ['none', 'straight', 'tapered'] as const;
export const KNIVES = ['needle', 'insulated-tip', 'hook-or-triangle', 'scissor'] as const;
export const ACCESSORIES = [
  'haemostatic-forceps',
  'injection-needle',
  'snare',
  'clip-applicator',
  'traction-device',
] as const;
export const ELECTRODE_MODES = [
  'pulsed-cut',
  'continuous-cut',
  'forced-coagulation',
  'soft-coagulation',
  'spray-coagulation',
] as const;
export const ELECTRODE_PURPOSES = ['incision', 'dissection', 'haemostasis'] as const;

export const FLUIDS = ['saline', 'glycerol', 'hyaluronate', 'other-viscous'] as const;
export const DYES = ['none', 'indigo-carmine', 'methylene-blue'] as const;
export const INJECTION_ROUTES = ['needle', 'through-knife'] as const;
export const LIFTINGS = ['lifted', 'partly-lifted', 'not-lifted'] as const;
export const FIBROSIS_GRADES = ['F0', 'F1', 'F2'] as const;
export const FAT_AMOUNTS = ['little', 'moderate', 'abundant'] as const;

export const INCISION_STRATEGIES = ['circumferential', 'partial', 'tunnel', 'pocket'] as const;
export const INCISION_SIDES = ['oral', 'anal', 'lateral'] as const;
export const APPROACHES = ['forward', 'retroflexed'] as const;
export const TRACTIONS = [
  'clip-with-line',
  'clip-with-band',
  'clip-with-ring',
  'second-instrument',
  'magnet',
] as const;
/** Layer of the submucosa in which the cut ran; not a part of an organ. */
export const PLANES = ['superficial-submucosa', 'middle-submucosa', 'deep-submucosa'] as const;
export const POSITIONS = ['left-lateral', 'right-lateral', 'supine', 'prone'] as const;
export const GRAVITY_SIDES = ['dependent', 'non-dependent', 'lateral'] as const;
export const INCIDENTS = [
  'orientation-lost',
  'desufflation',
  'endoscope-exchanged',
  'desaturation',
  'hypotension',
] as const;

export const BLEEDING_INTENSITIES = ['none', 'oozing', 'spurting'] as const;
export const VESSEL_SITES = ['root', 'mid-submucosa', 'specimen-side'] as const;
export const HAEMOSTASIS_MEANS = [
  'knife-coagulation',
  'forceps-coagulation',
  'clip',
  'injection',
  'haemostatic-powder-or-gel',
] as const;
export const CLIP_PHASES = ['during', 'end'] as const;
export const CLIP_PURPOSES = [
  'vessel',
  'perforation',
  'muscle-injury',
  'defect-closure',
  'traction',
] as const;
export const MUSCLE_INJURIES = ['0', 'I', 'II', 'III', 'IV', 'V'] as const;
export const CLOSURES = ['none', 'clips', 'clips-with-loop', 'cap-mounted-clip', 'suture'] as const;
export const CLOSURE_EXTENTS = ['complete', 'partial'] as const;
export const STRICTURE_MEASURES = [
  'steroid-injection',
  'steroid-oral',
  'steroid-topical',
  'stent',
] as const;
export const STRICTURE_DRUGS = [
  'triamcinolone',
  'prednisolone',
  'budesonide',
  'hydrocortisone',
  'other',
] as const;

export const RESECTION_OUTCOMES = ['en-bloc', 'piecemeal', 'abandoned', 'not-started'] as const;
export type ResectionOutcome = (typeof RESECTION_OUTCOMES)[number];
export const TECHNIQUES = ['esd', 'hybrid-esd'] as const;
export const CONVERSIONS = ['snare-resection', 'surgery'] as const;
export const NOT_COMPLETED_REASONS = [
  'deep-invasion-suspected',
  'not-lifting',
  'severe-fibrosis',
  'perforation',
  'bleeding',
  'poor-access',
  'sedation-or-circulation',
  'equipment-failure',
  'no-lesion-found',
  'patient-withdrew',
] as const;

export const FIXATIVES = ['formalin-10-percent-buffered', 'other'] as const;
export const DESTINATIONS = ['home', 'ward', 'high-dependency', 'intensive-care'] as const;
export const ACID_SUPPRESSIONS = [
  'none',
  'proton-pump-inhibitor',
  'potassium-competitive-blocker',
  'h2-blocker',
] as const;
export const INFORMED = [
  'patient',
  'relative',
  'referring-physician',
  'general-practitioner',
] as const;
export const DIETS = ['fasting', 'clear-fluids', 'soft', 'normal'] as const;

/** Rule sets of curability that a unit may choose; the duodenum has none. */
export const CURABILITY_RULE_SETS = {
  oesophagus: ['esge-esd-2022', 'jges-jes-2020', 'kr-2020'],
  stomach: ['esge-esd-2022', 'jges-jgca-2021'],
  colon: ['esge-esd-2022', 'jsccr-2019'],
  rectum: ['esge-esd-2022', 'jsccr-2019'],
} as const;
/** From which share of the circumference a wound of the oesophagus asks for prophylaxis. */
export const STRICTURE_PROPHYLAXIS_READINGS = [
  'above-three-quarters',
  'from-three-quarters',
] as const;
export const ANTITHROMBOTIC_EDITIONS = [
  'bsg-esge-2016',
  'bsg-esge-2021',
  'asia-pacific-2018',
] as const;
/**
 * The checks of the case review, which a unit can switch off: PC common practice, CC consistency,
 * RC consistency within one part of the record, AT stop and restart of antithrombotics.
 */
export const REVIEW_CHECKS = [
  'PC-01',
  'PC-02',
  'PC-03',
  'PC-04',
  'PC-05',
  'PC-06',
  'PC-07',
  'PC-10',
  'PC-11',
  'PC-13',
  'PC-14',
  'PC-16',
  'PC-17',
  'PC-20',
  'PC-21',
  'PC-22',
  'PC-23',
  'PC-24',
  'PC-25',
  'PC-26',
  'PC-27',
  'PC-30',
  'PC-31',
  'PC-32',
  'PC-33',
  'PC-34',
  'PC-35',
  'PC-36',
  'PC-40',
  'PC-41',
  'PC-42',
  'PC-43',
  'PC-44',
  'PC-45',
  'PC-46',
  'PC-47',
  'CC-04',
  'CC-08',
  'CC-10',
  'CC-12',
  'CC-13',
  'CC-15',
  'RC-01',
  'RC-02',
  'RC-03',
  'RC-04',
  'RC-05',
  'AT-01',
  'AT-02',
  'AT-03',
  'AT-04',
  'AT-05',
  'AT-06',
  'AT-07',
  'AT-08',
] as const;
export type ReviewCheck = (typeof REVIEW_CHECKS)[number];
