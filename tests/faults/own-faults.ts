import type { Bundle } from 'fhir/r4.js';
import { BASE, ENDED, local, outside, quantity, to, urlOf } from '../conformance/sample-parts.js';
import { grownBundle, type SAMPLES } from '../conformance/sample-variants.js';
import type { Edit } from './edit.js';

/** A fault that breaks one rule of our own, planted in a sample in which the rule holds. */
export interface OwnFault {
  readonly rule: string;
  readonly sample: keyof typeof SAMPLES;
  /** FHIRPath on the sample: what the rule is about; not empty, or the rule would hold idly. */
  readonly subject: string;
  readonly fault: readonly Edit[] | ((sample: Bundle) => Bundle);
  /** Rules that break with it of necessity, because they say the same of one resource or of all. */
  readonly also?: readonly string[];
}

const all = (type: string): string => `entry.resource.ofType(${type})`;
const VERDICT = `${all('Observation')}.where(meta.profile.where($this.endsWith('/dr-curability')).exists()).value.ofType(CodeableConcept).coding`;
const PLANNED = `${all('ServiceRequest')}.where(intent = 'plan')`;
const REASON = `${all('Observation')}.component.where(code.coding.code = 'curability-reason')`;
/** FHIRPath for the codings of an item that have a code. */
const withCode = (item: string, code: string): string =>
  `${all('Observation')}.where(code.coding.code = '${item}').value.ofType(CodeableConcept).coding.where(code = '${code}')`;
const FOREIGN = 'https://elsewhere.example/StructureDefinition/other';
const KNIFE = to('Device', 'knife');
const UNKNOWN_URL = 'urn:uuid:00000000-0000-8000-8000-000000000000';

