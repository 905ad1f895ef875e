import { cite } from '../../references/index.js';
import type { Remark } from '../../rules/index.js';

/** Squamous cancer from the muscularis mucosae on: the figures that no class shows. */
export const METASTASIS_BY_DEPTH: readonly Remark[] = [
  {
    remark: 'metastasis-by-depth',
    when: { tumour: { is: ['squamous'] }, depth: { is: ['mm', 'sm'] } },
    says:
      'Metastasis within 5 years, by depth: 0.4 % in epithelium or lamina propria, 8.7 % in the ' +
      'muscularis mucosae, 7.7 % in the upper submucosa (SM1), 36.2 % in the deep submucosa ' +
      '(SM2). A lesion of the muscularis mucosae is not free of risk.',
    cites: [cite('yamashina2013', 'rates by depth, second source', 'recalled')],
  },
];

/** Recurrence where only the horizontal margin of a colorectal dissection is involved. */
export const RECURRENCE_AFTER_HM1: readonly Remark[] = [
  {
    remark: 'recurrence-after-hm1',
    when: {
      tumour: { is: ['colorectal'] },
      depth: { is: ['m'] },
      hm: { is: ['1'] },
      enBloc: { is: [true] },
      endoscopicallyComplete: { is: [true] },
    },
    says:
      'Recurrence after complete en bloc colorectal dissection of non-invasive lesions: 2 of 96 ' +
      'with an involved horizontal margin, 1 of 212 with a free one.',
    cites: [cite('rEsd2023', 'abstract', 'published')],
  },
  {
    remark: 'recurrence-after-hm1-invasive',
    when: {
      tumour: { is: ['colorectal'] },
      depth: { is: ['sm'] },
      hm: { is: ['1'] },
      enBloc: { is: [true] },
      endoscopicallyComplete: { is: [true] },
    },
    says:
      'Recurrence after complete en bloc colorectal dissection of T1 cancer: 2 of 8 with an ' +
      'involved horizontal margin, 1 of 38 with a free one.',
    cites: [cite('rEsd2023', 'abstract', 'published')],
  },
];
