import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';

type Field = keyof CurabilityQuestion;

/** Fields in the order in which an answer names those that are missing. */
export const IN_ORDER: readonly Field[] = [
  'tumour',
  'histology',
  'depth',
  'smDepthUm',
  'differentiation',
  'gastricType',
  'undiffLengthMm',
  'undiffInSm',
  'sizeMm',
  'ulcer',
  'ly',
  'v',
  'hm',
  'vm',
  'enBloc',
  'endoscopicallyComplete',
  'budding',
];

/** A report on a dysplasia that stays within the mucosa states none of these. */
const NOT_APPLICABLE_TO_DYSPLASIA: readonly Field[] = [
  'ly',
  'v',
  'differentiation',
  'gastricType',
  'smDepthUm',
  'budding',
];

export const isPureDysplasia = ({ histology, depth }: CurabilityQuestion): boolean =>
  histology !== 'carcinoma' && depth !== 'sm' && depth !== 'mp';

/** Whether an absent field counts as missing; conventions of the worked examples, as ifs. */
export function isRequired(set: string, field: Field, asked: CurabilityQuestion): boolean {
  if (isPureDysplasia(asked) && NOT_APPLICABLE_TO_DYSPLASIA.includes(field)) return false;
  return isUsed(set, field, asked) && field !== 'undiffLengthMm' && field !== 'undiffInSm';
}

/** Whether a set looks at a field at all, so that null counts as missing. */
export function isUsed(set: string, field: Field, asked: CurabilityQuestion): boolean {
  const { tumour, histology, depth } = asked;
  const europe = set === 'esge-esd-2022';
  const colorectum = set === 'jsccr-2019';
  const stomach = set === 'jges-jgca-2021' || set === 'maps-iii-2025';
  switch (field) {
    case 'smDepthUm':
      return depth === 'sm' && (europe || stomach || colorectum);
    case 'differentiation':
      return colorectum || (europe && tumour !== 'gastric' && tumour !== 'other');
    case 'gastricType':
    case 'ulcer':
      return stomach ? tumour === 'gastric' : europe && tumour === 'gastric';
    case 'sizeMm':
      return (stomach || europe) && (tumour === 'gastric' || (europe && tumour === 'squamous'));
    case 'undiffLengthMm':
    case 'undiffInSm':
      return set === 'jges-jgca-2021';
    case 'budding':
      return (
        colorectum ||
        (europe && tumour === 'colorectal' && histology === 'carcinoma' && depth === 'sm')
      );
    default:
      return true;
  }
}
