import type { IndicationQuestion } from '../../../src/assessment/curability/jges-jes-2020-indication.table.js';
import type { SecondWriting } from '../../support/every-question.js';

// Mini-invasive Surg 2021;5:36, abstract: EP/LPM unless round the whole and longer than 50 mm; MM
// and SM1 (at most 200 um) unless round the whole.
function isIndicated(asked: IndicationQuestion): boolean {
  const { cDepth, cSmDepthUm, circumferencePercent, lengthMm } = asked;
  const whole = circumferencePercent === 100;
  if (cDepth === 'ep' || cDepth === 'lpm') return !whole || lengthMm <= 50;
  return !whole && (cDepth === 'mm' || cSmDepthUm <= 200);
}

export const INDICATION_SECOND: SecondWriting<IndicationQuestion> = {
  id: 'jges-jes-2020-indication',
  says: (asked) => (isIndicated(asked) ? 'indicated' : 'not-indicated'),
  choices: {
    cDepth: ['ep', 'lpm', 'mm', 'sm'],
    cSmDepthUm: [0, 200, 201],
    circumferencePercent: [0, 60, 99, 99.9, 100],
    lengthMm: [1, 50, 50.1, 51],
  },
};
