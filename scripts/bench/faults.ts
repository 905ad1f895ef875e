import type { Bundle, FhirResource } from 'fhir/r4.js';
import { checkBundle } from '../../src/conformance/index.js';
import { fhirJs, medplum, officialSchema, type Peer } from '../../tests/conformance/peers.js';
import { appointedBundle } from '../../tests/conformance/sample-variants.js';
import { edited } from '../../tests/faults/edit.js';
import { SEEDED_FAULTS, type SeededFault } from '../../tests/faults/seeded-faults.js';

/** Which validator finds which seeded fault; ends with what our gate finds. */
export async function benchFaults(): Promise<readonly string[]> {
  const rows = faultTable([officialSchema(), medplum(), fhirJs()]);
  console.log(rows.text);
  return [`faults ${rows.ours}/${SEEDED_FAULTS.length}`];
}

/** The table as text, and how many faults our gate finds. */
function faultTable(peers: readonly Peer[]): { readonly text: string; readonly ours: number } {
  const head = ['seeded fault', 'our gate', ...peers.map(({ name }) => name)];
  const said = SEEDED_FAULTS.map((fault) => {
    const bundle = edited(appointedBundle(), fault.edits);
    const ours = checkBundle(bundle).ok ? 'accepted' : 'found';
    return [ours, ...peers.map((peer) => peerSays(peer, fault, bundle))];
  });
  const lines = SEEDED_FAULTS.map(({ name }, i) => line([name, ...(said[i] ?? [])]));
  const counts = head
    .slice(1)
    .map((_name, i) => said.filter((row) => row[i] !== 'accepted').length);
  const text = [line(head), ...lines, line(['found', ...counts])].join('\n');
  return { text, ours: counts[0] ?? 0 };
}

/** Whether a validator of others says more of the faulty resource than of the sound one. */
function peerSays(peer: Peer, fault: SeededFault, faulty: Bundle): 'found' | 'accepted' | 'throws' {
  const sound = appointedBundle();
  const index = (sound.entry ?? []).findIndex(
    (_entry, i) => JSON.stringify(resourceAt(sound, i)) !== JSON.stringify(resourceAt(faulty, i)),
  );
  const [before, after] = [resourceAt(sound, index), resourceAt(faulty, index)];
  if (before === undefined || after === undefined || before.resourceType !== fault.type) {
    throw new Error(`the fault "${fault.name}" changes no ${fault.type}`);
  }
  const known = new Set(peer.validate(before));
  try {
    return peer.validate(after).some((message) => !known.has(message)) ? 'found' : 'accepted';
  } catch {
    return 'throws'; // refused all the same, if not in words
  }
}

/** A resource as plain JSON. */
function resourceAt(bundle: Bundle, index: number): FhirResource | undefined {
  const resource = bundle.entry?.[index]?.resource;
  return resource === undefined ? undefined : JSON.parse(JSON.stringify(resource));
}

const line = (cells: readonly (string | number)[]): string =>
  cells
    .map((cell, i) => String(cell).padEnd(i === 0 ? 38 : 15))
    .join('')
    .trimEnd();
