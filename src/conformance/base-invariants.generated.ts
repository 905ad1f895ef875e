// Made by `npm run generated` of the StructureDefinitions of FHIR R4 (4.0.1); do not edit.
import type { Rule } from './rule.js';

export const BASE_INVARIANTS: readonly Rule[] = [
  {
    key: 'bdl-1',
    severity: 'error',
    human: 'total only when a search or history',
    expression: "total.empty() or (type = 'searchset') or (type = 'history')",
    context: 'Bundle',
  },
  {
    key: 'bdl-2',
    severity: 'error',
    human: 'entry.search only when a search',
    expression: "entry.search.empty() or (type = 'searchset')",
    context: 'Bundle',
  },
  {
    key: 'bdl-3',
    severity: 'error',
    human: 'entry.request mandatory for batch/transaction/history, otherwise prohibited',
    expression:
      "entry.all(request.exists() = (%resource.type = 'batch' or %resource.type = 'transaction' or %resource.type = 'history'))",
    context: 'Bundle',
  },
  {
    key: 'bdl-4',
    severity: 'error',
    human:
      'entry.response mandatory for batch-response/transaction-response/history, otherwise prohibited',
    expression:
      "entry.all(response.exists() = (%resource.type = 'batch-response' or %resource.type = 'transaction-response' or %resource.type = 'history'))",
    context: 'Bundle',
  },
  {
    key: 'bdl-7',
    severity: 'error',
    human:
      'FullUrl must be unique in a bundle, or else entries with the same fullUrl must have different meta.versionId (except in history bundles)',
    expression:
      "(type = 'history') or entry.where(fullUrl.exists()).select(fullUrl&resource.meta.versionId).isDistinct()",
    context: 'Bundle',
  },
  {
    key: 'bdl-9',
    severity: 'error',
    human: 'A document must have an identifier with a system and a value',
    expression:
      "type = 'document' implies (identifier.system.exists() and identifier.value.exists())",
    context: 'Bundle',
  },
  {
    key: 'bdl-10',
    severity: 'error',
    human: 'A document must have a date',
    expression: "type = 'document' implies (timestamp.hasValue())",
    context: 'Bundle',
  },
  {
    key: 'bdl-11',
    severity: 'error',
    human: 'A document must have a Composition as the first resource',
    expression: "type = 'document' implies entry.first().resource.is(Composition)",
    context: 'Bundle',
  },
  {
    key: 'bdl-12',
    severity: 'error',
    human: 'A message must have a MessageHeader as the first resource',
    expression: "type = 'message' implies entry.first().resource.is(MessageHeader)",
    context: 'Bundle',
  },
  {
    key: 'bdl-5',
    severity: 'error',
    human: "must be a resource unless there's a request or response",
    expression: 'resource.exists() or request.exists() or response.exists()',
    context: 'Bundle.entry',
  },
  {
    key: 'bdl-8',
    severity: 'error',
    human: 'fullUrl cannot be a version specific reference',
    expression: "fullUrl.exists() implies fullUrl.contains('/_history/').not()",
    context: 'Bundle.entry',
  },
  {
    key: 'dom-2',
    severity: 'error',
    human:
      'If the resource is contained in another resource, it SHALL NOT contain nested Resources',
    expression: 'contained.contained.empty()',
    context: 'DomainResource',
  },
  {
    key: 'dom-3',
    severity: 'error',
    human:
      'If the resource is contained in another resource, it SHALL be referred to from elsewhere in the resource or SHALL refer to the containing resource',
    expression:
      "contained.where((('#'+id in (%resource.descendants().reference | %resource.descendants().as(canonical) | %resource.descendants().as(uri) | %resource.descendants().as(url))) or descendants().where(reference = '#').exists() or descendants().where(as(canonical) = '#').exists() or descendants().where(as(canonical) = '#').exists()).not()).trace('unmatched', id).empty()",
    context: 'DomainResource',
  },
  {
    key: 'dom-4',
    severity: 'error',
    human:
      'If a resource is contained in another resource, it SHALL NOT have a meta.versionId or a meta.lastUpdated',
    expression: 'contained.meta.versionId.empty() and contained.meta.lastUpdated.empty()',
    context: 'DomainResource',
  },
  {
    key: 'dom-5',
    severity: 'error',
    human: 'If a resource is contained in another resource, it SHALL NOT have a security label',
    expression: 'contained.meta.security.empty()',
    context: 'DomainResource',
  },
  {
    key: 'dom-6',
    severity: 'warning',
    human: 'A resource should have narrative for robust management',
    expression: 'text.`div`.exists()',
    context: 'DomainResource',
  },
  {
    key: 'con-3',
    severity: 'warning',
    human:
      'Condition.clinicalStatus SHALL be present if verificationStatus is not entered-in-error and category is problem-list-item',
    expression:
      "clinicalStatus.exists() or verificationStatus.coding.where(system='http://terminology.hl7.org/CodeSystem/condition-ver-status' and code = 'entered-in-error').exists() or category.select($this='problem-list-item').empty()",
    context: 'Condition',
  },
  {
    key: 'con-4',
    severity: 'error',
    human:
      'If condition is abated, then clinicalStatus must be either inactive, resolved, or remission',
    expression:
      "abatement.empty() or clinicalStatus.coding.where(system='http://terminology.hl7.org/CodeSystem/condition-clinical' and (code='resolved' or code='remission' or code='inactive')).exists()",
    context: 'Condition',
  },
  {
    key: 'con-5',
    severity: 'error',
    human:
      'Condition.clinicalStatus SHALL NOT be present if verification Status is entered-in-error',
    expression:
      "verificationStatus.coding.where(system='http://terminology.hl7.org/CodeSystem/condition-ver-status' and code='entered-in-error').empty() or clinicalStatus.empty()",
    context: 'Condition',
  },
  {
    key: 'con-1',
    severity: 'error',
    human: 'Stage SHALL have summary or assessment',
    expression: 'summary.exists() or assessment.exists()',
    context: 'Condition.stage',
  },
  {
    key: 'con-2',
    severity: 'error',
    human: 'evidence SHALL have code or details',
    expression: 'code.exists() or detail.exists()',
    context: 'Condition.evidence',
  },
  {
    key: 'obs-6',
    severity: 'error',
    human: 'dataAbsentReason SHALL only be present if Observation.value[x] is not present',
    expression: 'dataAbsentReason.empty() or value.empty()',
    context: 'Observation',
  },
  {
    key: 'obs-7',
    severity: 'error',
    human:
      'If Observation.code is the same as an Observation.component.code then the value element associated with the code SHALL NOT be present',
    expression:
      'value.empty() or component.code.where(coding.intersect(%resource.code.coding).exists()).empty()',
    context: 'Observation',
  },
  {
    key: 'obs-3',
    severity: 'error',
    human: 'Must have at least a low or a high or text',
    expression: 'low.exists() or high.exists() or text.exists()',
    context: 'Observation.referenceRange',
  },
  {
    key: 'prr-1',
    severity: 'error',
    human: 'orderDetail SHALL only be present if code is present',
    expression: 'orderDetail.empty() or code.exists()',
    context: 'ServiceRequest',
  },
  {
    key: 'mad-1',
    severity: 'error',
    human: 'SHALL have at least one of dosage.dose or dosage.rate[x]',
    expression: 'dose.exists() or rate.exists()',
    context: 'MedicationAdministration.dosage',
  },
  {
    key: 'app-2',
    severity: 'error',
    human: 'Either start and end are specified, or neither',
    expression: 'start.exists() = end.exists()',
    context: 'Appointment',
  },
  {
    key: 'app-3',
    severity: 'error',
    human: 'Only proposed or cancelled appointments can be missing start/end dates',
    expression:
      "(start.exists() and end.exists()) or (status in ('proposed' | 'cancelled' | 'waitlist'))",
    context: 'Appointment',
  },
  {
    key: 'app-4',
    severity: 'error',
    human: 'Cancelation reason is only used for appointments that have been cancelled, or no-show',
    expression:
      "Appointment.cancelationReason.exists() implies (Appointment.status='noshow' or Appointment.status='cancelled')",
    context: 'Appointment',
  },
  {
    key: 'app-1',
    severity: 'error',
    human: 'Either the type or actor on the participant SHALL be specified',
    expression: 'type.exists() or actor.exists()',
    context: 'Appointment.participant',
  },
  {
    key: 'inv-1',
    severity: 'error',
    human: 'Last modified date must be greater than or equal to authored-on date.',
    expression:
      'lastModified.exists().not() or authoredOn.exists().not() or lastModified >= authoredOn',
    context: 'Task',
  },
  {
    key: 'mea-0',
    severity: 'warning',
    human:
      'Name should be usable as an identifier for the module by machine processing applications such as code generation',
    expression: "name.matches('[A-Z]([A-Za-z0-9_]){0,254}')",
    context: 'Measure',
  },
  {
    key: 'mea-1',
    severity: 'error',
    human: 'Stratifier SHALL be either a single criteria or a set of criteria components',
    expression:
      'group.stratifier.all((code | description | criteria).exists() xor component.exists())',
    context: 'Measure',
  },
  {
    key: 'mrp-1',
    severity: 'error',
    human:
      'Measure Reports used for data collection SHALL NOT communicate group and score information',
    expression: "(type != 'data-collection') or group.exists().not()",
    context: 'MeasureReport',
  },
  {
    key: 'mrp-2',
    severity: 'error',
    human: 'Stratifiers SHALL be either a single criteria or a set of criteria components',
    expression: 'group.stratifier.stratum.all(value.exists() xor component.exists())',
    context: 'MeasureReport',
  },
  {
    key: 'age-1',
    severity: 'error',
    human:
      'There SHALL be a code if there is a value and it SHALL be an expression of time.  If system is present, it SHALL be UCUM.  If value is present, it SHALL be positive.',
    expression:
      '(code.exists() or value.empty()) and (system.empty() or system = %ucum) and (value.empty() or value.hasValue().not() or value > 0)',
    context: 'Age',
  },
  {
    key: 'att-1',
    severity: 'error',
    human: 'If the Attachment has data, it SHALL have a contentType',
    expression: 'data.empty() or contentType.exists()',
    context: 'Attachment',
  },
  {
    key: 'cpt-2',
    severity: 'error',
    human: 'A system is required if a value is provided.',
    expression: 'value.empty() or system.exists()',
    context: 'ContactPoint',
  },
  {
    key: 'cnt-3',
    severity: 'error',
    human:
      'There SHALL be a code with a value of "1" if there is a value. If system is present, it SHALL be UCUM.  If present, the value SHALL be a whole number.',
    expression:
      "(code.exists() or value.empty()) and (system.empty() or system = %ucum) and (code.empty() or code = '1') and (value.empty() or value.hasValue().not() or value.toString().contains('.').not())",
    context: 'Count',
  },
  {
    key: 'drq-1',
    severity: 'error',
    human: 'Either a path or a searchParam must be provided, but not both',
    expression: 'path.exists() xor searchParam.exists()',
    context: 'DataRequirement.codeFilter',
  },
  {
    key: 'drq-2',
    severity: 'error',
    human: 'Either a path or a searchParam must be provided, but not both',
    expression: 'path.exists() xor searchParam.exists()',
    context: 'DataRequirement.dateFilter',
  },
  {
    key: 'dis-1',
    severity: 'error',
    human:
      'There SHALL be a code if there is a value and it SHALL be an expression of length.  If system is present, it SHALL be UCUM.',
    expression: '(code.exists() or value.empty()) and (system.empty() or system = %ucum)',
    context: 'Distance',
  },
  {
    key: 'drt-1',
    severity: 'error',
    human:
      'There SHALL be a code if there is a value and it SHALL be an expression of time.  If system is present, it SHALL be UCUM.',
    expression: 'code.exists() implies ((system = %ucum) and value.exists())',
    context: 'Duration',
  },
  {
    key: 'exp-1',
    severity: 'error',
    human: 'An expression or a reference must be provided',
    expression: 'expression.exists() or reference.exists()',
    context: 'Expression',
  },
  {
    key: 'ext-1',
    severity: 'error',
    human: 'Must have either extensions or value[x], not both',
    expression: 'extension.exists() != value.exists()',
    context: 'Extension',
  },
  {
    key: 'txt-1',
    severity: 'error',
    human:
      'The narrative SHALL contain only the basic html formatting elements and attributes described in chapters 7-11 (except section 4 of chapter 9) and 15 of the HTML 4.0 standard, <a> elements (either name or href), images and internally contained style attributes',
    expression: 'htmlChecks()',
    context: 'Narrative.div',
  },
  {
    key: 'txt-2',
    severity: 'error',
    human: 'The narrative SHALL have some non-whitespace content',
    expression: 'htmlChecks()',
    context: 'Narrative.div',
  },
  {
    key: 'per-1',
    severity: 'error',
    human: 'If present, start SHALL have a lower value than end',
    expression: 'start.hasValue().not() or end.hasValue().not() or (start <= end)',
    context: 'Period',
  },
  {
    key: 'qty-3',
    severity: 'error',
    human: 'If a code for the unit is present, the system SHALL also be present',
    expression: 'code.empty() or system.exists()',
    context: 'Quantity',
  },
  {
    key: 'rng-2',
    severity: 'error',
    human: 'If present, low SHALL have a lower value than high',
    expression: 'low.empty() or high.empty() or (low <= high)',
    context: 'Range',
  },
  {
    key: 'rat-1',
    severity: 'error',
    human:
      'Numerator and denominator SHALL both be present, or both are absent. If both are absent, there SHALL be some extension present',
    expression:
      '(numerator.empty() xor denominator.exists()) and (numerator.exists() or extension.exists())',
    context: 'Ratio',
  },
  {
    key: 'ref-1',
    severity: 'error',
    human: 'SHALL have a contained resource if a local reference is provided',
    expression:
      "reference.startsWith('#').not() or (reference.substring(1).trace('url') in %rootResource.contained.id.trace('ids'))",
    context: 'Reference',
  },
  {
    key: 'tim-1',
    severity: 'error',
    human: "if there's a duration, there needs to be duration units",
    expression: 'duration.empty() or durationUnit.exists()',
    context: 'Timing.repeat',
  },
  {
    key: 'tim-2',
    severity: 'error',
    human: "if there's a period, there needs to be period units",
    expression: 'period.empty() or periodUnit.exists()',
    context: 'Timing.repeat',
  },
  {
    key: 'tim-4',
    severity: 'error',
    human: 'duration SHALL be a non-negative value',
    expression: 'duration.exists() implies duration >= 0',
    context: 'Timing.repeat',
  },
  {
    key: 'tim-5',
    severity: 'error',
    human: 'period SHALL be a non-negative value',
    expression: 'period.exists() implies period >= 0',
    context: 'Timing.repeat',
  },
  {
    key: 'tim-6',
    severity: 'error',
    human: "If there's a periodMax, there must be a period",
    expression: 'periodMax.empty() or period.exists()',
    context: 'Timing.repeat',
  },
  {
    key: 'tim-7',
    severity: 'error',
    human: "If there's a durationMax, there must be a duration",
    expression: 'durationMax.empty() or duration.exists()',
    context: 'Timing.repeat',
  },
  {
    key: 'tim-8',
    severity: 'error',
    human: "If there's a countMax, there must be a count",
    expression: 'countMax.empty() or count.exists()',
    context: 'Timing.repeat',
  },
  {
    key: 'tim-9',
    severity: 'error',
    human: "If there's an offset, there must be a when (and not C, CM, CD, CV)",
    expression:
      "offset.empty() or (when.exists() and when.select($this in ('C' | 'CM' | 'CD' | 'CV')).allFalse())",
    context: 'Timing.repeat',
  },
  {
    key: 'tim-10',
    severity: 'error',
    human: "If there's a timeOfDay, there cannot be a when, or vice versa",
    expression: 'timeOfDay.empty() or when.empty()',
    context: 'Timing.repeat',
  },
  {
    key: 'trd-1',
    severity: 'error',
    human: 'Either timing, or a data requirement, but not both',
    expression: 'data.empty() or timing.empty()',
    context: 'TriggerDefinition',
  },
  {
    key: 'trd-2',
    severity: 'error',
    human: 'A condition only if there is a data requirement',
    expression: 'condition.exists() implies data.exists()',
    context: 'TriggerDefinition',
  },
  {
    key: 'trd-3',
    severity: 'error',
    human:
      'A named event requires a name, a periodic event requires timing, and a data event requires data',
    expression:
      "(type = 'named-event' implies name.exists()) and (type = 'periodic' implies timing.exists()) and (type.startsWith('data-') implies data.exists())",
    context: 'TriggerDefinition',
  },
];
