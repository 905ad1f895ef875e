import {
  type Checked,
  determined,
  type Finding,
  failed,
  invariant,
  type Problem,
  passed,
  trimmedText,
} from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import { numberTold, type QuantityRule, type Told } from '../../rules/index.js';
import { SPEED, speedCm2PerH } from '../dissection-speed.js';
import { ELLIPSE, specimenAreaCm2 } from '../specimen-area.js';
import { DECIMALS, lengthMm } from './fields.js';
import { toMm2PerMin } from './speed-conversion.js';

/** As in the case message: above this a specimen was measured in another unit. */
const LARGEST_SPECIMEN_CM2 = 400;

export const AREA_SPEED: QuantityRule = {
  kind: 'quantity',
  id: 'area-speed',
  version: 1,
  title: 'Specimen area and dissection speed',
  population:
    'Specimens in one piece, pinned, with their two largest axes at right angles; time from first ' +
    'mucosal incision to specimen free.',
  cites: [ELLIPSE, SPEED, cite('esdPractice', 'cm2/h = mm2/min x 0.6', 'derived')],
  fields: {
    longMm: lengthMm('long axis of the pinned specimen'),
    shortMm: lengthMm('short axis, at right angles to the long one'),
    minutes: {
      type: 'number',
      unit: 'min',
      from: 0.1,
      to: 1440,
      says: 'dissection time',
    },
  },
  contradictions: [],
  formula: 'area = pi/4 x long x short; speed = area / time',
  compute: areaAndSpeed,
};

function areaAndSpeed(told: Told): Checked<string> {
  const axes = { longAxisMm: numberTold(told, 'longMm'), shortAxisMm: numberTold(told, 'shortMm') };
  if (axes.shortAxisMm > axes.longAxisMm) return failed([AXES_ORDER]);
  const area = specimenAreaCm2(axes);
  if (known(area) > LARGEST_SPECIMEN_CM2) return failed([AREA_LIMIT]);
  const speed = known(speedCm2PerH(area, determined(numberTold(told, 'minutes'), [])));
  const [areaCm2, cm2PerH, mm2PerMin] = [known(area), speed, toMm2PerMin(speed)].map((value) =>
    trimmedText(value, DECIMALS),
  );
  return passed(`areaCm2=${areaCm2};cm2PerH=${cm2PerH};mm2PerMin=${mm2PerMin}`);
}

function known(finding: Finding<number>): number {
  invariant(finding.kind === 'determined', 'axes and time are known');
  return finding.value;
}

const AXES_ORDER: Problem = {
  rule: 'axes-order',
  pointer: '/shortMm',
  message: 'The short axis is longer than the long axis.',
  expected: 'a short axis of at most the long axis',
};

const AREA_LIMIT: Problem = {
  rule: 'area-limit',
  pointer: '/longMm',
  message: 'The specimen is larger than any endoscopic resection.',
  expected: `axes in mm whose ellipse is at most ${LARGEST_SPECIMEN_CM2} cm2`,
};
