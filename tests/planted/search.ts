import {
  type Condition,
  isNeeds,
  type Needs,
  type Read,
  truthOf,
} from '../../src/rules/condition.js';
import type { Fields } from '../../src/rules/field.js';
import type { Told } from '../../src/rules/question.js';
import type { Band, ClassRule, ScoreRule } from '../../src/rules/rule.js';
import { anyHolds, type Planted } from './table-changes.js';
import { type Axes, completed, waysThrough } from './ways.js';

type AnyRule = ClassRule | ScoreRule;

/** Which questions are asked at all. */
export interface Limits {
  /** Whether a word must be possible beside the others. */
  readonly only: boolean;
  /** What no question says at once. */
  readonly impossible: readonly Condition[];
}

const SAME = { differs: false } as const;
const DIFFERENT = { differs: true } as const;

/**
 * Questions on which a changed rule may say something else, each with a value for every field.
 */
export function* questionsThatTell(
  rule: AnyRule,
  { rule: changed, touches }: Planted<AnyRule>,
  axes: Axes,
  limits: Limits,
): Generator<Told, void> {
  const look = (read: Read) => {
    const touched = touches(read);
    if (isNeeds(touched)) return touched;
    if (!touched || isImpossible(limits, read)) return SAME;
    const before = lookedUp(rule, read);
    if (isNeeds(before)) return before;
    const after = lookedUp(changed, read);
    if (isNeeds(after)) return after;
    return before.says === after.says ? SAME : DIFFERENT;
  };
  const fields = limits.only ? rule.fields : withoutOnly(rule.fields);
  for (const { told, result } of waysThrough(fields, axes, look)) {
    const question = result.differs ? completedIn(fields, axes, told, limits) : undefined;
    if (question !== undefined) yield question;
  }
}

/** Why a change makes no difference anywhere. */
export type Reason =
  | 'no possible question meets it'
  | 'an earlier row decides wherever it would matter'
  | 'another row says the same wherever it matters'
  | 'another group holds, or no total is so low or high';

/** How far the questions that a change touches come. */
export function reasonOf(
  rule: AnyRule,
  { touches, step }: Planted<AnyRule>,
  axes: Axes,
  limits: Limits,
): Reason {
  if (step === undefined) return 'another group holds, or no total is so low or high';
  const earlier = rule.kind === 'score' ? [] : rule.table.slice(0, step);
  const look = (read: Read) => {
    const touched = touches(read);
    if (isNeeds(touched)) return touched;
    if (!touched || isImpossible(limits, read)) return { at: 'none' } as const;
    for (const rows of earlier) {
      const holds = anyHolds(rows, read);
      if (isNeeds(holds)) return holds;
      if (holds) return { at: 'earlier' } as const;
    }
    return { at: 'here' } as const;
  };
  let reason: Reason = 'no possible question meets it';
  for (const { told, result } of waysThrough(rule.fields, axes, look)) {
    if (result.at === 'none') continue;
    if (completedIn(rule.fields, axes, told, limits) === undefined) continue;
    if (result.at === 'here') return 'another row says the same wherever it matters';
    reason = 'an earlier row decides wherever it would matter';
  }
  return reason;
}

const isImpossible = ({ impossible }: Limits, read: Read): boolean =>
  impossible.some((when) => truthOf(when, read) === true);

const completedIn = (fields: Fields, axes: Axes, told: Told, limits: Limits) =>
  completed(fields, axes, told, (full) => !isImpossible(limits, (field) => full[field] ?? ''));

const withoutOnly = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).map(([name, { only: _, ...rest }]) => [name, rest]));

/** What a rule says to a question in which everything is known; a second way through a table. */
function lookedUp(rule: AnyRule, read: Read): { readonly says: string } | Needs {
  return rule.kind === 'score' ? addedUp(rule, read) : foundInSteps(rule, read);
}

function foundInSteps({ table }: ClassRule, read: Read): { readonly says: string } | Needs {
  for (const step of table) {
    const truths = step.map(({ when }) => truthOf(when, read));
    const open = truths.find(isNeeds);
    if (open !== undefined) return open;
    const rows = step.filter((_, i) => truths[i] === true);
    if (rows.length === 0) continue;
    const reasons = new Set(rows.flatMap(({ reason }) => reason ?? []));
    return { says: [rows[0]?.class, ...reasons].join() };
  }
  return { says: 'gap' };
}

function addedUp({ items, bands }: ScoreRule, read: Read): { readonly says: string } | Needs {
  let total = 0;
  for (const { when, points } of items) {
    const truth = truthOf(when, read);
    if (isNeeds(truth)) return truth;
    if (truth) total += points;
  }
  const found = bandOf(bands, Math.max(0, total), read);
  if (isNeeds(found)) return found;
  return { says: [Math.max(0, total), found?.group, found?.rate?.percent].join() };
}

function bandOf(bands: readonly Band[], total: number, read: Read): Band | Needs | undefined {
  for (const band of bands) {
    if (total < band.from || band.to < total) continue;
    const truth = truthOf(band.when ?? {}, read);
    if (isNeeds(truth)) return truth;
    if (truth) return band;
  }
  return undefined;
}
