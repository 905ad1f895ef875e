export type { CalendarEvent, EventStatus } from './event.js';
export { reviseEvents, type WantedEvent } from './revise-events.js';
export { writeCalendar } from './write-calendar.js';
