import type { Bundle } from 'fhir/r4.js';
import { type CheckedBundle, checkBundle } from '../conformance/index.js';
import { type Checked, failed, invariant, type Problem, passed } from '../kernel/index.js';
import { toBundle } from '../mapping/index.js';
import { foldRecord, type RecordVersion, readVersion, viewRecord } from '../record/index.js';
import { mappingSettings, type PipelineSettings } from './settings.js';

/** A record version as a Bundle that has passed every check. */
export interface Prepared {
  readonly bundle: CheckedBundle;
  readonly warnings: readonly Problem[];
}

/** Maps and checks a record version: the one way from a record to what may be sent. */
export function prepare(version: RecordVersion, settings: PipelineSettings): Checked<Prepared> {
  const result = checkBundle(bundleOf(version, settings), switchedOff(settings));
  return result.ok
    ? passed({ bundle: result.value, warnings: result.warnings })
    : failed(result.problems);
}

/** A unit that signs at once calls its report final before pathology: that rule is not asked. */
function switchedOff({ unit }: PipelineSettings) {
  return unit.endoscopyReport === 'sign-at-once' ? (['dr-dr-6'] as const) : [];
}

/** The same for the text of a stored version; what the delivery worker calls. */
export function prepareStored(
  settings: PipelineSettings,
): (version: string) => Checked<CheckedBundle> {
  return (version) => {
    const prepared = prepare(refolded(version, settings), settings);
    return prepared.ok ? passed(prepared.value.bundle) : prepared;
  };
}

/** What would be sent for a stored version, checked or not. */
export function toStoredBundle(version: string, settings: PipelineSettings): Bundle {
  return bundleOf(refolded(version, settings), settings);
}

/**
 * A stored version as this release makes it of the same messages. What an earlier release computed
 * may lack what mapping needs now, and a case that waits must outlive an upgrade.
 */
function refolded(text: string, { unit }: PipelineSettings): RecordVersion {
  const { caseId, messages } = readVersion(text);
  const version = foldRecord(caseId, messages, unit);
  invariant(version !== undefined, 'a record version has its case');
  return version;
}

const bundleOf = (version: RecordVersion, settings: PipelineSettings): Bundle =>
  toBundle(viewRecord(version, settings.unit), mappingSettings(settings));
