/**
 * A small resource in which one constraint of FHIR R4 is broken, and that resource put right.
 * Constraint keys, contexts and texts: FHIR R4 (4.0.1) StructureDefinitions.
 */
export interface BaseFault {
  readonly rule: string;
  /** Element path of the constraint. */
  readonly context: string;
  readonly broken: Readonly<Record<string, unknown>>;
  readonly right: Readonly<Record<string, unknown>>;
}

type Json = Readonly<Record<string, unknown>>;

const resource =
  (resourceType: string) =>
  (rest: Json): Json => ({ resourceType, ...rest });

const bundle = resource('Bundle');
const condition = resource('Condition');
const observation = resource('Observation');
const appointment = resource('Appointment');
const given = resource('MedicationAdministration');
const statement = resource('MedicationStatement');
const procedure = resource('Procedure');
const measure = resource('Measure');
const report = resource('MeasureReport');

const UCUM = 'http://unitsofmeasure.org';
const CLINICAL = 'http://terminology.hl7.org/CodeSystem/condition-clinical';
const VERIFIED = 'http://terminology.hl7.org/CodeSystem/condition-ver-status';
const coding = (system: string, code: string): Json => ({ coding: [{ system, code }] });

const millimetres = (value: number): Json => ({ value, system: UCUM, code: 'mm' });

const PATIENT = { resource: { resourceType: 'Patient' } };
const timing = (repeat: Json): Json => statement({ dosage: [{ timing: { repeat } }] });
const extended = (rest: Json): Json =>
  procedure({ extension: [{ url: 'http://a.example', ...rest }] });

/** A repeat that goes wrong with some properties and right with those and more. */
const repeat = (rule: string, wrong: Json, more: Json): BaseFault => ({
  rule,
  context: 'Timing.repeat',
  broken: timing(wrong),
  right: timing({ ...wrong, ...more }),
});

