export { type Assignment, assignPlaces, type Placed, type Unplaced } from './assign.js';
export type { OpenItem, Route, Session } from './demand.js';
export { type Following, readFollowing } from './following.js';
export {
  type Forecast,
  forecastLoad,
  type MonthLoad,
  type PlannedCheck,
} from './forecast.js';
export { readSessions } from './read-sessions.js';
export type { Shortfall } from './shortfall.js';
export type { Urgency } from './urgency.table.js';
