import { passed, trimmedText } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import { numberTold, type QuantityRule } from '../../rules/index.js';
import { DECIMALS, lengthMm } from './fields.js';

const MM2_PER_CM2 = 100;

/** A part of the wall of a tube. */
export interface TubePart {
  readonly radiusMm: number;
  readonly lengthMm: number;
  /** Share of the circumference, 0 to 100. */
  readonly circumferencePercent: number;
}

/**
 * Area in cm2 of a lesion in a tube: 2 pi r x length x share of the circumference.
 *
 * Source: tubeArea2016 (oesophageal dissection).
 */
function tubeAreaCm2(part: TubePart): number {
  const circumferenceMm = 2 * Math.PI * part.radiusMm * (part.circumferencePercent / 100);
  return (circumferenceMm * part.lengthMm) / MM2_PER_CM2;
}

export const TUBE_AREA: QuantityRule = {
  kind: 'quantity',
  id: 'tube-area',
  version: 1,
  title: 'Area of a lesion in a tube',
  population: 'Lesions of the oesophagus that are measured by length and share of circumference.',
  cites: [cite('tubeArea2016', 'method: 2 pi r x length x share', 'published')],
  fields: {
    radiusMm: lengthMm('radius of the lumen'),
    lengthMm: lengthMm('length along the lumen'),
    circumferencePercent: {
      type: 'number',
      unit: '%',
      from: 0,
      to: 100,
      says: 'share of the circumference',
    },
  },
  contradictions: [],
  formula: '2 pi r x length x circumference/100',
  compute: (told) => {
    const areaCm2 = tubeAreaCm2({
      radiusMm: numberTold(told, 'radiusMm'),
      lengthMm: numberTold(told, 'lengthMm'),
      circumferencePercent: numberTold(told, 'circumferencePercent'),
    });
    return passed(`areaCm2=${trimmedText(areaCm2, DECIMALS)}`);
  },
};
