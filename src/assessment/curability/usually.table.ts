import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { CURABILITY_GROUPS } from './groups.table.js';

/** What usually follows a class. */
export interface Usually {
  readonly says: string;
  readonly cites: readonly Citation[];
}

/** Said with every class. */
export const WHO_DECIDES = 'Licensed clinicians decide, with the patient.';

const OUTSIDE = {
  'no-rule': {
    says: 'This rule set does not speak of the lesion; a clinician decides what follows.',
    cites: [cite('esdPractice', 'no table applies', 'practice')],
  },
  incomplete: {
    says: 'Part of the lesion is still there: how to go on with it comes first.',
    cites: [cite('esdPractice', 'part was left', 'practice')],
  },
} as const satisfies Record<string, Usually>;

/** In plain words of our own; who decides is said beside it. */
export const USUALLY = {
  'esge-esd-2022': {
    ...OUTSIDE,
    'very-low-risk': {
      says: 'As a rule neither further staging nor further treatment; follow-up as for the organ.',
      cites: [cite('esgeEsd2022', 'abstract, second source', 'recalled')],
    },
    'low-risk': {
      says: 'As a rule no further treatment; follow-up as for the organ.',
      cites: [cite('esgeEsd2022', 'abstract, second source', 'recalled')],
    },
    'local-risk': {
      says: 'Endoscopic surveillance or another endoscopic treatment, rather than surgery.',
      cites: [cite('esgeEsd2022', 'abstract and society page', 'published')],
    },
    'high-risk': {
      says:
        'Complete staging; whether further treatment helps this patient is weighed in a ' +
        'multidisciplinary meeting.',
      cites: [cite('esgeEsd2022', 'abstract and society page', 'published')],
    },
  },
  'jges-jgca-2021': {
    ...OUTSIDE,
    eCuraA: {
      says: 'Endoscopy once or twice a year.',
      cites: [cite('jgesEsd2021', 'as transcribed in a program', 'recalled')],
    },
    eCuraB: {
      says:
        'Endoscopy once or twice a year, with ultrasound or computed tomography in search of ' +
        'metastases.',
      cites: [cite('jgesEsd2021', 'as transcribed in a program', 'recalled')],
    },
    'eCuraC-1': {
      says:
        'Another dissection, coagulation, surgery or close follow-up, as the informed patient ' +
        'chooses.',
      cites: [cite('jgesEsd2021', 'as transcribed in a program', 'recalled')],
    },
    'eCuraC-2': {
      says:
        'Gastrectomy with dissection of lymph nodes is the standard; follow-up alone only after ' +
        'its risk was weighed.',
      cites: [cite('jgesEsd2021', 'as transcribed in a program', 'recalled')],
    },
  },
  'jsccr-2019': {
    ...OUTSIDE,
    'follow-up': {
      says:
        'Follow-up without further resection; where the horizontal margin is involved, ' +
        'recurrence at the scar is looked for.',
      cites: [cite('jsccr2019', 'none of the factors, by complement', 'recalled')],
    },
    'consider-surgery': {
      says: 'Resection of the bowel with dissection of lymph nodes is considered.',
      cites: [cite('jsccr2019', 'risk factors, second source', 'recalled')],
    },
    surgery: {
      says: 'Resection of the bowel is advised.',
      cites: [cite('jsccr2019', 'vertical margin, second source', 'recalled')],
    },
  },
  'jges-jes-2020': {
    ...OUTSIDE,
    curative: {
      says: 'Follow-up without additional treatment.',
      cites: [
        cite('jgesJes2020', 'as in the abstract of Mini-invasive Surg 2021;5:36', 'published'),
      ],
    },
    undetermined: {
      says: 'Not settled: additional treatment or close follow-up, weighed for each patient.',
      cites: [
        cite('jgesJes2020', 'as in the abstract of Mini-invasive Surg 2021;5:36', 'published'),
      ],
    },
    'additional-treatment': {
      says: 'Additional treatment, as chemoradiotherapy or surgery, is proposed.',
      cites: [
        cite('jgesJes2020', 'as in the abstract of Mini-invasive Surg 2021;5:36', 'published'),
        cite('jgesJes2020', 'kinds of treatment, as transcribed in a program', 'recalled'),
      ],
    },
  },
  'kr-2020': {
    ...OUTSIDE,
    'no-further-treatment': {
      says: 'No further treatment; follow-up.',
      cites: [cite('korea2020', 'statement E7', 'published')],
    },
    'close-follow-up': {
      says: 'Close follow-up may be considered.',
      cites: [cite('korea2020', 'statement E7', 'published')],
    },
    undetermined: {
      says: 'The statement is silent: further treatment or close follow-up is weighed.',
      cites: [cite('korea2020', 'fills a gap of statement E7', 'derived')],
    },
    'additional-treatment': {
      says: 'Additional treatment is advised.',
      cites: [
        cite('korea2020', 'statement E7', 'published'),
        cite('korea2020', 'end of statement E7, from memory', 'recalled'),
      ],
    },
  },
  'maps-iii-2025': {
    ...OUTSIDE,
    'very-low-risk': {
      says: 'Endoscopy after 3 to 6 months, then every year; no routine imaging of the body.',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
    'low-risk': {
      says:
        'Complete staging and a multidisciplinary discussion; further treatment is generally not ' +
        'needed. Endoscopy after 3 to 6 months, then every year.',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
    'local-risk': {
      says: 'Another treatment, or endoscopy after 3 to 6 months and then every year.',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
    'high-risk': {
      says: 'Staging and a multidisciplinary meeting, in which surgery is weighed.',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
  },
} as const satisfies {
  readonly [Set in keyof typeof CURABILITY_GROUPS]: Record<
    keyof (typeof CURABILITY_GROUPS)[Set],
    Usually
  >;
};
