import { invariant, trimmedText } from '../kernel/index.js';

/** Text that is safe to stand in SVG and HTML as it is; only this file makes it. */
export interface Markup {
  readonly markup: string;
}

/** A string is text and is escaped; markup stands as it is. */
export type Content = Markup | string;

/** A number is written with at most two decimals; what is undefined is left out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

/**
 * One element with its attributes and content. Names come from code, never from data.
 *
 * @throws InvariantError when a number is not finite
 */
export function element(name: string, attributes: Attributes = {}, ...content: Content[]): Markup {
  const start = `<${name}${Object.entries(attributes).map(attribute).join('')}>`;
  if (VOID.has(name)) return { markup: start };
  return { markup: `${start}${together(content).markup}</${name}>` };
}

/** Several pieces, one after the other. */
export const together = (content: readonly Content[]): Markup => ({
  markup: content
    .map((piece) => (typeof piece === 'string' ? escapeText(piece) : piece.markup))
    .join(''),
});

/** Text that may go on in the next line after each slash, as addresses need it. */
export const breakable = (address: string): Markup =>
  together(
    address
      .split(/(?<=\/)(?!\/)/)
      .flatMap((piece, i): readonly Content[] => (i === 0 ? [piece] : [element('wbr'), piece])),
  );

/**
 * Style rules for a style element, whose content HTML does not unescape.
 *
 * @throws InvariantError when the rules could end the element
 */
export function styleElement(rules: string): Markup {
  invariant(!rules.includes('<'), 'style rules hold no tag');
  return { markup: `<style>${rules}</style>` };
}

/** Elements of HTML that have no content and no end tag. Source: HTML, void elements. */
const VOID = new Set(['meta', 'wbr']);

/** All but what XML 1.0 calls a Char (production 2), with halves of surrogate pairs. */
const NO_CHARACTER =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what it looks for
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escapeText(text: string): string {
  return text
    .replace(NO_CHARACTER, '\ufffd')
    .replace(/[&<>"']/g, (character) => ENTITIES[character] ?? character);
}

function attribute([name, value]: [string, string | number | undefined]): string {
  if (value === undefined) return '';
  if (typeof value === 'string') return ` ${name}="${escapeText(value)}"`;
  invariant(Number.isFinite(value), `${name} is a finite number`);
  return ` ${name}="${trimmedText(value, 2)}"`;
}
