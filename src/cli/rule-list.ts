import type { UnitSettings } from '../contract/index.js';
import type { Rule } from '../rules/index.js';
import { wrap } from './wrap.js';

/** A rule in a list of them. */
export interface RuleEntry {
  readonly kind: Rule['kind'];
  readonly id: string;
  readonly version: number;
  readonly title: string;
  /** Organs for which the unit decides by it. */
  readonly chosenFor: readonly string[];
  /** Why a unit cannot choose it. */
  readonly unconfirmed?: string;
}

export function toEntry(rule: Rule, unit: UnitSettings): RuleEntry {
  const { kind, id, version, title, unconfirmed } = rule;
  const chosenFor = Object.entries(unit.curabilityRules).flatMap(([organ, chosen]) =>
    chosen === id ? [organ] : [],
  );
  const entry = { kind, id, version, title, chosenFor };
  return unconfirmed === undefined ? entry : { ...entry, unconfirmed };
}

const HEADINGS: Readonly<Record<Rule['kind'], string>> = {
  'rule-set': 'Rule sets of curability',
  'follow-up': 'Rule sets of follow-up',
  score: 'Scores',
  classification: 'Classifications',
  quantity: 'Quantities and statistics',
};

/** A table for people: id, version, whether the unit decides by it, title. */
export function listRules(entries: readonly RuleEntry[]): string {
  const width = Math.max(...entries.map(({ id }) => id.length));
  const row = (id: string, version: string, use: string, title: string) =>
    wrap(`  ${id.padEnd(width)}  ${version.padStart(3)}  ${use.padEnd(11)}  `, title);
  const kinds = [...new Set(entries.map(({ kind }) => kind))];
  return [
    row('id', 'ver', 'use', 'title'),
    ...kinds.flatMap((kind) => [
      HEADINGS[kind],
      ...entries
        .filter((entry) => entry.kind === kind)
        .map((entry) => row(entry.id, String(entry.version), useOf(entry), entry.title)),
    ]),
    '',
    'chosen: the unit decides by it; unconfirmed: for comparison only, it cannot be chosen.',
    'rule ID shows a rule with its sources; rule ID FILE answers the questions of a file.',
  ].join('\n');
}

function useOf({ chosenFor, unconfirmed }: RuleEntry): string {
  if (unconfirmed !== undefined) return 'unconfirmed';
  return chosenFor.length > 0 ? 'chosen' : '';
}
