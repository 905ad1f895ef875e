import { determined, type Finding, indeterminate, minutesBetween } from '../kernel/index.js';
import { cite } from '../references/index.js';

/** What the formula of the speed rests on. */
export const SPEED = cite(
  'esdPractice',
  'area over the time from first mucosal incision to specimen free',
  'recalled',
);
const DURATION = cite('esdPractice', 'difference of two instants', 'derived');
const MINUTES_PER_HOUR = 60;

/** Instants with offset; see the case message. */
export interface ProcedureTimes {
  readonly scopeInAt: string;
  readonly firstIncisionAt?: string | undefined;
  readonly dissectionEndAt?: string | undefined;
  readonly scopeOutAt: string;
}

/**
 * Minutes from scope in to scope out, by instant.
 *
 * Source: arithmetic.
 * Indeterminate: never, both times are required.
 */
export function procedureMin(times: ProcedureTimes): Finding<number> {
  return determined(minutesBetween(times.scopeInAt, times.scopeOutAt), [DURATION]);
}

/**
 * Minutes from first mucosal incision to specimen free, by instant. Some works count from the
 * first injection instead; this one does not.
 *
 * Source: esdPractice (from memory).
 * Indeterminate: when either time is absent.
 */
export function dissectionMin(times: ProcedureTimes): Finding<number> {
  const { firstIncisionAt, dissectionEndAt } = times;
  if (firstIncisionAt === undefined || dissectionEndAt === undefined) {
    return indeterminate([
      ...(firstIncisionAt === undefined ? ['times.firstIncisionAt'] : []),
      ...(dissectionEndAt === undefined ? ['times.dissectionEndAt'] : []),
    ]);
  }
  return determined(minutesBetween(firstIncisionAt, dissectionEndAt), [DURATION]);
}

/**
 * Dissection speed in cm2/h: specimen area over dissection time.
 *
 * Source: esdPractice (from memory); cm2/h = mm2/min x 0.6 by arithmetic.
 * Indeterminate: when area or time is.
 */
export function speedCm2PerH(area: Finding<number>, minutes: Finding<number>): Finding<number> {
  if (area.kind === 'determined' && minutes.kind === 'determined') {
    return determined((area.value * MINUTES_PER_HOUR) / minutes.value, [...area.cites, SPEED]);
  }
  return indeterminate(
    [area, minutes].flatMap((finding) => (finding.kind === 'indeterminate' ? finding.missing : [])),
  );
}
