import type { FhirServerState } from './fhir-server-state.js';
import { type Database, readInvented, StoreRefused } from './store/index.js';

/** How the FHIR server stands for a service that sends it nothing. */
export const HELD: FhirServerState = {
  state: 'paused',
  reason: 'The cases of this database are invented and held back: nothing is delivered.',
};

/**
 * Whether a service on this database delivers nothing.
 *
 * @throws StoreRefused when its cases are invented, and those of real patients are to be served
 */
export async function holdsBack(database: Database, production: boolean): Promise<boolean> {
  const invented = await readInvented(database);
  if (invented !== undefined && production) {
    throw new StoreRefused(
      'The cases of this database are invented; where cases of real patients are served it is ' +
        'not opened. Name another database, or unset DISSECTION_PRODUCTION.',
    );
  }
  return invented === 'held';
}
