export type { CalendarEvent, EventStatus } from './event.js';
export { writeCalendar } from './write-calendar.js';
