import { nameOf, type Syntax, unwrapped } from './syntax.js';

/** Functions whose arguments are asked of the outer `$this`, not of each item. */
const ARGUMENTS_OUTSIDE = new Set(['combine', 'intersect', 'startsWith', 'endsWith', 'contains']);

const RESOURCE: Syntax = {
  type: 'ExternalConstant',
  children: [{ type: 'Identifier', text: 'resource' }],
};

/**
 * Writes an expression about a resource as a whole so that it starts from `%resource`
 * throughout: `entry.fullUrl` and `%resource.entry.fullUrl` are then one and the same.
 */
export function anchored(wrapped: Syntax): Syntax {
  const syntax = unwrapped(wrapped);
  const { type, children = [] } = syntax;
  const [left, right] = children;
  if (type === 'ThisInvocation') return RESOURCE;
  if (type === 'MemberInvocation' || type === 'FunctionInvocation') {
    return { type: 'InvocationExpression', children: [RESOURCE, invoked(syntax)] };
  }
  if (type === 'InvocationExpression' && left && right) {
    return { ...syntax, children: [anchored(left), invoked(unwrapped(right))] };
  }
  if (type === 'TypeExpression' && left && right) {
    return { ...syntax, children: [anchored(left), right] };
  }
  return type.endsWith('Expression') ? { ...syntax, children: children.map(anchored) } : syntax;
}

/** Whether the value of this part depends on nothing but the resource. */
export function ofRootAlone(wrapped: Syntax): boolean {
  const syntax = unwrapped(wrapped);
  const [first] = syntax.children ?? [];
  if (first === undefined) return false;
  if (syntax.type === 'ExternalConstant') return nameOf(first) === 'resource';
  return syntax.type === 'InvocationExpression' && ofRootAlone(first);
}

export function isListOfLiterals(wrapped: Syntax): boolean {
  const { type, children = [] } = unwrapped(wrapped);
  return type === 'UnionExpression'
    ? children.every(isListOfLiterals)
    : type === 'StringLiteral' || type === 'NumberLiteral';
}

function invoked(syntax: Syntax): Syntax {
  if (!ARGUMENTS_OUTSIDE.has(nameOf(syntax))) return syntax;
  const [call] = syntax.children ?? [];
  const [name, parameters] = call?.children ?? [];
  if (call === undefined || name === undefined || parameters === undefined) return syntax;
  const args = (parameters.children ?? []).map(anchored);
  return {
    ...syntax,
    children: [{ ...call, children: [name, { ...parameters, children: args }] }],
  };
}
