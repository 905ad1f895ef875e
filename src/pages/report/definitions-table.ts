import type { Benchmark, Definition } from '../../outcomes/index.js';
import { type Content, element, type Markup, together } from '../markup.js';
import { organsText } from '../words.js';
import type { Sources } from './sources.js';
import { tableOf } from './table.js';

/** Where each definition and each published value comes from. */
export function definitionsTable(definitions: readonly Definition[], sources: Sources): Markup {
  return tableOf({
    caption: 'Where each definition and each published value comes from',
    columns: [
      { title: 'Indicator' },
      { title: 'Source of the definition' },
      { title: 'Published values' },
    ],
    parts: [
      {
        rows: definitions.map((definition) => ({
          head: definition.title,
          cells: [
            together(sources.mention(definition.cites)),
            published(definition.benchmarks, sources),
          ],
        })),
      },
    ],
  });
}

const ofOrgans = (organs: Benchmark['organs']): string =>
  organs === undefined ? 'no organ told' : `${organsText(organs)} alone`;

function published(benchmarks: readonly Benchmark[], sources: Sources): Content {
  if (benchmarks.length === 0) return 'none';
  return together(
    benchmarks.map(({ says, organs, cites }) =>
      element('p', {}, `${says} (${ofOrgans(organs)}): `, together(sources.mention(cites))),
    ),
  );
}
