/** One constraint of a StructureDefinition, of the standard or of our own package. */
export interface Rule {
  readonly key: string;
  readonly severity: 'error' | 'warning';
  /** What the rule asks for, in one sentence. */
  readonly human: string;
  /** FHIRPath; the rule holds where the result is exactly true. */
  readonly expression: string;
  /** Element path at which it stands, such as `Bundle`, `Observation.component` or `Period`. */
  readonly context: string;
}
