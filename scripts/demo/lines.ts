/** Columns of the widest line. */
const WIDTH = 100;

/**
 * Breaks a text between words and sets it in from the left; what follows the first line is set in
 * as far as the text behind its label.
 *
 * @param most lines that may stand; what is longer ends in dots
 */
export function lines(label: string, text: string, most = Number.POSITIVE_INFINITY): string {
  const room = WIDTH - label.length;
  const broken = brokenAt(text, room);
  const shown = broken.slice(0, most);
  const cut = broken.length > most ? dotted(shown.at(-1) ?? '', room) : shown.at(-1);
  const margin = ' '.repeat(label.length);
  return [...shown.slice(0, -1), cut ?? '']
    .map((line, i) => `${i === 0 ? label : margin}${line}`)
    .join('\n');
}

function brokenAt(text: string, room: number): readonly string[] {
  const done: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length > room && line !== '') done.push(line);
    line = longer.length > room ? word : longer;
  }
  return [...done, line];
}

/** A line that goes on: its last words give way where there is no room for the dots. */
function dotted(line: string, room: number): string {
  const end = line.lastIndexOf(' ');
  return line.length + 4 > room && end > 0 ? dotted(line.slice(0, end), room) : `${line} ...`;
}
