export type { IdentityMode } from './address.js';
export type { FoundAppointment } from './appointment-search.js';
export { checkBaseUrl, type TargetPermissions } from './base-url.js';
export type { TargetNeeds } from './capability.js';
export { type Clock, systemClock } from './clock.js';
export {
  bearerToken,
  createFhirClient,
  type FhirClient,
  type FhirClientConfig,
} from './fhir-client.js';
export {
  type AppointmentSearch,
  type AppointmentsFound,
  findAppointments,
} from './find-appointments.js';
export type { TargetHealth } from './gate.js';
export type { DeliveryEvent, DeliveryLog, DeliveryLogFields } from './log.js';
export type { ProbeResult } from './probe.js';
export { publish } from './publish.js';
export { createTarget, type Target, type TargetConfig } from './target.js';
export type { Failure } from './verdict.js';
export { createWorker, type Worker, type WorkerDeps, type WorkerOptions } from './worker.js';
