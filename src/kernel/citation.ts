/**
 * How well a value is supported: `published` was read in the work itself or its abstract,
 * `recalled` stands in the work by memory or by a second source, `derived` follows by arithmetic
 * or fills a gap, `practice` is common practice without a source.
 */
export type Basis = 'published' | 'recalled' | 'derived' | 'practice';

/** A published work, by its key in `references`, and the place in it that was used. */
export interface Citation {
  readonly work: string;
  readonly place: string;
  readonly basis: Basis;
}
