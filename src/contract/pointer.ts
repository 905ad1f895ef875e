/** A place in a document: keys of objects and indexes of lists, from the outside inwards. */
export type Path = readonly PropertyKey[];

/** @returns the place as a JSON Pointer. Source: RFC 6901 sections 3 to 5 */
export function toPointer(path: Path): string {
  return path.map((key) => `/${escapePointer(String(key))}`).join('');
}

/** Reads a JSON Pointer that this program wrote; indexes of lists come back as text. */
export function toPath(pointer: string): Path {
  return pointer
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'));
}

export function escapePointer(key: string): string {
  return /[~/]/.test(key) ? key.replaceAll('~', '~0').replaceAll('/', '~1') : key;
}

/** Whether the place is the other one or lies in it. */
export const isWithin = (pointer: string, outer: string): boolean =>
  pointer === outer || pointer.startsWith(`${outer}/`);
