import { readJson } from '../contract/index.js';
import type { Problem } from '../kernel/index.js';
import { answer, type Remark, type Rule } from '../rules/index.js';

/** What a question or a list of them got, as JSON data. */
export interface Asked {
  readonly document: unknown;
  /** Whether one of the questions was refused. */
  readonly refused: boolean;
}

interface Refused {
  readonly errors: readonly Problem[];
}

/**
 * Answers questions of bare fields. A list gives a list: each question is answered or refused for
 * itself, in its place.
 */
export function askRule(rule: Rule, bytes: Uint8Array, caution: string): Asked {
  const read = readJson(bytes);
  if (!read.ok) return { document: { errors: read.problems }, refused: true };
  const { value, faults } = read.value;
  if (!Array.isArray(value)) return one(rule, value, faults, caution);
  const asked = value.map((each: unknown, i) => one(rule, each, faultsAt(i, faults), caution));
  return {
    document: asked.map(({ document }) => document),
    refused: asked.some(({ refused }) => refused),
  };
}

function one(rule: Rule, fields: unknown, faults: readonly Problem[], caution: string): Asked {
  if (faults.length > 0) return refusal(faults);
  const answered = answer(rule, fields);
  if (!answered.ok) return refusal(answered.problems);
  const { answer: text, remarks, ...rest } = answered.value;
  const document = { answer: text, ...rest, remarks: remarks.map(toShown), caution };
  return { document, refused: false };
}

const refusal = (problems: readonly Problem[]): Asked => {
  const document: Refused = { errors: problems };
  return { document, refused: true };
};

const toShown = ({ remark, says, cites }: Remark) => ({ remark, says, cites });

/** Faults within an element of the list, seen from that element. */
function faultsAt(index: number, faults: readonly Problem[]): readonly Problem[] {
  const place = `/${index}`;
  return faults
    .filter(({ pointer }) => pointer === place || pointer.startsWith(`${place}/`))
    .map((fault) => ({ ...fault, pointer: fault.pointer.slice(place.length) }));
}
