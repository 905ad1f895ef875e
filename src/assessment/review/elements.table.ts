import { cite } from '../../references/index.js';
import type { CaseElement, DrugElement } from './elements.js';
import { PRACTICE } from './practice.table.js';

const CURRICULUM = [cite('esgeCurriculum2019', 'contents of a report of training', 'published')];

const CUT = [{ outcome: { is: ['en-bloc', 'piecemeal', 'abandoned'] } }] as const;
const REMOVED = [{ outcome: { is: ['en-bloc', 'piecemeal'] } }] as const;
const RETRIEVED = [{ retrieved: { is: [true] } }] as const;
const LARGE_BOWEL = [{ organ: { is: ['colon', 'rectum'] } }] as const;
const UPPER_TRACT = { organ: { is: ['oesophagus', 'stomach', 'duodenum'] } } as const;
const TUBE = { organ: { is: ['oesophagus', 'duodenum', 'colon', 'rectum'] } } as const;
const BARRETT = [{ tumour: { is: ['barrett'] } }] as const;
/** Subepithelial and neuroendocrine tumours have no pattern of the surface and no Paris type. */
const OTHER_TUMOUR = [{ tumour: { is: ['other'] } }] as const;

type Needs = CaseElement['need'];
type Conditions = Pick<CaseElement, 'askedWhen' | 'unless' | 'word' | 'cites'>;

const element =
  (need: Needs) =>
  (
    words: string,
    pointers: string | readonly string[],
    when: Partial<Conditions> = {},
  ): CaseElement => ({
    element: words,
    need,
    pointers: typeof pointers === 'string' ? [pointers] : pointers,
    cites: PRACTICE,
    ...when,
  });
const required = element('required');
const conditional = element('conditional');

const BEFORE: readonly CaseElement[] = [
  required('indication', '/before/indications', { cites: CURRICULUM }),
  required('result of the earlier biopsy', '/before/biopsyResult'),
  required('earlier attempts', '/before/earlierAttempts'),
  required('tattoo near the lesion', '/before/tattooNearLesion', { askedWhen: LARGE_BOWEL }),
  required('ASA class', '/before/asaClass'),
  required('antithrombotic drugs', '/before/antithrombotics'),
  required('haemodialysis', '/before/haemodialysis'),
  required('sedation or anaesthesia', '/before/sedation'),
  required('intubation', '/before/intubated'),
  required('gas', '/equipment/gas'),
  required('premedication, with antibiotics', '/before/premedication'),
  ...['right', 'transverse', 'left'].map((segment) =>
    conditional(`bowel preparation, ${segment} segment`, `/before/bowelPreparation/${segment}`, {
      askedWhen: LARGE_BOWEL,
    }),
  ),
];

const LESION: readonly CaseElement[] = [
  required('site', '/lesion/site'),
  required('distance from the incisors', '/lesion/distanceFromIncisorsCm', {
    askedWhen: [{ organ: { is: ['oesophagus'] } }],
  }),
  required('distance from the anal verge', '/lesion/distanceFromAnalVergeCm', {
    askedWhen: LARGE_BOWEL,
  }),
  conditional('position on the wall', ['/lesion/wall', '/lesion/clockHour'], {
    askedWhen: [TUBE],
  }),
  conditional('share of the circumference', '/lesion/circumferencePercent', {
    askedWhen: [TUBE],
  }),
  required('short axis of the lesion', '/lesion/shortAxisMm'),
  required('Paris type', '/lesion/paris', { unless: OTHER_TUMOUR, cites: CURRICULUM }),
  conditional('type of laterally spreading tumour', '/lesion/lstType', {
    askedWhen: [{ organ: { is: ['colon', 'rectum'] }, longAxisMm: { atLeast: 10 } }],
    unless: [...OTHER_TUMOUR, { paris: { is: ['0-Ip', '0-Isp', '0-III'] } }],
  }),
  required('JNET, Kudo or NICE type', ['/lesion/jnet', '/lesion/kudo', '/lesion/nice'], {
    askedWhen: LARGE_BOWEL,
    unless: OTHER_TUMOUR,
    cites: CURRICULUM,
  }),
  required('type of the intrapapillary loops', '/lesion/ipcl', {
    askedWhen: [{ tumour: { is: ['squamous'] } }],
    cites: CURRICULUM,
  }),
  required('vessel pattern', '/lesion/vesselPattern', {
    askedWhen: [{ tumour: { is: ['gastric'] } }],
    cites: CURRICULUM,
  }),
  required('surface pattern', '/lesion/surfacePattern', {
    askedWhen: [{ tumour: { is: ['gastric'] } }],
    cites: CURRICULUM,
  }),
  required('predicted depth', '/lesion/predictedDepth', {
    unless: OTHER_TUMOUR,
    cites: CURRICULUM,
  }),
  conditional('Prague C', '/lesion/pragueCircumferentialCm', { askedWhen: BARRETT }),
  conditional('Prague M', '/lesion/pragueMaximumCm', { askedWhen: BARRETT }),
  conditional('hiatus', '/lesion/hiatusFromIncisorsCm', { askedWhen: BARRETT }),
  required('chromoendoscopy', '/lesion/chromoendoscopy'),
  required('photograph of a landmark', '/lesion/images/*/shows', { word: 'landmark' }),
  required('photograph of the lesion', '/lesion/images/*/shows', { word: 'lesion-before' }),
  required('photograph of the bed', '/lesion/images/*/shows', {
    word: 'resection-bed',
    askedWhen: CUT,
  }),
  required('photograph of the specimen', '/lesion/images/*/shows', {
    word: 'specimen',
    askedWhen: RETRIEVED,
  }),
];

