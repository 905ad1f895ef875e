import fhirpath from 'fhirpath';

/** A node of the syntax tree that the FHIRPath package makes of an expression. */
export interface Syntax {
  readonly type: string;
  readonly text?: string;
  readonly children?: readonly Syntax[];
}

/** @returns the expression as a tree; throws where it is not well-formed */
export function parse(expression: string): Syntax {
  return unwrapped(fhirpath.parse(expression));
}

/** Leaves out the layers that only hold one other. */
export function unwrapped(syntax: Syntax): Syntax {
  const [only, second] = syntax.children ?? [];
  return WRAPPERS.has(syntax.type) && only !== undefined && second === undefined
    ? unwrapped(only)
    : syntax;
}

const WRAPPERS = new Set([
  'EntireExpression',
  'TermExpression',
  'InvocationTerm',
  'LiteralTerm',
  'ParenthesizedTerm',
  'ExternalConstantTerm',
]);

/** The same text for the same part of an expression, wherever it stands. */
export function textOf(syntax: Syntax): string {
  const { type, text = '', children = [] } = unwrapped(syntax);
  return `${type}:${text}(${children.map(textOf).join()})`;
}

/** The value of a quoted text, its escapes resolved; undefined for an escape we do not know. */
export function unquoted(text: string): string | undefined {
  const inner = text.slice(1, -1);
  return /\\[^\\'"`]/.test(inner.replaceAll('\\\\', ''))
    ? undefined
    : inner.replace(/\\(.)/g, '$1');
}

/** Name of a member or function, without the marks of a delimited identifier. */
export function nameOf(syntax: Syntax): string {
  const text = syntax.text ?? '';
  return text.startsWith('`') ? text.slice(1, -1) : text;
}
