/** What the bench asks of a contender. */
export type Request =
  | { readonly ask: 'load'; readonly name: string; readonly inputs: readonly string[] }
  | { readonly ask: 'outputs' | 'hash' | 'entries' | 'round' };

export interface Answer {
  readonly value?: string | number;
  readonly texts?: readonly string[];
}

/** What a contender does with each input; the text that it makes, or is given. */
export type Work = (input: string) => string;

const REFUSAL = '{"refused":';

/** What the pipeline answers to a message that the contract refuses. */
export const toRefusal = (problems: readonly object[]): string =>
  `${REFUSAL}${JSON.stringify(problems)}}`;

export const isRefusal = (text: string): boolean => text.startsWith(REFUSAL);
