import {
  BLEEDING_INTENSITIES,
  FIBROSIS_GRADES,
  MUSCLE_INJURIES,
  ORGANS,
  RESECTION_OUTCOMES,
  SITES,
  TECHNIQUES,
  TUMOURS,
} from '../contract/index.js';
import {
  INDICATOR_IDS,
  INDICATOR_WORDS,
  INDICATORS,
  type IndicatorId,
  SIZE_BANDS,
  TRAINEE_BANDS,
} from '../outcomes/index.js';
import type { CaseFacts } from '../record/index.js';

/** What a column of the export holds. Days are calendar days: nothing is finer. */
export interface ColumnText {
  readonly says: string;
  readonly type: 'pseudonym' | 'day' | 'word' | 'number' | 'boolean';
  readonly unit?: string;
  /** Whole numbers alone. */
  readonly whole?: true;
  /** Every word that can stand there, where the list is closed. */
  readonly values?: readonly string[];
  /** Schema of the message whose words stand there. */
  readonly wordsOf?: string;
}

/** Facts that leave: no instant, no id of the record or of a sender. */
export type ExportedFacts = Omit<
  CaseFacts,
  'caseId' | 'state' | 'source' | 'scopeInAt' | 'pathologyReportedAt' | 'withdrawn'
>;

type CaseColumn = Exclude<keyof ExportedFacts, IndicatorId>;

const mm = (says: string): ColumnText => ({ says, type: 'number', unit: 'mm' });
const day = (says: string): ColumnText => ({ says, type: 'day' });
const word = (says: string, values: readonly string[]): ColumnText => ({
  says,
  type: 'word',
  values: [...values],
});
const pathologyWord = (says: string): ColumnText => ({
  ...{ says, type: 'word', wordsOf: 'pathology-1.schema.json' },
});

const CASE_COLUMNS: { readonly [Name in CaseColumn]: ColumnText } = {
  unit: { says: 'pseudonym of the unit, made for exports alone', type: 'pseudonym' },
  operator: {
    says: 'pseudonym of who dissected, made for exports alone: not that of other answers',
    type: 'pseudonym',
  },
  resectedOn: day('day on which the scope was out'),
  organ: word('organ of the lesion', ORGANS),
  site: word('site in the organ', SITES),
  tumour: word('tumour as the operator named it', TUMOURS),
  lesionLongAxisMm: mm('longest axis of the lesion as the operator saw it'),
  sizeBand: word('band of the longest axis', SIZE_BANDS),
  technique: word('technique of the resection', TECHNIQUES),
  resectionOutcome: word('how the resection ended', RESECTION_OUTCOMES),
  pieces: {
    says: 'pieces in which the lesion was removed',
    type: 'number',
    unit: '1',
    whole: true,
  },
  endoscopicallyComplete: { says: 'nothing was seen to be left', type: 'boolean' },
  specimenRetrieved: { says: 'the specimen was retrieved', type: 'boolean' },
  specimenLongAxisMm: mm('longest axis of the specimen'),
  specimenShortAxisMm: mm('axis across the longest one'),
  specimenAreaCm2: { says: 'area of the specimen as an ellipse', type: 'number', unit: 'cm2' },
  procedureMin: { says: 'scope in to scope out', type: 'number', unit: 'min' },
  dissectionMin: { says: 'first incision to free', type: 'number', unit: 'min' },
  speedCm2PerH: { says: 'area by time of the dissection', type: 'number', unit: 'cm2/h' },
  defectCircumferencePercent: {
    ...{ says: 'share of the circumference that the wound takes', type: 'number', unit: '%' },
  },
  strictureFlag: word('risk of a stricture by the wound', ['low', 'moderate', 'high', 'full']),
  fibrosis: word('fibrosis of the submucosa', FIBROSIS_GRADES),
  intraproceduralBleeding: word('bleeding during the procedure', BLEEDING_INTENSITIES),
  muscleInjury: word('grade of injury of the muscle', MUSCLE_INJURIES),
  perforation: { says: 'a perforation during the procedure', type: 'boolean' },
  traineePercent: { says: 'share that a trainee dissected', type: 'number', unit: '%' },
  traineeBand: word('band of that share', TRAINEE_BANDS),
  pathologyStatus: pathologyWord('status of the report in force'),
  pathologyDays: {
    ...{ says: 'resection to the final report in force', type: 'number', unit: 'd', whole: true },
  },
  awaitsPathology: { says: 'a specimen waits for its final report', type: 'boolean' },
  histology: pathologyWord('histology of the report in force'),
  invasionDepth: pathologyWord('depth of invasion'),
  horizontalMargin: pathologyWord('horizontal margin: 0 free, 1 involved, X not assessable'),
  verticalMargin: pathologyWord('vertical margin: 0 free, 1 involved, X not assessable'),
  curabilityRule: { says: 'rule set by which curability was judged', type: 'word' },
  curabilityClass: { says: 'class in this rule set; empty: indeterminate', type: 'word' },
  curabilityGroup: { says: 'group of that class; empty: indeterminate', type: 'word' },
  firstCheckState: word('where the first check that the plan asks for stands', [
    ...['done', 'open', 'provisional', 'lost', 'ended', 'not-planned', 'unplanned'],
  ]),
  firstCheckOn: day('day of the examination that answered it, or of the first one without a plan'),
  firstCheckTiming: word('when that was, by its window', ['early', 'in-window', 'late']),
  firstCheckLatestOn: day('last day of its window'),
  recurrenceOn: day('first check that found neoplasia at the scar'),
  lastCheckOn: day('last check that saw the scar'),
  lastKnownAliveOn: day('last day on which the patient was told or seen to be alive'),
  deathOn: day('day of death'),
};

function indicatorText(id: IndicatorId): ColumnText {
  const definition = INDICATORS.find((each) => each.id === id);
  const { title = id, numerator = '', denominator = '', windowDays } = definition ?? {};
  const judged = windowDays === undefined ? '' : `, judged once ${windowDays} days are over`;
  return word(`${title}: ${numerator}; of ${denominator}${judged}`, INDICATOR_WORDS);
}

/** Each column beside the fact that it holds, in the order of the export. */
export const EXPORT_COLUMNS: readonly (readonly [keyof ExportedFacts, ColumnText])[] = [
  ...caseColumns(),
  ...INDICATOR_IDS.map((id) => [id, indicatorText(id)] as const),
];

function caseColumns(): readonly (readonly [CaseColumn, ColumnText])[] {
  const names: readonly CaseColumn[] = Object.keys(CASE_COLUMNS).filter(isCaseColumn);
  return names.map((name) => [name, CASE_COLUMNS[name]]);
}

function isCaseColumn(name: string): name is CaseColumn {
  return Object.hasOwn(CASE_COLUMNS, name);
}
