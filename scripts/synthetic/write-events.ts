import type { EventFields } from '../../src/contract/index.js';
import {
  BLEEDING_COURSE,
  BLEEDING_DAY,
  DILATATIONS,
  HAEMOGLOBIN_DROP,
  OTHER_EVENT,
  PERFORATION_OPERATED,
  STATUS_TOLD,
} from './course.table.js';
import type { DrawnCourse } from './draw-course.js';
import type { DrawnCase } from './drawn-case.js';
import { envelopeOf, eventOf } from './identifiers.js';
import { DAY_MS, dayAt, instantAt } from './instants.js';

type Told = Omit<EventFields, 'schema' | 'source' | 'case' | 'patient' | 'event' | 'revision'>;

/** What happened and was decided after the dissection, in no order. */
export function writeEvents(drawn: DrawnCase, course: DrawnCourse): readonly EventFields[] {
  return [
    ...(course.bled ? [bleedingOf(drawn)] : []),
    ...(course.perforatedLate ? perforationOf(drawn) : []),
    ...(course.narrowed ? strictureOf(drawn) : []),
    ...otherOf(drawn),
    ...statusOf(drawn, course),
    ...meetingOf(drawn, course),
    ...(course.diedMs === undefined ? [] : [deathOf(drawn, course.diedMs)]),
  ];
}

/** An event of the kind at a time, sent some days later. */
export function eventAt(
  drawn: DrawnCase,
  kind: EventFields['kind'],
  atMs: number,
  {
    word = kind,
    sentAfterDays = 2,
    ...rest
  }: Partial<Told> & { word?: string; sentAfterDays?: number } = {},
): EventFields {
  const { offsetHours } = drawn.unit;
  return {
    schema: 'event/1',
    ...envelopeOf(drawn),
    event: eventOf(drawn, word),
    revision: 1,
    sentAt: instantAt(atMs + sentAfterDays * DAY_MS, offsetHours),
    kind,
    occurredOn: dayAt(atMs, offsetHours),
    ...rest,
  };
}

function bleedingOf(drawn: DrawnCase): EventFields {
  const chance = drawn.chance('bleeding');
  const { medianDays, spread, mostDays } = BLEEDING_DAY;
  const days = Math.min(mostDays, Math.max(0.3, chance.logNormal(medianDays, spread)));
  const atMs = drawn.times.outMs + days * DAY_MS;
  const isBowel = drawn.lesion.organ === 'colon' || drawn.lesion.organ === 'rectum';
  const isConfirmed = chance.happens(BLEEDING_COURSE.confirmed.percent);
  const isTransfused = chance.happens(BLEEDING_COURSE.transfused.percent);
  const isReadmitted = chance.happens(BLEEDING_COURSE.readmitted.percent);
  const before = 11 + 4 * chance.unit();
  const drop = Math.max(0, chance.normal(HAEMOGLOBIN_DROP.mean, HAEMOGLOBIN_DROP.deviation));
  return eventAt(drawn, 'delayed-bleeding', atMs, {
    occurredAt: instantAt(atMs, drawn.unit.offsetHours),
    sentAfterDays: 4,
    related: 'yes',
    course: {
      intervention: isConfirmed ? 'endoscopic' : 'none',
      transfusionUnits: isTransfused ? chance.whole(1, 4) : 0,
      emergencyVisit: true,
      readmitted: isReadmitted,
      admissionHours: isReadmitted ? chance.whole(20, 120) : 0,
      criticalCare: 'none',
      died: false,
    },
    ...(chance.happens(BLEEDING_COURSE.haemoglobinTold.percent)
      ? {
          haemoglobin: {
            beforeGPerDl: oneDecimal(before),
            lowestGPerDl: oneDecimal(Math.max(4, before - drop)),
          },
        }
      : {}),
    bleeding: {
      signs: [isBowel ? 'haematochezia' : 'melaena'],
      confirmedAtEndoscopy: isConfirmed,
      ...(isConfirmed ? { haemostasis: ['forceps-coagulation'] } : {}),
    },
  });
}

const oneDecimal = (value: number): number => Math.round(value * 10) / 10;

