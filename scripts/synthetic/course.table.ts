import {
  BEST_J,
  BEST_J_POINTS,
  COMMON,
  ESGE_2022,
  INVENTED,
  LIMOGES,
  MARGIN_RECURRENCE,
  POLYPECTOMY_2020,
  STAGE_ONE_2019,
  STRICTURE_REVIEW,
} from './sources.table.js';

interface Band {
  readonly fromPoints: number;
  readonly toPoints: number;
  readonly percent: number;
  readonly from: string;
}

/** Delayed bleeding after a dissection in the stomach, of 100, by the points below. */
export const GASTRIC_BLEEDING: readonly Band[] = [
  { fromPoints: -1, toPoints: 1, percent: 2.8, from: BEST_J },
  { fromPoints: 2, toPoints: 2, percent: 6.1, from: BEST_J },
  { fromPoints: 3, toPoints: 4, percent: 11.4, from: BEST_J },
  { fromPoints: 5, toPoints: Infinity, percent: 29.7, from: BEST_J },
];
export const GASTRIC_POINTS = {
  'vitamin-k-antagonist': { points: 4, from: BEST_J_POINTS },
  doac: { points: 4, from: BEST_J_POINTS },
  'p2y12-inhibitor': { points: 2, from: BEST_J_POINTS },
  aspirin: { points: 2, from: BEST_J_POINTS },
  cilostazol: { points: 1, from: BEST_J_POINTS },
  none: { points: 0, from: BEST_J_POINTS },
  haemodialysis: { points: 3, from: BEST_J_POINTS },
  above30Mm: { points: 1, from: BEST_J_POINTS },
  lowerThird: { points: 1, from: BEST_J_POINTS },
  severalLesions: { points: 1, from: BEST_J_POINTS },
  stopped: { points: -1, from: BEST_J_POINTS },
};

/** Delayed bleeding after a dissection in colon or rectum, of 100, by the points below. */
export const BOWEL_BLEEDING: readonly Band[] = [
  { fromPoints: 0, toPoints: 4, percent: 4.1, from: LIMOGES },
  { fromPoints: 5, toPoints: Infinity, percent: 17.5, from: LIMOGES },
];
export const BOWEL_POINTS = {
  from75Years: { points: 1, from: LIMOGES },
  antithrombotic: { points: 1, from: LIMOGES },
  rectum: { points: 1, from: LIMOGES },
  above50Mm: { points: 3, from: LIMOGES },
  severeDisease: { points: 2, from: LIMOGES },
};

/** Delayed bleeding where no score was read. */
export const OTHER_BLEEDING = {
  oesophagus: { percent: 0.7, from: INVENTED },
  duodenum: { percent: 6, from: INVENTED },
};
/** Day of the onset. */
export const BLEEDING_DAY = { medianDays: 3, spread: 0.8, mostDays: 27, from: INVENTED };
/** Of 100 delayed bleedings. */
export const BLEEDING_COURSE = {
  confirmed: { percent: 84, from: INVENTED },
  transfused: { percent: 21, from: INVENTED },
  readmitted: { percent: 58, from: INVENTED },
  haemoglobinTold: { percent: 82, from: INVENTED },
};

/** Holes found after the scope was out, of 100 attempted. */
export const DELAYED_PERFORATION = {
  oesophagus: { percent: 0.1, from: INVENTED },
  stomach: { percent: 0.3, from: INVENTED },
  duodenum: { percent: 2.5, from: INVENTED },
  colon: { percent: 0.4, from: INVENTED },
  rectum: { percent: 0.2, from: INVENTED },
};
/** Of 100 of these, those that end in an operation. */
export const PERFORATION_OPERATED = { percent: 40, from: INVENTED };

/** Stricture after a dissection in the oesophagus whose wound takes three quarters or more. */
export const STRICTURE_WIDE = {
  // The middle of each published range of percent.
  none: { percent: (50 + 80) / 2, from: `${STRICTURE_REVIEW}; derived` },
  'steroid-oral': { percent: (8.6 + 23.1) / 2, from: `${STRICTURE_REVIEW}; derived` },
  'steroid-injection': { percent: (9.2 + 36.2) / 2, from: `${STRICTURE_REVIEW}; derived` },
};
export const STRICTURE_NARROWER = { percent: 2, from: INVENTED };
/** What is given against a stricture after a wide wound, of 100. */
export const PROPHYLAXIS = [
  { value: 'none', weight: 20, from: INVENTED },
  { value: 'steroid-oral', weight: 35, from: INVENTED },
  { value: 'steroid-injection', weight: 45, from: INVENTED },
] as const;
export const DILATATIONS = { least: 1, most: 5, from: INVENTED };

