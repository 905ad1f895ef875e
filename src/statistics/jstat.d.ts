/** The part of the library that is used here; it comes without types. */
declare module 'jstat' {
  const jstat: {
    readonly normal: {
      inv(p: number, mean: number, standardDeviation: number): number;
    };
    readonly beta: {
      inv(p: number, alpha: number, beta: number): number;
    };
    readonly binomial: {
      cdf(events: number, of: number, probability: number): number;
    };
  };
  export = jstat;
}
