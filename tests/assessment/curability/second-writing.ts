import type { CurabilityQuestion } from '../../../src/assessment/curability/question.js';

/**
 * The rule sets once more, as plain conditions written from the prose of the guidelines and not
 * from the tables: an answer of a table that differs is an error of one of the two.
 */
export interface Answered {
  readonly class: string;
  readonly reasons: readonly string[];
}
export type SecondWriting = (asked: CurabilityQuestion) => Answered;

const plain = (name: string): Answered => ({ class: name, reasons: [] });
const whyLocal = ({ enBloc, hm }: CurabilityQuestion): readonly string[] => [
  ...(enBloc ? [] : ['piecemeal']),
  ...(hm === '0' ? [] : ['horizontal-margin']),
];
const isGastric = ({ tumour }: CurabilityQuestion) => tumour === 'gastric';

// Limits of the first submucosal layer, Endoscopy 2022;54:591-622: squamous 200 um and colorectal
// 1000 um from memory, Barrett and gastric 500 um by second sources; the limit itself is inside.
const DEEPEST_SM1_UM = { squamous: 200, barrett: 500, gastric: 500, colorectal: 1000, other: 0 };

/** Endoscopy 2022;54:591-622, abstract; gaps filled as in its table. */
export function europe2022(asked: CurabilityQuestion): Answered {
  if (asked.tumour === 'other') return plain('no-rule');
  if (!asked.endoscopicallyComplete) return plain('incomplete');
  const { depth, sizeMm, ulcer, hm, enBloc } = asked;
  const marginOrPieces = !enBloc || hm !== '0';
  const serious: string[] = [];
  if (asked.ly === '1' || asked.v === '1') serious.push('lvi');
  if (asked.vm === '1') serious.push('vertical-margin');
  if (asked.vm === 'X') serious.push('vertical-margin-not-assessable');
  if (depth === 'mp') serious.push('muscle-invasion');
  if (depth === 'sm' && asked.smDepthUm > DEEPEST_SM1_UM[asked.tumour]) {
    serious.push('deeper-than-sm1');
  }
  if (isGastric(asked)) {
    if (asked.gastricType === 'undifferentiated') {
      const small = depth === 'm' && ulcer === 'UL0' && sizeMm <= 20;
      serious.push(small ? 'undifferentiated-small' : 'undifferentiated');
    }
  } else if (asked.differentiation !== 'well' && asked.differentiation !== 'moderate') {
    serious.push('undifferentiated');
  }
  if (
    asked.tumour === 'colorectal' &&
    asked.histology === 'carcinoma' &&
    depth === 'sm' &&
    (asked.budding === 2 || asked.budding === 3)
  ) {
    serious.push('budding');
  }
  if (depth === 'sm' && marginOrPieces) serious.push('margin-or-piecemeal-with-sm');
  if (serious.length > 0) return { class: 'high-risk', reasons: serious };

  const lesser: string[] = [];
  if (asked.tumour === 'squamous' && (depth === 'mm' || depth === 'sm') && sizeMm > 20) {
    lesser.push('size-limit-exceeded');
  }
  if (isGastric(asked) && depth === 'sm' && sizeMm > 30) lesser.push('size-limit-exceeded');
  if (isGastric(asked) && ulcer === 'UL1') {
    if (depth === 'm' && sizeMm > 30) lesser.push('ulcerated-size-limit');
    if (depth === 'sm') lesser.push('ulcerated-submucosal');
  }
  if (lesser.length > 0) return { class: 'high-risk', reasons: lesser };
  if (marginOrPieces) return { class: 'local-risk', reasons: whyLocal(asked) };
  if (depth === 'ep' || depth === 'lpm') return plain('very-low-risk');
  if (depth === 'm') {
    const ulcerated = isGastric(asked) && ulcer === 'UL1';
    return ulcerated ? { class: 'low-risk', reasons: ['ulcerated'] } : plain('very-low-risk');
  }
  return plain('low-risk');
}

/** Dig Endosc 2021;33:4-20 and Gastric Cancer 2023;26:1-25, by second sources. */
export function japanStomach2021(asked: CurabilityQuestion): Answered {
  if (!isGastric(asked)) return plain('no-rule');
  if (!asked.endoscopicallyComplete) return plain('incomplete');
  const { depth, ulcer, sizeMm, gastricType, enBloc, hm } = asked;
  const notR0Sideways = !enBloc || hm !== '0';
  const why = new Set<string>();
  if (asked.ly === '1') why.add('lymphatic-invasion');
  if (asked.v === '1') why.add('venous-invasion');
  if (asked.vm === '1') why.add('vertical-margin');
  if (asked.vm === 'X') why.add('vertical-margin-not-assessable');
  if (depth === 'mp') why.add('muscle-invasion');
  if (depth === 'sm' && !(asked.smDepthUm < 500)) why.add('deeper-than-sm1');
  if (gastricType === 'undifferentiated') {
    if (depth === 'sm' || ulcer === 'UL1' || sizeMm > 20) why.add('undifferentiated');
    if (notR0Sideways) why.add('undifferentiated-not-r0');
  } else {
    if (depth === 'm' && ulcer === 'UL1' && sizeMm > 30) why.add('ulcerated-size-limit');
    if (depth === 'sm' && sizeMm > 30) why.add('size-limit-exceeded');
    if (depth === 'm' && asked.undiffLengthMm > 20) why.add('undifferentiated-part');
    if (depth === 'sm' && asked.undiffInSm) why.add('undifferentiated-part');
  }
  if (why.size > 0) return { class: 'eCuraC-2', reasons: [...why] };
  if (notR0Sideways) return { class: 'eCuraC-1', reasons: whyLocal(asked) };
  return plain(depth === 'm' ? 'eCuraA' : 'eCuraB');
}

