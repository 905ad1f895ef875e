const HOUR_MS = 3_600_000;
export const MINUTE_MS = 60_000;
export const DAY_MS = 24 * HOUR_MS;

/**
 * An instant as a unit writes it; the clocks of the invented units are never changed.
 *
 * @param offsetHours whole hours ahead of UTC
 */
export function instantAt(ms: number, offsetHours: number): string {
  const local = new Date(Math.round(ms / 1000) * 1000 + offsetHours * HOUR_MS).toISOString();
  const hours = String(Math.abs(offsetHours)).padStart(2, '0');
  return `${local.slice(0, 19)}${offsetHours < 0 ? '-' : '+'}${hours}:00`;
}

/** The calendar day of a unit. */
export const dayAt = (ms: number, offsetHours: number): string =>
  instantAt(ms, offsetHours).slice(0, 10);

/** The first moment of a day of a unit, in ms of UTC. */
export const startOfDay = (on: string, offsetHours: number): number =>
  Date.parse(`${on}T00:00:00Z`) - offsetHours * HOUR_MS;
