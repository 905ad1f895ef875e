import { DEFAULT_UNIT_SETTINGS } from '../../src/contract/index.js';
import {
  createFhirClient,
  createTarget,
  createWorker,
  systemClock,
  type Worker,
} from '../../src/delivery/index.js';
import {
  createService,
  prepareStored,
  SENT_TYPES,
  type Service,
} from '../../src/pipeline/index.js';
import { createOutbox, createRecordStore, type Database } from '../../src/store/index.js';

const SETTINGS = {
  unit: DEFAULT_UNIT_SETTINGS,
  secret: 'a-secret-of-the-tests-that-is-long-enough',
  softwareVersion: '0.0.0-test',
};

/** The service and its worker over a database, delivering to a FHIR base of this machine. */
export function wholeService(
  database: Database,
  fhirBase: string,
): { readonly service: Service; readonly worker: Worker } {
  const worker = createWorker({
    outbox: createOutbox(database, { worker: 'test' }),
    prepare: prepareStored(SETTINGS),
    target: createTarget({
      client: createFhirClient({ baseUrl: fhirBase }),
      baseUrl: fhirBase,
      needs: { types: SENT_TYPES, mode: 'auto', largestBundle: 150 },
      missingPatient: 'require',
      allowed: { allowHttp: true, allowedHosts: [] },
      clock: systemClock,
    }),
    clock: systemClock,
    chance: () => 0,
    log: () => undefined,
  });
  const service = createService({
    store: createRecordStore(database),
    settings: SETTINGS,
    now: () => new Date().toISOString(),
  });
  return { service, worker };
}

/** Asks again until the case stands so; fails after a while. */
export async function untilDelivery(service: Service, caseId: string, name: string): Promise<void> {
  const deadline = Date.now() + 5_000;
  let seen = 'nothing';
  while (Date.now() < deadline) {
    const view = await service.readCase(caseId, {});
    seen = JSON.stringify(view?.delivery);
    if (view?.delivery.name === name && view.delivery.state === view.state) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`not ${name} in time, but ${seen}`);
}
