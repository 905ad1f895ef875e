import { cite } from '../references/index.js';
import type { FieldsOf, TableOf } from '../rules/index.js';
import { followUpRule, leadsTo } from './follow-up-rule.js';
import type { FollowUpRow } from './follow-ups.table.js';
import { esdDate, type PolypHistology, polypHistology } from './polyp-fields.js';

interface Question {
  readonly esdDate: string;
  readonly histology: PolypHistology;
}

const FIELDS: FieldsOf<Question> = { esdDate, histology: polypHistology };

const leads = leadsTo<Question>;

const TABLE: TableOf<Question, FollowUpRow> = [
  [
    leads('GAS-8', 'low-grade', 'adenoma with low-grade dysplasia', {
      histology: { is: ['low-grade-dysplasia'] },
    }),
  ],
  [leads('clinician', 'other', 'the survey did not ask for such a lesion', {})],
];

export const GASTRIC_ADENOMA_PRACTICE = followUpRule({
  id: 'gastric-adenoma-practice',
  version: 1,
  title: 'What gastroenterologists do after resection of a low-grade adenoma of the stomach',
  population: 'Adults after resection of a gastric adenoma of low grade: practice, no guideline.',
  cites: [cite('gastricAdenomaSurvey2025', 'survey of practice', 'published')],
  fields: FIELDS,
  table: TABLE,
  anchor: 'esdDate',
});
