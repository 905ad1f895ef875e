import type { CaseFields } from '../../contract/index.js';

type Fluid = NonNullable<NonNullable<CaseFields['injection']>['fluids']>[number];

/** Fluids too thick for the narrow channel of a knife: common practice, no source. */
export const VISCOUS_FLUIDS: readonly Fluid[] = ['hyaluronate', 'other-viscous'];
