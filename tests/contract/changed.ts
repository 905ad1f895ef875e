import { withValue } from './places.js';

export type Fields = Readonly<Record<string, unknown>>;

/** @param fields to set by dotted path; `undefined` takes one away */
export function changed(document: object, fields: Fields): unknown {
  return Object.entries(fields).reduce<unknown>(
    (changing, [path, value]) => withValue(changing, pathOf(path), value),
    document,
  );
}

const pathOf = (path: string) =>
  path.split('.').map((key) => (/^\d+$/.test(key) ? Number(key) : key));

export const bytesOf = (document: unknown): Uint8Array =>
  new TextEncoder().encode(JSON.stringify(document));
