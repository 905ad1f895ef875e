import type { CodeableConcept, Observation, ObservationComponent } from 'fhir/r4.js';
import { invariant } from '../kernel/index.js';
import {
  ANSWERS,
  type CodeRef,
  ITEMS,
  localRef,
  STRUCTURE,
  WORD_CODES,
} from '../terminology/index.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import {
  FINDINGS,
  type FindingRow,
  type PartRow,
  type ValueRow,
  type WordList,
} from './findings.table.js';
import { coded, type ObservationContent, specimenReference, toObservation } from './observation.js';
import { asAnswer, asList, asNumber, asText, measured, valueAt } from './values.js';

/** The fields of the case that become an Observation by the table. */
export function toFindings(context: MappingContext): readonly Draft<Observation>[] {
  const specimen = specimenReference(context);
  const started = context.fields.resection.outcome !== 'not-started';
  return FINDINGS.flatMap((row) => {
    const content = contentOf(context, row) ?? absentContent(row, started);
    if (content === undefined) return [];
    const { item, about, category } = row;
    return [
      toObservation(context, {
        item,
        about,
        category,
        content,
        ...(row.onSpecimen && specimen !== undefined ? { specimen } : {}),
      }),
    ];
  });
}

function absentContent(row: FindingRow, started: boolean): ObservationContent | undefined {
  return row.counted && started ? { dataAbsentReason: STRUCTURE.absent.unknown } : undefined;
}

function contentOf(context: MappingContext, row: FindingRow): ObservationContent | undefined {
  if ('list' in row) return listContent(context, row.list);
  const value = 'value' in row ? singleValue(context, row.value) : undefined;
  const component = (row.parts ?? []).flatMap((part) => componentsOf(context, part));
  if (value === undefined && component.length === 0) return undefined;
  return { ...value, ...(component.length > 0 ? { component } : {}) };
}

/** A list that was told: each word answered yes, or, when it is empty, no to all. */
function listContent(
  context: MappingContext,
  { at, words }: { readonly at: string; readonly words: WordList },
): ObservationContent | undefined {
  const sent = valueAt(context.fields, at);
  if (sent === undefined) return undefined;
  const list = asList(sent).map(asText);
  if (list.length === 0) return { valueCodeableConcept: context.concept(ANSWERS.no) };
  return {
    component: list.map((word) =>
      coded(context.concept(wordCode(words, word)), context.concept(ANSWERS.yes)),
    ),
  };
}

function componentsOf(context: MappingContext, part: PartRow): readonly ObservationComponent[] {
  const code = partCode(context, part.code);
  if (part.kind !== 'each') {
    const value = singleValue(context, part);
    return value === undefined ? [] : [{ code, ...value }];
  }
  const sent = valueAt(context.fields, part.at);
  if (sent === undefined) return [];
  return asList(sent).map((word) =>
    coded(code, context.concept(wordCode(part.words, asText(word)))),
  );
}

type OneValue = Pick<
  ObservationComponent,
  'valueCodeableConcept' | 'valueQuantity' | 'valueDateTime'
>;

function singleValue(context: MappingContext, row: ValueRow): OneValue | undefined {
  const sent = valueAt(context.fields, row.at);
  if (sent === undefined) return undefined;
  switch (row.kind) {
    case 'coded':
      return { valueCodeableConcept: context.concept(wordCode(row.words, asText(sent))) };
    case 'answer':
      return { valueCodeableConcept: context.concept(ANSWERS[asAnswer(sent)]) };
    case 'measured':
      return { valueQuantity: measured(context, row.at, asNumber(sent), row.unit) };
    case 'time':
      return { valueDateTime: asText(sent) };
  }
}

function partCode(context: MappingContext, code: PartRow['code']): CodeableConcept {
  return context.concept(typeof code === 'string' ? ITEMS[code] : localRef(code));
}

/** The code of a word of a list. */
function wordCode(words: WordList, word: string): CodeRef {
  const codes: Readonly<Record<string, CodeRef>> = WORD_CODES[words];
  const code = codes[word];
  invariant(code !== undefined, `every word of ${words} has a code`);
  return code;
}
