/** The form of a logical id, as part of a regular expression. Source: FHIR R4 (4.0.1), id. */
export const FHIR_ID = String.raw`[A-Za-z0-9\-.]{1,64}`;

const WHOLE = new RegExp(`^${FHIR_ID}$`);

export const isFhirId = (text: string): boolean => WHOLE.test(text);
