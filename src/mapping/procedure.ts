import type { CodeableConcept, Procedure, ProcedurePerformer, Reference } from 'fhir/r4.js';
import type { ResectionOutcome } from '../contract/index.js';
import {
  ESD_PROCEDURE,
  HYBRID_ESD,
  STRUCTURE,
  TEAM_FUNCTIONS,
  WORD_CODES,
} from '../terminology/index.js';
import { toBodySite } from './condition.js';
import { head, logical, MAIN, type MappingContext, toResource } from './context.js';
import { type CaseResource, claims, type Draft } from './draft.js';
import { narrative } from './narrative.js';
import { finalResectionStatus } from './resection-status.js';

/** A dissection that left the lesion is stopped or not done; all others are completed. */
const STATUS: Record<ResectionOutcome, Procedure['status']> = {
  'en-bloc': 'completed',
  piecemeal: 'completed',
  abandoned: 'stopped',
  'not-started': 'not-done',
};

/**
 * The dissection itself.
 *
 * @param drafts every other resource of the case, so that reports, devices and complications
 *   are linked as they are
 * @param summary plain sentences for the narrative
 */
export function toProcedure(
  context: MappingContext,
  drafts: readonly Draft[],
  summary: readonly string[],
): Draft<Procedure> {
  const { fields } = context;
  const { meta, identifier } = head(context, 'Procedure', MAIN, 'dr-esd-procedure');
  const links = (type: CaseResource['resourceType'], profile?: string): Reference[] =>
    drafts
      .filter(({ resource }) => resource.resourceType === type)
      .filter(({ resource }) => profile === undefined || claims(resource, profile))
      .map(({ key }) => toResource(context, type, key));
  const complications = links('Condition', 'dr-complication');
  const outcome = finalResectionStatus(context);
  const devices = [
    ...links('Device'),
    ...(fields.equipment?.endoscope?.device === undefined
      ? []
      : [logical('Device', fields.equipment.endoscope.device)]),
  ];
  return {
    key: MAIN,
    resource: {
      resourceType: 'Procedure',
      meta,
      text: narrative(summary),
      identifier: [...identifier, ...senderIdentifiers(context)],
      ...(fields.before?.referral === undefined
        ? {}
        : { basedOn: [logical('ServiceRequest', fields.before.referral)] }),
      status: STATUS[fields.resection.outcome],
      ...statusReason(context),
      category: STRUCTURE.procedureCategory,
      code: toEsdCode(context),
      subject: context.patient,
      ...context.inEncounter,
      performedPeriod: { start: fields.times.scopeInAt, end: fields.times.scopeOutAt },
      recorder: context.operator,
      performer: toPerformers(context),
      ...reasonCode(context),
      reasonReference: [context.lesion],
      bodySite: toBodySite(context),
      ...(outcome === undefined ? {} : { outcome }),
      report: [
        ...links('DiagnosticReport', 'dr-endoscopy-report'),
        ...links('DiagnosticReport', 'dr-pathology-report'),
      ],
      ...(complications.length === 0
        ? {}
        : {
            complication: complicationCodes(drafts),
            complicationDetail: complications,
          }),
      ...(devices.length === 0 ? {} : { usedReference: devices }),
    },
  };
}

/** What went wrong during the dissection and after it, each kind once. */
function complicationCodes(drafts: readonly Draft[]): CodeableConcept[] {
  const codes = drafts.flatMap(({ resource }) =>
    resource.resourceType === 'Condition' && claims(resource, 'dr-complication')
      ? [resource.code ?? []].flat()
      : [],
  );
  return [...new Map(codes.map((code) => [JSON.stringify(code), code])).values()];
}

/** ESD of the organ; a case finished with a snare says so in a second coding. */
export function toEsdCode(context: MappingContext): CodeableConcept {
  const { lesion, resection } = context.fields;
  const organ = context.concept(ESD_PROCEDURE[lesion.organ]);
  if (resection.technique !== 'hybrid-esd') return organ;
  const hybrid = context.concept(HYBRID_ESD);
  return { ...organ, coding: [...(organ.coding ?? []), ...(hybrid.coding ?? [])] };
}

function senderIdentifiers({ fields }: MappingContext) {
  return [fields.case, ...(fields.session === undefined ? [] : [fields.session])].map(
    ({ system, value }) => ({ system, value }),
  );
}

function statusReason(context: MappingContext): Pick<Procedure, 'statusReason'> {
  const { outcome, reason } = context.fields.resection;
  if (STATUS[outcome] === 'completed') return {};
  return {
    statusReason:
      reason === undefined
        ? STRUCTURE.absent.unknown
        : context.concept(WORD_CODES.notCompletedReason[reason]),
  };
}

function reasonCode(context: MappingContext): Pick<Procedure, 'reasonCode'> {
  const indications = context.fields.before?.indications ?? [];
  if (indications.length === 0) return {};
  return { reasonCode: indications.map((word) => context.concept(WORD_CODES.indication[word])) };
}

function toPerformers(context: MappingContext): ProcedurePerformer[] {
  const { team, unit } = context.fields;
  const onBehalfOf = unit === undefined ? {} : { onBehalfOf: logical('Organization', unit) };
  const performer = (
    code: 'operator' | 'supervisor' | 'assistant',
    who: typeof team.operator,
  ): ProcedurePerformer => ({
    function: context.concept(TEAM_FUNCTIONS[code]),
    actor: logical('Practitioner', who),
    ...onBehalfOf,
  });
  return [
    performer('operator', team.operator),
    ...(team.supervisor === undefined ? [] : [performer('supervisor', team.supervisor)]),
    ...(team.assistants ?? []).map((who) => performer('assistant', who)),
  ];
}
