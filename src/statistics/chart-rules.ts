import { type Checked, failed, fixedText, type Problem, passed } from '../kernel/index.js';
import { type Fields, numberTold, type QuantityRule, type Told } from '../rules/index.js';
import { CUSUM_CITES, type CusumAims, cusumParameters } from './cusum.js';
import { COUNT_FIELDS, DECIMALS, intervalText, LEVEL, shareField } from './fields.js';
import {
  EXACT_FUNNEL_CITES,
  exactFunnelLimits,
  FUNNEL_CITES,
  normalFunnelLimits,
} from './funnel.js';

export const CUSUM_RULE: QuantityRule = {
  kind: 'quantity',
  id: 'cusum-parameters',
  version: 1,
  title: 'Step and limit of a cumulative sum, as a sequential test',
  population:
    'Learning curves of one operator or unit, one success or failure an observation, in their order.',
  cites: CUSUM_CITES,
  fields: {
    p0: shareField('failure rate that is acceptable'),
    p1: shareField('failure rate that is not acceptable'),
    alpha: shareField('risk to call an acceptable rate unacceptable'),
    beta: shareField('risk to call an unacceptable rate acceptable'),
  },
  contradictions: [],
  formula:
    'P = ln(p1/p0), Q = ln((1 - p0)/(1 - p1)): s = Q/(P + Q), h = ln((1 - alpha)/beta)/(P + Q), ' +
    'successes in a row to the lower limit = h/s rounded up',
  compute: (told) => {
    const aims = aimsTold(told);
    if (!aims.ok) return aims;
    const { step, lowerLimit, successesToLower } = cusumParameters(aims.value);
    const [s, h] = [fixedText(step, DECIMALS), fixedText(-lowerLimit, DECIMALS)];
    return passed(`s=${s};h=${h};successesToH0=${successesToLower}`);
  },
};

const FUNNEL_POPULATION =
  'Units compared with one target. No adjustment for the risk of their cases: a point outside is ' +
  'a question, not a verdict.';

const TARGET = {
  p0: { type: 'number', unit: 'shares of 1', from: 0, to: 1, says: 'target rate' },
  n: COUNT_FIELDS.n,
} satisfies Fields;

export const FUNNEL_RULE: QuantityRule = {
  kind: 'quantity',
  id: 'funnel',
  version: 1,
  title: 'Limits of a funnel plot, normal approximation',
  population: FUNNEL_POPULATION,
  cites: FUNNEL_CITES,
  fields: {
    ...TARGET,
    z: {
      type: 'number',
      unit: 'standard deviations',
      from: 0.1,
      to: 10,
      says: 'quantile of the normal distribution (1.96 for 95 %, 3.09 for 99.8 %)',
    },
  },
  contradictions: [],
  formula: 'p0 -/+ z sqrt(p0 (1 - p0)/n), cut to 0 and 1',
  compute: (told) => {
    const [target, of, z] = [numberTold(told, 'p0'), numberTold(told, 'n'), numberTold(told, 'z')];
    return passed(intervalText(normalFunnelLimits(target, of, z)));
  },
};

export const EXACT_FUNNEL_RULE: QuantityRule = {
  kind: 'quantity',
  id: 'funnel-exact',
  version: 1,
  title: 'Limits of a funnel plot, from the binomial distribution',
  population: FUNNEL_POPULATION,
  cites: EXACT_FUNNEL_CITES,
  fields: { ...TARGET, level: LEVEL },
  contradictions: [],
  formula:
    'lowest and highest rate k/n with more than half of 1 - level in k or fewer, and in k or more',
  compute: (told) => {
    const level = numberTold(told, 'level');
    const limits = exactFunnelLimits(numberTold(told, 'p0'), numberTold(told, 'n'), level);
    return passed(intervalText(limits));
  },
};

function aimsTold(told: Told): Checked<CusumAims> {
  const aims = {
    acceptable: numberTold(told, 'p0'),
    unacceptable: numberTold(told, 'p1'),
    alpha: numberTold(told, 'alpha'),
    beta: numberTold(told, 'beta'),
  };
  const problems: readonly Problem[] = [
    ...(aims.acceptable < aims.unacceptable ? [] : [WRONG_ORDER]),
    ...(aims.alpha + aims.beta < 1 ? [] : [TOO_RISKY]),
  ];
  return problems.length === 0 ? passed(aims) : failed(problems);
}

const WRONG_ORDER: Problem = {
  rule: 'rates-out-of-order',
  pointer: '/p1',
  message: 'The unacceptable rate is not above the acceptable one.',
  expected: 'p1 above p0',
};

const TOO_RISKY: Problem = {
  rule: 'risks-too-high',
  pointer: '/beta',
  message: 'With such risks chance alone decides.',
  expected: 'alpha and beta below 1 together',
};
