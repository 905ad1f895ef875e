export type { CaseFacts } from './case-facts.js';