const PROCEDURE: readonly CaseElement[] = [
  required('time of the first injection', '/times/firstInjectionAt', { askedWhen: CUT }),
  required('time of the first incision', '/times/firstIncisionAt', { askedWhen: CUT }),
  required('time of the end of dissection', '/times/dissectionEndAt', { askedWhen: REMOVED }),
  required('kind of endoscope', '/equipment/endoscope/kind'),
  required('channel of the endoscope', '/equipment/endoscope/channelMm'),
  required('cap', '/equipment/endoscope/cap'),
  required('water jet', '/equipment/endoscope/waterJet'),
  required('knife', '/equipment/knives', { askedWhen: CUT }),
  required('generator and mode', '/equipment/generator', { askedWhen: CUT }),
  required('fluid injected', '/injection/fluids', { askedWhen: CUT }),
  required('dye', '/injection/dye', { askedWhen: CUT }),
  required('volume injected', '/injection/totalMl', { askedWhen: CUT }),
  required('marks', '/markers/placed', { askedWhen: CUT }),
  required('incision strategy', '/incision/strategy', { askedWhen: CUT }),
  required('traction', '/dissection/traction', { askedWhen: CUT }),
  required('fibrosis', '/dissection/fibrosis', { askedWhen: CUT }),
  required('fat', '/dissection/fat', { askedWhen: CUT }),
  required('lifting', '/dissection/lifting', { askedWhen: CUT }),
  required('grade of muscle injury', '/safety/muscleInjury', { askedWhen: CUT }),
  required('perforation', '/safety/perforation/occurred', { askedWhen: CUT }),
  required('bleeding', '/safety/bleeding', { askedWhen: CUT }),
  required('vessels treated, and by which means', '/safety/vessels', { askedWhen: CUT }),
  required('clips', '/safety/clips', { askedWhen: CUT }),
  required('closure', '/safety/closure/kind', { askedWhen: CUT }),
  required('vessels visible in the bed', '/safety/siteInspection/visibleVessels', {
    askedWhen: CUT,
  }),
  required('coagulation of visible vessels', '/safety/siteInspection/coagulated', {
    askedWhen: [{ visibleVessels: { is: [true] } }],
  }),
  required('time of the inspection of the bed', '/safety/siteInspection/inspectedAt', {
    askedWhen: CUT,
  }),
  conditional('prophylaxis of a stricture', '/safety/stricturePrevention', {
    askedWhen: [{ organ: { is: ['oesophagus'] }, defectPercent: { atLeast: 75 } }],
  }),
  required('technique', '/resection/technique', { askedWhen: CUT }),
  required('number of pieces', '/resection/pieces', {
    askedWhen: [{ outcome: { is: ['piecemeal'] } }],
  }),
  required('why the dissection was not completed', '/resection/reason', {
    askedWhen: [{ outcome: { is: ['abandoned', 'not-started'] } }],
  }),
  required('long axis of the wound', '/defect/longAxisMm', { askedWhen: REMOVED }),
  required('short axis of the wound', '/defect/shortAxisMm', { askedWhen: REMOVED }),
  conditional(
    'share of the circumference that the wound takes',
    ['/defect/circumferencePercent', '/defect/widthMm'],
    { askedWhen: [{ ...TUBE, outcome: { is: ['en-bloc', 'piecemeal'] } }] },
  ),
];

