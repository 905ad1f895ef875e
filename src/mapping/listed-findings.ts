import type { Observation, ObservationComponent } from 'fhir/r4.js';
import { ANSWERS, type CodeRef, ITEMS, WORD_CODES } from '../terminology/index.js';
import type { MappingContext } from './context.js';
import type { Draft } from './draft.js';
import { coded, type ObservationParts, toObservation } from './observation.js';
import { measured } from './values.js';

/** Findings that are lists of records, and so more than one row of a table. */
export function toListedFindings(context: MappingContext): readonly Draft<Observation>[] {
  return [
    ...earlierTreatment(context),
    ...dissectionProgress(context),
    ...incidents(context),
    ...clips(context, 'during', 'clips-during'),
    ...clips(context, 'end', 'clips-at-end'),
    ...stricturePrevention(context),
  ];
}

type Listed = readonly Draft<Observation>[];

/** A told list: its components, or the answer no where it is empty. */
function listed(
  context: MappingContext,
  parts: Omit<ObservationParts, 'content'>,
  component: readonly ObservationComponent[] | undefined,
): Listed {
  if (component === undefined) return [];
  return [
    toObservation(context, {
      ...parts,
      content:
        component.length === 0
          ? { valueCodeableConcept: context.concept(ANSWERS.no) }
          : { component: [...component] },
    }),
  ];
}

/** A component that says when, or, where that is not told, that it was so. */
function timed(
  context: MappingContext,
  code: CodeRef,
  at: string | undefined,
): ObservationComponent {
  return at === undefined
    ? coded(context.concept(code), context.concept(ANSWERS.yes))
    : { code: context.concept(code), valueDateTime: at };
}

function earlierTreatment(context: MappingContext): Listed {
  return listed(
    context,
    { item: 'earlier-treatment', about: 'lesion', category: 'procedure' },
    context.fields.before?.earlierAttempts?.map(({ kind, on }) =>
      timed(context, WORD_CODES.earlierAttempt[kind], on),
    ),
  );
}

function incidents(context: MappingContext): Listed {
  return listed(
    context,
    { item: 'incidents', about: 'session', category: 'procedure' },
    context.fields.dissection?.incidents?.map(({ kind, at }) =>
      timed(context, WORD_CODES.incident[kind], at),
    ),
  );
}

function dissectionProgress(context: MappingContext): Listed {
  return listed(
    context,
    { item: 'dissection-progress', about: 'lesion', category: 'procedure' },
    context.fields.dissection?.pauses?.flatMap(({ leftPercent, rightPercent }, i) => [
      {
        code: context.concept(ITEMS['dissected-left']),
        valueQuantity: measured(
          context,
          `/dissection/pauses/${i}/leftPercent`,
          leftPercent,
          'percent',
        ),
      },
      {
        code: context.concept(ITEMS['dissected-right']),
        valueQuantity: measured(
          context,
          `/dissection/pauses/${i}/rightPercent`,
          rightPercent,
          'percent',
        ),
      },
    ]),
  );
}

function clips(
  context: MappingContext,
  phase: 'during' | 'end',
  item: 'clips-during' | 'clips-at-end',
): Listed {
  const placed = (context.fields.safety?.clips ?? []).flatMap((clip, i) =>
    clip.phase === phase
      ? [
          {
            code: context.concept(WORD_CODES.clipPurpose[clip.purpose]),
            valueQuantity: measured(context, `/safety/clips/${i}/count`, clip.count, 'one'),
          },
        ]
      : [],
  );
  if (placed.length === 0) return [];
  return listed(context, { item, about: 'lesion', category: 'procedure' }, placed);
}

function stricturePrevention(context: MappingContext): Listed {
  return listed(
    context,
    { item: 'stricture-prevention', about: 'lesion', category: 'procedure' },
    context.fields.safety?.stricturePrevention?.map(({ measure, at }) =>
      // The time of a drug stands with its dose; a stent has no other place for it.
      timed(context, WORD_CODES.stricturePrevention[measure], measure === 'stent' ? at : undefined),
    ),
  );
}
