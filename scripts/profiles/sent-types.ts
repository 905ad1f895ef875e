/**
 * The R4 resource types of which the service may send instances, or answer with them. A new type is one more line;
 * schema, base invariants and their tests follow it with `npm run generated`.
 */
export const SENT_TYPES = [
  'Procedure',
  'Condition',
  'Observation',
  'Specimen',
  'ServiceRequest',
  'DiagnosticReport',
  'Device',
  'MedicationAdministration',
  'MedicationStatement',
  'Media',
  'Provenance',
  'Appointment',
  'Task',
  'Measure',
  'MeasureReport',
] as const;
