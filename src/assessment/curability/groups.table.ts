import type { Citation } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { CurabilityGroup } from '../assessment.js';
import type { EsgeClass } from './esge-esd-2022.table.js';
import type { JesClass } from './jges-jes-2020.table.js';
import type { JgcaClass } from './jges-jgca-2021.table.js';
import type { JsccrClass } from './jsccr-2019.table.js';
import type { KoreanClass } from './kr-2020.table.js';
import type { MapsClass } from './maps-iii-2025.table.js';

/** The coarse group of a class, and why. */
export interface ClassGroup {
  readonly group: CurabilityGroup;
  readonly cites: readonly Citation[];
}

const OUTSIDE = {
  'no-rule': { group: 'open', cites: [cite('esdPractice', 'no table applies', 'derived')] },
  incomplete: { group: 'open', cites: [cite('esdPractice', 'part was left', 'derived')] },
} as const satisfies Record<string, ClassGroup>;

/**
 * Every class of every rule set in its group.
 *
 * Nothing is cured that was not resected en bloc with free margins (R0). Two sets do not ask for
 * that: `follow-up` of jsccr-2019 judges the vertical margin alone, and `curative` of
 * jges-jes-2020 does not look at pieces. There the class stays as the set names it, and without
 * R0 its group is `local-risk`: see `groupOf`.
 */
export const CURABILITY_GROUPS = {
  'esge-esd-2022': {
    ...OUTSIDE,
    'very-low-risk': {
      group: 'curative',
      cites: [cite('esgeEsd2022', 'abstract and society page', 'published')],
    },
    'low-risk': {
      group: 'curative',
      cites: [cite('esgeEsd2022', 'abstract and society page', 'published')],
    },
    'local-risk': {
      group: 'local-risk',
      cites: [cite('esgeEsd2022', 'abstract and society page', 'published')],
    },
    'high-risk': {
      group: 'non-curative',
      cites: [cite('esgeEsd2022', 'abstract and society page', 'published')],
    },
  },
  'jges-jgca-2021': {
    ...OUTSIDE,
    eCuraA: {
      group: 'curative',
      cites: [cite('jgca2021', 'endoscopic curability, second source', 'recalled')],
    },
    eCuraB: {
      group: 'curative',
      cites: [cite('jgca2021', 'endoscopic curability, second source', 'recalled')],
    },
    'eCuraC-1': {
      group: 'local-risk',
      cites: [cite('jgca2021', 'non-curative in name; the risk is local', 'derived')],
    },
    'eCuraC-2': {
      group: 'non-curative',
      cites: [cite('jgca2021', 'endoscopic curability, second source', 'recalled')],
    },
  },
  'jsccr-2019': {
    ...OUTSIDE,
    'follow-up': {
      group: 'curative',
      cites: [cite('jsccr2019', 'no further resection; with R0 only', 'derived')],
    },
    'consider-surgery': {
      group: 'non-curative',
      cites: [cite('jsccr2019', 'risk factors, second source', 'recalled')],
    },
    surgery: {
      group: 'non-curative',
      cites: [cite('jsccr2019', 'vertical margin, second source', 'recalled')],
    },
  },
  'jges-jes-2020': {
    ...OUTSIDE,
    curative: {
      group: 'curative',
      cites: [
        cite('jgesJes2020', 'as in the abstract of Mini-invasive Surg 2021;5:36', 'published'),
        cite('jgesJes2020', 'with R0 only', 'derived'),
      ],
    },
    undetermined: {
      group: 'open',
      cites: [
        cite('jgesJes2020', 'as in the abstract of Mini-invasive Surg 2021;5:36', 'published'),
      ],
    },
    'additional-treatment': {
      group: 'non-curative',
      cites: [
        cite('jgesJes2020', 'as in the abstract of Mini-invasive Surg 2021;5:36', 'published'),
      ],
    },
  },
  'kr-2020': {
    ...OUTSIDE,
    'no-further-treatment': {
      group: 'curative',
      cites: [cite('korea2020', 'statement E7', 'published')],
    },
    'close-follow-up': {
      group: 'open',
      cites: [cite('korea2020', 'statement E7: may be considered', 'published')],
    },
    undetermined: {
      group: 'open',
      cites: [cite('korea2020', 'fills a gap of statement E7', 'derived')],
    },
    'additional-treatment': {
      group: 'non-curative',
      cites: [cite('korea2020', 'statement E7', 'published')],
    },
  },
  'maps-iii-2025': {
    ...OUTSIDE,
    'very-low-risk': {
      group: 'curative',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
    'low-risk': {
      group: 'curative',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
    'local-risk': {
      group: 'local-risk',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
    'high-risk': {
      group: 'non-curative',
      cites: [cite('mapsIii2025', 'as transcribed in a public program', 'recalled')],
    },
  },
} as const satisfies {
  readonly 'esge-esd-2022': Record<EsgeClass, ClassGroup>;
  readonly 'jges-jgca-2021': Record<JgcaClass, ClassGroup>;
  readonly 'jsccr-2019': Record<JsccrClass, ClassGroup>;
  readonly 'jges-jes-2020': Record<JesClass, ClassGroup>;
  readonly 'kr-2020': Record<KoreanClass, ClassGroup>;
  readonly 'maps-iii-2025': Record<MapsClass, ClassGroup>;
};
