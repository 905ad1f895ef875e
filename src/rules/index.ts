export { type Answer, answer, type Because } from './answer.js';
export { askClass, askScore, type ClassAnswer, type ScoreAnswer } from './ask.js';
export {
  type Border,
  bordersOf,
  type Condition,
  type ConditionOn,
  type Test,
  truthOf,
  type Value,
} from './condition.js';
export type { Decided, Decision, Open } from './decide.js';
export { describeAsking, describeCondition, describeValues, labelOf } from './describe.js';
export type { Field, Fields, FieldsOf } from './field.js';
export { fingerprint } from './fingerprint.js';
export type { Item, ItemsOf, Total } from './points.js';
export type { Told } from './question.js';
export { type Contradiction, type ContradictionsOf, readTold } from './read-told.js';
export {
  type Band,
  type ClassRule,
  classRule,
  type Figure,
  type QuantityRule,
  type Rate,
  type Remark,
  type Rule,
  type ScoreRule,
  scoreRule,
} from './rule.js';
export type { Row, Table, TableOf } from './table.js';
export { numberTold, textTold } from './told-values.js';
