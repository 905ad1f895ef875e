import type { CodeableConcept, Observation } from 'fhir/r4.js';
import type { EventGrades, GradeFinding } from '../assessment/index.js';
import type { EventMessage } from '../record/index.js';
import { ITEMS, STRUCTURE, WORD_CODES } from '../terminology/index.js';
import { type MappingContext, toResource } from './context.js';
import type { Draft } from './draft.js';
import { EVENT_FORMS } from './event-forms.table.js';
import { isSame, laterKey, timeOf, toEventResource } from './event-naming.js';
import { toLaterObservation } from './later-observation.js';
import { coded, type ObservationContent } from './observation.js';
import { byRule, notes, shown, sourced } from './rule-answer.js';

const GRADES = {
  agree: WORD_CODES.agreeGrade,
  'clavien-dindo': WORD_CODES.clavienDindoGrade,
} as const;

type Grade = NonNullable<GradeFinding['stated']>;

/** The code of a grade in its grading. */
const gradeCode = (rule: GradeFinding['rule'], grade: Grade) => GRADES[rule][grade];

/**
 * The severity of a complication: its AGREE grade by the facts, and as long as they do not
 * decide, as the unit states it.
 */
export function toSeverity(
  context: MappingContext,
  event: EventMessage,
): CodeableConcept | undefined {
  const found = gradesOf(context, event)?.findings.find(({ rule }) => rule === 'agree');
  const grade = found === undefined ? undefined : (decided(found) ?? found.stated);
  return grade === undefined ? undefined : context.concept(gradeCode('agree', grade));
}

/**
 * Each grade of an event as an Observation: by the facts, with the grade that the unit states
 * beside it, or why there is none.
 *
 * @param panels what is told of the event
 */
export function toGrades(
  context: MappingContext,
  event: EventMessage,
  panels: readonly Draft<Observation>[],
): readonly Draft<Observation>[] {
  const grades = gradesOf(context, event);
  if (grades === undefined) return [];
  const { fields } = event;
  const main = toEventResource(context, event);
  const { as } = EVENT_FORMS[fields.kind];
  const told = panels.map(({ key }) => toResource(context, 'Observation', key));
  const derivedFrom = [...(as === 'Observation' ? [main] : []), ...told];
  return grades.findings.map((finding) =>
    toLaterObservation(context, {
      item: 'ae-severity',
      key: `ae-severity.${finding.rule}.${laterKey(context, fields.event)}`,
      profile: 'dr-computed',
      category: 'survey',
      on: timeOf(event),
      issued: fields.sentAt,
      partOf: context.procedure,
      focus: as === 'Condition' ? [main] : [],
      content: {
        ...contentOf(context, finding),
        ...byRule(context, finding, [], new Set()),
        ...(derivedFrom.length === 0 ? {} : { derivedFrom }),
        ...notes([...inWords(finding), ...shown(grades.conflicts)]),
      },
    }),
  );
}

const gradesOf = ({ known }: MappingContext, { fields }: EventMessage): EventGrades | undefined =>
  known.afterwards.grades.find(({ event }) => isSame(event, fields.event));

const decided = ({ outcome }: GradeFinding): Grade | undefined =>
  outcome.kind === 'decided' ? outcome.grade : undefined;

function contentOf(context: MappingContext, finding: GradeFinding): ObservationContent {
  const { rule, outcome, stated } = finding;
  const component =
    stated === undefined
      ? {}
      : {
          component: [
            coded(context.concept(ITEMS['stated-grade']), context.concept(gradeCode(rule, stated))),
          ],
        };
  switch (outcome.kind) {
    case 'decided':
      return {
        valueCodeableConcept: context.concept(gradeCode(rule, outcome.grade)),
        ...component,
      };
    case 'indeterminate':
      return { dataAbsentReason: STRUCTURE.absent.unknown, ...component };
    case 'refused':
      return { dataAbsentReason: STRUCTURE.absent.notApplicable, ...component };
  }
}

function inWords({ rule, outcome, stated }: GradeFinding): readonly string[] {
  switch (outcome.kind) {
    case 'decided': {
      const differs = stated !== undefined && stated !== outcome.grade;
      return [
        ...outcome.reasons.map((reason) => `Reason: ${sourced(reason)}`),
        ...(differs ? [`The unit states ${gradeCode(rule, stated).text}.`] : []),
      ];
    }
    case 'indeterminate':
      return [
        `Not known: ${outcome.missing.join(', ')}; ` +
          `at least ${gradeCode(rule, outcome.atLeast).text}.`,
      ];
    case 'refused':
      return [outcome.because];
  }
}

/** The grades by the facts, for people; none where no fact decides. */
export function gradesInWords(context: MappingContext, event: EventMessage): readonly string[] {
  return (gradesOf(context, event)?.findings ?? []).flatMap((finding) => {
    const grade = decided(finding);
    return grade === undefined ? [] : [gradeCode(finding.rule, grade).text];
  });
}
