import type { Observation } from 'fhir/r4.js';
import type { BleedingFinding } from '../assessment/index.js';
import { compareInstants, type Finding } from '../kernel/index.js';
import { ANSWERS, STRUCTURE } from '../terminology/index.js';
import { basis } from './basis.js';
import { type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { laterKey } from './event-naming.js';
import { type ObservationContent, toObservation } from './observation.js';
import { byRule, notes, sourced } from './rule-answer.js';

/** Panels that tell what a definition asks. */
const INPUTS = ['event-course', 'haemoglobin-course', 'late-bleeding-findings'] as const;

/**
 * Delayed bleeding by each definition, and whether there was an adverse event within 30 days.
 * Nothing is said before there is an event or the time is over: a "no" of day 0 would be none.
 *
 * @param present keys of the Observations of events, so that no link dangles
 */
export function toLateOutcomes(
  context: MappingContext,
  present: ReadonlySet<string>,
): readonly Draft<Observation>[] {
  const { delayedBleeding, adverseEvent30d, windowIsClosed } = context.known.afterwards;
  const bled = context.known.events.some(({ fields }) => fields.kind === 'delayed-bleeding');
  const isDue = (answer: Finding<unknown>): boolean =>
    answer.kind === 'determined' || windowIsClosed;
  return [
    ...delayedBleeding
      .filter(({ answer }) => isDue(answer) || bled)
      .map((finding) => toDelayedBleeding(context, finding, present)),
    ...(isDue(adverseEvent30d) ? [toAdverseEvent30d(context, adverseEvent30d)] : []),
  ];
}

function toDelayedBleeding(
  context: MappingContext,
  finding: BleedingFinding,
  present: ReadonlySet<string>,
): Draft<Observation> {
  const { rule, answer, reasons } = finding;
  const told = context.known.events
    .filter(({ fields }) => fields.kind === 'delayed-bleeding')
    .flatMap(({ fields }) => INPUTS.map((item) => `${item}.${laterKey(context, fields.event)}`))
    .filter((key) => present.has(key));
  return toObservation(context, {
    item: 'delayed-bleeding',
    key: `delayed-bleeding.${rule}`,
    about: 'lesion',
    category: 'procedure',
    profile: 'dr-computed',
    issuedAt: toldAt(context),
    content: {
      ...answered(context, answer),
      ...byRule(context, finding, [], new Set()),
      ...(told.length === 0
        ? {}
        : { derivedFrom: told.map((key) => toResource(context, 'Observation', key)) }),
      ...notes([...reasons.map((reason) => `Reason: ${sourced(reason)}`), ...notKnown(answer)]),
    },
  });
}

function toAdverseEvent30d(
  context: MappingContext,
  answer: Finding<'yes' | 'no'>,
): Draft<Observation> {
  return toObservation(context, {
    item: 'adverse-event-30d',
    about: 'lesion',
    category: 'procedure',
    profile: 'dr-computed',
    issuedAt: toldAt(context),
    content: {
      ...answered(context, answer),
      ...basis(context, 'events-within-30-days', [], new Set()),
      ...notes(notKnown(answer)),
    },
  });
}

function answered(context: MappingContext, answer: Finding<'yes' | 'no'>): ObservationContent {
  return answer.kind === 'determined'
    ? { valueCodeableConcept: context.concept(ANSWERS[answer.value]) }
    : { dataAbsentReason: STRUCTURE.absent.unknown };
}

const notKnown = (answer: Finding<unknown>): readonly string[] =>
  answer.kind === 'determined' ? [] : [`Not known: ${answer.missing.join(', ')}.`];

/** When the last event was told. */
const toldAt = ({ known, fields }: MappingContext): string =>
  known.events
    .map((event) => event.fields.sentAt)
    .reduce((a, b) => (compareInstants(a, b) < 0 ? b : a), fields.sentAt);
