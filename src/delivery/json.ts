/** Narrows what a server sent to an object whose members may be looked at. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** @returns the member if it is text, else undefined */
export function textAt(value: unknown, key: string): string | undefined {
  if (!isRecord(value)) return undefined;
  const member = value[key];
  return typeof member === 'string' ? member : undefined;
}

/** @returns the objects in the member if it is an array, else none */
export function recordsAt(
  value: unknown,
  key: string,
): readonly Readonly<Record<string, unknown>>[] {
  if (!isRecord(value)) return [];
  const member = value[key];
  return Array.isArray(member) ? member.filter(isRecord) : [];
}
