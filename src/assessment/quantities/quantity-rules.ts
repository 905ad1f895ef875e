import type { QuantityRule } from '../../rules/index.js';
import { AREA_SPEED } from './area-speed.js';
import { SPEED_UNITS } from './speed-units.js';
import { TUBE_AREA } from './tube-area.js';

/** Areas and speeds that can be asked like any other rule. */
export const QUANTITY_RULES: readonly QuantityRule[] = [AREA_SPEED, TUBE_AREA, SPEED_UNITS];
