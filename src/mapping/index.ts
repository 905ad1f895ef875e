export { toBundle } from './bundle.js';
export { type MappingSettings, SENT_TYPES } from './context.js';
