/// <reference path="./jstat.d.ts" />
import jstat from 'jstat';

/** Value below which a standard normal variable lies with this probability. */
export const normalQuantile = (probability: number): number => jstat.normal.inv(probability, 0, 1);

/** The same for a beta distribution; right to seven digits. */
export const betaQuantile = (probability: number, alpha: number, beta: number): number =>
  jstat.beta.inv(probability, alpha, beta);

/** Chance of these events or fewer; right to nine decimals. */
export const binomialOrFewer = (events: number, of: number, rate: number): number =>
  jstat.binomial.cdf(events, of, rate);
