import { BIBLIOGRAPHY } from '../references/index.js';
import type { Rule } from '../rules/index.js';
import { citationsOf } from './rule-sources.js';

/**
 * Everything that is declared of a rule, for machines. A group without an upper end has no `to`.
 */
export function toRuleJson(rule: Rule, caution: string): object {
  const keys = new Set(citationsOf(rule).map(({ work }) => work));
  const sources = Object.fromEntries(Object.entries(BIBLIOGRAPHY).filter(([key]) => keys.has(key)));
  const data = Object.entries(rule).filter(
    ([key, value]) => key !== 'samples' && typeof value !== 'function',
  );
  const bands = rule.kind === 'score' ? { bands: rule.bands.map(withoutOpenEnd) } : {};
  return { ...Object.fromEntries(data), ...bands, sources, caution };
}

function withoutOpenEnd<T extends { readonly to: number }>({ to, ...band }: T) {
  return Number.isFinite(to) ? { ...band, to } : band;
}
