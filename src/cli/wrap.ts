const WIDTH = 100;

/**
 * Breaks a text into lines of at most 100 columns, none within a word.
 *
 * @param first what stands before the first line; the others are indented as far
 */
export function wrap(first: string, text: string): string {
  const indent = ' '.repeat(first.length);
  const lines: string[] = [];
  let line = first;
  let isEmpty = true;
  for (const word of text.split(' ')) {
    if (!isEmpty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = indent;
      isEmpty = true;
    }
    line += isEmpty ? word : ` ${word}`;
    isEmpty = false;
  }
  return [...lines, line].join('\n');
}
