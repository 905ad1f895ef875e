import type {
  CHROMOENDOSCOPIES,
  IMAGE_SUBJECTS,
  IPCL_TYPES,
  JNET_TYPES,
  KUDO_TYPES,
  LST_TYPES,
  NICE_TYPES,
  PARIS_TYPES,
  PATTERNS,
  PREDICTED_DEPTHS,
  Tumour,
} from '../../contract/index.js';
import { type CodeRef, setRefs } from '../code-ref.js';

const adjunct = setRefs('esd-adjunct');

/** What is seen of the lesion. The classifications have no open code, so ours stand alone. */
export const LESION_WORDS = {
  tumour: setRefs('tumour-kind') satisfies Record<Tumour, CodeRef>,
  paris: setRefs('paris') satisfies Record<(typeof PARIS_TYPES)[number], CodeRef>,
  lstType: setRefs('lst-type') satisfies Record<(typeof LST_TYPES)[number], CodeRef>,
  jnet: setRefs('jnet') satisfies Record<(typeof JNET_TYPES)[number], CodeRef>,
  kudo: setRefs('kudo') satisfies Record<(typeof KUDO_TYPES)[number], CodeRef>,
  nice: setRefs('nice') satisfies Record<(typeof NICE_TYPES)[number], CodeRef>,
  ipcl: setRefs('jes-ipcl') satisfies Record<(typeof IPCL_TYPES)[number], CodeRef>,
  pattern: setRefs('mucosal-pattern') satisfies Record<(typeof PATTERNS)[number], CodeRef>,
  predictedDepth: setRefs('predicted-depth') satisfies Record<
    (typeof PREDICTED_DEPTHS)[number],
    CodeRef
  >,
  chromoendoscopy: {
    iodine: adjunct['chromoendoscopy-iodine'],
    'indigo-carmine': adjunct['chromoendoscopy-indigo-carmine'],
    'acetic-acid': adjunct['chromoendoscopy-acetic-acid'],
    'crystal-violet': adjunct['chromoendoscopy-crystal-violet'],
    'image-enhanced': adjunct['image-enhanced-endoscopy'],
  } satisfies Record<(typeof CHROMOENDOSCOPIES)[number], CodeRef>,
  imageSubject: setRefs('image-subject') satisfies Record<(typeof IMAGE_SUBJECTS)[number], CodeRef>,
} as const;
