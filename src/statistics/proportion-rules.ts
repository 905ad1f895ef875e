import { type Checked, type Finding, fixedText, passed } from '../kernel/index.js';
import { cite } from '../references/index.js';
import { numberTold, type QuantityRule, type Told } from '../rules/index.js';
import { CLOPPER_PEARSON_CITES, clopperPearsonInterval } from './clopper-pearson.js';
import type { Counts, Interval } from './counts.js';
import { COUNT_FIELDS, countsTold, intervalText, known, LEVEL } from './fields.js';
import { RATE_CITES, ratePercent } from './rate.js';
import { WILSON_CITES, wilsonInterval } from './wilson.js';

const POPULATION =
  'Any events of which each observation has one at most. Name the missing outcomes beside it; ' +
  'units with fewer than 10 observations are not ranked.';

export const RATE_RULE: QuantityRule = {
  kind: 'quantity',
  id: 'rate-percent-1dp',
  version: 1,
  title: 'Rate in percent, to one decimal',
  population: POPULATION,
  cites: [...RATE_CITES, cite('hatta2021', 'risk table: rates to one decimal', 'published')],
  fields: COUNT_FIELDS,
  contradictions: [],
  formula: '100 x / n',
  compute: (told) => {
    const counts = countsTold(told);
    return counts.ok ? passed(fixedText(known(ratePercent(counts.value)), 1)) : counts;
  },
};

export const WILSON_RULE: QuantityRule = {
  kind: 'quantity',
  id: 'wilson',
  version: 1,
  title: 'Wilson score interval of a proportion',
  population: POPULATION,
  cites: WILSON_CITES,
  fields: { ...COUNT_FIELDS, level: LEVEL },
  contradictions: [],
  formula: '(x + z^2/2 -/+ z sqrt(x (n - x)/n + z^2/4)) / (n + z^2), z of the level',
  compute: (told) => intervalAnswer(told, wilsonInterval),
};

export const CLOPPER_PEARSON_RULE: QuantityRule = {
  kind: 'quantity',
  id: 'clopper-pearson',
  version: 1,
  title: 'Exact interval of a proportion (Clopper and Pearson)',
  population: POPULATION,
  cites: [
    ...CLOPPER_PEARSON_CITES,
    cite('hatta2021', 'risk table: 60/202 and 87/760 with intervals', 'published'),
  ],
  fields: { ...COUNT_FIELDS, level: LEVEL },
  contradictions: [],
  formula: 'quantiles of Beta(x, n - x + 1) and Beta(x + 1, n - x), half of 1 - level on each side',
  compute: (told) => intervalAnswer(told, clopperPearsonInterval),
};

function intervalAnswer(
  told: Told,
  interval: (counts: Counts, level: number) => Finding<Interval>,
): Checked<string> {
  const counts = countsTold(told);
  if (!counts.ok) return counts;
  return passed(intervalText(known(interval(counts.value, numberTold(told, 'level')))));
}
