/** The fields of a question as someone sends them. */
export type Plain = Readonly<Record<string, string | number | boolean | null | undefined>>;

/** Every combination of the values, in their order. */
export function everyQuestion(
  values: Readonly<Record<string, readonly Plain[string][]>>,
): readonly Plain[] {
  return Object.entries(values).reduce<readonly Plain[]>(
    (questions, [field, each]) =>
      questions.flatMap((question) => each.map((value) => ({ ...question, [field]: value }))),
    [{}],
  );
}
