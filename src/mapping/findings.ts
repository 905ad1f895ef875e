import type { Observation } from 'fhir/r4.js';
import { STRUCTURE } from '../terminology/index.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import type { FindingRow } from './finding-row.js';
import { FINDINGS } from './findings.table.js';
import { type ObservationContent, specimenReference, toObservation } from './observation.js';
import { contentOf } from './row-content.js';

/** The fields of the case that become an Observation by the table. */
export function toFindings(context: MappingContext): readonly Draft<Observation>[] {
  const specimen = specimenReference(context);
  const started = context.fields.resection.outcome !== 'not-started';
  return FINDINGS.flatMap((row) => {
    const content = contentOf(context, row) ?? absentContent(row, started);
    if (content === undefined) return [];
    const { item, about, category } = row;
    return [
      toObservation(context, {
        item,
        about,
        category,
        content,
        ...(row.onSpecimen && specimen !== undefined ? { specimen } : {}),
      }),
    ];
  });
}

function absentContent(row: FindingRow, started: boolean): ObservationContent | undefined {
  return row.counted && started ? { dataAbsentReason: STRUCTURE.absent.unknown } : undefined;
}
