import type { Condition, Procedure, Reference } from 'fhir/r4.js';
import type { AdverseEventKind } from '../contract/index.js';
import type { EventMessage } from '../record/index.js';
import {
  adverseEventCode,
  type CodeRef,
  DILATATION_OF,
  LATER_PROCEDURES,
  STRUCTURE,
  WORD_CODES,
} from '../terminology/index.js';
import { toBodySite } from './condition.js';
import { head, type MappingContext, PART_OF } from './context.js';
import type { Draft } from './draft.js';
import { toSeverity } from './event-grades.js';
import { causeOf, eventKey, timeOf, withSender } from './event-naming.js';

const DUE_TO = 'http://hl7.org/fhir/StructureDefinition/condition-dueTo';

/** An adverse event; one that is over is resolved. */
export function toComplication(
  context: MappingContext,
  event: EventMessage,
  kind: AdverseEventKind,
): Draft<Condition> {
  const { fields } = event;
  const key = eventKey(context, event);
  const { meta, identifier } = head(context, 'Condition', key, 'dr-complication');
  const cause = causeOf(context, event);
  const severity = toSeverity(context, event);
  const over = fields.course?.resolvedOn;
  return {
    key,
    resource: {
      resourceType: 'Condition',
      meta,
      extension: [
        { url: PART_OF, valueReference: context.procedure },
        ...(cause === undefined ? [] : [{ url: DUE_TO, valueReference: cause }]),
      ],
      identifier: withSender(identifier, fields.event),
      clinicalStatus:
        over === undefined
          ? STRUCTURE.conditionClinical.active
          : STRUCTURE.conditionClinical.resolved,
      verificationStatus: STRUCTURE.conditionVerification.confirmed,
      category: [STRUCTURE.conditionCategory.encounterDiagnosis],
      ...(severity === undefined ? {} : { severity }),
      code: context.concept(adverseEventCode(kind, context.fields.lesion.organ)),
      bodySite: toBodySite(context),
      subject: context.patient,
      onsetDateTime: timeOf(event),
      ...(over === undefined ? {} : { abatementDateTime: over }),
      recordedDate: fields.sentAt,
    },
  };
}

/** An operation or a dilatation: after the dissection, not a part of it. */
export function toLaterProcedure(context: MappingContext, event: EventMessage): Draft<Procedure> {
  const { fields } = event;
  const key = eventKey(context, event);
  const { meta, identifier } = head(context, 'Procedure', key, 'dr-sub-procedure');
  const cause = causeOf(context, event);
  const reason: readonly Reference[] = [
    ...(cause === undefined ? [] : [cause]),
    ...(fields.surgery?.reason === 'oncological' ? [context.lesion] : []),
  ];
  return {
    key,
    resource: {
      resourceType: 'Procedure',
      meta,
      identifier: withSender(identifier, fields.event),
      status: 'completed',
      code: context.concept(codeOfProcedure(context, event)),
      subject: context.patient,
      performedDateTime: timeOf(event),
      ...(reason.length === 0 ? {} : { reasonReference: [...reason] }),
      bodySite: toBodySite(context),
    },
  };
}

/** What was done, by organ where others name it so. */
export function codeOfProcedure(
  { fields: { lesion } }: MappingContext,
  { fields }: EventMessage,
): CodeRef {
  if (fields.kind === 'dilatation') return DILATATION_OF[lesion.organ];
  const operation = fields.surgery?.operation;
  return operation === undefined ? LATER_PROCEDURES.operation : WORD_CODES.operation[operation];
}
