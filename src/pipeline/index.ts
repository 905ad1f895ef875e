export { SENT_TYPES } from '../mapping/index.js';
export { checkCase } from './check-case.js';
export { createService } from './create-service.js';
export type { DeliveryState } from './delivery-state.js';
export { siteMarkOf } from './naming.js';
export type * from './ports.js';
export { prepareStored } from './prepare.js';
export type * from './service.js';
export type { PipelineSettings } from './settings.js';
