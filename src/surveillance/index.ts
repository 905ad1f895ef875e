export { FOLLOW_UP_RULES } from './follow-up-rules.js';
