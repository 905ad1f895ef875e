import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import { type Keyed, referenceKey } from './keys.js';
import { ViewFault } from './view-fault.js';

/** FHIRPath over resources, with the constants of a view and the functions of keys. */
export interface Paths {
  /**
   * @returns plain values: text, numbers, true and false, objects
   * @throws ViewFault when the path cannot be evaluated
   */
  evaluate(path: string, keyed: Keyed): readonly unknown[];
}

/** Paths are compiled when they are first met. The evaluation marks objects of the resource. */
export function createPaths(constants: Readonly<Record<string, string | number | boolean>>): Paths {
  const compiled = new Map<string, (resource: object) => readonly unknown[]>();
  let at: Keyed | undefined;
  const compile = (path: string) => {
    const run = fhirpath.compile(path, r4, {
      async: false,
      traceFn: () => undefined,
      userInvocationTable: {
        // Source: SQL on FHIR 2.0, getResourceKey() and getReferenceKey([type]).
        getResourceKey: {
          fn: (inputs: readonly unknown[]) => inputs.map(() => at?.key ?? ''),
          arity: { 0: [] },
        },
        getReferenceKey: {
          fn: (inputs: readonly unknown[], type?: unknown) =>
            inputs.flatMap((input) => {
              const key = referenceKey(fhirpath.util.valData(input), nameOf(type));
              return key === undefined ? [] : [key];
            }),
          arity: { 0: [], 1: ['TypeSpecifier'] },
        },
      },
    });
    return (resource: object): readonly unknown[] => run(resource, { ...constants });
  };
  return {
    evaluate: (path, keyed) => {
      at = keyed;
      try {
        const known = compiled.get(path) ?? compile(path);
        compiled.set(path, known);
        return known(keyed.resource).map(plain);
      } catch {
        throw new ViewFault('A path of the view cannot be evaluated.');
      }
    },
  };
}

/** Name of a type specifier as the library gives it. */
function nameOf(type: unknown): string | undefined {
  if (typeof type !== 'object' || type === null || !('name' in type)) return undefined;
  return typeof type.name === 'string' ? type.name : undefined;
}

/** Dates, times and decimals come as objects of the library that write themselves as JSON. */
function plain(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const written: unknown = JSON.parse(JSON.stringify(value));
  return written;
}
