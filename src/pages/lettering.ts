/**
 * How wide text is about, in units of the view box. The letters are the reader's own system font,
 * so this leans to the wide side.
 *
 * @param size height of the letters
 */
export const approximateWidth = (text: string, size: number): number =>
  size * Array.from(text).reduce((sum, letter) => sum + share(letter), 0);

/** The text, or as much of its beginning as fits, with an ellipsis. */
export function shorten(text: string, width: number, size: number): string {
  if (approximateWidth(text, size) <= width) return text;
  const letters = Array.from(text);
  while (letters.length > 0 && approximateWidth(`${letters.join('')}…`, size) > width) {
    letters.pop();
  }
  return `${letters.join('').trimEnd()}…`;
}

/** Lines that fit the width, broken between words, or after a hyphen or inside a word that is too long. */
export function wrap(text: string, width: number, size: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).flatMap((whole) => pieces(whole, width, size))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && approximateWidth(longer, size) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

/** At most so many lines; what is left of the text is shortened into the last. */
export function wrapInto(
  lines: number,
  text: string,
  width: number,
  size: number,
): readonly string[] {
  const all = wrap(text, width, size);
  if (all.length <= lines) return all;
  const rest = all.slice(lines - 1).join(' ');
  return [...all.slice(0, lines - 1), shorten(rest, width, size)];
}

/** Positions in their order, moved down or up so that neighbours keep the distance. */
export function spread(
  wanted: readonly number[],
  distance: number,
  within: readonly [number, number],
): readonly number[] {
  const order = wanted.map((at, index) => ({ at, index })).sort((a, b) => a.at - b.at);
  const placed = new Array<number>(wanted.length).fill(0);
  let least = within[0];
  for (const { at, index } of order) {
    placed[index] = Math.max(at, least);
    least = (placed[index] ?? at) + distance;
  }
  let most = within[1];
  for (const { index } of order.toReversed()) {
    placed[index] = Math.min(placed[index] ?? most, most);
    most = (placed[index] ?? most) - distance;
  }
  return placed;
}

function pieces(word: string, width: number, size: number): readonly string[] {
  if (approximateWidth(word, size) <= width) return [word];
  const found: string[] = [];
  let piece = '';
  for (const letter of Array.from(word)) {
    while (piece !== '' && approximateWidth(piece + letter, size) > width) {
      const cut = piece.lastIndexOf('-') + 1 || piece.length;
      found.push(piece.slice(0, cut));
      piece = piece.slice(cut);
    }
    piece += letter;
  }
  return [...found, piece];
}

/** Width of a letter over its height; common practice, no source. */
function share(letter: string): number {
  if (/[\s.,:;'|!()[\]iljtfrI]/.test(letter)) return 0.4;
  if (/[mwMW%@]/.test(letter)) return 0.95;
  if (/[A-Z]/.test(letter)) return 0.72;
  return (letter.codePointAt(0) ?? 0) >= 0x1100 && !/[–—‘’“”…−≥≤]/.test(letter) ? 1.05 : 0.6;
}
