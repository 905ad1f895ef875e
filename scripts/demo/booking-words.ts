import type { Appointment } from 'fhir/r4.js';
import type { Answer } from '../../src/pipeline/index.js';

type Item = Answer['plan']['items'][number];
/** A label and what stands behind it. */
export type Labelled = readonly [label: string, text: string];

/**
 * What a step has changed of the bookings of a plan: a booked day that does not fit any more, or
 * is done, and the task to look at it.
 *
 * @param before the plan that stood before
 */
export function bookingChanges(now: readonly Item[], before: readonly Item[]): readonly Labelled[] {
  const was = new Map(before.map((item) => [item.key, item]));
  const booked = now.flatMap((item) => {
    const earlier = was.get(item.key);
    return item.booking?.status === 'booked' && earlier?.booking !== undefined
      ? bookedWords(item, item.booking.on, earlier)
      : [];
  });
  const checks = now
    .filter(({ task }) => task === 'booking-check')
    .flatMap((task) => checkWords(task, was.get(task.key)));
  return [...booked, ...checks];
}

/** As a FHIR server has it: where, how and when. */
export function appointmentWords({ status, start, end }: Appointment): string {
  return `Appointment ${status}, ${start?.slice(0, 10)} from ${hour(start)} to ${hour(end)}`;
}

const hour = (at: string | undefined): string => at?.slice(11, 16) ?? '';

function bookedWords(item: Item, on: string, earlier: Item): readonly Labelled[] {
  const { doneBy } = item;
  if (doneBy !== undefined && earlier.doneBy === undefined) {
    const { kind, on: doneOn, timing } = doneBy;
    return [['booked', `${on}: done by the ${kind} of ${doneOn}, ${TIMING[timing]}`]];
  }
  const told = earlier.reasons.map(({ code }) => code);
  return item.reasons
    .filter(({ code }) => code.startsWith('booking-') && !told.includes(code))
    .map(({ says }) => ['booked', `stays on ${on}. ${says}`]);
}

const TIMING = {
  early: 'before its window',
  'in-window': 'in its window',
  late: 'after its window',
} as const;

function checkWords(task: Item, earlier: Item | undefined): readonly Labelled[] {
  if (task.state === earlier?.state) return [];
  if (task.state !== 'open') return [['settled', 'the check of the booking is done']];
  const { target, latest } = task.due ?? {};
  return [['to do', `check the booking, best until ${target}, at last on ${latest}`]];
}
