import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { enBloc, esdDate, type PolypHistology, polypHistology } from './polyp-fields.js';

interface Question {
  readonly esdDate: string;
  readonly histology: PolypHistology;
  readonly depth: 'm' | 'sm' | 'mp';
  readonly enBloc: boolean;
}

const FIELDS: FieldsOf<Question> = {
  esdDate,
  histology: polypHistology,
  depth: { type: 'word', says: 'deepest layer reached', words: ['m', 'sm', 'mp'] },
  enBloc,
};

const leads = leadsTo<Question>;

/** pTis there is a carcinoma within the mucosa, which includes high-grade dysplasia. */
const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('COL-10', 'in-situ-piecemeal', 'pTis, piecemeal', {
      histology: { is: ['high-grade-dysplasia', 'carcinoma'] },
      depth: { is: ['m'] },
      enBloc: { is: [false] },
    }),
  ],
  [leads('clinician', 'other', 'no row for such a lesion was read', {})],
];

export const JGES_COLORECTAL_2020 = followUpRule({
  id: 'jges-colorectal-2020',
  version: 1,
  title: 'Japanese guideline on colorectal dissection, follow-up after piecemeal resection',
  population: 'Adults after piecemeal resection of a colorectal pTis.',
  cites: [cite('jgesColorectal', 'follow-up; second source', 'recalled')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'esdDate',
});
