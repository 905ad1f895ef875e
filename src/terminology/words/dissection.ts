import type {
  APPROACHES,
  BLEEDING_INTENSITIES,
  CLIP_PHASES,
  CLIP_PURPOSES,
  CLOSURE_EXTENTS,
  CLOSURES,
  FAT_AMOUNTS,
  FIBROSIS_GRADES,
  GRAVITY_SIDES,
  HAEMOSTASIS_MEANS,
  INCIDENTS,
  INCISION_SIDES,
  INCISION_STRATEGIES,
  LIFTINGS,
  MUSCLE_INJURIES,
  PLANES,
  POSITIONS,
  STRICTURE_DRUGS,
  STRICTURE_MEASURES,
  TRACTIONS,
  VESSEL_SITES,
} from '../../contract/index.js';
import { type CodeRef, setRefs } from '../code-ref.js';

/** How the dissection went, and what kept it safe. */
export const DISSECTION_WORDS = {
  position: setRefs('patient-position') satisfies Record<(typeof POSITIONS)[number], CodeRef>,
  gravitySide: setRefs('gravity-side') satisfies Record<(typeof GRAVITY_SIDES)[number], CodeRef>,
  lifting: setRefs('lifting-sign') satisfies Record<(typeof LIFTINGS)[number], CodeRef>,
  fibrosis: setRefs('fibrosis-grade') satisfies Record<(typeof FIBROSIS_GRADES)[number], CodeRef>,
  fat: setRefs('fat-amount') satisfies Record<(typeof FAT_AMOUNTS)[number], CodeRef>,
  incisionStrategy: setRefs('incision-strategy') satisfies Record<
    (typeof INCISION_STRATEGIES)[number],
    CodeRef
  >,
  incisionSide: setRefs('incision-side') satisfies Record<(typeof INCISION_SIDES)[number], CodeRef>,
  approach: setRefs('approach') satisfies Record<(typeof APPROACHES)[number], CodeRef>,
  traction: setRefs('traction-method') satisfies Record<(typeof TRACTIONS)[number], CodeRef>,
  plane: setRefs('dissection-plane') satisfies Record<(typeof PLANES)[number], CodeRef>,
  incident: setRefs('incident') satisfies Record<(typeof INCIDENTS)[number], CodeRef>,
  bleeding: setRefs('bleeding-intensity') satisfies Record<
    (typeof BLEEDING_INTENSITIES)[number],
    CodeRef
  >,
  vesselSite: setRefs('vessel-site') satisfies Record<(typeof VESSEL_SITES)[number], CodeRef>,
  haemostasisMeans: setRefs('haemostasis-means') satisfies Record<
    (typeof HAEMOSTASIS_MEANS)[number],
    CodeRef
  >,
  clipPhase: setRefs('clip-phase') satisfies Record<(typeof CLIP_PHASES)[number], CodeRef>,
  clipPurpose: setRefs('clip-purpose') satisfies Record<(typeof CLIP_PURPOSES)[number], CodeRef>,
  muscleInjury: setRefs('muscle-injury') satisfies Record<
    (typeof MUSCLE_INJURIES)[number],
    CodeRef
  >,
  closure: setRefs('defect-closure') satisfies Record<(typeof CLOSURES)[number], CodeRef>,
  closureExtent: setRefs('closure-extent') satisfies Record<
    (typeof CLOSURE_EXTENTS)[number],
    CodeRef
  >,
  stricturePrevention: setRefs('stricture-prevention') satisfies Record<
    (typeof STRICTURE_MEASURES)[number],
    CodeRef
  >,
  strictureDrug: setRefs('stricture-drug') satisfies Record<
    (typeof STRICTURE_DRUGS)[number],
    CodeRef
  >,
} as const;
