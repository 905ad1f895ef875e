import type {
  ACID_SUPPRESSIONS,
  CONVERSIONS,
  DESTINATIONS,
  DIETS,
  FIXATIVES,
  INFORMED,
  NOT_COMPLETED_REASONS,
  ResectionOutcome,
  TECHNIQUES,
} from '../../contract/index.js';
import { type CodeRef, localRef, setRefs } from '../code-ref.js';

const integrity = setRefs('resection-integrity');

/** How the dissection ended, and what followed. */
export const RESULT_WORDS = {
  /** Abandoned and not started both leave the lesion in place; the text tells them apart. */
  resectionOutcome: {
    'en-bloc': integrity['en-bloc'],
    piecemeal: integrity.piecemeal,
    abandoned: { ...integrity['not-resected'], text: 'Begun and abandoned, lesion left in place' },
    'not-started': { ...integrity['not-resected'], text: 'Not started, lesion left in place' },
  } satisfies Record<ResectionOutcome, CodeRef>,
  technique: {
    esd: localRef({ set: 'esd-procedure', code: 'esd' }),
    'hybrid-esd': localRef({ set: 'esd-procedure', code: 'esd-hybrid' }),
  } satisfies Record<(typeof TECHNIQUES)[number], CodeRef>,
  conversion: {
    'snare-resection': localRef(
      { set: 'esd-adjunct', code: 'conversion-to-snare-resection' },
      { open: ['procedure-snare-resection-endoscopic'] },
    ),
    surgery: localRef({ set: 'esd-adjunct', code: 'conversion-to-surgery' }),
  } satisfies Record<(typeof CONVERSIONS)[number], CodeRef>,
  notCompletedReason: setRefs('not-completed-reason') satisfies Record<
    (typeof NOT_COMPLETED_REASONS)[number],
    CodeRef
  >,
  fixative: setRefs('fixative', {
    'formalin-10-percent-buffered': { open: ['specimen-fixative-nbf', 'specimen-additive-bf10'] },
  }) satisfies Record<(typeof FIXATIVES)[number], CodeRef>,
  destination: setRefs('destination') satisfies Record<(typeof DESTINATIONS)[number], CodeRef>,
  acidSuppression: setRefs('acid-suppression') satisfies Record<
    (typeof ACID_SUPPRESSIONS)[number],
    CodeRef
  >,
  informed: setRefs('informed-person') satisfies Record<(typeof INFORMED)[number], CodeRef>,
  diet: setRefs('diet') satisfies Record<(typeof DIETS)[number], CodeRef>,
} as const;