function perforationOf(drawn: DrawnCase): readonly EventFields[] {
  const chance = drawn.chance('late-perforation');
  const atMs = drawn.times.outMs + chance.whole(8, 80) * (DAY_MS / 24);
  const isOperated = chance.happens(PERFORATION_OPERATED.percent);
  const hole = eventAt(drawn, 'delayed-perforation', atMs, {
    sentAfterDays: 5,
    related: 'yes',
    course: {
      intervention: isOperated ? 'surgical' : 'none',
      drugsBeyondGradeI: true,
      admissionHours: chance.whole(72, 300),
      died: false,
    },
    perforation: { foundBy: isOperated ? 'operation' : 'imaging', peritonitis: isOperated },
  });
  const operation = eventAt(drawn, 'surgery', atMs + DAY_MS / 4, {
    word: 'emergency-surgery',
    sentAfterDays: 6,
    causedBy: hole.event,
    surgery: { reason: 'adverse-event', operation: 'closure-or-drainage' },
  });
  return isOperated ? [hole, operation] : [hole];
}

function strictureOf(drawn: DrawnCase): readonly EventFields[] {
  const chance = drawn.chance('stricture');
  const atMs = drawn.times.outMs + chance.whole(14, 45) * DAY_MS;
  const count = chance.whole(DILATATIONS.least, DILATATIONS.most);
  const narrow = eventAt(drawn, 'stricture', atMs, {
    related: 'yes',
    course: { intervention: 'endoscopic', died: false },
    stricture: { gastroscopePasses: false, dysphagiaGrade: chance.whole(1, 3) },
  });
  const sessions = Array.from({ length: count }, (_, i) =>
    eventAt(drawn, 'dilatation', atMs + i * 10 * DAY_MS, {
      word: `dilatation-${i + 1}`,
      causedBy: narrow.event,
      dilatation: { number: i + 1, means: 'balloon', diameterMm: Math.min(18, 12 + 1.5 * i) },
    }),
  );
  return [narrow, ...sessions];
}

function otherOf(drawn: DrawnCase): readonly EventFields[] {
  const chance = drawn.chance('other-event');
  if (!chance.happens(OTHER_EVENT.percent)) return [];
  const isBowel = drawn.lesion.organ === 'colon' || drawn.lesion.organ === 'rectum';
  const kind = isBowel ? 'coagulation-syndrome' : 'fever';
  const atMs = drawn.times.outMs + chance.whole(6, 40) * (DAY_MS / 24);
  return [
    eventAt(drawn, kind, atMs, {
      related: 'yes',
      course: { intervention: 'none', drugsBeyondGradeI: true, died: false },
    }),
  ];
}

/** Only such a statement answers "no"; a dead patient has none of a later day. */
function statusOf(drawn: DrawnCase, { diedMs = Infinity }: DrawnCourse): readonly EventFields[] {
  const chance = drawn.chance('status');
  const untilMs = drawn.times.outMs + chance.whole(30, 40) * DAY_MS;
  if (!chance.happens(STATUS_TOLD.percent) || diedMs <= untilMs + 2 * DAY_MS) return [];
  const untilOn = dayAt(untilMs, drawn.unit.offsetHours);
  return [
    eventAt(drawn, 'status-at-30-days', untilMs + DAY_MS, {
      status: { untilOn, learntFrom: 'hospital-record' },
    }),
  ];
}

function meetingOf(
  drawn: DrawnCase,
  { meeting, surgery, diedMs = Infinity }: DrawnCourse,
): readonly EventFields[] {
  if (meeting === undefined || meeting.atMs > diedMs) return [];
  const { decision } = meeting;
  const decided = eventAt(drawn, 'meeting-decision', meeting.atMs, {
    meeting: { decision, ...(decision === 'no-surgery' ? { reason: 'comorbidity' } : {}) },
  });
  if (surgery === undefined || surgery.atMs > diedMs) return [decided];
  const operation = eventAt(drawn, 'surgery', surgery.atMs, {
    word: 'surgery',
    sentAfterDays: 12,
    surgery: {
      reason: 'oncological',
      operation: 'resection-with-nodes',
      residualTumour: surgery.residue ? 'carcinoma' : 'none',
      nodesExamined: 15,
      nodesPositive: surgery.nodes ? 1 : 0,
      pN: surgery.nodes ? 'pN1' : 'pN0',
      tnmEdition: '8',
    },
  });
  return [decided, operation];
}

const deathOf = (drawn: DrawnCase, diedMs: number): EventFields =>
  eventAt(drawn, 'death', diedMs, { sentAfterDays: 20, related: 'no' });
