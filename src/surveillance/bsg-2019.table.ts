import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { enBloc, esdDate, r0, sizeMm } from './polyp-fields.js';

interface Question {
  readonly esdDate: string;
  readonly sizeMm: number;
  readonly enBloc: boolean;
  readonly r0: boolean;
}

const FIELDS: FieldsOf<Question> = {
  esdDate,
  sizeMm,
  enBloc,
  r0: { ...r0, assumed: [{ when: {}, value: false }] },
};

const leads = leadsTo<Question>;

const TABLE: TableOf<Question, FollowUpRow> = [
  [leads('clinician', 'small', 'smaller than 20 mm', { sizeMm: { below: 20 } })],
  [leads('COL-6', 'r0', 'en bloc, R0', { enBloc: { is: [true] }, r0: { is: [true] } })],
  [leads('COL-7', 'not-proven', 'piecemeal, or R0 not proven', {})],
];

export const BSG_2019 = followUpRule({
  id: 'bsg-2019',
  version: 1,
  title: 'British guideline on surveillance after polypectomy, 2019',
  population: 'Adults after removal of a non-pedunculated colorectal polyp of 20 mm or more.',
  cites: [cite('bsg2020', 'large non-pedunculated polyps; second source', 'recalled')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'esdDate',
});
