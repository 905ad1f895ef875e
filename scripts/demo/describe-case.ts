import type { Pushed } from './client.js';
import { shortCaseWords } from './computed-words.js';
import { lines } from './lines.js';

/** A case of which no life tells, in a line or two. */
export function describeCase(file: string, { status, view, bundle }: Pushed): string {
  const name = file.replace(/^cases\/(.*)\.json$/, '$1');
  const known = status === 200 ? ', known from before' : '';
  const computed = 'waitingFor' in view ? '' : `; ${shortCaseWords(view)}`;
  const said = `${view.delivery.name}${known}, ${bundle?.entry?.length ?? 0} resources${computed}`;
  return lines(`  ${name.padEnd(30)}`, said);
}
