import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import {
  NOT_BACK,
  type Organ,
  organ,
  type Tumour,
  tumour,
  WITHOUT_CLASS,
} from './after-class-fields.js';
import { followUpRule, leadsTo, nullAs } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { enBloc, esdDate } from './polyp-fields.js';

const CLASSES = [
  'very-low-risk',
  'low-risk',
  'local-risk',
  'high-risk',
  ...WITHOUT_CLASS,
  NOT_BACK,
] as const;

interface Question {
  readonly organ: Organ;
  readonly tumour: Tumour;
  readonly esdDate: string;
  readonly class: (typeof CLASSES)[number];
  readonly enBloc: boolean;
}

const FIELDS: FieldsOf<Question> = {
  organ,
  tumour,
  esdDate,
  class: { type: 'word', says: 'class by this rule set; null: not back', words: CLASSES },
  enBloc: { ...enBloc, assumed: [{ when: {}, value: true }] },
};

const CURATIVE = { is: ['very-low-risk', 'low-risk'] } as const;
const LOCAL = { is: ['local-risk'] } as const;
const SQUAMOUS = { organ: { is: ['oesophagus'] }, tumour: { is: ['squamous'] } } as const;
const BARRETT = { organ: { is: ['oesophagus'] }, tumour: { is: ['barrett'] } } as const;
const GASTRIC = { organ: { is: ['stomach'] }, tumour: { is: ['gastric'] } } as const;
const COLORECTAL = {
  organ: { is: ['colon', 'rectum'] },
  tumour: { is: ['colorectal'] },
} as const;

const leads = leadsTo<Question>;

/** The class decides before the size. */
const TABLE: TableOf<Question, FollowUpRow> = [
  [leads('pathology', 'not-back', 'pathology is not back', { class: { is: [NOT_BACK] } })],
  [leads('meeting', 'high-risk', 'high-risk resection', { class: { is: ['high-risk'] } })],
  [leads('clinician', 'no-class', 'no class', { class: { is: WITHOUT_CLASS } })],
  [leads('OES-1', 'squamous-curative', 'squamous, curative', { ...SQUAMOUS, class: CURATIVE })],
  [leads('OES-2', 'squamous-local', 'squamous, local risk', { ...SQUAMOUS, class: LOCAL })],
  [leads('BAR-1', 'barrett-curative', 'Barrett, curative', { ...BARRETT, class: CURATIVE })],
  [leads('GAS-1', 'gastric-curative', 'gastric, curative', { ...GASTRIC, class: CURATIVE })],
  [leads('GAS-2', 'gastric-local', 'gastric, local risk', { ...GASTRIC, class: LOCAL })],
  [
    leads('COL-1', 'colorectal-intramucosal', 'colorectal, very low risk', {
      ...COLORECTAL,
      class: { is: ['very-low-risk'] },
    }),
  ],
  [
    leads('COL-4', 'colorectal-pt1', 'colorectal, pT1 of low risk', {
      ...COLORECTAL,
      class: { is: ['low-risk'] },
    }),
  ],
  [
    leads('COL-3', 'colorectal-margin', 'colorectal, en bloc with an involved margin', {
      ...COLORECTAL,
      class: LOCAL,
      enBloc: { is: [true] },
    }),
  ],
  [
    leads('COL-2', 'colorectal-piecemeal', 'colorectal, piecemeal', {
      ...COLORECTAL,
      class: LOCAL,
    }),
  ],
  [leads('clinician', 'other', 'no row for such a tumour', {})],
];

export const ESGE_ESD_2022_FOLLOW_UP = followUpRule({
  id: 'esge-esd-2022-follow-up',
  version: 1,
  title: 'Follow-up by class of the European guideline of 2022',
  population: 'Adults after dissection, by the class of esge-esd-2022.',
  cites: [cite('esgeEsd2022', 'follow-up by class; from memory', 'recalled')],
  fields: FIELDS,
  table: TABLE,
  unfold: nullAs('class', NOT_BACK),
  anchor: 'esdDate',
});
