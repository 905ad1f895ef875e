import { type CheckedBundle, checkPublication } from '../conformance/index.js';
import { invariant, type Problem } from '../kernel/index.js';
import { toPublication } from '../measure/index.js';
import type { OutcomeQuestion } from './outcomes-service.js';
import { readMeasureReport } from './read-measure-report.js';
import type { OutcomeDeps } from './read-outcomes.js';

/** What is put on a FHIR server of the outcomes of a period, or why nothing is. */
export type FoundPublication =
  | { readonly kind: 'found'; readonly bundle: CheckedBundle }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] };

/**
 * The MeasureReport of a period and its Measure, ready to be put on a FHIR server: the same report
 * as is given to others, with small counts hidden.
 *
 * @throws InvariantError when what is made breaks a rule: our bug
 */
export async function readPublication(
  question: OutcomeQuestion,
  deps: OutcomeDeps,
): Promise<FoundPublication> {
  const found = await readMeasureReport(question, deps);
  if (found.kind === 'invalid') return found;
  const checked = checkPublication(toPublication(found.report, deps.settings.secret));
  invariant(checked.ok, 'what is published of outcomes passes every check');
  return { kind: 'found', bundle: checked.value };
}
