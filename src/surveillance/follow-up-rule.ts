import { passed } from '../kernel/index.js';
import {
  type ClassRule,
  type ConditionOn,
  classRule,
  type Row,
  type Told,
} from '../rules/index.js';
import { FOLLOW_UPS, type FollowUpRow } from './follow-ups.table.js';
import { inDates } from './schedule.js';

type Spec = Pick<
  ClassRule<FollowUpRow>,
  'id' | 'version' | 'title' | 'population' | 'cites' | 'fields' | 'table' | 'unfold'
> & {
  /** The field that holds the date to count from; at a later examination another one. */
  readonly anchor: string;
  readonly laterAnchor?: string;
  /** Ends an answer with dates, as a stop rule does. */
  readonly ending?: (told: Told) => string;
};

/**
 * A rule that finds the row of the follow-up table and says its dates.
 *
 * Source: the rows that it chooses from.
 */
export function followUpRule(spec: Spec): ClassRule<FollowUpRow> {
  const { anchor, laterAnchor = anchor, ending, ...rule } = spec;
  return classRule<FollowUpRow>({
    ...rule,
    kind: 'follow-up',
    contradictions: [],
    reasonsShown: [],
    remarks: [],
    inWords: (row, told) => {
      const field = told['stage'] === 'later' ? laterAnchor : anchor;
      const anchorOn = told[field];
      const dates = inDates(
        FOLLOW_UPS[row].schedule,
        typeof anchorOn === 'string' ? anchorOn : undefined,
      );
      if (dates === undefined) return { missing: [field] };
      return dates.startsWith('min=') ? `${dates}${ending?.(told) ?? ''}` : dates;
    },
  });
}

/**
 * A row of a rule set that leads to a row of the follow-up table, with its sources.
 *
 * Source: those of the follow-up row.
 */
export function leadsTo<Q>(
  follow: FollowUpRow,
  row: string,
  says: string,
  when: ConditionOn<Q>,
): Row<FollowUpRow, ConditionOn<Q>> {
  return { row, when, class: follow, says, cites: FOLLOW_UPS[follow].cites };
}

/**
 * Reads `null` of a field as a word: that something is not back yet is an answer here.
 *
 * Source: how the questions are written.
 */
export function nullAs(field: string, word: string): NonNullable<Spec['unfold']> {
  return (document) =>
    passed(
      isRecord(document) && document[field] === null ? { ...document, [field]: word } : document,
    );
}

/**
 * Tells a question at a later examination by a field that only such a question has.
 *
 * Source: how the questions are written.
 */
export function laterBy(field: string): NonNullable<Spec['unfold']> {
  return (document) =>
    passed(
      isRecord(document) && !('stage' in document) && field in document
        ? { ...document, stage: 'later' }
        : document,
    );
}

const isRecord = (document: unknown): document is Readonly<Record<string, unknown>> =>
  typeof document === 'object' && document !== null && !Array.isArray(document);
