import { sha256 } from '../kernel/index.js';
import type { Rule } from './rule.js';

/**
 * Hash of everything in a rule that can change an answer: fields, ranges, words, rows, points,
 * groups, rates, contradictions, and the formula of a quantity. Prose and sources may be worded
 * better without another hash. Code beside the table (the unfolding of a list, the words of a
 * schedule, the arithmetic of a quantity) is not part of it.
 *
 * @returns SHA-256, 64 hexadecimal digits
 */
export function fingerprint(rule: Rule): string {
  return sha256(new TextEncoder().encode(canonical(decisive(rule))));
}

function decisive(rule: Rule): unknown {
  const head = {
    kind: rule.kind,
    fields: Object.entries(rule.fields),
    contradictions: rule.contradictions,
  };
  switch (rule.kind) {
    case 'rule-set':
    case 'classification':
    case 'follow-up': {
      const { table, reasonsShown, remarks } = rule;
      return { ...head, table, reasonsShown, remarks };
    }
    case 'score': {
      const { items, bands, remarks } = rule;
      return { ...head, items, bands, remarks };
    }
    case 'quantity':
      return { ...head, formula: rule.formula };
  }
}

const PROSE: readonly string[] = ['says', 'cites', 'message', 'expected'];

/** JSON with keys in order, without prose; a number that is not finite as its name. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value === 'number' && !Number.isFinite(value)) return JSON.stringify(String(value));
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const entries = Object.entries(value)
    .filter(([key, entry]) => entry !== undefined && !PROSE.includes(key))
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, entry]) => `${JSON.stringify(key)}:${canonical(entry)}`);
  return `{${entries.join(',')}}`;
}
