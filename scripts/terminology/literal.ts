const WIDTH = 100;

/** The name of a property, quoted only where it has to be. */
export function propertyName(name: string): string {
  return /^[A-Za-z_$][\w$]*$/.test(name) ? name : quoted(name);
}

/** Lines moved in by so many levels of two spaces. */
export function indented(lines: readonly string[], levels: number): readonly string[] {
  return lines.map((line) => '  '.repeat(levels) + line);
}

/**
 * The fields of an object literal, a line each, or two where one would be too long.
 *
 * @param levels levels of two spaces at which the fields will stand
 */
export function fieldLines(
  fields: Readonly<Record<string, string>>,
  levels: number,
): readonly string[] {
  return Object.entries(fields).flatMap(([name, text]) => {
    const line = `${name}: ${quoted(text)},`;
    return levels * 2 + line.length <= WIDTH
      ? [`  ${line}`]
      : [`  ${name}:`, `    ${quoted(text)},`];
  });
}

/** A text as a literal of TypeScript, with the quotes that need fewer escapes. */
function quoted(text: string): string {
  const doubles = text.split('"').length;
  const singles = text.split("'").length;
  const quote = singles > doubles ? '"' : "'";
  return quote + text.replaceAll('\\', '\\\\').replaceAll(quote, `\\${quote}`) + quote;
}
