import type { ExaminationFields } from '../../contract/index.js';
import { determined, type Finding, indeterminate } from '../../kernel/index.js';
import { askClass } from '../../rules/index.js';
import type { RecurrenceFinding } from './afterwards.js';
import { type Recurrence, SCAR_RECURRENCE } from './recurrence.table.js';

const PLACES: Readonly<Record<string, string>> = { look: 'scar.finding', tissue: 'scar.biopsy' };

/**
 * Whether neoplasia is at the scar, by one examination.
 *
 * Source: common practice, see the table.
 * Indeterminate: where the scar was not seen, or neither its look nor its tissue decides.
 */
export function findRecurrence({ examination, scar }: ExaminationFields): RecurrenceFinding {
  const { id, version } = SCAR_RECURRENCE;
  return {
    examination,
    rule: id,
    version,
    answer: answerOf(scar),
    isPending: scar?.biopsy === 'pending',
  };
}

function answerOf(scar: ExaminationFields['scar']): Finding<Recurrence> {
  if (scar?.seen !== true) return indeterminate(['scar.seen']);
  const { decision } = askClass(SCAR_RECURRENCE, {
    look: scar.finding ?? null,
    tissue: scar.biopsy ?? null,
  });
  return decision.kind === 'decided'
    ? determined(decision.class, SCAR_RECURRENCE.cites)
    : indeterminate(decision.missing.map((field) => PLACES[field] ?? field));
}
