import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = 'examples/cases';
const read = (name: string) => JSON.parse(readFileSync(`${FOLDER}/${name}`, 'utf8'));

const examples: readonly string[] = readdirSync(FOLDER)
  .sort()
  .map((name) => JSON.stringify([readFileSync(`${FOLDER}/${name}`, 'utf8')]));

/** A case and its correction: an instrument dropped, a finding changed. */
function update(): string {
  const first = read('complete.json');
  const next = structuredClone(first);
  next.revision = first.revision + 1;
  next.sentAt = '2026-06-09T19:40:00+02:00';
  next.equipment.knives.pop();
  next.dissection.fibrosis = 'F2';
  return JSON.stringify([JSON.stringify(first), JSON.stringify(next)]);
}

/** A case whose lists are as long as the contract allows. */
function longest(): string {
  const sent = read('complete.json');
  const of = (howMany: number, entry: object) => Array.from({ length: howMany }, () => entry);
  sent.lesion.images = of(50, sent.lesion.images[0]);
  sent.safety.vessels = of(50, sent.safety.vessels[0]);
  sent.resection.outcome = 'piecemeal';
  sent.resection.pieces = 50;
  sent.specimen.pieces = of(50, { longAxisMm: 12.5, shortAxisMm: 8 });
  return JSON.stringify([JSON.stringify(sent)]);
}

/** An example of full size with one mistake, which the contract refuses. */
function broken(name: string, [key = '', ...below]: readonly string[], value: unknown): string {
  const sent = read(name);
  const within = below.length === 0 ? sent : sent[key];
  within[below[0] ?? key] = value;
  return JSON.stringify([JSON.stringify(sent)]);
}

const accepted: readonly string[] = [...examples, update()];

/**
 * One message in five is refused: a word that is in no list, a number out of range, a field that
 * is not known, one that is missing, and times that contradict each other.
 */
export const REFUSED: readonly string[] = [
  broken('rectum.json', ['lesion', 'organ'], 'liver'),
  broken('colon-caecum.json', ['lesion', 'longAxisMm'], 5000),
  broken('duodenum.json', ['team', 'colour'], 'blue'),
  broken('oesophagus-barrett.json', ['resection'], undefined),
  broken('stomach-differentiated.json', ['times', 'scopeOutAt'], '2020-01-01T09:00:00+01:00'),
];

/** Each a JSON list of the messages of one case; one case is one lesion. */
export const MIX: readonly string[] = [...accepted, ...REFUSED];
export const SMALL: string = JSON.stringify([JSON.stringify(read('complete.json'))]);
export const LARGE: string = longest();
