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
export { type PathologyMessage, parsePathology } from './pathology/parse-pathology.js';
export { type PathologyFields, pathologySchema } from './pathology/pathology.js';
export type { Identifier } from './scalars.js';
export {
  DEFAULT_UNIT_SETTINGS,
  parseUnitSettings,
  type UnitSettings,
  unitSettingsSchema,
} from './unit-settings.js';
export { isUnreadable } from './unreadable.js';
export * from './words.table.js';
