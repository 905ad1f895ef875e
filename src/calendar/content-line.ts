/** Octets of a line, the line break not counted. Source: RFC 5545, 3.1. */
const MOST_OCTETS = 75;
const LINE_END = '\r\n';

/**
 * A property as a content line with its line break, folded so that no line has more than 75
 * octets in UTF-8 and no character is cut: the space that begins a continuation counts as one.
 *
 * Source: RFC 5545, 3.1.
 *
 * @param property name, parameters and value, for example `DTSTART;VALUE=DATE:20260102`
 */
export function contentLine(property: string): string {
  const lines: string[] = [];
  let line = '';
  let octets = 0;
  for (const character of property) {
    const more = octetsOf(character);
    if (octets + more > MOST_OCTETS) {
      lines.push(line);
      line = ' ';
      octets = 1;
    }
    line += character;
    octets += more;
  }
  return [...lines, line, ''].join(LINE_END);
}

function octetsOf(character: string): number {
  const point = character.codePointAt(0) ?? 0;
  return point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
}

/** What some reader takes for the end of a line, the Unicode ones included. */
const ANY_LINE_END = /\r\n|[\n\r\v\f\u0085\u2028\u2029]/g;
/** Control characters that a text may not hold: all but the tab. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROL = /[\0-\x08\x0e-\x1f\x7f]/g;

/**
 * Any text as a TEXT value. What the standard cannot say, a control character or half of a
 * surrogate pair, becomes U+FFFD, so that one odd identifier does not cost a reader the feed.
 *
 * Source: RFC 5545, 3.3.11.
 */
export const textValue = (text: string): string =>
  text
    .toWellFormed()
    .replace(/[\\;,]/g, (special) => `\\${special}`)
    .replace(ANY_LINE_END, '\\n')
    .replace(CONTROL, '\ufffd');
