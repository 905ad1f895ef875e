/** Lists by rule and reason of changes; each name stands in one place. */
type Listed = Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;

/**
 * Changes of a table after which no possible question is answered in another way. The tests hold
 * that to be so, by every question, and hold the reasons too.
 */
export const EQUIVALENT: Listed = {
  'esge-esd-2022': {
    'an earlier row decides wherever it would matter': [
      'squamous-deeper-than-sm1: tumour with other',
      'barrett-deeper-than-sm1: tumour with other',
      'gastric-deeper-than-sm1: tumour with other',
      'colorectal-deeper-than-sm1: tumour with other',
      'poorly-differentiated: tumour with other',
      'gastric-undifferentiated-deep: tumour with other',
      'gastric-undifferentiated-ulcerated: tumour with other',
      'gastric-undifferentiated-large: tumour with other',
      'gastric-undifferentiated-small: tumour with other',
      'budding: tumour with other',
      'squamous-m3-too-large: depth with mp',
      'squamous-sm1-too-large: tumour with other',
      'squamous-sm1-too-large: depth with mp',
      'gastric-sm1-too-large: tumour with other',
      'gastric-sm1-too-large: depth with mp',
      'gastric-ulcerated-too-large: tumour with other',
      'gastric-ulcerated-too-large: depth with mp',
      'gastric-ulcerated-sm1: tumour with other',
      'gastric-ulcerated-sm1: depth with mp',
      'squamous-intramucosal: depth with mp',
      'glandular-intramucosal: tumour with other',
      'glandular-intramucosal: depth with mp',
      'gastric-intramucosal: tumour with other',
      'gastric-intramucosal: depth with mp',
      'squamous-m3: depth with ep, lpm, mp',
      'squamous-sm1: tumour with other',
      'squamous-sm1: depth with ep, lpm, mp',
      'barrett-sm1: tumour with other',
      'barrett-sm1: depth with m, mp',
      'gastric-ulcerated: tumour with barrett, colorectal, other',
      'gastric-ulcerated: depth with mp',
      'gastric-sm1: tumour with other',
      'gastric-sm1: depth with mp',
      'colorectal-sm1: tumour with other',
      'colorectal-sm1: depth with m, mp',
    ],
    'no possible question meets it': [
      'squamous-deeper-than-sm1: depth with ep, lpm, mm, m, mp',
      'barrett-deeper-than-sm1: depth with ep, lpm, mm, m, mp',
      'gastric-deeper-than-sm1: depth with ep, lpm, mm, m, mp',
      'colorectal-deeper-than-sm1: depth with ep, lpm, mm, m, mp',
      'gastric-undifferentiated-deep: depth with ep, lpm, mm',
      'gastric-undifferentiated-small: tumour with squamous',
      'gastric-undifferentiated-small: depth with ep, lpm, mm',
      'budding: depth with ep, lpm, mm',
      'squamous-m3-too-large: tumour with barrett, gastric, colorectal, other',
      'squamous-m3-too-large: depth with m',
      'squamous-sm1-too-large: depth with m',
      'gastric-sm1-too-large: depth with ep, lpm, mm',
      'gastric-ulcerated-too-large: tumour with squamous',
      'gastric-ulcerated-too-large: depth with ep, lpm, mm',
      'gastric-ulcerated-sm1: depth with ep, lpm, mm',
      'squamous-intramucosal: tumour with barrett, gastric, colorectal, other',
      'squamous-intramucosal: depth with m',
      'glandular-intramucosal: tumour with squamous',
      'glandular-intramucosal: depth with ep, lpm, mm',
      'gastric-intramucosal: tumour with squamous',
      'gastric-intramucosal: depth with ep, lpm, mm',
      'squamous-m3: tumour with barrett, gastric, colorectal, other',
      'squamous-m3: depth with m',
      'squamous-sm1: depth with m',
      'barrett-sm1: depth with ep, lpm, mm',
      'gastric-ulcerated: tumour with squamous',
      'gastric-ulcerated: depth with ep, lpm, mm',
      'gastric-sm1: depth with ep, lpm, mm',
      'colorectal-sm1: depth with ep, lpm, mm',
    ],
    'another row says the same wherever it matters': [
      'barrett-deeper-than-sm1: tumour with squamous, gastric',
      'gastric-deeper-than-sm1: tumour with squamous, barrett',
      'colorectal-deeper-than-sm1: tumour with squamous, barrett, gastric',
      'squamous-m3-too-large: depth with sm',
      'squamous-sm1-too-large: depth with mm',
      'gastric-sm1-too-large: tumour with squamous',
      'gastric-intramucosal: tumour with barrett, colorectal',
      'squamous-m3: depth with sm',
      'squamous-sm1: tumour with barrett, gastric, colorectal',
      'squamous-sm1: depth with mm',
      'barrett-sm1: tumour with squamous, gastric, colorectal',
      'gastric-sm1: tumour with squamous, barrett, colorectal',
      'gastric-sm1: depth with m',
      'colorectal-sm1: tumour with squamous, barrett, gastric',
    ],
  },
  'jges-jgca-2021': {
    'an earlier row decides wherever it would matter': [
      'muscle-invasion: depth with ep, lpm, mm',
      'undifferentiated-in-submucosa: depth with ep, lpm, mm',
      'ulcerated-large: depth with ep, lpm, mm',
      'submucosal-large: depth with ep, lpm, mm',
      'long-undifferentiated-part: depth with ep, lpm, mm',
      'undifferentiated-part-in-submucosa: depth with ep, lpm, mm',
      'differentiated: depth with ep, lpm, mm, mp',
      'differentiated-ulcerated: gastricType with undifferentiated',
      'differentiated-ulcerated: depth with ep, lpm, mm, mp',
      'undifferentiated-small: depth with ep, lpm, mm, sm, mp',
      'submucosal: gastricType with undifferentiated',
      'submucosal: depth with ep, lpm, mm, m, mp',
    ],
    'no possible question meets it': [
      'deep-submucosa: depth with ep, lpm, mm, m, mp',
      'undifferentiated-part-in-submucosa: depth with m',
    ],
    'another row says the same wherever it matters': [
      'differentiated: gastricType with undifferentiated',
      'differentiated: ulcer with UL1',
      'differentiated-ulcerated: ulcer with UL0',
      'undifferentiated-small: gastricType with differentiated',
    ],
  },
  'jsccr-2019': {
    'another row says the same wherever it matters': ['not-pt1: depth with ep, lpm, mm'],
  },
  'jges-jes-2020': {
    'an earlier row decides wherever it would matter': [
      'submucosal-invasion: depth with m',
      'muscularis-mucosae: depth with m, sm, mp',
      'no-deeper-than-lamina-propria: depth with mm, m, sm, mp',
    ],
  },
  'kr-2020': {
    'an earlier row decides wherever it would matter': [
      'submucosal-invasion: depth with m',
      'muscularis-mucosae: depth with m, sm, mp',
      'no-deeper-than-lamina-propria: depth with mm, m, sm, mp',
    ],
  },
  'maps-iii-2025': {
    'an earlier row decides wherever it would matter': [
      'muscle-invasion: depth with ep, lpm, mm',
      'undifferentiated-in-submucosa: depth with ep, lpm, mm',
      'submucosal-large: depth with ep, lpm, mm',
      'differentiated: depth with ep, lpm, mm, mp',
      'differentiated-ulcerated: gastricType with undifferentiated',
      'differentiated-ulcerated: depth with ep, lpm, mm, mp',
      'undifferentiated-small: gastricType with differentiated',
      'undifferentiated-small: depth with ep, lpm, mm, sm, mp',
      'differentiated-sm1: gastricType with undifferentiated',
      'differentiated-sm1: depth with ep, lpm, mm, m, mp',
    ],
    'no possible question meets it': ['deep-submucosa: depth with ep, lpm, mm, m, mp'],
    'another row says the same wherever it matters': [
      'differentiated: ulcer with UL1',
      'differentiated-ulcerated: ulcer with UL0',
    ],
  },
  'jges-jes-2020-indication': {
    'no possible question meets it': ['deep-submucosa: cDepth with ep, lpm, mm'],
    'another row says the same wherever it matters': [
      'deep-submucosa: no reason',
      'whole-circumference-deep: no reason',
      'whole-circumference-long: no reason',
      'part-of-circumference: circumferencePercent below 100 as below 101',
      'part-of-circumference: circumferencePercent below 100 as atMost 100',
      'whole-circumference-short: circumferencePercent atLeast 100 as atLeast 99',
    ],
  },
  ecura: {
    'another group holds, or no total is so low or high': [
      'low: from 0 as -1',
      'intermediate: from 2 as 1',
      'high: from 5 as 4',
      'high: to 7 as 8',
    ],
  },
  limoges: {
    'another group holds, or no total is so low or high': [
      'low-medium: from 0 as -1',
      'high: from 5 as 4',
      'high: to 8 as 9',
    ],
  },
  'colorectal-difficulty-2021': {
    'another group holds, or no total is so low or high': [
      'easy: from 0 as -1',
      'intermediate: from 1 as 0',
      'difficult: from 2 as 1',
      'very-difficult: from 4 as 3',
    ],
  },
  'colorectal-difficulty-2023': {
    'another group holds, or no total is so low or high': [
      'easy: from 0 as -1',
      'intermediate: from 2 as 1',
      'difficult: from 4 as 3',
      'very-difficult: from 7 as 6',
    ],
  },
  'colorectal-difficulty-matsumoto-2019': {
    'another group holds, or no total is so low or high': [
      'low: from 0 as -1',
      'intermediate: from 3 as 2',
      'high: from 6 as 5',
    ],
  },
  agree: {
    'an earlier row decides wherever it would matter': [
      'one-organ: criticalCare with multi-organ',
      'endoscopy-or-radiology: intervention with surgical',
      'admission-24-h: admissionHours atMost 24 as atMost 25',
    ],
    'another row says the same wherever it matters': [
      'admission-below-24-h: admissionHours below 24 as below 25',
      'admission-below-24-h: admissionHours below 24 as atMost 24',
      'admission-24-h: admissionHours atLeast 24 as atLeast 23',
    ],
  },
  'clavien-dindo': {
    'an earlier row decides wherever it would matter': ['one-organ: criticalCare with multi-organ'],
  },
  bbps: {
    'another group holds, or no total is so low or high': [
      'adequate: from 0 as 1, -1',
      'adequate: to 9 as 10',
      'not-adequate: from 0 as -1',
      'not-adequate: to 9 as 10, 8',
    ],
  },
  'sydney-dmi': {
    'an earlier row decides wherever it would matter': [
      'muscle-visible: sign with normal',
      'plane-lost: sign with normal, muscle-visible',
      'target: sign with normal, muscle-visible, plane-lost',
      'hole-with-contamination: sign with normal, muscle-visible, plane-lost, target',
      'hole-without-contamination: sign with normal, muscle-visible, plane-lost, target',
      'hole-without-contamination: contamination with true',
    ],
  },
  fibrosis: {
    'an earlier row decides wherever it would matter': [
      'mild: layer with transparent-blue',
      'severe: layer with transparent-blue, white-web-in-blue',
    ],
  },
  'difficult-esd': {
    'another row says the same wherever it matters': [
      'slow: outcome with converted-to-emr, abandoned',
      'converted: outcome with abandoned',
      'abandoned: outcome with converted-to-emr',
    ],
    'an earlier row decides wherever it would matter': [
      'quick: outcome with converted-to-emr, abandoned',
      'quick: speedCm2PerMin atLeast 0.07 as atLeast -0.9299999999999999',
      'piecemeal: outcome with en-bloc, converted-to-emr, abandoned',
    ],
  },
  'best-j': {
    'no possible question meets it': [
      'warfarin-interrupted: warfarin with false',
      'doac-interrupted: doac with false',
      'p2y12-interrupted: p2y12 with false',
      'aspirin-interrupted: aspirin with false',
      'cilostazol-interrupted: cilostazol with false',
    ],
    'another group holds, or no total is so low or high': [
      'low: from 0 as -1',
      'intermediate: from 2 as 1',
      'high: from 3 as 2',
      'very-high: from 5 as 4',
    ],
  },
  'budding-itbcc': {
    'an earlier row decides wherever it would matter': [
      'intermediate: budsInStandardField below 10 as below 11',
      'intermediate: budsInStandardField below 10 as atMost 10',
      'low: budsInStandardField below 5 as below 6',
      'low: budsInStandardField below 5 as atMost 5',
    ],
  },
  'esge-esd-2022-follow-up': {
    'an earlier row decides wherever it would matter': [
      'high-risk: class with not-back',
      'no-class: class with high-risk, not-back',
      'squamous-curative: class with high-risk, incomplete, no-rule, indeterminate, not-back',
      'squamous-local: class with very-low-risk, low-risk, high-risk, incomplete, no-rule, indeterminate, not-back',
      'barrett-curative: tumour with squamous',
      'barrett-curative: class with high-risk, incomplete, no-rule, indeterminate, not-back',
      'gastric-curative: class with high-risk, incomplete, no-rule, indeterminate, not-back',
      'gastric-local: class with very-low-risk, low-risk, high-risk, incomplete, no-rule, indeterminate, not-back',
      'colorectal-intramucosal: class with high-risk, incomplete, no-rule, indeterminate, not-back',
      'colorectal-pt1: class with very-low-risk, high-risk, incomplete, no-rule, indeterminate, not-back',
      'colorectal-margin: class with very-low-risk, low-risk, high-risk, incomplete, no-rule, indeterminate, not-back',
      'colorectal-piecemeal: class with very-low-risk, low-risk, high-risk, incomplete, no-rule, indeterminate, not-back',
    ],
    'another row says the same wherever it matters': [
      'no-class: class without incomplete, no-rule, indeterminate',
      'no-class: removed',
      'squamous-curative: gives GAS-1',
      'squamous-local: gives GAS-2',
      'gastric-curative: gives OES-1',
      'gastric-local: gives OES-2',
      'colorectal-margin: organ without colon, rectum',
      'colorectal-margin: tumour without colorectal',
      'colorectal-margin: class without local-risk',
      'colorectal-margin: enBloc without true',
      'colorectal-margin: enBloc with false',
      'colorectal-margin: gives COL-2',
      'colorectal-margin: removed',
      'colorectal-piecemeal: gives COL-3',
      'colorectal-piecemeal before colorectal-margin',
    ],
  },
  'jges-jes-2020-follow-up': {
    'another row says the same wherever it matters': [
      'no-class: class without incomplete, no-rule, indeterminate',
      'no-class: removed',
    ],
    'an earlier row decides wherever it would matter': [
      'no-class: class with not-back',
      'curative-few: class with incomplete, no-rule, indeterminate, not-back',
      'curative-many: class with incomplete, no-rule, indeterminate, not-back',
      'untreated: class with curative, incomplete, no-rule, indeterminate, not-back',
    ],
  },
  'jges-jgca-2021-follow-up': {
    'another row says the same wherever it matters': [
      'no-class: class without incomplete, no-rule, indeterminate',
      'no-class: removed',
      'c1: class with eCuraC-2',
      'c1: gives GAS-7',
      'c2: gives GAS-6',
    ],
    'an earlier row decides wherever it would matter': [
      'no-class: class with not-back',
      'a: class with incomplete, no-rule, indeterminate, not-back',
      'b: class with eCuraA, incomplete, no-rule, indeterminate, not-back',
      'c1: class with eCuraA, eCuraB, incomplete, no-rule, indeterminate, not-back',
      'c2: class with eCuraA, eCuraB, eCuraC-1, incomplete, no-rule, indeterminate, not-back',
    ],
  },
  'esge-pps-2020': {
    'an earlier row decides wherever it would matter': ['later-found: findings with none'],
    'another row says the same wherever it matters': [
      'adenoma-size: polypType with sessile-serrated, traditional-serrated, hyperplastic',
      'serrated-size: polypType with adenoma',
      'serrated-dysplasia: histology with high-grade-dysplasia, carcinoma',
    ],
  },
  'esge-esdo-2019': {
    'an earlier row decides wherever it would matter': ['pt1-low-risk: class with high-risk'],
  },
  'usmstf-2020': {
    'another row says the same wherever it matters': [
      'serrated-size: polypType with traditional-serrated',
      'serrated-dysplasia: polypType with traditional-serrated',
    ],
  },
  'esge-barrett-2023': {
    'an earlier row decides wherever it would matter': [
      'eradicated-low: baselineHistology with high-grade-dysplasia, carcinoma',
      'below-1-cm: stage with later',
      '1-to-3-cm: stage with later',
      '1-to-3-cm: barrettMaxCm atLeast 1 as atLeast 0',
      '3-to-10-cm: stage with later',
      '3-to-10-cm: barrettMaxCm atLeast 3 as atLeast 2',
      '10-cm: stage with later',
      '10-cm: barrettMaxCm atLeast 10 as atLeast 9',
    ],
  },
  'without-surgery': {
    'an earlier row decides wherever it would matter': [
      'colorectal-pt1: tumour with squamous, gastric',
    ],
  },
  'background-mucosa': {
    'an earlier row decides wherever it would matter': [
      'low-grade: dysplasia with high-grade',
      'incomplete: extent with antrum-and-corpus',
      'gastritis: extent with antrum-and-corpus',
      'family: extent with antrum-and-corpus',
    ],
    'another row says the same wherever it matters': [
      'gastritis: metaplasia without incomplete',
      'family: metaplasia without incomplete',
    ],
  },
  'scar-recurrence': {
    'an earlier row decides wherever it would matter': [
      'indefinite-tissue: tissue with low-grade-dysplasia, high-grade-dysplasia, carcinoma',
      'free-tissue-of-a-neoplastic-look: tissue with indefinite, low-grade-dysplasia, high-grade-dysplasia, carcinoma',
      'free-tissue: tissue with indefinite, low-grade-dysplasia, high-grade-dysplasia, carcinoma',
      'free-tissue: look with residual-or-recurrent-neoplasia',
      'neoplastic-look: tissue with no-neoplasia, serrated-without-dysplasia, indefinite, low-grade-dysplasia, high-grade-dysplasia, carcinoma',
      'uncertain-look: tissue with no-neoplasia, serrated-without-dysplasia, indefinite, low-grade-dysplasia, high-grade-dysplasia, carcinoma',
      'uncertain-look: look with residual-or-recurrent-neoplasia',
      'clean-look: tissue with no-neoplasia, serrated-without-dysplasia, indefinite, low-grade-dysplasia, high-grade-dysplasia, carcinoma',
      'clean-look: look with uncertain, residual-or-recurrent-neoplasia',
    ],
  },
};

