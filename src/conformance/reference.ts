import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';

type Evaluator = (resource: unknown, variables: object) => readonly unknown[];

const evaluators = new Map<string, Evaluator>();

/**
 * Asks FHIRPath itself whether an expression holds. Without the R4 model it would not see
 * choice elements and would say yes to nearly everything.
 *
 * @param copy a copy of the resource that nobody else reads: the evaluation marks its objects
 * @returns whether the result is exactly true; empty, several or not computable is no
 */
export function holdsByReference(expression: string, copy: unknown): boolean {
  let evaluator = evaluators.get(expression);
  if (evaluator === undefined) {
    evaluator = fhirpath.compile(expression, r4, { async: false, traceFn: () => undefined });
    evaluators.set(expression, evaluator);
  }
  try {
    const result = evaluator(copy, { resource: copy, rootResource: copy });
    return result.length === 1 && result[0] === true;
  } catch {
    return false;
  }
}
