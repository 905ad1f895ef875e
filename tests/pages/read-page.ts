import { type DefaultTreeAdapterTypes, parse } from 'parse5';

export type Element = DefaultTreeAdapterTypes.Element;
type Child = DefaultTreeAdapterTypes.ChildNode;

export const isElement = (node: Child): node is Element => 'tagName' in node;

export const below = (nodes: readonly Child[]): readonly Element[] =>
  nodes.filter(isElement).flatMap((node) => [node, ...below(node.childNodes)]);

export const words = (node: Child): string =>
  'value' in node ? node.value : isElement(node) ? node.childNodes.map(words).join('') : '';

export const attribute = (node: Element, name: string): string | undefined =>
  node.attrs.find((found) => found.name === name)?.value;

/** Parses as the HTML standard says, and keeps each parse error. */
export function read(page: string | { readonly html: string }) {
  const html = typeof page === 'string' ? page : page.html;
  const errors: string[] = [];
  const document = parse(html, { onParseError: ({ code }) => errors.push(code) });
  const elements = below(document.childNodes);
  const named = (...names: string[]) => elements.filter(({ tagName }) => names.includes(tagName));
  return { errors, elements, named, mode: document.mode };
}
