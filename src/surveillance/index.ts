export { FOLLOW_UP_RULES } from './follow-up-rules.js';
export { bookingFits } from './plan/booking-checks.js';
export { type KnownForPlan, planFacts } from './plan/facts-of-record.js';
export { firstLookWeeks } from './plan/first-look.js';
export type {
  Booking,
  DoneBy,
  FollowUpPlan,
  ItemState,
  Overlap,
  PlanItem,
  PlanNote,
  PlanReason,
  PlanTask,
  Window,
} from './plan/follow-up-plan.js';
export type { PlanFacts } from './plan/plan-facts.js';
export { planFollowUp } from './plan/plan-follow-up.js';
export { daysFor } from './plan/room.js';
export { type Visit, type VisitItem, type VisitUrgency, visitsOf } from './visits.js';