export const OWN_FAULTS: readonly OwnFault[] = [
  {
    rule: 'dr-bdl-1',
    sample: 'pending',
    subject: 'entry',
    fault: [{ at: '/type', set: 'batch' }],
  },
  {
    rule: 'dr-bdl-2',
    sample: 'pending',
    subject: 'entry.fullUrl',
    fault: [
      {
        at: 'entry:Provenance.state-1/fullUrl',
        set: 'urn:uuid:00000000-0000-4000-8000-000000000000',
      },
    ],
  },
  {
    rule: 'dr-bdl-3',
    sample: 'pending',
    subject: 'entry.fullUrl',
    fault: [{ at: 'entry:Provenance.state-1/fullUrl', set: urlOf('Media', 'bed') }],
  },
  {
    rule: 'dr-bdl-4',
    sample: 'pending',
    subject: "entry.resource.descendants().reference.where($this.startsWith('urn:uuid:'))",
    fault: [{ at: 'Procedure.esd/location', set: { reference: UNKNOWN_URL } }],
  },
  {
    rule: 'dr-bdl-5',
    sample: 'pending',
    subject: 'entry.request',
    fault: [{ at: 'entry:Media.bed/request', set: { method: 'POST', url: 'Media' } }],
  },
  {
    rule: 'dr-bdl-6',
    sample: 'pending',
    subject: "entry.request.where(method = 'PUT')",
    fault: [
      { at: 'Media.bed/identifier/0/value', set: 'case-4711.knife' },
      {
        at: 'entry:Media.bed/request/url',
        set: `Device?identifier=${encodeURIComponent('https://unit-one.example/ids/device|case-4711.knife')}`,
      },
    ],
  },
  {
    rule: 'dr-bdl-7',
    sample: 'pending',
    subject: "entry.request.where(method = 'PUT' and url.contains('?'))",
    fault: [{ at: 'entry:Media.bed/request/url', set: 'Media?identifier=a|b%7Ccase-4711.bed' }],
  },
  {
    rule: 'dr-bdl-8',
    sample: 'pending',
    subject: "entry.where(request.url.contains('?identifier='))",
    fault: [{ at: 'Media.bed/identifier/0/value', set: 'case-4711.other' }],
  },
  {
    rule: 'dr-bdl-9',
    sample: 'pending',
    subject: "entry.where(request.url.contains('?'))",
    fault: [{ at: 'Media.bed/id', set: 'a-client-id' }],
  },
  {
    rule: 'dr-bdl-10',
    sample: 'bare',
    subject: all('Procedure'),
    fault: [
      {
        at: 'Procedure.esd/meta/profile/0',
        set: `${BASE}/StructureDefinition/dr-sub-procedure`,
      },
    ],
  },
  {
    rule: 'dr-bdl-11',
    sample: 'pending',
    subject: 'entry.resource.subject',
    fault: [{ at: 'Observation.fibrosis/subject/identifier/value', set: 'p-9999' }],
  },
  {
    rule: 'dr-bdl-12',
    sample: 'conditional',
    subject: "entry.resource.descendants().reference.where($this.contains('?'))",
    fault: [{ at: 'Procedure.esd/encounter/reference', set: 'Media?identifier=a%7Cb' }],
  },
  {
    rule: 'dr-bdl-13',
    sample: 'pending',
    subject: 'entry.resource.meta.tag',
    fault: [{ at: 'Media.bed/meta/tag/0/code', set: '2' }],
  },
  {
    rule: 'dr-bdl-14',
    sample: 'pending',
    subject: all('Provenance'),
    fault: [{ at: 'Provenance.state-1/target/3' }],
  },
  {
    rule: 'dr-bdl-15',
    sample: 'pending',
    subject: 'entry',
    fault: () => grownBundle(80),
  },
  {
    rule: 'dr-bdl-16',
    sample: 'pending',
    subject: all('Condition'),
    fault: [{ at: 'Condition.lesion/meta/profile/0', set: `${BASE}/StructureDefinition/dr-other` }],
  },
  {
    rule: 'dr-gen-1',
    sample: 'pending',
    subject: 'entry.resource.descendants().ofType(Quantity).value',
    fault: [{ at: 'Observation.specimen-length/valueQuantity/code' }],
  },
  {
    rule: 'dr-gen-2',
    sample: 'pending',
    subject: 'entry.resource.descendants().ofType(Coding)',
    fault: [{ at: 'Procedure.esd/category/coding/0/code' }],
  },
  {
    rule: 'dr-gen-3',
    sample: 'pending',
    subject: 'entry.resource.descendants().ofType(CodeableConcept)',
    fault: [{ at: 'Procedure.esd/outcome', set: { id: 'empty' } }],
  },
  {
    rule: 'dr-gen-4',
    sample: 'pending',
    subject: 'entry.resource.identifier',
    fault: [{ at: 'Media.bed/identifier/0/system' }],
  },
  {
    rule: 'dr-gen-5',
    sample: 'pending',
    subject: 'entry.resource.meta.profile',
    fault: [{ at: 'Media.bed/meta/profile/0', set: FOREIGN }],
  },
  {
    rule: 'dr-gen-6',
    sample: 'pending',
    subject: 'entry.resource.descendants().ofType(dateTime)',
    fault: [{ at: 'Media.bed/createdDateTime', set: '2026-03-02T10:30:00' }],
  },
  {
    rule: 'dr-gen-7',
    sample: 'pending',
    subject: `${all('Observation')}.specimen`,
    fault: [{ at: 'Observation.specimen-length/specimen', set: { identifier: { value: 'A' } } }],
  },
  {
    rule: 'dr-gen-8',
    sample: 'pending',
    subject: "entry.resource.descendants().ofType(Coding).where(system = 'http://loinc.org')",
    fault: [{ at: 'DiagnosticReport.endoscopy/category/0/coding/0/display' }],
  },
  {
    rule: 'dr-gen-9',
    sample: 'pending',
    subject: 'entry.resource.extension',
    fault: [{ at: 'Media.bed/extension', set: [{ url: FOREIGN, valueString: 'more' }] }],
  },
  {
    rule: 'dr-pro-1',
    sample: 'bare',
    subject: `${all('Procedure')}.where(status = 'completed').performed`,
    fault: [{ at: 'Procedure.esd/performedPeriod/start', set: ENDED }],
    also: ['dr-r-pro-1'],
  },
  {
    rule: 'dr-pro-2',
    sample: 'pending',
    subject: all('Procedure'),
    fault: [{ at: 'Procedure.esd/performer' }],
  },
  {
    rule: 'dr-pro-3',
    sample: 'pending',
    subject: `${all('Procedure')}.complicationDetail`,
    fault: [{ at: 'Procedure.esd/complicationDetail/-', set: KNIFE }],
  },
  {
    rule: 'dr-pro-4',
    sample: 'pending',
    subject: `${all('Condition')}.where(meta.profile.where($this.endsWith('dr-complication')).exists())`,
    fault: [{ at: 'Procedure.esd/complicationDetail' }],
  },
  {
    rule: 'dr-con-1',
    sample: 'pending',
    subject: `${all('Condition')}.where(code.coding.code = 'delayed-bleeding').onset`,
    fault: [{ at: 'Condition.delayed-bleeding/onsetDateTime', set: '2026-03-02T10:29:59+01:00' }],
  },
  {
    rule: 'dr-wdr-1',
    sample: 'withdrawn',
    subject: `${all('Procedure')}.where(status = 'entered-in-error')`,
    fault: [{ at: 'Device.knife/status', set: 'active' }],
  },
  {
    rule: 'dr-wdr-2',
    sample: 'withdrawn',
    subject: `${all('Provenance')}.activity`,
    fault: [{ at: 'Provenance.state-1/activity/coding/0/code', set: 'UPDATE' }],
  },
  {
    rule: 'dr-pro-5',
    sample: 'pending',
    subject: all('DiagnosticReport'),
    fault: [{ at: 'Procedure.esd/report' }],
  },
  {
    rule: 'dr-pro-6',
    sample: 'not done',
    subject: `${all('Procedure')}.where(status = 'not-done')`,
    fault: [{ at: 'Procedure.closure/statusReason' }],
    also: ['dr-r-pro-6'],
  },
  {
    rule: 'dr-pro-7',
    sample: 'pending',
    subject: `${all('Procedure')}.where(partOf.exists()).performed`,
    fault: [{ at: 'Procedure.closure/performedPeriod/end', set: '2026-03-02T10:31:00+01:00' }],
  },
  {
    rule: 'dr-obs-1',
    sample: 'pending',
    subject: all('Observation'),
    fault: [{ at: 'Observation.fibrosis/partOf/0', set: KNIFE }],
  },
  {
    rule: 'dr-obs-2',
    sample: 'pending',
    subject: `${all('Observation')}.code.coding`,
    fault: [{ at: 'Observation.fibrosis/code', set: { text: 'Fibrosis' } }],
  },
  {
    rule: 'dr-obs-3',
    sample: 'pending',
    subject: `${all('Observation')}.where(status = 'final')`,
    fault: [{ at: 'Observation.fibrosis/valueCodeableConcept' }],
    also: ['dr-r-obs-3'],
  },
  {
    rule: 'dr-obs-4',
    sample: 'pending',
    subject: `${all('Observation')}.component`,
    fault: [{ at: 'Observation.lesion-description/component/2/dataAbsentReason' }],
    also: ['dr-r-obs-4'],
  },
  {
    rule: 'dr-obs-5',
    sample: 'pending',
    subject: `${all('Observation')}.hasMember`,
    fault: [
      {
        at: 'Observation.specimen-dimensions/component',
        set: [
          { code: local('esd-observation', 'specimen-height'), valueQuantity: quantity(2, 'mm') },
        ],
      },
    ],
    also: ['dr-r-obs-5'],
  },
  {
    rule: 'dr-obs-6',
    sample: 'pending',
    subject: `${all('Observation')}.value`,
    fault: [
      { at: 'Observation.fibrosis/valueCodeableConcept' },
      { at: 'Observation.fibrosis/valueString', set: 'F1' },
    ],
    also: ['dr-r-obs-6'],
  },
  {
    rule: 'dr-obs-7',
    sample: 'pending',
    subject: `${all('Observation')}.where(focus.exists())`,
    fault: [
      { at: 'Observation.resection-completeness/code', set: local('esd-observation', 'en-bloc') },
    ],
  },
  {
    rule: 'dr-obs-8',
    sample: 'pending',
    subject: `${all('Observation')}.derivedFrom`,
    fault: [{ at: 'Observation.specimen-area/derivedFrom/-', set: KNIFE }],
  },
  {
    rule: 'dr-obs-9',
    sample: 'pending',
    subject: `${all('Observation')}.method`,
    fault: [
      { at: 'Observation.bleeding-risk-score/method' },
      {
        at: 'Observation.bleeding-risk-score/meta/profile/0',
        set: `${BASE}/StructureDefinition/dr-endoscopy-finding`,
      },
    ],
  },
  {
    rule: 'dr-obs-10',
    sample: 'reported',
    subject: `${all('Observation')}.where(meta.profile.where($this.endsWith('dr-pathology-finding')).exists())`,
    fault: [{ at: 'Observation.vertical-margin/specimen', set: KNIFE }],
  },
  {
    rule: 'dr-obs-11',
    sample: 'pending',
    subject: `${all('Observation')}.focus`,
    fault: [{ at: 'Observation.fibrosis/focus/0', set: KNIFE }],
  },
  {
    rule: 'dr-spm-1',
    sample: 'pending',
    subject: `${all('Specimen')}.collection.collected`,
    fault: [{ at: 'Specimen.A/collection/collectedDateTime', set: '2026-03-02T10:30:01+01:00' }],
  },
  {
    rule: 'dr-spm-2',
    sample: 'pending',
    subject: all('Specimen'),
    fault: [{ at: 'Specimen.A/type' }],
  },
  {
    rule: 'dr-spm-3',
    sample: 'pending',
    subject: `${all('Specimen')}.collection.bodySite`,
    fault: [{ at: 'Specimen.A/collection/bodySite/coding/0/code', set: '71854001' }],
  },
  {
    rule: 'dr-dr-1',
    sample: 'pending',
    subject: `${all('DiagnosticReport')}.result`,
    fault: [{ at: 'DiagnosticReport.endoscopy/result/-', set: KNIFE }],
  },
  {
    rule: 'dr-dr-2',
    sample: 'reported',
    subject: `${all('DiagnosticReport')}.where(status = 'final')`,
    fault: [{ at: 'DiagnosticReport.pathology/performer' }],
    also: ['dr-r-dr-2'],
  },
  {
    rule: 'dr-dr-3',
    sample: 'reported',
    subject: `${all('DiagnosticReport')}.where(status = 'final').result`,
    fault: [{ at: 'Observation.vertical-margin/status', set: 'preliminary' }],
  },
  {
    rule: 'dr-dr-4',
    sample: 'pending',
    subject: all('Observation'),
    fault: [{ at: 'DiagnosticReport.endoscopy/result/1' }],
  },
  {
    rule: 'dr-dr-5',
    sample: 'withdrawn',
    subject: `${all('DiagnosticReport')}.where(status = 'entered-in-error').result`,
    fault: [{ at: 'Observation.fibrosis/status', set: 'final' }],
    also: ['dr-wdr-1'],
  },
  {
    rule: 'dr-dr-6',
    sample: 'pending',
    subject: `${all('Specimen')}.where(status = 'available')`,
    fault: [
      { at: 'DiagnosticReport.endoscopy/status', set: 'final' },
      { at: 'Observation.curability/status', set: 'final' },
      { at: 'Observation.curability/dataAbsentReason', set: { text: 'not known' } },
    ],
  },
  {
    rule: 'dr-dr-7',
    sample: 'reported',
    subject: `${all('DiagnosticReport')}.where(category.coding.where(code = 'SP').exists()).issued`,
    fault: [{ at: 'DiagnosticReport.pathology/issued', set: '2026-03-02T10:00:00+01:00' }],
  },
  {
    rule: 'dr-dr-8',
    sample: 'reported',
    subject: `${all('DiagnosticReport')}.conclusionCode`,
    fault: [
      {
        at: 'DiagnosticReport.endoscopy/conclusionCode/0',
        set: local('curability', 'esge-low-risk'),
      },
    ],
  },
  {
    rule: 'dr-dr-9',
    sample: 'reported',
    subject: `${all('DiagnosticReport')}.identifier.where(type.coding.code = 'ACSN')`,
    fault: [{ at: 'DiagnosticReport.pathology/identifier/1' }],
  },
  {
    rule: 'dr-cli-1',
    sample: 'reported',
    subject: withCode('resection-status', 'r0'),
    fault: [
      {
        at: 'Observation.lateral-margin/valueCodeableConcept',
        set: local('margin-status', 'hmx'),
      },
    ],
  },
  {
    rule: 'dr-cli-2',
    sample: 'reported',
    subject: `${VERDICT}.where(system.endsWith('/curability-group') and code = 'curative')`,
    fault: [
      {
        at: 'Observation.resection-status/valueCodeableConcept',
        set: local('resection-status', 'rx'),
      },
      { at: 'Procedure.esd/outcome', set: local('resection-status', 'rx') },
    ],
  },
  {
    rule: 'dr-cli-3',
    sample: 'reported',
    subject: withCode('lymphovascular-invasion', 'absent'),
    fault: [
      {
        at: 'Observation.lymphovascular-invasion/valueCodeableConcept',
        set: local('finding-state', 'not-assessable'),
      },
    ],
  },
  {
    rule: 'dr-cli-4',
    sample: 'reported',
    subject: VERDICT,
    fault: [
      { at: 'DiagnosticReport.pathology/status', set: 'preliminary' },
      {
        at: 'Condition.lesion/verificationStatus/coding/0/code',
        set: 'provisional',
      },
    ],
  },
  {
    rule: 'dr-cli-9',
    sample: 'involved',
    subject: `${withCode('vertical-margin', 'vm1')} | ${all('Observation')}.component.where(code.coding.code = 'margin-distance')`,
    fault: [
      { at: 'Observation.vertical-margin/component/0/valueQuantity', set: quantity(10, 'um') },
    ],
  },
  {
    rule: 'dr-cli-10',
    sample: 'reported',
    subject: `${all('Observation')}.component.where(code.coding.code = 'submucosal-invasion-depth')`,
    fault: [
      {
        at: 'Observation.invasion-depth/valueCodeableConcept',
        set: local('invasion-depth', 'm'),
      },
    ],
  },
  {
    rule: 'dr-cli-12',
    sample: 'non-curative',
    subject: `${VERDICT}.where(code = 'non-curative')`,
    fault: [{ at: 'ServiceRequest.meeting/status', set: 'draft' }],
  },
  {
    rule: 'dr-cli-13',
    sample: 'incomplete',
    subject: VERDICT,
    fault: [{ at: 'ServiceRequest.first-check/intent', set: 'order' }],
    also: ['dr-fol-1'],
  },
  {
    rule: 'dr-fol-1',
    sample: 'pending',
    subject: `${PLANNED}.where(status = 'active')`,
    fault: [{ at: 'ServiceRequest.first-check/occurrencePeriod/start', set: '2026-03-01' }],
  },
  {
    rule: 'dr-fol-2',
    sample: 'pending',
    subject: PLANNED,
    fault: [{ at: 'ServiceRequest.first-check/reasonReference' }],
  },
  {
    rule: 'dr-fol-3',
    sample: 'booked',
    subject: all('Appointment'),
    fault: [{ at: 'Appointment.first-check/basedOn', set: [to('Observation', 'curability')] }],
  },
  {
    rule: 'dr-fol-4',
    sample: 'appointed',
    subject: `${all('Appointment')}.where(status = 'proposed')`,
    fault: [{ at: 'ServiceRequest.first-check/status', set: 'completed' }],
  },
  {
    rule: 'dr-fol-5',
    sample: 'booked',
    subject: `${all('Appointment')}.where(status = 'cancelled')`,
    fault: [{ at: 'Appointment.meeting/cancelationReason' }],
  },
  {
    rule: 'dr-fol-6',
    sample: 'appointed',
    subject: `${all('Appointment')}.where(status = 'proposed')`,
    fault: [
      { at: 'Appointment.first-check/start', set: '2026-06-10T09:00:00+02:00' },
      { at: 'Appointment.first-check/end', set: '2026-06-10T09:45:00+02:00' },
    ],
    also: ['dr-r-app-1'],
  },
  {
    rule: 'dr-fol-9',
    sample: 'booked',
    subject: `${all('Appointment')}.where(status = 'booked')`,
    fault: [
      { at: 'Appointment.meeting/basedOn', set: [to('ServiceRequest', 'first-check')] },
      { at: 'Appointment.meeting/status', set: 'booked' },
      { at: 'Appointment.meeting/cancelationReason' },
    ],
  },
  {
    rule: 'dr-fol-10',
    sample: 'booked',
    subject: `${all('Task')}.focus`,
    fault: [
      { at: 'Task.meeting/focus', set: to('Observation', 'curability') },
      { at: 'Task.meeting/status', set: 'on-hold' },
    ],
  },
  {
    rule: 'dr-fol-11',
    sample: 'booked',
    subject: `${all('Task')}.where(code.coding.code = 'booking-check')`,
    fault: [{ at: 'Task.check/status', set: 'completed' }],
  },
  {
    rule: 'dr-fol-12',
    sample: 'booked',
    subject: `${all('Task')}.where(status = 'requested')`,
    fault: [{ at: 'Task.meeting/focus', set: to('ServiceRequest', 'first-check') }],
  },
  {
    rule: 'dr-fol-13',
    sample: 'booked',
    subject: `${all('Appointment')}.participant.actor`,
    fault: [
      { at: 'Appointment.first-check/participant/0/actor', set: outside('Patient', 'p-9999') },
    ],
  },
  {
    rule: 'dr-r-app-1',
    sample: 'appointed',
    subject: `${all('Appointment')}.where(status = 'proposed')`,
    fault: [{ at: 'Appointment.first-check/requestedPeriod' }],
    also: ['dr-fol-3'],
  },
  {
    rule: 'dr-r-app-2',
    sample: 'booked',
    subject: `${all('Appointment')}.participant.actor`,
    fault: [{ at: 'Appointment.first-check/participant/0/actor/type' }],
  },
  {
    rule: 'dr-fol-7',
    sample: 'non-curative',
    subject: `${PLANNED}.requisition`,
    fault: [
      { at: 'ServiceRequest.meeting/replaces' },
      { at: 'ServiceRequest.first-check/status', set: 'active' },
      { at: 'ServiceRequest.first-check/requisition/value', set: 'plan-0' },
    ],
  },
  {
    rule: 'dr-fol-8',
    sample: 'non-curative',
    subject: `${PLANNED}.replaces`,
    fault: [{ at: 'ServiceRequest.first-check/status', set: 'active' }],
  },
  {
    rule: 'dr-cli-14',
    sample: 'reported',
    subject: `${all('Procedure')}.outcome.coding.where(system.endsWith('/resection-status'))`,
    fault: [{ at: 'Procedure.esd/outcome', set: local('resection-status', 'r1') }],
  },
  {
    rule: 'dr-cli-15',
    sample: 'pending',
    subject: `${all('Condition')}.where(meta.profile.where($this.endsWith('/dr-lesion')).exists()).verificationStatus`,
    fault: [
      {
        at: 'Condition.lesion/verificationStatus/coding/0/code',
        set: 'confirmed',
      },
    ],
  },
  {
    rule: 'dr-prv-1',
    sample: 'pending',
    subject: `${all('Provenance')}.agent`,
    fault: [{ at: 'Provenance.state-1/agent/0' }],
  },
  {
    rule: 'dr-prv-2',
    sample: 'pending',
    subject: `${all('Provenance')}.recorded`,
    fault: [{ at: 'Provenance.state-1/recorded', set: '2026-03-02T10:29:59+01:00' }],
  },
  {
    rule: 'dr-med-1',
    sample: 'pending',
    subject: `${all('MedicationAdministration')}.where(meta.profile.where($this.endsWith('dr-injectate')).exists())`,
    fault: [{ at: 'MedicationAdministration.injectate/dosage', set: { text: 'as needed' } }],
  },
  {
    rule: 'dr-med-2',
    sample: 'pending',
    subject: all('MedicationStatement'),
    fault: [{ at: 'MedicationStatement.antithrombotic/effectivePeriod' }],
  },
  {
    rule: 'dr-r-obs-1',
    sample: 'pending',
    subject: all('Observation'),
    fault: [{ at: 'Observation.fibrosis/partOf' }],
    also: ['dr-obs-1'],
  },
  {
    rule: 'dr-r-obs-3',
    sample: 'pending',
    subject: `${all('Observation')}.where(status = 'final')`,
    fault: [{ at: 'Observation.procedure-duration/valueQuantity' }],
    also: ['dr-obs-3'],
  },
  {
    rule: 'dr-r-obs-4',
    sample: 'pending',
    subject: `${all('Observation')}.component`,
    fault: [
      {
        at: 'Observation.lesion-description/component/0/dataAbsentReason',
        set: { text: 'not measured' },
      },
    ],
    also: ['dr-obs-4'],
  },
  {
    rule: 'dr-r-obs-5',
    sample: 'pending',
    subject: `${all('Observation')}.component`,
    fault: [
      { at: 'Observation.lesion-description/hasMember', set: [to('Observation', 'fibrosis')] },
    ],
    also: ['dr-obs-5'],
  },
  {
    rule: 'dr-r-obs-6',
    sample: 'pending',
    subject: `${all('Observation')}.component.value`,
    fault: [
      { at: 'Observation.lesion-description/component/0/valueQuantity' },
      { at: 'Observation.lesion-description/component/0/valueInteger', set: 22 },
    ],
    also: ['dr-obs-6'],
  },
  {
    rule: 'dr-r-obs-9',
    sample: 'pending',
    subject: `${all('Observation')}.where(meta.profile.where($this.endsWith('dr-computed')).exists())`,
    fault: [{ at: 'Observation.procedure-duration/method' }],
    also: ['dr-obs-9'],
  },
  {
    rule: 'dr-r-rul-1',
    sample: 'pending',
    subject: `${all('Observation')}.method.coding.version`,
    fault: [{ at: 'Observation.curability/method/coding/0/version' }],
  },
  {
    rule: 'dr-r-cur-1',
    sample: 'reported',
    subject: VERDICT,
    fault: [{ at: 'Observation.curability/valueCodeableConcept/coding/1' }],
  },
  {
    rule: 'dr-r-cur-2',
    sample: 'pending',
    subject: `${all('Observation')}.where(status = 'preliminary').dataAbsentReason`,
    fault: [{ at: 'Observation.curability/status', set: 'final' }],
  },
  {
    rule: 'dr-r-cur-3',
    sample: 'non-curative',
    subject: REASON,
    fault: [
      {
        at: 'Observation.curability/component/0/valueCodeableConcept',
        set: { text: 'another reason' },
      },
    ],
  },
  {
    rule: 'dr-r-cur-4',
    sample: 'non-curative',
    subject: REASON,
    fault: [
      { at: 'Observation.curability/valueCodeableConcept' },
      { at: 'Observation.curability/dataAbsentReason', set: { text: 'not known' } },
      { at: 'DiagnosticReport.endoscopy/conclusionCode' },
    ],
  },
  {
    rule: 'dr-r-sco-1',
    sample: 'pending',
    subject: `${all('Observation')}.value.ofType(Quantity).where(code = '{score}')`,
    fault: [{ at: 'Observation.bleeding-risk-score/valueQuantity/value', set: 2.5 }],
  },
  {
    rule: 'dr-r-sco-2',
    sample: 'pending',
    subject: `${all('Observation')}.interpretation`,
    fault: [
      { at: 'Observation.bleeding-risk-score/valueQuantity' },
      { at: 'Observation.bleeding-risk-score/dataAbsentReason', set: { text: 'not known' } },
    ],
  },
  {
    rule: 'dr-r-sco-3',
    sample: 'pending',
    subject: `${all('Observation')}.component.where(code.coding.code = 'published-rate-upper')`,
    fault: [{ at: 'Observation.bleeding-risk-score/component/2/valueQuantity/value', set: 6 }],
  },
  {
    rule: 'dr-r-pro-1',
    sample: 'bare',
    subject: all('Procedure'),
    fault: [{ at: 'Procedure.esd/performedPeriod/start', set: '2026-03-02T10:30:01+01:00' }],
    also: ['dr-pro-1'],
  },
  {
    rule: 'dr-r-pro-6',
    sample: 'not done',
    subject: `${all('Procedure')}.where(status = 'not-done')`,
    fault: [{ at: 'Procedure.closure/statusReason' }],
    also: ['dr-pro-6'],
  },
  {
    rule: 'dr-r-dr-2',
    sample: 'reported',
    subject: `${all('DiagnosticReport')}.where(status = 'final')`,
    fault: [{ at: 'DiagnosticReport.endoscopy/issued' }],
    also: ['dr-dr-2'],
  },
  {
    rule: 'dr-r-dr-8',
    sample: 'pending',
    subject: `${all('DiagnosticReport')}.extension`,
    fault: [{ at: 'DiagnosticReport.endoscopy/extension' }],
  },
  {
    rule: 'dr-r-spm-4',
    sample: 'pending',
    subject: `${all('Specimen')}.accessionIdentifier`,
    fault: [{ at: 'Specimen.A/accessionIdentifier/system' }],
  },
  {
    rule: 'dr-r-con-2',
    sample: 'pending',
    subject: all('Condition'),
    fault: [{ at: 'Condition.lesion/clinicalStatus' }],
  },
  {
    rule: 'dr-r-prv-1',
    sample: 'pending',
    subject: `${all('Provenance')}.agent`,
    fault: [{ at: 'Provenance.state-1/agent/1' }],
    also: ['dr-prv-1'],
  },
];
