export type { DeliveryState } from './delivery-state.js';
export type * from './ports.js';
export type * from './service.js';
