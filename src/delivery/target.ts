import type { CheckedBundle } from '../conformance/index.js';
import { addressBundle, type IdentityMode, type PatientLink } from './address.js';
import { classifyReading, classifyTransaction } from './classify.js';
import { findDoubles } from './doubles.js';
import { findReports } from './find-reports.js';
import { linkReports } from './laboratory-report.js';
import { patientIdentifierOf, readPatientSearch } from './patient.js';
import { type ProbeResult, type Probing, probeTarget } from './probe.js';
import { leaveTaken } from './taken-appointments.js';
import type { Failure, Verdict } from './verdict.js';

/** The one FHIR server that records go to. */
export interface Target {
  /**
   * Asks for its capabilities; must have said `usable` once before anything is delivered.
   * @throws StoreUnavailable when the mode cannot be read or kept
   */
  probe(signal: AbortSignal): Promise<ProbeResult>;
  /** One attempt to bring one record there. Does not throw for what the server does. */
  deliver(bundle: CheckedBundle, signal: AbortSignal): Promise<Verdict>;
}

/**
 * Where the mode is kept that was chosen first. A server that offers more after an upgrade must not
 * change it: what was written by search before would be written under our ids once more.
 */
export interface KeptMode {
  read(): Promise<IdentityMode | undefined>;
  keep(mode: IdentityMode): Promise<void>;
}

export interface TargetConfig extends Probing {
  /** A Patient that the server does not have: wait for it, or refer by identifier alone. */
  readonly missingPatient: 'require' | 'logical';
  /** For mode `auto`; without it the choice holds as long as the program runs. */
  readonly kept?: KeptMode;
}

export function createTarget(config: TargetConfig): Target {
  let mode: IdentityMode | undefined;
  return {
    probe: async (signal) => {
      const before = mode ?? (await config.kept?.read());
      const result = await probeTarget(holdingTo(before, config), signal);
      if (result.kind !== 'usable') return result;
      if (result.mode !== before) await config.kept?.keep(result.mode);
      mode = result.mode;
      return result;
    },
    deliver: (bundle, signal) =>
      mode === undefined
        ? Promise.resolve(NOT_PROBED)
        : deliverBundle(config, mode, bundle, signal),
  };
}

/** A mode that the operator has named comes first. */
function holdingTo(mode: IdentityMode | undefined, config: TargetConfig): TargetConfig {
  const { needs } = config;
  return mode === undefined || needs.mode !== 'auto'
    ? config
    : { ...config, needs: { ...needs, mode } };
}

const NOT_PROBED: Failure = {
  kind: 'failed',
  failureClass: 'destination',
  fault: 'not-probed',
  reason: 'The capabilities of the FHIR server are not known yet.',
  hold: true,
};

async function deliverBundle(
  config: TargetConfig,
  mode: IdentityMode,
  bundle: CheckedBundle,
  signal: AbortSignal,
): Promise<Verdict> {
  const { entryLimit } = config.needs;
  const entries = bundle.entry?.length ?? 0;
  if (entryLimit !== undefined && entries > entryLimit) return tooLarge(entries, entryLimit);

  const patient = await resolvePatient(config, bundle, signal);
  if (patient.kind !== 'literal' && patient.kind !== 'logical') return patient;

  const reports = await findReports(config, bundle, signal);
  if ('kind' in reports) return reports;

  const addressed = linkReports(addressBundle(bundle, mode, patient), reports);
  const sent = await leaveTaken(config, addressed, signal);
  if ('kind' in sent) return sent;
  const answer = await config.client.transaction(JSON.stringify(sent), signal);
  const verdict = classifyTransaction(answer, sent, config.clock.now());
  if (verdict.kind !== 'failed' || verdict.status !== 412 || mode !== 'conditional') {
    return verdict;
  }
  const reason = await findDoubles(config.client, sent, signal);
  return reason === undefined ? verdict : { ...verdict, failureClass: 'ambiguous', reason };
}

async function resolvePatient(
  config: TargetConfig,
  bundle: CheckedBundle,
  signal: AbortSignal,
): Promise<PatientLink | Verdict> {
  const identifier = patientIdentifierOf(bundle);
  if (identifier === undefined) return { kind: 'logical' };

  const answer = await config.client.searchPatient(identifier, signal);
  if (answer.kind !== 'answered' || answer.status !== 200 || answer.body.kind !== 'json') {
    return classifyReading(answer, config.clock.now());
  }
  const match = readPatientSearch(answer.body.resource, identifier);
  switch (match.kind) {
    case 'one':
      return { kind: 'literal', reference: match.reference };
    case 'none':
      return config.missingPatient === 'logical'
        ? { kind: 'logical' }
        : { kind: 'waiting-patient', reason: 'The FHIR server does not know the patient.' };
    case 'several':
      return severalPatients;
    case 'unusable':
      return strangeSearch;
  }
}

const severalPatients: Failure = {
  kind: 'failed',
  failureClass: 'ambiguous',
  fault: 'several-patients',
  reason: 'The FHIR server has several patients with the identifier of this one.',
  hold: false,
};

const strangeSearch: Failure = {
  kind: 'failed',
  failureClass: 'non-conformant-server',
  fault: 'patient-search',
  reason: 'The FHIR server did not answer the search for the patient as it was asked.',
  hold: false,
};

function tooLarge(entries: number, limit: number): Failure {
  return {
    kind: 'failed',
    failureClass: 'case',
    fault: 'entry-limit',
    reason: `The record has ${entries} entries; the FHIR server takes ${limit} in one transaction.`,
    hold: false,
  };
}
