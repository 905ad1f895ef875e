import { checkOutcomeReport } from './conformance/index.js';
import { readJson } from './contract/index.js';
import { type Checked, failed } from './kernel/index.js';
import { toUnitReport, type UnitReport } from './measure/index.js';

/**
 * Reads the MeasureReport that a unit has sent.
 *
 * @returns every problem of the document, or of the report in it
 */
export function readUnitReport(bytes: Uint8Array): Checked<UnitReport> {
  const read = readJson(bytes);
  if (!read.ok) return read;
  if (read.value.faults.length > 0) return failed(read.value.faults);
  const checked = checkOutcomeReport(read.value.value);
  return checked.ok ? toUnitReport(checked.value) : checked;
}
