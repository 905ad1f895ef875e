import type { Appointment, AppointmentParticipant, CodeableConcept, Period } from 'fhir/r4.js';
import type { PlanItem } from '../surveillance/index.js';
import { STRUCTURE } from '../terminology/index.js';
import { head, type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { requestCode } from './follow-up-code.js';

/**
 * Appointments of the plan, each for one request: what a scheduler told us of a booking, and, where
 * the unit wants it, a proposal for each open examination. A proposal gives no time: it asks for a
 * period. Another system's Appointment is read and never written; beside it, ours is cancelled.
 *
 * Source: FHIR R4, Appointment, rules app-2 to app-4, and code system appointmentstatus.
 */
export function toAppointments(context: MappingContext): readonly Draft<Appointment>[] {
  return context.known.plan.items.flatMap((item) => {
    const said = saidOf(context, item);
    return said === undefined ? [] : [toAppointment(context, item, said)];
  });
}

/** A proposal that no plan makes any more; what somebody has booked stays as it is. */
export const proposalGone = (appointment: Appointment): Appointment =>
  appointment.status === 'proposed' ? { ...appointment, ...CANCELLED_BY_PLAN } : appointment;

const because = (text: string, { coding }: CodeableConcept) => ({
  status: 'cancelled' as const,
  cancelationReason: { ...(coding === undefined ? {} : { coding }), text },
});

const CANCELLED_BY_PLAN = because('The plan no longer asks for it.', STRUCTURE.cancelled.other);
const CANCELLED_FOR_ANOTHER = because(
  'Another appointment was booked for the same request.',
  STRUCTURE.cancelled.other,
);

type Booking = NonNullable<PlanItem['booking']>;

/** Source: FHIR R4, code system appointment-cancellation-reason. */
const CANCEL_CODES: Readonly<Record<NonNullable<Booking['reason']>, CodeableConcept>> = {
  patient: STRUCTURE.cancelled.patient,
  death: STRUCTURE.cancelled.died,
  unit: STRUCTURE.cancelled.unit,
  equipment: STRUCTURE.cancelled.equipment,
  preparation: STRUCTURE.cancelled.preparation,
  'not-needed': STRUCTURE.cancelled.other,
  'booked-in-error': STRUCTURE.cancelled.error,
  other: STRUCTURE.cancelled.other,
};

/** As much of an Appointment as says how it stands. */
type Said = Pick<Appointment, 'status' | 'cancelationReason' | 'start' | 'end'> & {
  readonly patientSays: AppointmentParticipant['status'];
  readonly toldAt?: string;
};

function saidOf({ known, settings }: MappingContext, item: PlanItem): Said | undefined {
  const { booking, key } = item;
  if (booking?.heldBy === 'service') return told(booking);
  const isProposed = settings.proposedAppointments && item.kind === 'endoscopy';
  if (booking?.status === 'booked') {
    const ours = toldOfOurs(known.bookings, key);
    const isWritten = isProposed || ours !== undefined;
    return isWritten
      ? { ...CANCELLED_FOR_ANOTHER, ...ours, patientSays: 'needs-action' }
      : undefined;
  }
  const isAskedFor = isProposed && item.state === 'open' && item.due !== undefined;
  return isAskedFor ? { status: 'proposed', patientSays: 'needs-action' } : undefined;
}

/** The time of ours, where a scheduler told of the visit before it had an Appointment of its own. */
function toldOfOurs(
  bookings: MappingContext['known']['bookings'],
  key: string,
): Pick<Appointment, 'start' | 'end'> | undefined {
  return bookings
    .filter(({ fields }) => fields.item === key && fields.appointment === undefined)
    .flatMap(({ fields: { startsAt, endsAt } }) =>
      startsAt === undefined || endsAt === undefined ? [] : [{ start: startsAt, end: endsAt }],
    )
    .at(-1);
}

/** @returns what a scheduler said; a cancelled Appointment keeps the time that it had */
function told({ status, startsAt, endsAt, toldAt, reason = 'other' }: Booking): Said {
  const visit = { start: startsAt, end: endsAt, patientSays: 'accepted', toldAt } as const;
  switch (status) {
    case 'booked':
      return { status: 'booked', ...visit };
    case 'did-not-attend':
      return { status: 'noshow', ...visit };
    case 'cancelled':
      return { status: 'cancelled', cancelationReason: CANCEL_CODES[reason], ...visit };
  }
}

function toAppointment(context: MappingContext, item: PlanItem, said: Said): Draft<Appointment> {
  const { patientSays, toldAt, ...how } = said;
  const period = periodOf(item);
  return {
    key: item.key,
    resource: {
      resourceType: 'Appointment',
      ...head(context, 'Appointment', item.key, 'dr-follow-up-appointment'),
      ...how,
      serviceType: [context.concept(requestCode(item))],
      appointmentType: STRUCTURE.followUpAppointment,
      created: toldAt ?? context.known.plan.calculatedAt,
      basedOn: [toResource(context, 'ServiceRequest', item.key)],
      participant: [{ actor: context.patient, status: patientSays }],
      ...(period === undefined ? {} : { requestedPeriod: [period] }),
    },
  };
}

/** The window as the unit's open days leave it. */
function periodOf({ due, proposed }: PlanItem): Period | undefined {
  const window = proposed ?? due;
  return window === undefined ? undefined : { start: window.earliest, end: window.latest };
}
