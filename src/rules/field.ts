import type { Condition, ConditionOn, Value } from './condition.js';

type Kind<V> =
  | {
      readonly type: 'word';
      readonly words: readonly V[];
      /** Words that say "not known", as X for an invasion that cannot be assessed. */
      readonly unknown?: readonly V[];
    }
  | { readonly type: 'flag' }
  /** A day of the calendar, YYYY-MM-DD. */
  | { readonly type: 'date' }
  | {
      readonly type: 'number';
      readonly unit: string;
      readonly whole?: true;
      /** Range of what is accepted, ends included. */
      readonly from: number;
      readonly to: number;
    };

/** A field of a question, and what it means that it is absent. */
export type Field<V = Value, C = Condition> = Kind<V> & {
  /** In plain words, for people. */
  readonly says: string;
  /** Where only some of the words are possible; the first entry that holds counts. */
  readonly only?: readonly { readonly when: C; readonly words: readonly V[] }[];
  /**
   * What absence means, where it does not mean "missing"; the first entry that holds counts.
   * Never applied to `null`, which says that the field was asked for and is not known.
   */
  readonly assumed?: readonly { readonly when: C; readonly value: V }[];
  /** Where an absent field is not asked for at all; without it the field always is. */
  readonly askedWhen?: readonly C[];
};

/** All fields of a question, in the order in which missing ones are named. */
export type Fields = Readonly<Record<string, Field>>;

/** The fields of one kind of question: none forgotten, each word one of its own. */
export type FieldsOf<Q> = {
  readonly [F in keyof Q]-?: Field<Extract<Q[F], Value>, ConditionOn<Q>>;
};
