import type {
  ACCESSORIES,
  CAPS,
  DYES,
  ELECTRODE_MODES,
  ELECTRODE_PURPOSES,
  ENDOSCOPES,
  FLUIDS,
  GASES,
  INJECTION_ROUTES,
  KNIVES,
} from '../../contract/index.js';
import { type CodeRef, setRefs } from '../code-ref.js';

/** Generic kinds of instruments, never a product. */
const devices = setRefs('device-type', {
  gastroscope: { broader: ['device-endoscope'] },
  colonoscope: { broader: ['device-endoscope'] },
  'injection-needle': { broader: ['device-needle'] },
});

/** What is injected or sprayed. */
export const SUBSTANCES = setRefs('injectate', {
  saline: { open: ['substance-saline'] },
  adrenaline: { open: ['substance-epinephrine'] },
  lugol: { broader: ['substance-iodine'] },
});

export const EQUIPMENT_WORDS = {
  endoscope: {
    gastroscope: devices.gastroscope,
    colonoscope: devices.colonoscope,
  } satisfies Record<(typeof ENDOSCOPES)[number], CodeRef>,
  cap: setRefs('cap-type') satisfies Record<(typeof CAPS)[number], CodeRef>,
  knife: {
    needle: devices['knife-needle-type'],
    'insulated-tip': devices['knife-insulated-tip'],
    'hook-or-triangle': devices['knife-hook-type'],
    scissor: devices['knife-scissor-type'],
  } satisfies Record<(typeof KNIVES)[number], CodeRef>,
  accessory: {
    'haemostatic-forceps': devices['haemostatic-forceps'],
    'injection-needle': devices['injection-needle'],
    snare: devices.snare,
    'clip-applicator': devices['clip-applicator'],
    'traction-device': devices['traction-device'],
  } satisfies Record<(typeof ACCESSORIES)[number], CodeRef>,
  electrodeMode: setRefs('current-mode') satisfies Record<
    (typeof ELECTRODE_MODES)[number],
    CodeRef
  >,
  electrodePurpose: setRefs('current-purpose') satisfies Record<
    (typeof ELECTRODE_PURPOSES)[number],
    CodeRef
  >,
  gas: setRefs('insufflation-gas', {
    'carbon-dioxide': { open: ['substance-carbon-dioxide'] },
  }) satisfies Record<(typeof GASES)[number], CodeRef>,
  fluid: {
    saline: SUBSTANCES.saline,
    glycerol: SUBSTANCES.glycerol,
    hyaluronate: SUBSTANCES.hyaluronate,
    'other-viscous': SUBSTANCES['other-viscous'],
  } satisfies Record<(typeof FLUIDS)[number], CodeRef>,
  dye: setRefs('injection-dye', {
    'indigo-carmine': { open: ['substance-indigo-carmine'] },
    'methylene-blue': { open: ['substance-methylene-blue'] },
  }) satisfies Record<(typeof DYES)[number], CodeRef>,
  injectionRoute: setRefs('injection-route') satisfies Record<
    (typeof INJECTION_ROUTES)[number],
    CodeRef
  >,
} as const;
