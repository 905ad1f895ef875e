/** Names that differ in their last word alone stand in one line, as `row: depth with ep, lpm`. */
export function inOneLine(names: readonly string[]): readonly string[] {
  const lines = new Map<string, string[]>();
  for (const name of names) {
    const [, head = name, last] = /^(.* (?:with|without|gives|as|assumed)) (\S+)$/.exec(name) ?? [];
    lines.set(head, [...(lines.get(head) ?? []), ...(last === undefined ? [] : [last])]);
  }
  return [...lines].map(([head, lasts]) => [head, lasts.join(', ')].join(' ').trim());
}
