import type { Bundle } from 'fhir/r4.js';
import type { Problem } from '../kernel/index.js';
import { brokenInBase } from './base-checks.js';
import { brokenInBundle, brokenInResource, brokenShape } from './own-invariants.js';
import { isObject } from './quick/node.js';
import { type Broken, type Subject, subjectOf } from './resource-check.js';
import { schemaProblems } from './schema.js';
import { structureProblems } from './structure.js';

declare const checked: unique symbol;

/** A transaction that has passed every check of its kind: `checkBundle` or `checkPublication`. */
export type CheckedBundle = Bundle & { readonly [checked]: true };

/** What the gate says; warnings never hold a delivery back. Fits `Checked<CheckedBundle>`. */
export type BundleCheck =
  | { readonly ok: true; readonly value: CheckedBundle; readonly warnings: readonly Problem[] }
  | {
      readonly ok: false;
      readonly problems: readonly Problem[];
      readonly warnings: readonly Problem[];
    };

/** Rules that a unit's policy may switch off: dr-dr-6 where reports are signed at once. */
export type SwitchableRule = 'dr-dr-6';

/**
 * Decides whether a Bundle may be sent. Four stages, each with all its problems at once:
 * the JSON schema of R4; the structure that no schema sees; the invariants of R4 and our own
 * together; what our profiles demand of elements beside these. A stage runs only on what the
 * one before has accepted: its rules presuppose it, or would say the same once more.
 *
 * @param bundle what mapping made, or anything at all
 * @param switchedOff rules that the unit's policy leaves out
 */
export function checkBundle(
  bundle: unknown,
  switchedOff: readonly SwitchableRule[] = [],
): BundleCheck {
  const malformed = schemaProblems(bundle);
  if (malformed.length > 0) return { ok: false, problems: malformed, warnings: [] };
  const hollow = structureProblems(bundle);
  if (hollow.length > 0) return { ok: false, problems: hollow, warnings: [] };
  const off = new Set<string>(switchedOff);
  const whole = subjectOf(bundle, '');
  const parts = resourcesOf(bundle);
  const found = brokenInvariants(whole, parts).filter(({ rule }) => !off.has(rule.key));
  const warnings = problemsOf(found, 'warning');
  const errors = problemsOf(found, 'error');
  const problems =
    errors.length > 0 ? errors : problemsOf([whole, ...parts].flatMap(brokenShape), 'error');
  if (problems.length > 0 || !isChecked(bundle)) return { ok: false, problems, warnings };
  return { ok: true, value: bundle, warnings };
}

function brokenInvariants(whole: Subject, parts: readonly Subject[]): readonly Broken[] {
  return [
    ...brokenInBase(whole),
    ...brokenInBundle(whole),
    ...parts.flatMap((subject) => [...brokenInBase(subject), ...brokenInResource(subject)]),
  ];
}

function resourcesOf(bundle: unknown): readonly Subject[] {
  const entries = isObject(bundle) ? bundle['entry'] : undefined;
  return Array.isArray(entries)
    ? entries.flatMap((entry, i) =>
        isObject(entry) && entry['resource'] !== undefined
          ? [subjectOf(entry['resource'], `/entry/${i}/resource`)]
          : [],
      )
    : [];
}

function problemsOf(found: readonly Broken[], severity: 'error' | 'warning'): readonly Problem[] {
  return found.filter(({ rule }) => rule.severity === severity).map(({ problem }) => problem);
}

/** Gives the brand: called only once every stage has passed. */
function isChecked(bundle: unknown): bundle is CheckedBundle {
  return isObject(bundle);
}
