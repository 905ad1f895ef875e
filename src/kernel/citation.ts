/** A published work, by its key in `references`, and the place in it that was used. */
export interface Citation {
  readonly work: string;
  readonly place: string;
}