/** Int J Clin Oncol 2020;25:1-42; factors read in the edition of 2009. */
export function japanColorectum2019(asked: CurabilityQuestion): Answered {
  if (asked.tumour !== 'colorectal' || asked.depth !== 'sm') return plain('no-rule');
  if (!asked.endoscopicallyComplete) return plain('incomplete');
  if (asked.vm === '1') return { class: 'surgery', reasons: ['vertical-margin'] };
  if (asked.vm === 'X') return { class: 'surgery', reasons: ['vertical-margin-not-assessable'] };
  const factors: string[] = [];
  if (asked.smDepthUm >= 1000) factors.push('deep-submucosa');
  if (asked.ly === '1' || asked.v === '1') factors.push('vascular-invasion');
  if (['poor', 'signet', 'mucinous'].includes(asked.differentiation)) {
    factors.push('poorly-differentiated');
  }
  if (asked.budding === 2 || asked.budding === 3) factors.push('budding');
  return factors.length > 0 ? { class: 'consider-surgery', reasons: factors } : plain('follow-up');
}

const reasonsForMoreTreatment = ({ depth, ly, v, vm }: CurabilityQuestion): readonly string[] => [
  ...(depth === 'sm' || depth === 'mp' ? ['submucosal-invasion'] : []),
  ...(ly === '1' || v === '1' ? ['vascular-invasion'] : []),
  ...(vm === '1' ? ['vertical-margin'] : []),
  ...(vm === 'X' ? ['vertical-margin-not-assessable'] : []),
];

/** Mini-invasive Surg 2021;5:36, abstract, on Dig Endosc 2020;32:452-493. */
export function japanOesophagus2020(asked: CurabilityQuestion): Answered {
  if (asked.tumour !== 'squamous') return plain('no-rule');
  if (!asked.endoscopicallyComplete) return plain('incomplete');
  const reasons = reasonsForMoreTreatment(asked);
  if (reasons.length > 0) return { class: 'additional-treatment', reasons };
  if (asked.depth === 'mm') return plain('undetermined');
  return asked.hm === '0'
    ? plain('curative')
    : { class: 'undetermined', reasons: ['horizontal-margin'] };
}

/** Clin Endosc 2020;53:142-166, statement E7; its end from memory, gaps filled with caution. */
export function koreaOesophagus2020(asked: CurabilityQuestion): Answered {
  if (asked.tumour !== 'squamous') return plain('no-rule');
  if (!asked.endoscopicallyComplete) return plain('incomplete');
  const reasons = reasonsForMoreTreatment(asked);
  if (reasons.length > 0) return { class: 'additional-treatment', reasons };
  const silent = whyLocal(asked);
  if (silent.length > 0) return { class: 'undetermined', reasons: silent };
  return plain(asked.depth === 'mm' ? 'close-follow-up' : 'no-further-treatment');
}

/** Endoscopy 2025;57:504-554 as transcribed in a public program: four classes, from the mildest. */
export function europeStomach2025(asked: CurabilityQuestion): Answered {
  if (!isGastric(asked)) return plain('no-rule');
  if (!asked.endoscopicallyComplete) return plain('incomplete');
  const { depth, smDepthUm, sizeMm, ulcer, gastricType } = asked;
  const differentiated = gastricType === 'differentiated';
  const veryLow = differentiated && depth === 'm' && (ulcer === 'UL0' || sizeMm <= 30);
  const low =
    (differentiated && depth === 'sm' && smDepthUm <= 500 && sizeMm <= 30 && isUlcerFine(asked)) ||
    (!differentiated && depth === 'm' && ulcer === 'UL0' && sizeMm <= 20);
  const vessels = asked.ly === '1' || asked.v === '1';
  if (vessels || asked.vm !== '0' || !(veryLow || low)) {
    return { class: 'high-risk', reasons: whyHigh2025(asked) };
  }
  const local = whyLocal(asked);
  if (local.length > 0) return { class: 'local-risk', reasons: local };
  return plain(veryLow ? 'very-low-risk' : 'low-risk');
}

/** No ulcer clause below the mucosa. */
const isUlcerFine = ({ depth }: CurabilityQuestion) => depth === 'sm';

function whyHigh2025(asked: CurabilityQuestion): readonly string[] {
  const { depth, ulcer, sizeMm } = asked;
  const why: string[] = [];
  if (asked.ly === '1' || asked.v === '1') why.push('lvi');
  if (asked.vm === '1') why.push('vertical-margin');
  if (asked.vm === 'X') why.push('vertical-margin-not-assessable');
  if (depth === 'mp') why.push('muscle-invasion');
  if (depth === 'sm' && asked.smDepthUm > 500) why.push('deeper-than-sm1');
  if (asked.gastricType === 'undifferentiated') {
    if (depth === 'sm' || ulcer === 'UL1' || sizeMm > 20) why.push('undifferentiated');
  }
  if (depth === 'sm' && sizeMm > 30) why.push('size-limit-exceeded');
  if (ulcer === 'UL1' && sizeMm > 30) why.push('ulcerated-size-limit');
  return why;
}
