import type { Organ } from '../contract/index.js';
import { type CodeRef, type ConceptKey, type LocalCode, localRef } from './code-ref.js';

type ByOrgan<T> = Readonly<Record<Organ, T>>;
type AdverseEvent = LocalCode<'adverse-event'>;

/** A complication by organ: our code, with what others call it there. */
function byOrgan(code: AdverseEvent, open: ByOrgan<readonly ConceptKey[]>): ByOrgan<CodeRef> {
  const ref = (organ: Organ): CodeRef =>
    localRef({ set: 'adverse-event', code }, { open: open[organ] });
  return {
    oesophagus: ref('oesophagus'),
    stomach: ref('stomach'),
    duodenum: ref('duodenum'),
    colon: ref('colon'),
    rectum: ref('rectum'),
  };
}

const everywhere = (...keys: readonly ConceptKey[]): ByOrgan<readonly ConceptKey[]> => ({
  oesophagus: keys,
  stomach: keys,
  duodenum: keys,
  colon: keys,
  rectum: keys,
});

/**
 * Complications by kind and organ. SNOMED CT has no concept for a hole made by an endoscope in
 * stomach or oesophagus among its free ones; T81.2 of ICD-10 says accidental puncture during a
 * procedure, T81.0 bleeding that complicates one. Source: concepts.csv.
 */
export const COMPLICATIONS = {
  perforation: byOrgan('perforation', {
    oesophagus: ['finding-perforation-gi', 'dx-t81-2'],
    stomach: ['finding-perforation-gi', 'dx-t81-2'],
    duodenum: ['finding-perforation-intestine', 'dx-t81-2'],
    colon: ['finding-perforation-intestine', 'dx-t81-2'],
    rectum: ['finding-perforation-intestine', 'dx-t81-2'],
  }),
  bleeding: byOrgan('intraprocedural-bleeding', {
    oesophagus: ['finding-oesophageal-bleeding', 'dx-t81-0'],
    stomach: ['finding-gastric-haemorrhage', 'dx-t81-0'],
    duodenum: ['finding-duodenal-haemorrhage', 'dx-t81-0'],
    colon: ['finding-colonic-haemorrhage', 'dx-t81-0'],
    rectum: ['finding-rectal-haemorrhage', 'dx-t81-0'],
  }),
  muscleInjury: byOrgan('muscle-layer-injury', everywhere()),
} as const;
