import type { Node } from './node.js';

export type Nodes = readonly Node[];

/** One evaluation: the resource it is about, and what has been found out of it so far. */
export interface Run {
  readonly root: Nodes;
  /** Results of the parts of expressions that depend on the root alone, by their text. */
  readonly known: Map<string, Nodes>;
  readonly sets: Map<string, ReadonlySet<unknown>>;
}

/** A part of an expression, ready to run on `$this`. */
export type Step = (self: Nodes, run: Run) => Nodes;

/** Thrown where this evaluator does not know the answer: FHIRPath proper has to be asked. */
export class Unanswered extends Error {
  override readonly name = 'Unanswered';
}

const booleanNode = (value: boolean): Nodes => [{ value, path: 'System.Boolean' }];

export const TRUE = booleanNode(true);
export const FALSE = booleanNode(false);
export const NOTHING: Nodes = [];

export const asNodes = (value: boolean | undefined): Nodes =>
  value === undefined ? NOTHING : value ? TRUE : FALSE;

export const textNodes = (value: string): Nodes => [{ value, path: 'System.String' }];

export const numberNodes = (value: number): Nodes => [{ value, path: 'System.Integer' }];

/**
 * A collection where a boolean is expected: empty is unknown, one value that is no boolean is
 * true. Source: FHIRPath 2.0, singleton evaluation of collections.
 */
export function truth(nodes: Nodes): boolean | undefined {
  if (nodes.length > 1) throw new Unanswered('several values where one boolean is expected');
  const value = nodes[0]?.value;
  return typeof value === 'boolean' ? value : nodes.length === 1 ? true : undefined;
}

/** @returns the only text, or undefined for an empty collection */
export function onlyText(nodes: Nodes): string | undefined {
  if (nodes.length === 0) return undefined;
  const value = nodes[0]?.value;
  if (nodes.length > 1 || typeof value !== 'string') throw new Unanswered('one text expected');
  return value;
}
