import { BASE_INVARIANTS } from './base-invariants.generated.js';
import { type QuickTest, quickTest, type Run, runOn } from './quick/compile.js';
import { childrenOf, isOfType, type Node, pathOf, resourceNode } from './quick/node.js';
import { type Broken, broken, type Subject } from './resource-check.js';
import type { Rule } from './rule.js';

/** Constraints of the standard that are not asked of what we send, each with its reason. */
export const BASE_NOT_ASKED: Readonly<Record<string, string>> = {
  'dom-6':
    'A narrative is best practice (warning): every answer is coded and has a text, and a narrative ' +
    'made of them would say the same once more.',
};

/** Conditions under which alone a constraint is asked, where its text in R4 forgot to say so. */
const BASE_ASKED_IF: Readonly<Record<string, string>> = {
  // On a reference by identifier alone the text of R4 gives neither true nor false; R5 added
  // this condition to the same rule. Source: FHIR R5, Reference, ref-1; from memory.
  'ref-1': 'reference.exists()',
};

interface TestedRule {
  readonly rule: Rule;
  readonly surelyHolds: QuickTest;
}

/** The constraints of FHIR R4 that are asked of what we send. */
export const ASKED_BASE_INVARIANTS: readonly Rule[] = BASE_INVARIANTS.filter(
  ({ key }) => !Object.hasOwn(BASE_NOT_ASKED, key),
).map((rule) => {
  const condition = BASE_ASKED_IF[rule.key];
  return atOwner(
    condition === undefined
      ? rule
      : { ...rule, expression: `${condition} implies (${rule.expression})` },
  );
});

const rulesByPath = new Map<string, readonly TestedRule[]>();

/**
 * Checks one resource by the constraints of FHIR R4 at every element of it. Resources within
 * a Bundle are left out: each is a subject of its own.
 */
export function brokenInBase(subject: Subject): readonly Broken[] {
  const root = resourceNode(subject.resource);
  const run = runOn(subject.resource);
  const doubts = new Map<Rule, Node[]>();
  gatherDoubts(root, run, doubts);
  return [...doubts].flatMap(([rule, nodes]) => {
    const [only, second] = nodes;
    const place = second === undefined ? pointerWithin(subject.resource, only?.value) : '';
    return broken(rule, lifted(rule, root.path), subject, subject.pointer + place);
  });
}

/**
 * The rule as a question about a whole resource of that type: it has to hold at every element
 * where it stands.
 */
export function lifted({ context, expression }: Rule, type: string): string {
  if (isOfType(type, context)) return expression;
  const [owner = context, ...rest] = context.split('.');
  const below = rest.map((name) => `.${name}`).join('');
  if (owner === type) return `$this${below}.all(${expression})`;
  // FHIRPath finds no extensions by their type among descendants, only by their name.
  const found =
    owner === 'Extension'
      ? 'descendants().combine($this).select(extension.combine(modifierExtension))'
      : `descendants().ofType(${owner})`;
  return `${found}${below}.all(${expression})`;
}

/**
 * A constraint on an element that has a type of its own is asked of the element's owner: nodes
 * are known by their type, and only a backbone's type is its path.
 */
function atOwner(rule: Rule): Rule {
  const [owner = '', name, ...deeper] = rule.context.split('.');
  if (name === undefined || deeper.length > 0 || pathOf(owner, name) === rule.context) return rule;
  return { ...rule, context: owner, expression: `\`${name}\`.all(${rule.expression})` };
}

function gatherDoubts(node: Node, run: Run, doubts: Map<Rule, Node[]>): void {
  for (const { rule, surelyHolds } of rulesAt(node.path)) {
    if (surelyHolds(node, run)) continue;
    const nodes = doubts.get(rule);
    if (nodes === undefined) doubts.set(rule, [node]);
    else nodes.push(node);
  }
  if (typeof node.value !== 'object') return;
  for (const child of childrenOf(node)) {
    if (node.path !== 'Bundle.entry' || !isOfType(child.path, 'Resource')) {
      gatherDoubts(child, run, doubts);
    }
  }
}

function rulesAt(path: string): readonly TestedRule[] {
  let rules = rulesByPath.get(path);
  if (rules === undefined) {
    const here = ASKED_BASE_INVARIANTS.filter(
      ({ context }) => context === path || isOfType(path, context),
    );
    rules = here.map((rule) => ({
      rule,
      surelyHolds: quickTest(rule.expression, { atRoot: false }),
    }));
    rulesByPath.set(path, rules);
  }
  return rules;
}

/** JSON Pointer from one value to another one within it. */
function pointerWithin(from: unknown, to: unknown): string {
  return search(from, to) ?? '';
}

function search(from: unknown, to: unknown): string | undefined {
  if (from === to) return '';
  if (typeof from !== 'object' || from === null) return undefined;
  for (const [key, value] of Object.entries(from)) {
    const rest = search(value, to);
    if (rest !== undefined) return `/${key}${rest}`;
  }
  return undefined;
}
