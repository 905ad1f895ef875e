/** The fields of a question as someone sends them. */
export type Plain = Readonly<Record<string, string | number | boolean | null | undefined>>;

/** Values of each field. */
export type Choices<Q extends object = Plain> = { readonly [F in keyof Q]: readonly Q[F][] };

/** Every question that can be made of these values, in their order. */
export function everyQuestion<Q extends object = Plain>(choices: Choices<Q>): readonly Q[] {
  let questions: readonly object[] = [{}];
  for (const [field, values] of Object.entries<readonly unknown[]>(choices)) {
    questions = questions.flatMap((question) =>
      values.map((value) => ({ ...question, [field]: value })),
    );
  }
  return questions as readonly Q[];
}

/** A rule once more, written as plain sentences from its source, with the questions to ask. */
export interface SecondWriting<Q extends object = object> {
  readonly id: string;
  readonly choices: Choices<Q>;
  /** The short answer to a question in which everything is told. */
  says(question: Q): string;
}
