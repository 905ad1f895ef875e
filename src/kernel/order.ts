/** Texts in the order of their code units; so are days and instants of one form. */
export const compareTexts = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** @returns the earlier of two days */
export const earlierOf = (a: string, b: string): string => (a < b ? a : b);

/** @returns the later of two days */
export const laterOf = (a: string, b: string): string => (a < b ? b : a);
