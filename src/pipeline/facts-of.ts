import { type Assessed, type CaseFacts, type RecordVersion, toFacts } from '../record/index.js';
import { keyed, operatorInOutcomes } from './naming.js';

/** The facts of a record version under the pseudonyms of this site. */
export const factsOf = (version: RecordVersion, now: Assessed, secret: string): CaseFacts =>
  toFacts({ version, now }, (identifier, of) =>
    of === 'operator'
      ? operatorInOutcomes(secret, identifier)
      : keyed(secret, 'pseudonym', identifier),
  );
