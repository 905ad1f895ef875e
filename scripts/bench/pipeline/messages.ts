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

/** Each a JSON list of the messages of one case. */
export const MIX: readonly string[] = [...examples, update()];
export const SMALL: string = JSON.stringify([JSON.stringify(read('complete.json'))]);
export const LARGE: string = longest();
