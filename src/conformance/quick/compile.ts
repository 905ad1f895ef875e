import { FUNCTIONS } from './functions.table.js';
import { childrenNamed, type Node, resourceNode, typeTester } from './node.js';
import { operation } from './operators.js';
import { anchored, ofRootAlone } from './root.js';
import {
  asNodes,
  NOTHING,
  type Nodes,
  numberNodes,
  type Run,
  type Step,
  textNodes,
  Unanswered,
} from './step.js';
import { nameOf, parse, type Syntax, textOf, unquoted, unwrapped } from './syntax.js';

export type { Run } from './step.js';

/** @returns a fresh evaluation of a resource, for any number of expressions */
export function runOn(resource: unknown): Run {
  return { root: [resourceNode(resource)], known: new Map(), sets: new Map() };
}

/**
 * Makes a quick test of a FHIRPath expression.
 *
 * It says true where the expression is surely true. False means only "ask FHIRPath itself":
 * because the expression is not true, or because it uses what this evaluator does not know.
 *
 * @param atRoot whether the expression is only ever asked of the resource as a whole
 */
export function quickTest(expression: string, { atRoot }: { readonly atRoot: boolean }): QuickTest {
  const key = `${atRoot} ${expression}`;
  const known = tests.get(key) ?? testOf(expression, atRoot);
  tests.set(key, known);
  return known;
}

/** Asks the expression of a node; the run is that of the resource which holds the node. */
export type QuickTest = (at: Node, run: Run) => boolean;

/** Many profiles ask the same of their elements: each expression is read once. */
const tests = new Map<string, QuickTest>();

function testOf(expression: string, atRoot: boolean): QuickTest {
  const syntax = parse(expression);
  const step = compiled(atRoot ? anchored(syntax) : syntax);
  return (at, run) => {
    try {
      const result = step([at], run);
      return result.length === 1 && result[0]?.value === true;
    } catch (error) {
      if (error instanceof Unanswered) return false;
      throw error;
    }
  };
}

function compiled(wrapped: Syntax): Step {
  const syntax = unwrapped(wrapped);
  const [left, right] = syntax.children ?? [];
  const text = syntax.text ?? '';
  switch (syntax.type) {
    case 'InvocationExpression':
      return left && right ? chain(syntax, left, right) : unknown(syntax);
    case 'MemberInvocation':
    case 'FunctionInvocation':
      return invocation(syntax, (self) => self);
    case 'ThisInvocation':
      return (self) => self;
    case 'ExternalConstant':
      return left && nameOf(left) === 'resource' ? (_self, run) => run.root : unknown(syntax);
    case 'StringLiteral':
      return constant(unquoted(text), textNodes, syntax);
    case 'NumberLiteral':
      return constant(Number(text), numberNodes, syntax);
    case 'BooleanLiteral':
      return constant(text === 'true', asNodes, syntax);
    case 'TypeExpression':
      return left && right && text === 'is'
        ? typeTest(compiled(left), nameOf(right))
        : unknown(syntax);
    default:
      return left && right
        ? (operation(syntax, compiled(left), compiled(right), right) ?? unknown(syntax))
        : unknown(syntax);
  }
}

const unknown = ({ type, text = '' }: Syntax): Step => {
  return () => {
    throw new Unanswered(`${type} ${text}`);
  };
};

function constant<T>(value: T | undefined, made: (value: T) => Nodes, syntax: Syntax): Step {
  if (value === undefined) return unknown(syntax);
  const nodes = made(value);
  return () => nodes;
}

/** Parts that depend on the resource alone are found out once a run. */
function chain(syntax: Syntax, left: Syntax, right: Syntax): Step {
  const step = invocation(unwrapped(right), compiled(left));
  if (!ofRootAlone(left)) return step;
  const key = textOf(syntax);
  return (self, run) => {
    const known = run.known.get(key);
    if (known !== undefined) return known;
    const found = step(self, run);
    run.known.set(key, found);
    return found;
  };
}

function invocation(syntax: Syntax, input: Step): Step {
  if (syntax.type === 'MemberInvocation') return member(nameOf(syntax), input);
  const [functionSyntax] = syntax.children ?? [];
  const [, parameters] = functionSyntax?.children ?? [];
  const args = parameters?.children ?? [];
  const name = nameOf(syntax);
  const [only] = args;
  if (name === 'ofType' && only) return typeFilter(input, nameOf(unwrapped(only)));
  if (name === 'is' && only) return typeTest(input, nameOf(unwrapped(only)));
  const apply = Object.hasOwn(FUNCTIONS, name) ? FUNCTIONS[name] : undefined;
  if (syntax.type !== 'FunctionInvocation' || apply === undefined) return unknown(syntax);
  const steps = args.map((arg) => compiled(arg));
  return (self, run) => apply(input(self, run), steps, self, run);
}

function member(name: string, input: Step): Step {
  if (/^[A-Z]/.test(name)) return unknown({ type: 'type name', text: name });
  const addChildren = childrenNamed(name);
  return (self, run) => {
    const found: Node[] = [];
    for (const node of input(self, run)) addChildren(node, found);
    return found;
  };
}

const typeFilter = (input: Step, type: string): Step => {
  const isOfIt = typeTester(type);
  return (self, run) => input(self, run).filter(({ path }) => isOfIt(path));
};

const typeTest = (input: Step, type: string): Step => {
  const isOfIt = typeTester(type);
  return (self, run) => {
    const nodes = input(self, run);
    if (nodes.length > 1) throw new Unanswered('type of several');
    return nodes[0] === undefined ? NOTHING : asNodes(isOfIt(nodes[0].path));
  };
};
