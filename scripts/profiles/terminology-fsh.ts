import type { LocalCodeRow } from '../terminology/read-csv.js';

/** Code systems whose codes are not listed: numbers of states, keys of deliveries. */
const TAG_SYSTEMS = [
  ['dr-revision', 'State number', 'Tag of every resource: number of the case state it belongs to.'],
  ['dr-provenance', 'Delivered state', 'Tag of a Provenance: case key and number of the state.'],
] as const;

const quoted = (text: string): string => `"${text.replace(/["\\]/g, '\\$&')}"`;

const pascal = (set: string): string =>
  set.replace(/(?:^|-)(\w)/g, (_match, letter: string) => letter.toUpperCase());

const words = (set: string): string =>
  set.charAt(0).toUpperCase() + set.slice(1).replace(/-/g, ' ');

/**
 * One CodeSystem and one ValueSet a set of `local-codes.csv`, and the two systems of our tags.
 *
 * @param rows the codes of our own, in the order of the file
 * @returns FHIR Shorthand
 */
export function terminologyFsh(rows: readonly LocalCodeRow[]): string {
  const sets = [...new Set(rows.map(({ set }) => set))];
  const listed = sets.map((set) =>
    setFsh(
      set,
      rows.filter((row) => row.set === set),
    ),
  );
  return [...listed, ...TAG_SYSTEMS.map(([id, title, about]) => tagFsh(id, title, about))].join(
    '\n',
  );
}

function setFsh(set: string, rows: readonly LocalCodeRow[]): string {
  const concepts = rows.map(
    ({ code, display, definition }) =>
      `* #${code.includes(' ') ? quoted(code) : code} ${quoted(display)} ${quoted(definition)}`,
  );
  return `CodeSystem: ${pascal(set)}System
Id: ${set}
Title: ${quoted(words(set))}
Description: ${quoted(`Codes of the set ${set} of this package, for what has no open code.`)}
* insert Published
* ^caseSensitive = true
* ^content = #complete
${concepts.join('\n')}

ValueSet: ${pascal(set)}Codes
Id: ${set}
Title: ${quoted(words(set))}
Description: ${quoted(`All codes of the code system ${set}.`)}
* insert Published
* include codes from system ${pascal(set)}System
`;
}

function tagFsh(id: string, title: string, about: string): string {
  return `CodeSystem: ${pascal(id)}System
Id: ${id}
Title: ${quoted(title)}
Description: ${quoted(about)}
* insert Published
* ^caseSensitive = true
* ^content = #not-present
`;
}
