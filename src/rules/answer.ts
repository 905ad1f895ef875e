import { type Checked, type Citation, passed } from '../kernel/index.js';
import { askClass, askScore, type ClassAnswer, type ScoreAnswer } from './ask.js';
import type { Decided } from './decide.js';
import { missingFields, type Told } from './question.js';
import { readTold } from './read-told.js';
import type { ClassRule, Figure, QuantityRule, Rate, Remark, Rule, ScoreRule } from './rule.js';

/** The answer of a rule to a question of bare fields; the same for every kind of rule. */
export interface Answer {
  readonly rule: string;
  readonly version: number;
  /** For whom the rule was made. */
  readonly population: string;
  /** The short answer: parts between semicolons, without a blank. */
  readonly answer: string;
  readonly reasons: readonly Because[];
  /** Fields without which there is no answer, as the document names them. */
  readonly missing: readonly string[];
  readonly rate?: Rate;
  readonly figures?: readonly Figure[];
  readonly remarks: readonly Remark[];
}

/** A row or item that led to the answer. */
export interface Because {
  /** Name of the row or item. */
  readonly row: string;
  readonly reason?: string;
  readonly points?: number;
  readonly says: string;
  readonly cites: readonly Citation[];
}

/**
 * Answers a question of bare fields.
 *
 * @param document the fields as they came from outside
 * @returns the answer, or every problem of the document at once
 */
export function answer(rule: Rule, document: unknown): Checked<Answer> {
  const flat = rule.unfold === undefined ? passed(document) : rule.unfold(document);
  if (!flat.ok) return flat;
  const told = readTold(rule.fields, rule.contradictions, flat.value);
  return told.ok ? answerTold(rule, told.value) : told;
}

function answerTold(rule: Rule, told: Told): Checked<Answer> {
  switch (rule.kind) {
    case 'rule-set':
    case 'classification':
    case 'follow-up':
      return passed(fromClass(rule, told, askClass(rule, told)));
    case 'score':
      return passed(fromScore(rule, askScore(rule, told)));
    case 'quantity':
      return fromQuantity(rule, told);
  }
}

function fromClass(rule: ClassRule, told: Told, { decision, remarks }: ClassAnswer): Answer {
  const head = { ...headOf(rule), remarks };
  if (decision.kind === 'indeterminate') return { ...head, ...open(rule, decision.missing) };
  const text = rule.inWords?.(decision.class, told) ?? named(rule, decision);
  if (typeof text !== 'string') return { ...head, ...open(rule, text.missing) };
  return {
    ...head,
    answer: text,
    reasons: decision.rows.map(({ row, reason, says, cites }) => ({
      row,
      ...(reason === undefined ? {} : { reason }),
      says,
      cites,
    })),
    missing: [],
  };
}

function named({ reasonsShown }: ClassRule, { class: decided, reasons }: Decided): string {
  const shown = reasonsShown.includes(decided) ? reasons.join(',') : '';
  return shown === '' ? decided : `${decided};${shown}`;
}

function fromScore(rule: ScoreRule, { total, band, remarks }: ScoreAnswer): Answer {
  const head = { ...headOf(rule), remarks };
  if (total.kind === 'indeterminate') {
    const { lowest, highest, missing } = total;
    const { answer: text, ...rest } = open(rule, missing);
    return { ...head, ...rest, answer: `${text};range=${lowest}-${highest}` };
  }
  const { group, rate, figures } = band ?? {};
  const parts = [total.total, group, rate?.percent].filter((part) => part !== undefined);
  return {
    ...head,
    answer: parts.join(';'),
    reasons: total.counted.map(({ item, points, says, cites }) => ({
      row: item,
      points,
      says,
      cites,
    })),
    missing: [],
    ...(rate === undefined ? {} : { rate }),
    ...(figures === undefined ? {} : { figures }),
  };
}

function fromQuantity(rule: QuantityRule, told: Told): Checked<Answer> {
  const head = { ...headOf(rule), remarks: [] };
  const missing = missingFields({ fields: rule.fields, told, samples: {} });
  if (missing.length > 0) return passed({ ...head, ...open(rule, missing) });
  const computed = rule.compute(told);
  if (!computed.ok) return computed;
  const because = { row: rule.id, says: rule.formula, cites: rule.cites };
  return passed({ ...head, answer: computed.value, reasons: [because], missing });
}

const headOf = ({ id, version, population }: Rule) => ({ rule: id, version, population });

function open(rule: Rule, missing: readonly string[]) {
  const names = [...new Set(missing.map((field) => rule.nameOf?.(field) ?? field))];
  return { answer: `indeterminate;missing=${names.join(',')}`, reasons: [], missing: names };
}
