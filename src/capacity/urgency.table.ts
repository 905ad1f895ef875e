/** How soon, in the words of FHIR R4 `request-priority`. */
export type Urgency = 'routine' | 'urgent' | 'asap' | 'stat';

/**
 * What a day away from the target weighs. The order is that of FHIR R4 (each word asks for more
 * than the one before); that each step doubles is a decision of this project.
 */
export const URGENCY_WEIGHTS = {
  routine: 1,
  urgent: 2,
  asap: 4,
  stat: 8,
} satisfies Readonly<Record<Urgency, number>>;
