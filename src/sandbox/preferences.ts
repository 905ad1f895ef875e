/** What a client asked for beside the matter itself. */
export interface Preferences {
  /** How much of a written resource comes back; undefined: it did not say. */
  readonly returns: 'minimal' | 'representation' | undefined;
  /** Whether search parameters that nobody knows are left out instead of refused. */
  readonly lenient: boolean;
}

/** Source: RFC 7240 and HL7 FHIR R4, RESTful API, header "Prefer". */
export function readPreferences(header: string | undefined): Preferences {
  const wishes = (header ?? '').split(/[,;]/).map((wish) => wish.trim().toLowerCase());
  const returns = (['minimal', 'representation'] as const).find((each) =>
    wishes.includes(`return=${each}`),
  );
  return { returns, lenient: wishes.includes('handling=lenient') };
}

const JSON_TYPES = ['application/fhir+json', 'application/json', 'text/json', 'json'] as const;
const ANYTHING = ['*/*', 'application/*'] as const;

/** Whether JSON is among what the client takes. `_format` goes before the header. */
export function takesJson(accept: string | undefined, format: string | null): boolean {
  const wanted = (format ?? accept ?? '*/*').split(',').map(mediaType);
  return wanted.some((type) => [...JSON_TYPES, ...ANYTHING].some((known) => known === type));
}

/** Whether a body of this content type is read as a resource. */
export function isJsonBody(contentType: string | undefined): boolean {
  return JSON_TYPES.some((known) => known === mediaType(contentType ?? ''));
}

export function isForm(contentType: string | undefined): boolean {
  return mediaType(contentType ?? '') === 'application/x-www-form-urlencoded';
}

/** A plus sign in an address that was not escaped has become a space by now. */
const mediaType = (text: string) =>
  (text.split(';')[0] ?? '').trim().toLowerCase().replace(' ', '+');