const SPECIMEN_AND_AFTER: readonly CaseElement[] = [
  required('supervisor', '/team/supervisor', { askedWhen: [{ traineePercent: { above: 0 } }] }),
  required('part done by a trainee, 0 if none', '/team/traineePercent', { askedWhen: CUT }),
  required('assistants', '/team/assistants'),
  required('whether the specimen was retrieved', '/specimen/retrieved', { askedWhen: REMOVED }),
  required('orientation of the specimen', '/specimen/oriented', { askedWhen: RETRIEVED }),
  required('whether the specimen was pinned', '/specimen/pinned', { askedWhen: RETRIEVED }),
  required('long axis of the specimen', ['/specimen/longAxisMm', '/specimen/pieces'], {
    askedWhen: RETRIEVED,
  }),
  required('short axis of the specimen', ['/specimen/shortAxisMm', '/specimen/pieces'], {
    askedWhen: RETRIEVED,
  }),
  ...(['Long', 'Short'] as const).map((axis) =>
    required(
      `${axis.toLowerCase()} axis of the lesion on the specimen`,
      `/specimen/lesion${axis}AxisMm`,
      { askedWhen: [{ retrieved: { is: [true] }, outcome: { is: ['en-bloc'] } }] },
    ),
  ),
  required('container', '/specimen/container', { askedWhen: RETRIEVED }),
  required('destination', '/after/destination'),
  required('diet', '/after/diet', { askedWhen: CUT }),
  required('acid suppression', '/after/acidSuppression', {
    askedWhen: [{ ...UPPER_TRACT, outcome: { is: ['en-bloc', 'piecemeal', 'abandoned'] } }],
  }),
  required('antibiotics afterwards', '/after/antibiotics', { askedWhen: CUT }),
  required('who was told', '/after/informed'),
];

/**
 * What a complete record of a case holds, in the order of the procedure. Not asked: what later
 * messages bring, and what would have no answer (the distance of a gastric lesion, acid
 * suppression after the large bowel, a tattoo in the upper tract, two more pit patterns).
 */
export const CASE_ELEMENTS: readonly CaseElement[] = [
  ...BEFORE,
  ...LESION,
  ...PROCEDURE,
  ...SPECIMEN_AND_AFTER,
];

const DRUG = '/before/antithrombotics/*';
const STOPPED = { decision: { is: ['stopped', 'replaced'] } } as const;
const VKA = { class: { is: ['vitamin-k-antagonist'] } } as const;

/** The same for each antithrombotic drug. */
export const DRUG_ELEMENTS: readonly DrugElement[] = [
  {
    element: 'agent of {drug}',
    need: 'required',
    pointers: [`${DRUG}/agent`],
    unless: [{ class: { is: ['aspirin', 'cilostazol'] } }],
    cites: PRACTICE,
  },
  {
    element: 'indication of {drug}',
    need: 'required',
    pointers: [`${DRUG}/indication`],
    cites: PRACTICE,
  },
  {
    element: 'thrombotic risk of {drug}',
    need: 'required',
    pointers: [`${DRUG}/thromboticRisk`],
    cites: PRACTICE,
  },
  {
    element: 'time of the last dose of {drug}',
    need: 'required',
    pointers: [`${DRUG}/lastDoseAt`],
    askedWhen: [STOPPED],
    cites: PRACTICE,
  },
  {
    element: 'INR of {drug}',
    need: 'conditional',
    pointers: [`${DRUG}/inr`],
    askedWhen: [VKA],
    cites: PRACTICE,
  },
  {
    element: 'date of the INR of {drug}',
    need: 'conditional',
    pointers: [`${DRUG}/inrOn`],
    askedWhen: [VKA],
    cites: PRACTICE,
  },
  {
    element: 'creatinine clearance of {drug}',
    need: 'conditional',
    pointers: [`${DRUG}/creatinineClearanceMlPerMin`],
    askedWhen: [{ class: { is: ['doac'] } }],
    cites: PRACTICE,
  },
  {
    element: 'bridging of {drug}',
    need: 'required',
    pointers: [`${DRUG}/bridged`, `${DRUG}/replacedBy`],
    askedWhen: [{ ...VKA, ...STOPPED }],
    cites: PRACTICE,
  },
  {
    element: 'who advised on {drug}',
    need: 'required',
    pointers: [`${DRUG}/advisedBy`],
    askedWhen: [{ thromboticRisk: { is: ['high'] } }],
    cites: PRACTICE,
  },
  {
    element: 'planned or actual restart of {drug}',
    need: 'required',
    pointers: [`${DRUG}/restartPlannedOn`, `${DRUG}/restartedAt`],
    askedWhen: [STOPPED],
    cites: PRACTICE,
  },
];
