import { fixedText, trimmedText } from '../../kernel/index.js';
import type {
  Definition,
  LearningBlock,
  LearningCurve,
  OutcomeSeries,
} from '../../outcomes/index.js';
import { cusumChart } from '../cusum-chart.js';
import { funnelChart } from '../funnel-chart.js';
import { learningChart } from '../learning-chart.js';
import { element, type Markup } from '../markup.js';
import { organsText, percentText } from '../words.js';
import { citationText } from './sources.js';
import { speedsOf } from './speeds.js';
import { tableOf } from './table.js';

/** One curve with the words over it. */
export interface TitledSeries {
  readonly title: string;
  readonly series: OutcomeSeries;
}

/** A curve under a heading of its own, with its sources. */
export function seriesSection(
  { title, series }: TitledSeries,
  index: number,
  definitions: readonly Definition[],
): Markup {
  const content = contentOf(title, series, `curve-${index + 1}`, definitions);
  const isWide = series.kind === 'cusum' || series.kind === 'learning-curve';
  const className = isWide ? 'wide whole' : 'whole';
  return element('section', { class: className }, element('h3', {}, title), ...content);
}

function contentOf(
  title: string,
  series: OutcomeSeries,
  id: string,
  definitions: readonly Definition[],
): readonly Markup[] {
  switch (series.kind) {
    case 'hidden':
      return [element('p', {}, `Not shown: ${series.because}`)];
    case 'cusum': {
      const caption = series.cites.map((cite) => `Source: ${citationText(cite)}.`);
      const forms = ['simple', 'sequential'] as const;
      return forms.map((form) =>
        element(
          'figure',
          {},
          cusumChart({
            id: `${id}-${form}`,
            title: `${series.title}: ${form === 'simple' ? 'simple form' : 'sequential test'}`,
            form,
            curve: series,
            ...(form === 'sequential' ? { caption } : {}),
          }),
        ),
      );
    }
    case 'funnel': {
      const counts = definitions.find((definition) => definition.id === series.indicator);
      const caption = [
        ...(counts === undefined ? [] : [`Counts: ${counts.numerator}.`]),
        ...series.cites.map((cite) => `Source: ${citationText(cite)}.`),
      ];
      return [element('figure', {}, funnelChart({ id, title, funnel: series, caption }))];
    }
    case 'speed':
      return [element('figure', {}, speedsOf(series, id))];
    case 'learning-curve':
      return [
        ...LEARNING_FORMS.map((form) =>
          element(
            'figure',
            {},
            learningChart({
              id: `${id}-${form}`,
              title: `${title}: ${form === 'rates' ? 'rates' : 'speed'}`,
              form,
              curve: series,
            }),
          ),
        ),
        learningTable(title, series),
        thresholdList(series),
      ];
  }
}

const LEARNING_FORMS = ['rates', 'speed'] as const;

function learningTable(title: string, { blocks, blockSize }: LearningCurve): Markup {
  const rate = (block: LearningBlock, of: keyof LearningBlock['counts']): string => {
    const [share, count] = [block[of], block.counts[of]];
    if (share === undefined || count === undefined) return 'not told';
    const interval = `${fixedText(100 * count.lower, 1)} to ${percentText(count.upper)}`;
    return `${percentText(share)} (${count.events} of ${count.of}; ${interval})`;
  };
  return tableOf({
    caption: `${title}, in blocks of ${blockSize} cases, with 95 % intervals (Wilson score)`,
    columns: [
      { title: 'Cases' },
      { title: 'En bloc', isNumber: true },
      { title: 'R0', isNumber: true },
      { title: 'Curative', isNumber: true },
      { title: 'Median speed, cm²/h', isNumber: true },
    ],
    parts: [
      {
        rows: blocks.map((block) => ({
          head: `${block.fromCase} to ${block.toCase}`,
          cells: [
            rate(block, 'enBlocRate'),
            rate(block, 'r0Rate'),
            rate(block, 'curativeRate'),
            block.medianSpeedCm2PerH === undefined
              ? 'not told'
              : trimmedText(block.medianSpeedCm2PerH, 1),
          ],
        })),
      },
    ],
  });
}

function thresholdList({ thresholds }: LearningCurve): Markup {
  return element(
    'ul',
    {},
    ...thresholds.map(({ says, organs, isOfThese, reachedAtCase, publishedAtCase, cites }) => {
      const reached =
        reachedAtCase === undefined ? 'not reached' : `reached at case ${reachedAtCase}`;
      const here = isOfThese ? reached : `of ${organsText(organs)} alone, not compared here`;
      const there = publishedAtCase === undefined ? '' : `, published: case ${publishedAtCase}`;
      const source = cites.map(citationText).join('; ');
      return element('li', {}, `${says}: ${here}${there}. Source: ${source}.`);
    }),
  );
}
