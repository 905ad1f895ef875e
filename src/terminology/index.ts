export {
  type CodeRef,
  type ConceptKey,
  type LocalCode,
  type LocalRef,
  type LocalSet,
  localRef,
} from './code-ref.js';
export { codeableConcept, localCoding } from './codeable-concept.js';
export { adverseEventCode, COMPLICATIONS } from './complications.js';
export {
  CURABILITY_CLASSES,
  CURABILITY_GROUPS,
  CURABILITY_REASONS,
  RULES,
  SCORE_GROUPS,
} from './curability.js';
export { ITEMS, type ItemKey } from './items.js';
export {
  ANSWERS,
  COMPUTATIONS,
  INJECTED_MIXTURE,
  REPORT_KINDS,
  REPORT_STANDING,
  REQUEST_KINDS,
  SPECIMEN_PROCESSING,
  SPECIMEN_TYPE,
  STRICTURE_FLAGS,
  TEAM_FUNCTIONS,
} from './kinds.js';
export { lesionByHistology, lesionCondition } from './lesion-condition.js';
export type { Licences } from './licences.js';
export {
  DILATATION_OF,
  ESD_PROCEDURE,
  ESD_RECTUM_BY_COLONOSCOPE,
  HYBRID_ESD,
  LATER_PROCEDURES,
} from './procedures.js';
export { STRUCTURE } from './structure.js';
export { BASE, localSystem } from './systems.js';
export { UNITS, type Unit } from './units.js';
export { SUBSTANCES, WORD_CODES } from './words/index.js';
