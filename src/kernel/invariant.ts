/** A fault of this program, never of what was sent to it. */
export class InvariantError extends Error {
  override readonly name = 'InvariantError';
}

/** @throws InvariantError with the message, which must not hold patient data */
export function invariant(holds: boolean, message: string): asserts holds {
  if (!holds) throw new InvariantError(message);
}
