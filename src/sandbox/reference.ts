/** What the text of `Reference.reference` points at. */
export type Target =
  | { readonly kind: 'ours'; readonly type: string; readonly id: string }
  | { readonly kind: 'conditional'; readonly type: string; readonly query: string }
  | { readonly kind: 'contained' }
  | { readonly kind: 'elsewhere' };

const LITERAL =
  /^([A-Z][A-Za-z]{2,})\/([A-Za-z0-9\-.]{1,64})(?:\/_history\/[A-Za-z0-9\-.]{1,64})?$/;
const CONDITIONAL = /^([A-Z][A-Za-z]{2,})\?(.+)$/;

/** An id as HL7 FHIR R4 allows it (Datatypes, id). */
export const ID = /^[A-Za-z0-9\-.]{1,64}$/;

/**
 * Source: HL7 FHIR R4, References, sections "Literal References" and "Contained Resources";
 * RESTful API, "Conditional References".
 *
 * @param base address of this server without a slash at its end
 */
export function targetOf(reference: string, base: string): Target {
  if (reference.startsWith('#')) return { kind: 'contained' };
  const relative = reference.startsWith(`${base}/`) ? reference.slice(base.length + 1) : reference;
  const [, type, id] = LITERAL.exec(relative) ?? [];
  if (type !== undefined && id !== undefined) return { kind: 'ours', type, id };
  const [, conditionalType, query] = CONDITIONAL.exec(relative) ?? [];
  if (conditionalType !== undefined && query !== undefined) {
    return { kind: 'conditional', type: conditionalType, query };
  }
  return { kind: 'elsewhere' };
}
