import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { esdDate, type PolypType, polypType } from './polyp-fields.js';

interface Question {
  readonly esdDate: string;
  readonly polypType: PolypType;
}

const FIELDS: FieldsOf<Question> = { esdDate, polypType };

const leads = leadsTo<Question>;

const TABLE: TableOf<Question, FollowUpRow> = [
  [leads('DUO-1', 'adenoma', 'adenoma of the duodenum', { polypType: { is: ['adenoma'] } })],
  [leads('clinician', 'other', 'no row for such a lesion was read', {})],
];

export const ESGE_DUODENUM_2021 = followUpRule({
  id: 'esge-duodenum-2021',
  version: 1,
  title: 'European guideline on superficial duodenal tumours, 2021',
  population: 'Adults after endoscopic resection of a non-ampullary duodenal adenoma.',
  cites: [cite('esgeDuodenum2021', 'follow-up; second source', 'recalled')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'esdDate',
});
