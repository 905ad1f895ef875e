export type { DeliveryState } from './delivery-state.js';
export type * from './ports.js';
