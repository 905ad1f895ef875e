/** @param code of a colour, as in ECMA-48 section 8.3.117 */
export const paint = (colour: boolean, code: number, text: string): string =>
  colour ? `\u001b[${code}m${text}\u001b[0m` : text;

export const RED = 31;
export const GREEN = 32;
export const YELLOW = 33;
