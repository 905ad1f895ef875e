import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import {
  enBloc,
  esdDate,
  type PolypHistology,
  type PolypType,
  polypHistology,
  polypType,
  sizeMm,
} from './polyp-fields.js';

interface Question {
  readonly esdDate: string;
  readonly sizeMm: number;
  readonly polypType: PolypType;
  readonly histology: PolypHistology;
  readonly enBloc: boolean;
}

const FIELDS: FieldsOf<Question> = {
  esdDate,
  sizeMm,
  polypType,
  histology: polypHistology,
  enBloc,
};

const leads = leadsTo<Question>;

/** The tables of the work say 20 mm or more, its prose more than 20 mm: the tables are taken. */
const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('COL-8', 'piecemeal', 'piecemeal, 20 mm or more', {
      sizeMm: { atLeast: 20 },
      enBloc: { is: [false] },
    }),
  ],
  [
    leads('COL-9', 'serrated-size', 'sessile serrated, 10 mm or more, en bloc', {
      polypType: { is: ['sessile-serrated'] },
      sizeMm: { atLeast: 10 },
      enBloc: { is: [true] },
    }),
    leads('COL-9', 'serrated-dysplasia', 'sessile serrated with dysplasia, en bloc', {
      polypType: { is: ['sessile-serrated'] },
      histology: { is: ['low-grade-dysplasia', 'high-grade-dysplasia'] },
      enBloc: { is: [true] },
    }),
    leads('COL-9', 'traditional-serrated', 'traditional serrated, en bloc', {
      polypType: { is: ['traditional-serrated'] },
      enBloc: { is: [true] },
    }),
  ],
  [leads('clinician', 'other', 'no row for such a lesion was read', {})],
];

export const USMSTF_2020 = followUpRule({
  id: 'usmstf-2020',
  version: 1,
  title: 'US Multi-Society Task Force, follow-up after polypectomy, 2020',
  population: 'Adults after complete removal of colorectal polyps without invasive cancer.',
  cites: [cite('usmstf2020', 'tables 4 and 5', 'published')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'esdDate',
});
