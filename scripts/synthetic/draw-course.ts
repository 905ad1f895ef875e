import {
  AT_SURGERY,
  BOWEL_BLEEDING,
  BOWEL_POINTS,
  type Course,
  DEATH_30_DAYS,
  DEATH_PER_YEAR,
  DECLINED,
  DELAYED_PERFORATION,
  GASTRIC_BLEEDING,
  GASTRIC_POINTS,
  MEETING,
  MEETING_AFTER_DAYS,
  MEETING_HELD,
  OTHER_BLEEDING,
  RECURRENCE,
  STRICTURE_NARROWER,
  STRICTURE_WIDE,
  SURGERY_AFTER_DAYS,
} from './course.table.js';
import { WIDE_PERCENT } from './draw-procedure.js';
import type { DrawnCase } from './drawn-case.js';
import { DAY_MS } from './instants.js';

/** What chance decides after the scope is out. Times in ms of UTC. */
export interface DrawnCourse {
  readonly bled: boolean;
  readonly perforatedLate: boolean;
  readonly narrowed: boolean;
  readonly recurs: boolean;
  readonly declined: boolean;
  readonly meeting?: {
    readonly atMs: number;
    readonly decision: (typeof MEETING)[number]['value'];
  };
  readonly surgery?: { readonly atMs: number; readonly residue: boolean; readonly nodes: boolean };
  readonly diedMs?: number;
  readonly course: Course;
}

export function drawCourse(drawn: DrawnCase): DrawnCourse {
  const { lesion, procedure, times } = drawn;
  const wasCut = procedure.outcome !== 'not-started';
  const chance = drawn.chance('course');
  const bled = chance.happens(bleedingPercent(drawn));
  const late = chance.happens(DELAYED_PERFORATION[lesion.organ].percent);
  const narrowed = chance.happens(stricturePercent(drawn));
  const recurs = chance.happens(recurrencePercent(drawn));
  const declined = chance.happens(DECLINED.percent);
  const diedMs = drawDeath(drawn);
  return {
    bled: wasCut && bled,
    perforatedLate: wasCut && late && !procedure.perforated,
    narrowed: procedure.specimen !== undefined && narrowed,
    recurs,
    declined,
    ...drawMeeting(drawn, times.outMs),
    ...(diedMs === undefined ? {} : { diedMs }),
    course: courseOf(drawn),
  };
}

/** The score that was published for the organ, as the generator's own table has it. */
function bleedingPercent(drawn: DrawnCase): number {
  const { organ } = drawn.lesion;
  if (organ === 'oesophagus' || organ === 'duodenum') return OTHER_BLEEDING[organ].percent;
  const [points, bands] =
    organ === 'stomach'
      ? ([gastricPoints(drawn), GASTRIC_BLEEDING] as const)
      : ([bowelPoints(drawn), BOWEL_BLEEDING] as const);
  const band = bands.find(({ fromPoints, toPoints }) => fromPoints <= points && points <= toPoints);
  if (band === undefined) throw new RangeError('bands of bleeding leave no gap');
  return band.percent;
}

/** Every drug keeps at least 0 points, stopped or not. */
export function gastricPoints({ patient, lesion }: DrawnCase): number {
  const rows = GASTRIC_POINTS;
  const drug = rows[patient.drug].points + (patient.drugStopped ? rows.stopped.points : 0);
  const isLower = lesion.site === 'stomach-antrum' || lesion.site === 'stomach-pylorus';
  return (
    Math.max(0, drug) +
    (patient.haemodialysis ? rows.haemodialysis.points : 0) +
    (lesion.longMm > 30 ? rows.above30Mm.points : 0) +
    (isLower ? rows.lowerThird.points : 0) +
    (lesion.lesionsInSession > 1 ? rows.severalLesions.points : 0)
  );
}

export function bowelPoints({ patient, lesion }: DrawnCase): number {
  const rows = BOWEL_POINTS;
  const isSevere = patient.asa === 'III' || patient.asa === 'IV';
  return (
    (patient.ageYears >= 75 ? rows.from75Years.points : 0) +
    (patient.drug === 'none' ? 0 : rows.antithrombotic.points) +
    (lesion.organ === 'rectum' ? rows.rectum.points : 0) +
    (lesion.longMm > 50 ? rows.above50Mm.points : 0) +
    (isSevere ? rows.severeDisease.points : 0)
  );
}

function stricturePercent({ lesion, procedure }: DrawnCase): number {
  if (lesion.organ !== 'oesophagus') return 0;
  return procedure.woundPercent >= WIDE_PERCENT
    ? STRICTURE_WIDE[procedure.prophylaxis].percent
    : STRICTURE_NARROWER.percent;
}

function recurrencePercent({ procedure, tissue }: DrawnCase): number {
  if (procedure.outcome !== 'en-bloc') return RECURRENCE.piecemeal.percent;
  const isFree = tissue.hm === '0';
  if (isInvasive(tissue.depth)) {
    return (isFree ? RECURRENCE.freeInvasive : RECURRENCE.marginInvolvedInvasive).percent;
  }
  return (isFree ? RECURRENCE.free : RECURRENCE.marginInvolved).percent;
}

const isInvasive = (depth: string): boolean => depth === 'sm' || depth === 'mp';

/** Common practice, no source: deep, in vessels or at the deep margin asks for a meeting. */
function drawMeeting(
  { tissue, procedure, chance: streamOf }: DrawnCase,
  outMs: number,
): Pick<DrawnCourse, 'meeting' | 'surgery'> {
  const chance = streamOf('meeting');
  const asksForMore =
    isInvasive(tissue.depth) || tissue.ly === '1' || tissue.v === '1' || tissue.vm !== '0';
  const isHeld = chance.happens(MEETING_HELD.percent);
  if (procedure.specimen === undefined || !asksForMore || !isHeld) return {};
  // The report comes first, which may take as long as its table says.
  const reportDays = 14;
  const days = reportDays + chance.whole(MEETING_AFTER_DAYS.least, MEETING_AFTER_DAYS.most);
  const atMs = outMs + days * DAY_MS;
  const decision = chance.pick(MEETING);
  if (decision !== 'surgery') return { meeting: { atMs, decision } };
  const after = chance.whole(SURGERY_AFTER_DAYS.least, SURGERY_AFTER_DAYS.most);
  return {
    meeting: { atMs, decision },
    surgery: {
      atMs: atMs + after * DAY_MS,
      residue: chance.happens(AT_SURGERY.residue.percent),
      nodes: chance.happens(AT_SURGERY.nodes.percent),
    },
  };
}

function drawDeath({ times, chance: streamOf }: DrawnCase): number | undefined {
  const chance = streamOf('death');
  if (chance.happens(DEATH_30_DAYS.percent)) return times.outMs + chance.whole(1, 29) * DAY_MS;
  const perYear = -Math.log(1 - DEATH_PER_YEAR.percent / 100);
  const years = -Math.log(1 - chance.unit()) / perYear;
  const diedMs = times.outMs + (31 + years * 365.25) * DAY_MS;
  return years < 20 ? diedMs : undefined;
}

function courseOf({ lesion, procedure, tissue }: DrawnCase): Course {
  if (lesion.organ !== 'colon' && lesion.organ !== 'rectum') return 'upper';
  if (procedure.outcome !== 'en-bloc' || tissue.hm !== '0') return 'bowel-to-watch';
  return isInvasive(tissue.depth) ? 'bowel-carcinoma' : 'bowel-en-bloc';
}
