import { PROFILES } from './profiles.js';
import { quickTest, runOn } from './quick/compile.js';
import { isObject, resourceNode } from './quick/node.js';
import { type Broken, broken, type Subject } from './resource-check.js';
import type { Rule } from './rule.js';

interface TestedRule {
  readonly rule: Rule;
  readonly surelyHolds: ReturnType<typeof quickTest>;
}

/** Our own constraints begin so; the others of a StructureDefinition are the standard's. */
const OWN = 'dr-';

const CASE_BUNDLE = 'https://dissection-records.example/fhir/StructureDefinition/dr-case-bundle';

/** Every constraint that our published profiles add, by the profile's canonical URL. */
export const OWN_INVARIANTS: ReadonlyMap<string, readonly Rule[]> = new Map(
  PROFILES.map(({ url, differential }) => [
    url,
    differential.element.flatMap(({ path, constraint = [] }) =>
      constraint
        .filter(({ key }) => key.startsWith(OWN))
        .map(({ key, severity, human, expression }) => ({
          key,
          severity: severity === 'warning' ? ('warning' as const) : ('error' as const),
          human,
          expression,
          context: path,
        })),
    ),
  ]),
);

const tested = new Map<string, readonly TestedRule[]>();

/** Checks the Bundle as a whole by the rules of the case Bundle. */
export function brokenInBundle(bundle: Subject): readonly Broken[] {
  return brokenBy(CASE_BUNDLE, bundle);
}

/** Checks one resource by the rules of the profiles that it claims. */
export function brokenInResource(subject: Subject): readonly Broken[] {
  const meta = isObject(subject.resource) ? subject.resource['meta'] : undefined;
  const claimed = isObject(meta) ? meta['profile'] : undefined;
  return Array.isArray(claimed)
    ? claimed.flatMap((url) => (typeof url === 'string' ? brokenBy(url, subject) : []))
    : [];
}

function brokenBy(profile: string, subject: Subject): readonly Broken[] {
  const root = resourceNode(subject.resource);
  const run = runOn(subject.resource);
  return rulesOf(profile).flatMap(({ rule, surelyHolds }) =>
    surelyHolds(root, run) ? [] : broken(rule, rule.expression, subject, subject.pointer),
  );
}

/** Expressions are compiled when their profile is first met. */
function rulesOf(profile: string): readonly TestedRule[] {
  let rules = tested.get(profile);
  if (rules === undefined) {
    rules = (OWN_INVARIANTS.get(profile) ?? []).map((rule) => ({
      rule,
      surelyHolds: quickTest(rule.expression, { atRoot: true }),
    }));
    tested.set(profile, rules);
  }
  return rules;
}
