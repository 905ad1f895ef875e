import type { CodeableConcept, Coding } from 'fhir/r4.js';
import {
  type CodeRef,
  type ConceptKey,
  type LocalCode,
  type LocalSet,
  localDisplay,
} from './code-ref.js';
import { CONCEPTS } from './concepts.table.js';
import { type Licence, type Licences, mayBeSent } from './licences.js';
import { localSystem } from './systems.js';

interface ConceptCoding {
  readonly system: string;
  readonly code: string;
  readonly display: string;
  readonly licence: Licence;
}

const ROWS: Readonly<Record<ConceptKey, readonly ConceptCoding[]>> = CONCEPTS;

/**
 * Says a concept in FHIR: codes of others first, then our own. For the dissection itself ours
 * comes first, because what others have is broader or absent.
 *
 * Codes that need a licence are left out where the site has none; then wider freely licensed
 * codes of the same system step in. The text is always there.
 */
export function codeableConcept(ref: CodeRef, licences: Licences): CodeableConcept {
  const exact = ref.open.flatMap((key) => codingsOf(key, licences));
  const wider = (ref.broader ?? [])
    .flatMap((key) => codingsOf(key, licences))
    .filter(({ system }) => exact.every((coding) => coding.system !== system));
  const own = ref.local === undefined ? [] : [codingOf(ref.local.set, ref.local.code)];
  const coding =
    ref.local?.set === 'esd-procedure'
      ? [...own, ...exact, ...wider]
      : [...exact, ...wider, ...own];
  return { ...(coding.length > 0 ? { coding } : {}), text: ref.text };
}

/** A code of our own as a Coding, for elements that take no CodeableConcept. */
export function localCoding<Set extends LocalSet>(set: Set, code: LocalCode<Set>): Coding {
  return codingOf(set, code);
}

/** The codings of a concept that the site may send, in the order of the table. */
export function codingsOf(key: ConceptKey, licences: Licences): readonly Coding[] {
  return ROWS[key]
    .filter(({ licence }) => mayBeSent(licence, licences))
    .map(({ system, code, display }) => ({ system, code, display }));
}

function codingOf(set: LocalSet, code: string): Coding {
  return { system: localSystem(set), code, display: localDisplay(set, code) };
}
