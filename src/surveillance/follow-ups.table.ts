import { cite } from '../references/index.js';
import type { FollowUp, FollowUpTask, Schedule, Then } from './schedule.js';

const window = (min: number, target: number, max: number, ...then: readonly Then[]): Schedule => ({
  kind: 'window',
  min,
  target,
  max,
  then,
});
const task = (name: FollowUpTask): Schedule => ({ kind: 'task', task: name });

const SQUAMOUS_LOOK =
  'High-definition white light with virtual chromoendoscopy or iodine; biopsy of suspicious areas.';
const SCAR_LOOK =
  'Look at the scar with virtual chromoendoscopy; biopsy of the scar when in doubt.';
const STOMACH_LOOK =
  'The whole stomach, high definition with chromoendoscopy; biopsy of suspicious areas only.';
const BARRETT_LOOK = 'High definition; biopsies of the new junction and of any visible change.';
const COLON_LOOK = 'Colonoscopy of high quality.';

/** Months of a window: earliest, target, latest; then what follows, from the one before. */
export const FOLLOW_UPS = {
  'OES-1': {
    schedule: window(3, 6, 6, { every: 12 }),
    look: SQUAMOUS_LOOK,
    cites: [cite('esgeEsd2022', 'follow-up after curative resection; from memory', 'recalled')],
  },
  'OES-2': {
    schedule: window(3, 3, 6, 6, { every: 12 }),
    look: `${SQUAMOUS_LOOK} Biopsy of the scar if anything is visible.`,
    cites: [cite('esgeEsd2022', 'follow-up after local-risk resection; from memory', 'recalled')],
  },
  'OES-3': {
    schedule: window(6, 12, 12, { every: 12 }),
    look: 'Virtual chromoendoscopy and iodine; look at mouth, pharynx and larynx too.',
    cites: [cite('oesophagusReview2024', 'abstract: every 6 to 12 months', 'published')],
  },
  'OES-3-many': {
    schedule: window(6, 12, 12, { every: 6 }),
    look: 'Virtual chromoendoscopy and iodine; look at mouth, pharynx and larynx too.',
    cites: [
      cite('oesophagusReview2024', 'abstract: every 6 to 12 months', 'published'),
      cite('jgesJes2020', 'shorter with many iodine-voiding lesions; from memory', 'recalled'),
    ],
  },
  'OES-4': {
    schedule: window(3, 6, 6, { every: 6 }),
    look: 'Endoscopy, CT every 6 to 12 months, endoscopic ultrasound when in doubt.',
    cites: [cite('jgesJes2020', 'pT1a-MM or pT1b without treatment; from memory', 'recalled')],
  },
  'BAR-1': {
    schedule: window(2, 3, 3, { every: 3 }),
    look: 'Ablation with inspection, until no Barrett mucosa is left.',
    cites: [cite('esgeBarrett2023', '2 to 3 months; second source', 'recalled')],
  },
  'BAR-2': {
    schedule: { kind: 'calendar', at: [12, 24, 36, 48, 60, 84, 120] },
    look: BARRETT_LOOK,
    cites: [cite('esgeBarrett2023', 'years 1, 2, 3, 4, 5, 7, 10; weak second source', 'recalled')],
  },
  'BAR-3': {
    schedule: { kind: 'calendar', at: [12, 36, 60] },
    look: BARRETT_LOOK,
    cites: [cite('esgeBarrett2023', 'baseline low grade; from memory', 'recalled')],
  },
  'BAR-4': {
    schedule: window(3, 3, 6, { every: 6, until: 24 }, { every: 12 }),
    look: 'Endoscopy, and endoscopic ultrasound or CT for lymph nodes.',
    cites: [cite('esgeBarrett2023', 'pT1b of low risk without surgery; weak memory', 'recalled')],
  },
  'BAR-5-none': {
    schedule: { kind: 'none' },
    look: 'Shorter than 1 cm: no surveillance.',
    cites: [cite('esgeBarrett2023', 'abstract, statements 1 and 2', 'published')],
  },
  'BAR-5-short': {
    schedule: window(60, 60, 60, { every: 60 }),
    look: 'Visible lesions first, then 4-quadrant biopsies every 2 cm; 1 minute a cm.',
    cites: [cite('esgeBarrett2023', 'abstract, statements 1 and 2', 'published')],
  },
  'BAR-5-long': {
    schedule: window(36, 36, 36, { every: 36 }),
    look: 'Visible lesions first, then 4-quadrant biopsies every 2 cm; 1 minute a cm.',
    cites: [cite('esgeBarrett2023', 'abstract, statements 1 and 2', 'published')],
  },
  'BAR-5-expert': {
    schedule: task('expert-centre'),
    look: '10 cm or longer: an expert centre.',
    cites: [cite('esgeBarrett2023', 'abstract, statements 1 and 2', 'published')],
  },
  'GAS-1': {
    schedule: window(3, 6, 6, { every: 12 }),
    look: STOMACH_LOOK,
    cites: [
      cite('esgeEsd2022', 'follow-up after curative resection; from memory', 'recalled'),
      cite('mapsIii2025', 'recommendation 29: the same; second source', 'recalled'),
    ],
  },
  'GAS-2': {
    schedule: window(3, 3, 6, 6, { every: 12 }),
    look: 'Look at the scar; treat again if there is residue.',
    cites: [cite('esgeEsd2022', 'follow-up after local-risk resection; from memory', 'recalled')],
  },
  'GAS-3': {
    schedule: window(3, 3, 6, { every: 6, until: 36 }, { every: 12 }),
    look: 'Endoscopy, CT, endoscopic ultrasound.',
    cites: [cite('esdPractice', 'high risk without surgery, stomach', 'practice')],
  },
  'GAS-4': {
    schedule: window(6, 12, 12, { every: 12 }),
    look: 'Endoscopy.',
    cites: [
      cite('jgca2021', 'endoscopy once or twice a year; second source', 'recalled'),
      cite('esdPractice', 'target within the range', 'derived'),
    ],
  },
  'GAS-5': {
    schedule: window(6, 6, 12, { every: 6 }),
    look: 'Endoscopy, and ultrasound or CT for metastasis.',
    cites: [cite('jgca2021', 'as eCuraA with ultrasound or CT; second source', 'recalled')],
  },
  'GAS-6': {
    schedule: window(3, 6, 6, { every: 6 }),
    look: 'Endoscopy with a close look at the scar.',
    cites: [cite('jgca2021', 'close endoscopic follow-up; interval from memory', 'recalled')],
  },
  'GAS-7': {
    schedule: window(3, 6, 6, { every: 6 }),
    look: 'Endoscopy and CT.',
    cites: [cite('jgca2021', 'eCuraC-2 without operation; from memory', 'recalled')],
  },
  'GAS-8': {
    schedule: window(3, 6, 6, { every: 12 }),
    look: 'Endoscopy.',
    cites: [
      cite(
        'gastricAdenomaSurvey2025',
        '70 % of 130 gastroenterologists: no guideline',
        'published',
      ),
    ],
  },
  'COL-1': {
    schedule: window(36, 36, 36, 60, 'screening'),
    look: COLON_LOOK,
    cites: [cite('esgePolypectomy2020', 'first surveillance after 3 years', 'published')],
  },
  'COL-1-clear': {
    schedule: window(60, 60, 60, 'screening'),
    look: COLON_LOOK,
    cites: [cite('esgePolypectomy2020', 'nothing found: second after 5 years', 'published')],
  },
  'COL-1-found': {
    schedule: window(36, 36, 36, 'by-findings'),
    look: COLON_LOOK,
    cites: [cite('esgePolypectomy2020', 'something found: again after 3 years', 'published')],
  },
  'COL-1-none': {
    schedule: { kind: 'none' },
    look: 'Nothing that needs surveillance: back to screening.',
    cites: [cite('esgePolypectomy2020', 'return to screening', 'published')],
  },
  'COL-2': {
    schedule: window(3, 6, 6, 12, 'COL-1'),
    look: SCAR_LOOK,
    cites: [
      cite('esgePolypectomy2020', 'piecemeal, 20 mm or more: 3 to 6 months, then 12', 'published'),
      cite('esgePolypectomy2020', 'then as after en bloc resection', 'derived'),
    ],
  },
  'COL-3': {
    schedule: window(3, 6, 6, 12, 'COL-1'),
    look: SCAR_LOOK,
    cites: [
      cite('esgeEsd2022', 'local-risk resection; from memory', 'recalled'),
      cite('rEsd2023', 'recurrence 2 of 96 with, 1 of 212 without involved margin', 'published'),
    ],
  },
  'COL-4': {
    schedule: window(12, 12, 12, 36, 60),
    look: 'Colonoscopy; not every year.',
    cites: [cite('esgeEsdo2019', 'abstract: after 1 year, then 3, then 5', 'published')],
  },
  'COL-5': {
    schedule: window(3, 6, 6, { every: 6, until: 36 }, { every: 12, until: 60 }),
    look: 'Endoscopy, CT of chest and abdomen, CEA; rectum: MRI or endoscopic ultrasound.',
    cites: [cite('esdPractice', 'high risk without surgery, colon and rectum', 'practice')],
  },
  'COL-6': {
    schedule: window(36, 36, 36, 'by-findings'),
    look: 'Colonoscopy.',
    cites: [cite('bsg2020', 'en bloc R0; second source', 'recalled')],
  },
  'COL-7': {
    schedule: window(2, 4, 6, 12, 36),
    look: 'Look at the site, then colonoscopy.',
    cites: [
      cite('bsg2020', 'site check after 2 to 6 months; second source', 'recalled'),
      cite('bsg2020', 'target in the middle of the window', 'derived'),
    ],
  },
  'COL-8': {
    schedule: window(6, 6, 6, 12, 36),
    look: 'Colonoscopy.',
    cites: [
      cite('usmstf2020', 'table 5: 6 months', 'published'),
      cite('usmstf2020', '1 year after the first, 3 after the second; second source', 'recalled'),
    ],
  },
  'COL-9': {
    schedule: window(36, 36, 36, 'by-findings'),
    look: 'Colonoscopy.',
    cites: [cite('usmstf2020', 'table 5: 3 years', 'published')],
  },
  'COL-10': {
    schedule: window(6, 6, 6, 'by-findings'),
    look: SCAR_LOOK,
    cites: [
      cite('jgesColorectal', 'pTis, piecemeal: after about 6 months; second source', 'recalled'),
      cite('esdPractice', 'no window, and what was found decides what follows', 'derived'),
    ],
  },
  'DUO-1': {
    schedule: window(3, 3, 3, 12, 'by-findings'),
    look: 'With a cap, or side-viewing where needed; colonoscopy once if never done.',
    cites: [cite('esgeDuodenum2021', '3 months, then 12; second source', 'recalled')],
  },
  'MUCOSA-advanced': {
    schedule: window(36, 36, 36, { every: 36 }),
    look: STOMACH_LOOK,
    cites: [cite('mapsIi2019', 'abstract: advanced stages every 3 years', 'published')],
  },
  'MUCOSA-limited': {
    schedule: window(36, 36, 36, 'by-findings'),
    look: `${STOMACH_LOOK} May be considered, the patient decides.`,
    cites: [
      cite(
        'mapsIi2019',
        'abstract: metaplasia at one site that is incomplete, or with persistent gastritis',
        'published',
      ),
    ],
  },
  'MUCOSA-low-grade': {
    schedule: window(0, 0, 0, { every: 12 }),
    look: 'At once: the whole stomach, high definition with chromoendoscopy.',
    cites: [
      cite('mapsIi2019', 'abstract: dysplasia without a visible lesion, at once', 'published'),
      cite('mapsIii2025', 'recommendation 21: then after 12 months; second source', 'recalled'),
    ],
  },
  'MUCOSA-high-grade': {
    schedule: window(0, 0, 0, { every: 6 }),
    look: 'At once: the whole stomach, high definition with chromoendoscopy.',
    cites: [
      cite('mapsIi2019', 'abstract: dysplasia without a visible lesion, at once', 'published'),
      cite('mapsIii2025', 'recommendation 21: then after 6 months; second source', 'recalled'),
    ],
  },
  'MUCOSA-none': {
    schedule: { kind: 'none' },
    look: 'No surveillance of the background mucosa.',
    cites: [cite('mapsIi2019', 'abstract', 'published')],
  },
  meeting: {
    schedule: task('multidisciplinary-meeting'),
    look: 'A meeting weighs staging and further treatment; follow-up starts after its decision.',
    cites: [cite('esgeEsd2022', 'high risk: a multidisciplinary meeting', 'published')],
  },
  clinician: {
    schedule: task('clinician-decision'),
    look: 'No published row covers this: a clinician decides.',
    cites: [cite('esdPractice', 'an unmet class is never a silent blank', 'derived')],
  },
  pathology: {
    schedule: task('await-pathology'),
    look: 'Pathology is not back.',
    cites: [cite('esdPractice', 'the class decides the date', 'derived')],
  },
} as const satisfies Record<string, FollowUp>;

/** A row of the table. */
export type FollowUpRow = keyof typeof FOLLOW_UPS;