/** Changes of what absence means that no question with up to two holes tells. */
export const NEVER_TOLD: Listed = {
  'esge-esd-2022': {
    'both values give the same points or class': [
      'differentiation: assumed well as moderate',
      'ly: assumed 0 as X',
      'v: assumed 0 as X',
    ],
    'a class is certain wherever it would be asked for': [
      'differentiation: asked when tumour with other',
      'gastricType: asked when tumour with other',
      'sizeMm: asked when tumour with other',
      'ulcer: asked when tumour with other',
      'budding: asked when tumour with other',
    ],
    'no such layer beside this tumour': [
      'gastricType: assumed differentiated when depth without ep, lpm, mm',
      'budding: asked when depth with ep, lpm, mm',
    ],
  },
  'jges-jgca-2021': {
    'no such layer beside this tumour': [
      'smDepthUm: asked when depth with ep, lpm, mm',
      'gastricType: assumed differentiated when depth without ep, lpm, mm',
      'ly: assumed 0 when depth without ep, lpm, mm',
      'v: assumed 0 when depth without ep, lpm, mm',
    ],
    'a class is certain wherever it would be asked for': [
      'gastricType: always asked',
      'gastricType: asked when tumour with squamous, barrett, colorectal, other',
      'sizeMm: always asked',
      'sizeMm: asked when tumour without squamous',
      'sizeMm: asked when tumour with barrett, colorectal, other',
      'ulcer: always asked',
      'ulcer: asked when tumour with squamous, barrett, colorectal, other',
    ],
    'both values give the same points or class': [
      'undiffLengthMm: assumed 0 as 20',
      'ly: assumed 0 as X',
      'v: assumed 0 as X',
    ],
  },
  'jsccr-2019': {
    'a class is certain wherever it would be asked for': [
      'smDepthUm: always asked',
      'smDepthUm: asked when depth with ep, lpm, mm, m, mp',
      'differentiation: always asked',
      'differentiation: asked when tumour without squamous, barrett',
      'differentiation: asked when tumour with gastric, other',
      'budding: always asked',
    ],
    'only invasion of the submucosa has a class, which is no pure dysplasia': [
      'differentiation: assumed well as moderate, poor, signet, mucinous',
      'differentiation: not assumed well',
      'differentiation: assumed well when histology without low-grade-dysplasia, high-grade-dysplasia',
      'differentiation: assumed well when histology with carcinoma',
      'differentiation: assumed well when depth without ep, lpm, mm, m',
      'differentiation: assumed well when depth with mp',
      'ly: assumed 0 as 1, X',
      'ly: not assumed 0',
      'ly: assumed 0 when histology without low-grade-dysplasia, high-grade-dysplasia',
      'ly: assumed 0 when histology with carcinoma',
      'ly: assumed 0 when depth without ep, lpm, mm, m',
      'ly: assumed 0 when depth with mp',
      'v: assumed 0 as 1, X',
      'v: not assumed 0',
      'v: assumed 0 when histology without low-grade-dysplasia, high-grade-dysplasia',
      'v: assumed 0 when histology with carcinoma',
      'v: assumed 0 when depth without ep, lpm, mm, m',
      'v: assumed 0 when depth with mp',
    ],
  },
  'jges-jes-2020': {
    'the field plays no part in the class': [
      'differentiation: assumed well as moderate, poor, signet, mucinous',
      'differentiation: not assumed well',
      'differentiation: assumed well when histology without low-grade-dysplasia, high-grade-dysplasia',
      'differentiation: assumed well when histology with carcinoma',
      'differentiation: assumed well when depth without ep, lpm, mm, m',
      'differentiation: assumed well when depth with sm, mp',
    ],
    'both values give the same points or class': ['ly: assumed 0 as X', 'v: assumed 0 as X'],
    'no such layer beside this tumour': [
      'ly: assumed 0 when depth without m',
      'v: assumed 0 when depth without m',
    ],
  },
  'kr-2020': {
    'the field plays no part in the class': [
      'differentiation: assumed well as moderate, poor, signet, mucinous',
      'differentiation: not assumed well',
      'differentiation: assumed well when histology without low-grade-dysplasia, high-grade-dysplasia',
      'differentiation: assumed well when histology with carcinoma',
      'differentiation: assumed well when depth without ep, lpm, mm, m',
      'differentiation: assumed well when depth with sm, mp',
    ],
    'both values give the same points or class': ['ly: assumed 0 as X', 'v: assumed 0 as X'],
    'no such layer beside this tumour': [
      'ly: assumed 0 when depth without m',
      'v: assumed 0 when depth without m',
    ],
  },
  'maps-iii-2025': {
    'no such layer beside this tumour': [
      'smDepthUm: asked when depth with ep, lpm, mm',
      'gastricType: assumed differentiated when depth without ep, lpm, mm',
      'ly: assumed 0 when depth without ep, lpm, mm',
      'v: assumed 0 when depth without ep, lpm, mm',
    ],
    'a class is certain wherever it would be asked for': [
      'gastricType: always asked',
      'gastricType: asked when tumour with squamous, barrett, colorectal, other',
      'sizeMm: always asked',
      'sizeMm: asked when tumour without squamous',
      'sizeMm: asked when tumour with barrett, colorectal, other',
      'ulcer: always asked',
      'ulcer: asked when tumour with squamous, barrett, colorectal, other',
    ],
    'both values give the same points or class': ['ly: assumed 0 as X', 'v: assumed 0 as X'],
  },
  'jges-jes-2020-indication': {
    'a class is certain wherever it would be asked for': ['cSmDepthUm: asked when cDepth with ep'],
  },
  'colorectal-difficulty-2023': {
    'both values give the same points or class': ['nice: assumed 2 as 1'],
  },
  agree: {
    'the field plays no part in the class': ['generalAnaesthesia: assumed false, true'],
    'both values give the same points or class': ['observationHours: assumed 0 as 2'],
  },
  'sydney-dmi': {
    'a class is certain wherever it would be asked for': [
      'contamination: always asked',
      'contamination: asked when sign with normal, muscle-visible, plane-lost, target',
    ],
  },
  'difficult-esd': {
    'a class is certain wherever it would be asked for': [
      'speedCm2PerMin: always asked',
      'speedCm2PerMin: asked when outcome with piecemeal, converted-to-emr, abandoned',
    ],
  },
  'stricture-flag': {
    'the field plays no part in the class': ['upperOesophagus: assumed false, true'],
  },
  'stricture-flag-stomach': {
    'a class is certain wherever it would be asked for': [
      'defectLengthMm: always asked',
      'defectLengthMm: asked when defectCircumferencePercent above 75 as above 74',
      'defectLengthMm: asked when defectCircumferencePercent above 75 as atLeast 75',
    ],
  },
  'best-j': {
    'people send a list of drugs, which has no such gap': [
      'warfarin: never asked',
      'warfarin: assumed false, true',
      'warfarinInterrupted: assumed false, true',
      'doac: never asked',
      'doac: assumed false, true',
      'doacInterrupted: assumed false, true',
      'p2y12: never asked',
      'p2y12: assumed false, true',
      'p2y12Interrupted: assumed false, true',
      'aspirin: never asked',
      'aspirin: assumed false, true',
      'aspirinInterrupted: assumed false, true',
      'cilostazol: never asked',
      'cilostazol: assumed false, true',
      'cilostazolInterrupted: assumed false, true',
    ],
  },
  'esge-esd-2022-follow-up': {
    'both values give the same points or class': ['enBloc: assumed true as false'],
  },
  'esge-pps-2020': {
    'nobody sends it: it is always told by the other fields': ['stage: never asked'],
    'both values give the same points or class': ['count: assumed 1 as 0, 4'],
    'the field plays no part in the class': ['r0: assumed false, true'],
  },
  'esge-barrett-2023': {
    'nobody sends it: it is always told by the other fields': ['stage: never asked'],
  },
  'background-mucosa': {
    'both values give the same points or class': ['gastritisStage: assumed 0 as I, II'],
  },
  'without-surgery': {
    'a class is certain wherever it would be asked for': ['depth: asked when tumour with other'],
  },
};
