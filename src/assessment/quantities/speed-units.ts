import { type Checked, passed, trimmedText } from '../../kernel/index.js';
import { cite } from '../../references/index.js';
import type { Contradiction, Field, QuantityRule, Told } from '../../rules/index.js';
import { DECIMALS } from './fields.js';
import { fromCm2PerMin, fromMinPerCm2, toMm2PerMin } from './speed-conversion.js';

interface Conversion {
  readonly field: string;
  readonly unit: string;
  readonly to: 'mm2PerMin' | 'cm2PerH';
  readonly convert: (value: number) => number;
}

const CONVERSIONS: readonly Conversion[] = [
  { field: 'cm2PerH', unit: 'cm2/h', to: 'mm2PerMin', convert: toMm2PerMin },
  { field: 'cm2PerMin', unit: 'cm2/min', to: 'cm2PerH', convert: fromCm2PerMin },
  { field: 'minPerCm2', unit: 'min/cm2', to: 'cm2PerH', convert: fromMinPerCm2 },
];

const RANGE = { from: 0.001, to: 10_000 };
const TOLD = { atLeast: RANGE.from };
const NOT_TOLD = { below: RANGE.from };

export const SPEED_UNITS: QuantityRule = {
  kind: 'quantity',
  id: 'speed-units',
  version: 1,
  title: 'Dissection speed in another unit',
  population: 'Speeds as published works give them; exactly one is told.',
  cites: [cite('esdPractice', 'arithmetic of units', 'derived')],
  fields: Object.fromEntries(CONVERSIONS.map((each) => [each.field, speedField(each)])),
  contradictions: contradictions(),
  formula: 'mm2/min = cm2/h / 0.6; cm2/h = 60 x cm2/min = 60 / (min/cm2)',
  compute: converted,
};

/** A speed is asked for unless another one was told. */
function speedField({ field, unit }: Conversion): Field {
  const others = CONVERSIONS.filter((other) => other.field !== field);
  const noOther = Object.fromEntries(others.map((other) => [other.field, NOT_TOLD]));
  return { type: 'number', unit, ...RANGE, says: `speed in ${unit}`, askedWhen: [noOther] };
}

function contradictions(): readonly Contradiction[] {
  return CONVERSIONS.flatMap((one, i) =>
    CONVERSIONS.slice(i + 1).map((other) => ({
      rule: 'one-speed-alone',
      field: other.field,
      when: { [one.field]: TOLD, [other.field]: TOLD },
      message: 'More than one speed was told.',
      expected: `exactly one of: ${CONVERSIONS.map(({ field }) => field).join(', ')}`,
    })),
  );
}

function converted(told: Told): Checked<string> {
  const texts = CONVERSIONS.flatMap(({ field, to, convert }) => {
    const value = told[field];
    return typeof value === 'number' ? [`${to}=${trimmedText(convert(value), DECIMALS)}`] : [];
  });
  return passed(texts.join(';'));
}
