import type { FieldsOf } from '../../rules/index.js';
import { type CurabilityQuestion, CURABILITY_FIELDS as F } from './question.js';

/** The question to rule sets for squamous cancer; depth in um, type and size do not count. */
export type SquamousQuestion = Omit<
  CurabilityQuestion,
  'gastricType' | 'undiffLengthMm' | 'undiffInSm' | 'ulcer' | 'budding'
>;

export const SQUAMOUS_FIELDS: FieldsOf<SquamousQuestion> = {
  tumour: F.tumour,
  histology: F.histology,
  depth: F.depth,
  smDepthUm: { ...F.smDepthUm, askedWhen: [] },
  differentiation: { ...F.differentiation, askedWhen: [] },
  sizeMm: { ...F.sizeMm, askedWhen: [] },
  ly: F.ly,
  v: F.v,
  hm: F.hm,
  vm: F.vm,
  enBloc: F.enBloc,
  endoscopicallyComplete: F.endoscopicallyComplete,
};