/** Of 100 patients. */
export const DEATH_30_DAYS = { percent: 0.1, from: INVENTED };
export const DEATH_PER_YEAR = { percent: 1.6, from: INVENTED };
/** Of 100 cases, those whose unit said until the 30th day what had happened. */
export const STATUS_TOLD = { percent: 78, from: INVENTED };

/** After a resection that asks for more. */
export const MEETING_HELD = { percent: 88, from: INVENTED };
export const MEETING = [
  { value: 'surgery', weight: 56, from: INVENTED },
  { value: 'no-surgery', weight: 34, from: INVENTED },
  { value: 'further-staging', weight: 10, from: INVENTED },
] as const;
export const MEETING_AFTER_DAYS = { least: 7, most: 35, from: INVENTED };
export const SURGERY_AFTER_DAYS = { least: 14, most: 70, from: INVENTED };
export const AT_SURGERY = {
  residue: { percent: 11, from: INVENTED },
  // Without regard to the group: between 2.5 % (low) and 22.7 % (high) of eCura.
  nodes: { percent: 9, from: INVENTED },
};

/** Which way of follow-up a case takes. */
export type Course = 'upper' | 'bowel-en-bloc' | 'bowel-carcinoma' | 'bowel-to-watch';

/** Months from one examination to the next; the last one repeats. */
export const CHECKS: Readonly<
  Record<Course, { readonly months: readonly number[]; readonly from: string }>
> = {
  upper: { months: [6, 12], from: ESGE_2022 },
  'bowel-en-bloc': { months: [36, 60], from: POLYPECTOMY_2020 },
  'bowel-carcinoma': { months: [12, 24, 24], from: STAGE_ONE_2019 },
  'bowel-to-watch': { months: [6, 12, 36], from: POLYPECTOMY_2020 },
};

/** What becomes of a check that is due, of 100. */
export const KEPT = [
  { value: 'on-time', weight: 71, from: INVENTED },
  { value: 'early', weight: 6, from: INVENTED },
  { value: 'late', weight: 15, from: INVENTED },
  { value: 'lost', weight: 8, from: INVENTED },
] as const;
export const KEPT_DAYS = {
  // The target of most rows is the last day of its window.
  'on-time': { least: -30, most: 0, from: INVENTED },
  early: { least: -110, most: -61, from: INVENTED },
  late: { least: 100, most: 320, from: INVENTED },
};
/** Of 100 that were lost, those of which the unit says so. */
export const LOST_SAID = { percent: 55, from: INVENTED };
export const LOST_SAID_AFTER_DAYS = { least: 120, most: 260, from: INVENTED };
export const DECLINED = { percent: 2.5, from: INVENTED };

/** Neoplasia at the scar, of 100 lesions with a check: found at the first of them. */
export const RECURRENCE = {
  // 1 / 212, 2 / 96, 1 / 38 and 2 / 8.
  free: { percent: (1 / 212) * 100, from: `${MARGIN_RECURRENCE}; derived` },
  marginInvolved: { percent: (2 / 96) * 100, from: `${MARGIN_RECURRENCE}; derived` },
  freeInvasive: { percent: (1 / 38) * 100, from: `${MARGIN_RECURRENCE}; derived` },
  marginInvolvedInvasive: { percent: (2 / 8) * 100, from: `${MARGIN_RECURRENCE}; derived` },
  piecemeal: { percent: 13, from: INVENTED },
};
/** Another lesion elsewhere, of 100 examinations. */
export const NEW_LESION = { percent: 4, from: INVENTED };

/** Fever, coagulation syndrome and the like, of 100. */
export const OTHER_EVENT = { percent: 1.8, from: INVENTED };
/** How far the lowest haemoglobin lies below the last one before, g/dL. */
export const HAEMOGLOBIN_DROP = { mean: 2.6, deviation: 1.3, from: INVENTED };
/** Hours of a working day between which a procedure begins. */
export const BEGINS = { fromHour: 8, toHour: 15, from: COMMON };
