export { toBundle } from './bundle.js';
export type { MappingSettings } from './context.js';
