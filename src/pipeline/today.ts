import { inTimeZone } from '../kernel/index.js';
import type { PipelineSettings } from './settings.js';

/** What knowing the day needs. */
export interface DayDeps {
  /** The present, UTC instant. */
  readonly now: () => string;
  readonly settings: Pick<PipelineSettings, 'unit'>;
}

/** @returns the day at the unit, YYYY-MM-DD */
export const todayAt = ({ now, settings }: DayDeps): string =>
  inTimeZone(now(), settings.unit.timeZone).slice(0, 'YYYY-MM-DD'.length);
