import type { Citation } from '../../kernel/index.js';
import { askClass, type ClassRule, type Told } from '../../rules/index.js';
import type { FollowUpRow } from '../follow-ups.table.js';
import type { ReasonCode } from './reasons.table.js';

/** A series of examinations by one row of the follow-up table, and why it is that row. */
export interface Track {
  readonly row: FollowUpRow;
  /** Stands in the keys instead of the row. */
  readonly named?: string;
  readonly rule: string;
  readonly version: number;
  readonly says: readonly string[];
  readonly cites: readonly Citation[];
  readonly inputs: Told;
  readonly anchorOn: string;
  /** What neoplasia at the scar or a change of Barrett mucosa turns into another series. */
  readonly turns: boolean;
  /** Whether it follows a piecemeal or local-risk resection. */
  readonly local: boolean;
  readonly state?: 'provisional' | 'to-confirm';
  readonly reasons: readonly ReasonCode[];
}

export interface Ask {
  readonly rule: ClassRule<FollowUpRow>;
  readonly told: Told;
  readonly anchorOn: string;
  readonly local: boolean;
  readonly turns?: boolean;
}

/**
 * Asks a follow-up rule for the row.
 *
 * Source: the rule.
 * Indeterminate: the row for a clinician, who is told what is missing.
 */
export function askTrack({ rule, told, anchorOn, local, turns = true }: Ask): Track {
  const { decision } = askClass(rule, told);
  const inputs = Object.fromEntries(
    Object.entries(told).filter(([, value]) => value !== undefined && value !== null),
  );
  const base = { rule: rule.id, version: rule.version, inputs, anchorOn, local, turns };
  if (decision.kind === 'indeterminate') {
    const missing = `not known: ${decision.missing.join(', ')}`;
    return { ...base, row: 'clinician', says: [missing], cites: [], reasons: ['facts-missing'] };
  }
  const { rows } = decision;
  return {
    ...base,
    row: decision.class,
    says: rows.map(({ says }) => says),
    cites: rows.flatMap(({ cites }) => cites),
    reasons: [],
  };
}

/** Whether the rule has no row for such a lesion. */
export const isSilent = ({ row }: Track): boolean => row === 'clinician';