export const BASE_FAULTS: readonly BaseFault[] = [
  {
    rule: 'bdl-1',
    context: 'Bundle',
    broken: bundle({ type: 'batch', total: 1 }),
    right: bundle({ type: 'searchset', total: 1 }),
  },
  {
    rule: 'bdl-2',
    context: 'Bundle',
    broken: bundle({ type: 'collection', entry: [{ ...PATIENT, search: { mode: 'match' } }] }),
    right: bundle({ type: 'searchset', entry: [{ ...PATIENT, search: { mode: 'match' } }] }),
  },
  {
    rule: 'bdl-3',
    context: 'Bundle',
    broken: bundle({ type: 'transaction', entry: [PATIENT] }),
    right: bundle({
      type: 'transaction',
      entry: [{ ...PATIENT, request: { method: 'POST', url: 'Patient' } }],
    }),
  },
  {
    rule: 'bdl-4',
    context: 'Bundle',
    broken: bundle({ type: 'transaction-response', entry: [PATIENT] }),
    right: bundle({ type: 'transaction-response', entry: [{ response: { status: '200' } }] }),
  },
  {
    rule: 'bdl-7',
    context: 'Bundle',
    broken: bundle({
      type: 'collection',
      entry: ['urn:a', 'urn:a'].map((fullUrl) => ({ fullUrl, ...PATIENT })),
    }),
    right: bundle({
      type: 'collection',
      entry: ['urn:a', 'urn:b'].map((fullUrl) => ({ fullUrl, ...PATIENT })),
    }),
  },
  {
    rule: 'bdl-9',
    context: 'Bundle',
    broken: bundle({ type: 'document', identifier: { value: '1' } }),
    right: bundle({ type: 'document', identifier: { system: 'urn:s', value: '1' } }),
  },
  {
    rule: 'bdl-10',
    context: 'Bundle',
    broken: bundle({ type: 'document' }),
    right: bundle({ type: 'document', timestamp: '2026-03-02T09:00:00Z' }),
  },
  {
    rule: 'bdl-11',
    context: 'Bundle',
    broken: bundle({ type: 'document', entry: [PATIENT] }),
    right: bundle({ type: 'document', entry: [{ resource: { resourceType: 'Composition' } }] }),
  },
  {
    rule: 'bdl-12',
    context: 'Bundle',
    broken: bundle({ type: 'message', entry: [PATIENT] }),
    right: bundle({ type: 'message', entry: [{ resource: { resourceType: 'MessageHeader' } }] }),
  },
  {
    rule: 'bdl-5',
    context: 'Bundle.entry',
    broken: bundle({ type: 'collection', entry: [{ fullUrl: 'urn:a' }] }),
    right: bundle({ type: 'collection', entry: [{ fullUrl: 'urn:a', ...PATIENT }] }),
  },
  {
    rule: 'bdl-8',
    context: 'Bundle.entry',
    broken: bundle({
      type: 'collection',
      entry: [{ fullUrl: 'http://a.example/Patient/1/_history/2', ...PATIENT }],
    }),
    right: bundle({
      type: 'collection',
      entry: [{ fullUrl: 'http://a.example/Patient/1', ...PATIENT }],
    }),
  },
  {
    rule: 'dom-2',
    context: 'DomainResource',
    broken: procedure({
      contained: [{ resourceType: 'Patient', contained: [{ resourceType: 'Patient' }] }],
    }),
    right: procedure({ contained: [{ resourceType: 'Patient' }] }),
  },
  {
    // FHIRPath cannot work out this text once anything is contained (`as()` takes one item), so
    // that every contained resource is refused; none is ever sent.
    rule: 'dom-3',
    context: 'DomainResource',
    broken: procedure({ contained: [{ resourceType: 'Patient', id: 'p' }] }),
    right: procedure({ subject: { identifier: { value: 'p' } } }),
  },
  {
    rule: 'dom-4',
    context: 'DomainResource',
    broken: procedure({ contained: [{ resourceType: 'Patient', meta: { versionId: '1' } }] }),
    right: procedure({ contained: [{ resourceType: 'Patient', meta: { source: 'urn:a' } }] }),
  },
  {
    rule: 'dom-5',
    context: 'DomainResource',
    broken: procedure({
      contained: [{ resourceType: 'Patient', meta: { security: [{ code: 'R' }] } }],
    }),
    right: procedure({ contained: [{ resourceType: 'Patient', meta: { tag: [{ code: 'R' }] } }] }),
  },
  {
    rule: 'con-3',
    context: 'Condition',
    broken: condition({ category: [coding('urn:c', 'problem-list-item')] }),
    right: condition({
      category: [coding('urn:c', 'problem-list-item')],
      clinicalStatus: coding(CLINICAL, 'active'),
    }),
  },
  {
    rule: 'con-4',
    context: 'Condition',
    broken: condition({
      clinicalStatus: coding(CLINICAL, 'active'),
      abatementDateTime: '2026-03-02',
    }),
    right: condition({
      clinicalStatus: coding(CLINICAL, 'resolved'),
      abatementDateTime: '2026-03-02',
    }),
  },
  {
    rule: 'con-5',
    context: 'Condition',
    broken: condition({
      clinicalStatus: coding(CLINICAL, 'active'),
      verificationStatus: coding(VERIFIED, 'entered-in-error'),
    }),
    right: condition({ verificationStatus: coding(VERIFIED, 'entered-in-error') }),
  },
  {
    rule: 'con-1',
    context: 'Condition.stage',
    broken: condition({ stage: [{ type: { text: 'T' } }] }),
    right: condition({ stage: [{ type: { text: 'T' }, summary: { text: 'T1' } }] }),
  },
  {
    rule: 'con-2',
    context: 'Condition.evidence',
    broken: condition({ evidence: [{ id: 'e' }] }),
    right: condition({ evidence: [{ id: 'e', code: [{ text: 'seen' }] }] }),
  },
  {
    rule: 'obs-6',
    context: 'Observation',
    broken: observation({ valueString: 'x', dataAbsentReason: { text: 'unknown' } }),
    right: observation({ dataAbsentReason: { text: 'unknown' } }),
  },
  {
    rule: 'obs-7',
    context: 'Observation',
    broken: observation({
      code: coding('urn:c', 'a'),
      valueString: 'x',
      component: [{ code: coding('urn:c', 'a') }],
    }),
    right: observation({
      code: coding('urn:c', 'a'),
      valueString: 'x',
      component: [{ code: coding('urn:c', 'b') }],
    }),
  },
  {
    rule: 'obs-3',
    context: 'Observation.referenceRange',
    broken: observation({ referenceRange: [{ type: { text: 'normal' } }] }),
    right: observation({ referenceRange: [{ text: 'normal' }] }),
  },
  {
    rule: 'prr-1',
    context: 'ServiceRequest',
    broken: resource('ServiceRequest')({ orderDetail: [{ text: 'x' }] }),
    right: resource('ServiceRequest')({ orderDetail: [{ text: 'x' }], code: { text: 'y' } }),
  },
  {
    rule: 'mad-1',
    context: 'MedicationAdministration.dosage',
    broken: given({ dosage: { text: 'some' } }),
    right: given({ dosage: { dose: { value: 1 } } }),
  },
  {
    rule: 'app-2',
    context: 'Appointment',
    broken: appointment({ status: 'proposed', start: '2026-03-02T09:00:00Z' }),
    right: appointment({
      status: 'proposed',
      start: '2026-03-02T09:00:00Z',
      end: '2026-03-02T10:00:00Z',
    }),
  },
  {
    rule: 'app-3',
    context: 'Appointment',
    broken: appointment({ status: 'booked' }),
    right: appointment({ status: 'waitlist' }),
  },
  {
    rule: 'app-4',
    context: 'Appointment',
    broken: appointment({ status: 'proposed', cancelationReason: { text: 'x' } }),
    right: appointment({ status: 'cancelled', cancelationReason: { text: 'x' } }),
  },
  {
    rule: 'app-1',
    context: 'Appointment.participant',
    broken: appointment({ status: 'proposed', participant: [{ status: 'accepted' }] }),
    right: appointment({
      status: 'proposed',
      participant: [{ status: 'accepted', actor: { display: 'x' } }],
    }),
  },
  {
    rule: 'inv-1',
    context: 'Task',
    broken: resource('Task')({ authoredOn: '2026-03-03', lastModified: '2026-03-02' }),
    right: resource('Task')({ authoredOn: '2026-03-03', lastModified: '2026-03-03' }),
  },
  {
    rule: 'age-1',
    context: 'Age',
    broken: condition({ onsetAge: { value: 60, system: UCUM } }),
    right: condition({ onsetAge: { value: 60, system: UCUM, code: 'a' } }),
  },
  {
    rule: 'att-1',
    context: 'Attachment',
    broken: resource('Media')({ content: { data: 'AA==' } }),
    right: resource('Media')({ content: { data: 'AA==', contentType: 'image/png' } }),
  },
  {
    rule: 'cpt-2',
    context: 'ContactPoint',
    broken: resource('Device')({ contact: [{ value: '1' }] }),
    right: resource('Device')({ contact: [{ value: '1', system: 'phone' }] }),
  },
  {
    rule: 'cnt-3',
    context: 'Count',
    broken: extended({ valueCount: { value: 1.5, system: UCUM, code: '1' } }),
    right: extended({ valueCount: { value: 2, system: UCUM, code: '1' } }),
  },
  {
    rule: 'drq-1',
    context: 'DataRequirement.codeFilter',
    broken: extended({ valueDataRequirement: { codeFilter: [{ path: 'a', searchParam: 'b' }] } }),
    right: extended({ valueDataRequirement: { codeFilter: [{ path: 'a' }] } }),
  },
  {
    rule: 'drq-2',
    context: 'DataRequirement.dateFilter',
    broken: extended({ valueDataRequirement: { dateFilter: [{ path: 'a', searchParam: 'b' }] } }),
    right: extended({ valueDataRequirement: { dateFilter: [{ path: 'a' }] } }),
  },
  {
    rule: 'dis-1',
    context: 'Distance',
    broken: extended({ valueDistance: { value: 1, system: UCUM } }),
    right: extended({ valueDistance: { value: 1, system: UCUM, code: 'km' } }),
  },
  {
    rule: 'drt-1',
    context: 'Duration',
    broken: extended({ valueDuration: { system: UCUM, code: 'min' } }),
    right: extended({ valueDuration: { value: 1, system: UCUM, code: 'min' } }),
  },
  {
    rule: 'exp-1',
    context: 'Expression',
    broken: extended({ valueExpression: { language: 'text/fhirpath' } }),
    right: extended({ valueExpression: { language: 'text/fhirpath', expression: 'true' } }),
  },
  {
    rule: 'ext-1',
    context: 'Extension',
    broken: extended({}),
    right: extended({ valueString: 'x' }),
  },
  {
    rule: 'txt-1',
    context: 'Narrative',
    broken: procedure({ text: { div: '<div><script>x</script></div>' } }),
    right: procedure({ text: { div: '<div xmlns="http://www.w3.org/1999/xhtml">x</div>' } }),
  },
  {
    rule: 'txt-2',
    context: 'Narrative',
    broken: procedure({ text: { div: '<div onclick="x">y</div>' } }),
    right: procedure({ text: { div: '<div xmlns="http://www.w3.org/1999/xhtml"><p>x</p></div>' } }),
  },
  {
    rule: 'per-1',
    context: 'Period',
    broken: procedure({ performedPeriod: { start: '2026-03', end: '2026-02' } }),
    right: procedure({ performedPeriod: { start: '2026-02', end: '2026-03' } }),
  },
  {
    rule: 'qty-3',
    context: 'Quantity',
    broken: observation({ valueQuantity: { value: 1, code: 'mm' } }),
    right: observation({ valueQuantity: { value: 1, code: 'mm', system: UCUM } }),
  },
  {
    rule: 'rng-2',
    context: 'Range',
    broken: observation({ valueRange: { low: millimetres(2), high: millimetres(1) } }),
    right: observation({ valueRange: { low: millimetres(1), high: millimetres(2) } }),
  },
  {
    rule: 'mea-0',
    context: 'Measure',
    broken: measure({ name: 'two words' }),
    right: measure({ name: 'OneWord' }),
  },
  {
    rule: 'mea-1',
    context: 'Measure',
    broken: measure({ group: [{ stratifier: [{ id: 'a' }] }] }),
    right: measure({ group: [{ stratifier: [{ code: { text: 'x' } }] }] }),
  },
  {
    rule: 'mrp-1',
    context: 'MeasureReport',
    broken: report({ type: 'data-collection', group: [{ code: { text: 'x' } }] }),
    right: report({ type: 'summary', group: [{ code: { text: 'x' } }] }),
  },
  {
    rule: 'mrp-2',
    context: 'MeasureReport',
    broken: report({ group: [{ stratifier: [{ stratum: [{ measureScore: { value: 1 } }] }] }] }),
    right: report({ group: [{ stratifier: [{ stratum: [{ value: { text: 'x' } }] }] }] }),
  },
  {
    rule: 'rat-1',
    context: 'Ratio',
    broken: observation({ valueRatio: { numerator: { value: 1 } } }),
    right: observation({ valueRatio: { numerator: { value: 1 }, denominator: { value: 2 } } }),
  },
  {
    rule: 'ref-1',
    context: 'Reference',
    broken: procedure({ subject: { reference: '#nobody' } }),
    right: procedure({ subject: { identifier: { value: '1' } } }),
  },
  repeat('tim-1', { duration: 1 }, { durationUnit: 'h' }),
  repeat('tim-2', { period: 1 }, { periodUnit: 'h' }),
  repeat('tim-4', { duration: -1, durationUnit: 'h' }, { duration: 1 }),
  repeat('tim-5', { period: -1, periodUnit: 'h' }, { period: 1 }),
  repeat('tim-6', { periodMax: 2 }, { period: 1, periodUnit: 'h' }),
  repeat('tim-7', { durationMax: 2 }, { duration: 1, durationUnit: 'h' }),
  repeat('tim-8', { countMax: 2 }, { count: 1 }),
  repeat('tim-9', { offset: 5 }, { when: ['MORN'] }),
  {
    rule: 'tim-10',
    context: 'Timing.repeat',
    broken: timing({ timeOfDay: ['08:00:00'], when: ['MORN'] }),
    right: timing({ timeOfDay: ['08:00:00'] }),
  },
  {
    rule: 'trd-1',
    context: 'TriggerDefinition',
    broken: extended({
      valueTriggerDefinition: {
        type: 'data-added',
        data: [{ type: 'Patient' }],
        timingDate: '2026-03-02',
      },
    }),
    right: extended({
      valueTriggerDefinition: { type: 'data-added', data: [{ type: 'Patient' }] },
    }),
  },
  {
    rule: 'trd-2',
    context: 'TriggerDefinition',
    broken: extended({
      valueTriggerDefinition: {
        type: 'named-event',
        name: 'x',
        condition: { language: 'text/fhirpath', expression: 'true' },
      },
    }),
    right: extended({ valueTriggerDefinition: { type: 'named-event', name: 'x' } }),
  },
  {
    rule: 'trd-3',
    context: 'TriggerDefinition',
    broken: extended({ valueTriggerDefinition: { type: 'named-event' } }),
    right: extended({ valueTriggerDefinition: { type: 'named-event', name: 'x' } }),
  },
];
