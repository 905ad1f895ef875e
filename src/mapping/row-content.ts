import type { CodeableConcept, ObservationComponent } from 'fhir/r4.js';
import { invariant } from '../kernel/index.js';
import { ANSWERS, type CodeRef, ITEMS, localRef, WORD_CODES } from '../terminology/index.js';
import type { MappingContext } from './context.js';
import type { FindingRow, PartRow, ValueRow, WordList } from './finding-row.js';
import { coded, type ObservationContent } from './observation.js';
import { asAnswer, asList, asNumber, asText, measured, valueAt } from './values.js';

/** A message, and how its words are said. */
export interface Told extends Pick<MappingContext, 'concept' | 'decimals'> {
  readonly fields: object;
}

/** @returns undefined where the message tells nothing of the row */
export function contentOf(told: Told, row: FindingRow): ObservationContent | undefined {
  if ('list' in row) return listContent(told, row.list);
  const value = 'value' in row ? singleValue(told, row.value) : undefined;
  const component = (row.parts ?? []).flatMap((part) => componentsOf(told, part));
  if (value === undefined && component.length === 0) return undefined;
  return { ...value, ...(component.length > 0 ? { component } : {}) };
}

/** A list that was told: each word answered yes, or, when it is empty, no to all. */
function listContent(
  told: Told,
  { at, words }: { readonly at: string; readonly words: WordList },
): ObservationContent | undefined {
  const sent = valueAt(told.fields, at);
  if (sent === undefined) return undefined;
  const list = asList(sent).map(asText);
  if (list.length === 0) return { valueCodeableConcept: told.concept(ANSWERS.no) };
  return {
    component: list.map((word) =>
      coded(told.concept(wordCode(words, word)), told.concept(ANSWERS.yes)),
    ),
  };
}

function componentsOf(told: Told, part: PartRow): readonly ObservationComponent[] {
  const code = partCode(told, part.code);
  if (part.kind !== 'each') {
    const value = singleValue(told, part);
    return value === undefined ? [] : [{ code, ...value }];
  }
  const sent = valueAt(told.fields, part.at);
  if (sent === undefined) return [];
  const list = asList(sent);
  if (list.length === 0 && part.noneIsNo) return [coded(code, told.concept(ANSWERS.no))];
  return list.map((word) => coded(code, told.concept(wordCode(part.words, asText(word)))));
}

type OneValue = Pick<
  ObservationComponent,
  'valueCodeableConcept' | 'valueQuantity' | 'valueDateTime'
>;

function singleValue(told: Told, row: ValueRow): OneValue | undefined {
  const sent = valueAt(told.fields, row.at);
  if (sent === undefined) return undefined;
  switch (row.kind) {
    case 'coded':
      return { valueCodeableConcept: told.concept(wordCode(row.words, asText(sent))) };
    case 'answer':
      return { valueCodeableConcept: told.concept(ANSWERS[asAnswer(sent)]) };
    case 'measured':
      return { valueQuantity: measured(told, row.at, asNumber(sent), row.unit) };
    case 'time':
      return { valueDateTime: asText(sent) };
  }
}

function partCode(told: Told, code: PartRow['code']): CodeableConcept {
  return told.concept(typeof code === 'string' ? ITEMS[code] : localRef(code));
}

/** The code of a word of a list. */
function wordCode(words: WordList, word: string): CodeRef {
  const codes: Readonly<Record<string, CodeRef>> = WORD_CODES[words];
  const code = codes[word];
  invariant(code !== undefined, `every word of ${words} has a code`);
  return code;
}
