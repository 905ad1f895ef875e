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

/** What became of resources that are about no patient. */
export type Published =
  | {
      readonly kind: 'written';
      /** How many were created, how many updated. */
      readonly detail: string;
      /** `Type/id` of what was sent, as far as the server said it. */
      readonly locations: readonly string[];
    }
  /** The server holds the same already; nothing was sent. */
  | { readonly kind: 'unchanged'; readonly locations: readonly string[] }
  | {
      readonly kind: 'not-published';
      /** A word of our own. */
      readonly fault: string;
      readonly reason: string;
      /** What the OperationOutcome of the server says, an issue a line. */
      readonly issues: readonly string[];
      /** It may go well another time without anybody changing anything. */
      readonly passing: boolean;
      /** How long the server asked to be left alone, milliseconds. */
      readonly waitMs?: number;
    };

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
