export { type CaseFields, caseSchema } from './case/case.js';
export { CROSS_CHECKS } from './case/cross-checks.js';
export {
  type CaseSearchFields,
  parseCaseSearch,
} from './case-search.js';
export {
  parseKeyList,
  ROLES,
  type Role,
  SOURCE_NAME,
  type StoredKey,
  writeKeyList,
} from './key-list.js';
export { type EsdCase, parseCase } from './parse-case.js';
export { CASE_CHECKS, checkAgainstCase } from './pathology/check-against-case.js';
export { PATHOLOGY_CHECKS } from './pathology/cross-checks.js';
export { type PathologyMessage, parsePathology } from './pathology/parse-pathology.js';
export { type PathologyFields, pathologySchema } from './pathology/pathology.js';
export { readJson } from './read-json.js';
export type { Identifier } from './scalars.js';
export {
  DEFAULT_UNIT_SETTINGS,
  parseUnitSettings,
  type UnitSettings,
  unitSettingsSchema,
} from './unit-settings.js';
export { isUnreadable } from './unreadable.js';
export * from './words.table.js';
