import { shapeRules } from './profile-shape.js';
import { PROFILES, type Profile } from './profiles.js';
import { type QuickTest, quickTest, runOn } from './quick/compile.js';
import { isObject, resourceNode } from './quick/node.js';
import { type Broken, broken, type Subject } from './resource-check.js';
import type { Rule } from './rule.js';

export interface TestedRule {
  readonly rule: Rule;
  readonly surelyHolds: QuickTest;
}

/** Our own constraints begin so; the others of a StructureDefinition are the standard's. */
const OWN = 'dr-';

const CASE_BUNDLE = 'https://dissection-records.example/fhir/StructureDefinition/dr-case-bundle';

/** Every constraint that our published profiles add, by the profile's canonical URL. */
export const OWN_INVARIANTS: ReadonlyMap<string, readonly Rule[]> = new Map(
  PROFILES.map((profile) => [profile.url, constraintsOf(profile)]),
);

/** What our published profiles demand of elements, by the profile's canonical URL. */
const SHAPES: ReadonlyMap<string, readonly Rule[]> = new Map(
  PROFILES.map((profile) => [profile.url, shapeRules(profile)]),
);

/** Checks the Bundle as a whole by the constraints of the case Bundle. */
export const brokenInBundle = (bundle: Subject): readonly Broken[] =>
  brokenBy(rulesOf(CASE_BUNDLE), bundle);

/** Checks one resource by the constraints of the profiles that it claims. */
export const brokenInResource = (subject: Subject): readonly Broken[] =>
  claimedProfiles(subject).flatMap((url) => brokenBy(rulesOf(url), subject));

/** Checks Bundle or resource by what its profiles demand of elements beside constraints. */
export const brokenShape = (subject: Subject): readonly Broken[] => {
  const profiles = subject.pointer === '' ? [CASE_BUNDLE] : claimedProfiles(subject);
  return profiles.flatMap((url) => brokenBy(shapeOf(url), subject));
};

/** Expressions are compiled when their profile is first met. */
const rulesOf = byProfile((url) => OWN_INVARIANTS.get(url) ?? []);
const shapeOf = byProfile((url) => SHAPES.get(url) ?? []);

/** The constraints that a profile adds to those of the standard. */
export function constraintsOf({ differential }: Profile): readonly Rule[] {
  return differential.element.flatMap(({ path, constraint = [] }) =>
    constraint
      .filter(({ key }) => key.startsWith(OWN))
      .map(({ key, severity, human, expression }) => ({
        key,
        severity: severity === 'warning' ? ('warning' as const) : ('error' as const),
        human,
        expression,
        context: path,
      })),
  );
}

/** Rules about a whole resource, ready to be put to many. */
export const tested = (rules: readonly Rule[]): readonly TestedRule[] =>
  rules.map((rule) => ({ rule, surelyHolds: quickTest(rule.expression, { atRoot: true }) }));

function byProfile(rulesOfProfile: (url: string) => readonly Rule[]) {
  const known = new Map<string, readonly TestedRule[]>();
  return (url: string): readonly TestedRule[] => {
    let rules = known.get(url);
    if (rules === undefined) {
      rules = tested(rulesOfProfile(url));
      known.set(url, rules);
    }
    return rules;
  };
}

export function brokenBy(rules: readonly TestedRule[], subject: Subject): readonly Broken[] {
  const root = resourceNode(subject.resource);
  const run = runOn(subject.resource);
  return rules.flatMap(({ rule, surelyHolds }) =>
    surelyHolds(root, run) ? [] : broken(rule, rule.expression, subject, subject.pointer),
  );
}

function claimedProfiles({ resource }: Subject): readonly string[] {
  const meta = isObject(resource) ? resource['meta'] : undefined;
  const claimed = isObject(meta) ? meta['profile'] : undefined;
  return Array.isArray(claimed) ? claimed.filter((url) => typeof url === 'string') : [];
}
