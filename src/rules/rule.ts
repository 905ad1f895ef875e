import type { Checked, Citation } from '../kernel/index.js';
import type { Condition } from './condition.js';
import type { Fields } from './field.js';
import type { Item } from './points.js';
import type { Samples, Told } from './question.js';
import type { Contradiction } from './read-told.js';
import { samplesOf } from './samples.js';
import type { Table } from './table.js';

/** What every rule says of itself. */
interface Head {
  readonly id: string;
  /** Rises with every change of a row; kept with each answer. */
  readonly version: number;
  readonly title: string;
  /** For whom it was made, and what it must not be used for. */
  readonly population: string;
  readonly cites: readonly Citation[];
  /** Why a unit cannot choose it; absent for a rule in use. */
  readonly unconfirmed?: string;
  readonly fields: Fields;
  readonly contradictions: readonly Contradiction[];
  /** Flat fields of the document that people send, where it holds lists. */
  readonly unfold?: (document: unknown) => Checked<unknown>;
  /** What each list of that document holds, for people. */
  readonly lists?: Readonly<Record<string, string>>;
  /** The name in that document of a flat field. */
  readonly nameOf?: (field: string) => string;
}

/** A table that gives a class: a curability rule set or a classification. */
export interface ClassRule<C extends string = string> extends Head {
  readonly kind: 'rule-set' | 'classification' | 'follow-up';
  readonly table: Table<C>;
  readonly samples: Samples;
  /** Classes whose reasons are part of the short answer. */
  readonly reasonsShown: readonly C[];
  /** The short answer of a class, where it is more than its name; or what it needs for that. */
  inWords?(decided: C, told: Told): string | { readonly missing: readonly string[] };
  readonly remarks: readonly Remark[];
}

/** A sum of points with its published groups. */
export interface ScoreRule extends Head {
  readonly kind: 'score';
  readonly items: readonly Item[];
  readonly samples: Samples;
  /** The first that fits holds; ascending, without gaps; empty where none was published. */
  readonly bands: readonly Band[];
  readonly remarks: readonly Remark[];
}

/** A number or date that is computed. */
export interface QuantityRule extends Head {
  readonly kind: 'quantity';
  /** How it is computed, for people. */
  readonly formula: string;
  /** @returns the short answer, or what is wrong between the fields; every field is known */
  readonly compute: (told: Told) => Checked<string>;
}

/** A class rule with the values to try out for missing fields. */
export function classRule<const C extends string>(
  rule: Omit<ClassRule<C>, 'samples'>,
): ClassRule<C> {
  return { ...rule, samples: samplesOf(rule.fields, whens(rule.table.flat())) };
}

/** A score with the values to try out for missing fields. */
export function scoreRule(rule: Omit<ScoreRule, 'samples'>): ScoreRule {
  return { ...rule, samples: samplesOf(rule.fields, whens(rule.items)) };
}

const whens = (rows: readonly { readonly when: Condition }[]): readonly Condition[] =>
  rows.map(({ when }) => when);

export type Rule = ClassRule | ScoreRule | QuantityRule;

/** Something to show beside an answer where its condition holds; it changes nothing. */
export interface Remark {
  readonly remark: string;
  readonly when: Condition;
  /** Only beside these classes or groups. */
  readonly beside?: readonly string[];
  readonly says: string;
  readonly cites: readonly Citation[];
}

/** A published group of a score. */
export interface Band {
  readonly group: string;
  /** Totals, ends included; Infinity for a last group that is open. */
  readonly from: number;
  readonly to: number;
  /** What must hold beside the total. */
  readonly when?: Condition;
  readonly rate?: Rate;
  /** Further published numbers, which are no part of the short answer. */
  readonly figures?: readonly Figure[];
  readonly cites: readonly Citation[];
}

/** A published number of a group, as its mean speed. */
export interface Figure {
  readonly says: string;
  readonly value: number;
  readonly unit: '%' | 'mm2/min';
}

/** A published rate. */
export interface Rate {
  /** What happened to them, as "bled within 28 days". */
  readonly says: string;
  readonly percent: number;
  /** As published; the counts where the work gives them. */
  readonly events?: number;
  readonly of?: number;
  readonly interval?: {
    readonly lowerPercent: number;
    readonly upperPercent: number;
    readonly levelPercent: 95;
    readonly method: 'clopper-pearson' | 'wilson' | 'not stated';
  };
}
