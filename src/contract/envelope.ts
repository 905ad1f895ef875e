import { z } from 'zod';
import { wholeIn } from './scalars.js';

/** The sending system, as every message names it. */
export const source = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/)
  .meta({ title: '1 to 40 lower-case letters, digits and hyphens' })
  .describe('the sending system; must be the one the API key belongs to');

/** Counts what was sent under one natural key; a higher one replaces what lower ones said. */
export const revision = wholeIn({ from: 1, to: 1_000_000 });
