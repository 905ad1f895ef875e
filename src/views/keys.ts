/** A resource of a collection, with what it is called there. */
export interface Keyed {
  readonly resource: object;
  /** Id of the resource, or the UUID of its fullUrl in a Bundle that nobody has stored yet. */
  readonly key: string;
}

const URN = 'urn:uuid:';

/**
 * Resources of a Bundle or a list of them, each with its key. A Bundle on its way has no ids: there
 * the UUID of the fullUrl is the key, under which other resources of the Bundle refer to it.
 *
 * @param value a Bundle or a resource; what is neither has no resources
 */
export function resourcesIn(value: unknown): readonly Keyed[] {
  if (!isResource(value)) return [];
  if (value['resourceType'] !== 'Bundle') return [{ resource: value, key: textAt(value, 'id') }];
  const entries = value['entry'];
  return (Array.isArray(entries) ? entries : []).flatMap((entry: unknown) => {
    if (!isRecord(entry)) return [];
    const resource = entry['resource'];
    if (!isResource(resource)) return [];
    const id = textAt(resource, 'id');
    return [{ resource, key: id === '' ? keyOfUrl(textAt(entry, 'fullUrl')) : id }];
  });
}

/**
 * Key of the resource that a reference names; undefined where it names none by its address, or one
 * of another type.
 *
 * Source: SQL on FHIR 2.0, getReferenceKey([resource: type specifier]).
 *
 * @param type that is wanted; absent: any
 */
export function referenceKey(value: unknown, type: string | undefined): string | undefined {
  if (!isRecord(value)) return undefined;
  const reference = textAt(value, 'reference');
  if (reference === '' || reference.startsWith('#')) return undefined;
  const named = /(?:^|\/)([A-Z][A-Za-z]+)\/([A-Za-z0-9.-]{1,64})(?:\/_history\/.*)?$/.exec(
    reference,
  );
  const told = named?.[1] ?? textAt(value, 'type');
  if (type !== undefined && told !== '' && told !== type) return undefined;
  return named?.[2] ?? (reference.startsWith(URN) ? keyOfUrl(reference) : undefined);
}

const keyOfUrl = (url: string): string => (url.startsWith(URN) ? url.slice(URN.length) : url);

type Json = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isResource = (value: unknown): value is Json =>
  isRecord(value) && typeof value['resourceType'] === 'string';

function textAt(value: Json, name: string): string {
  const text = value[name];
  return typeof text === 'string' ? text : '';
}
