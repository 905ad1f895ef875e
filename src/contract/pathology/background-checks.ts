import type { CrossCheck } from '../cross-check.js';
import type { ReadablePathology } from './readable-pathology.js';

export const backgroundChecks: readonly CrossCheck<ReadablePathology>[] = [
  {
    rule: 'background-none',
    message: 'Atrophy or metaplasia is denied, yet it has a place or a stage.',
    expected: 'no places and stage 0 where there is none',
    broken: ({ background = {} }) => [
      ...(background.atrophy === 'none'
        ? contradictions(background.atrophyIn, 'atrophyIn', background.olga, 'olga')
        : []),
      ...(background.intestinalMetaplasia === 'none'
        ? contradictions(background.metaplasiaIn, 'metaplasiaIn', background.olgim, 'olgim')
        : []),
    ],
  },
];

function contradictions(
  places: readonly unknown[] | undefined,
  placesAt: string,
  stage: string | undefined,
  stageAt: string,
): readonly string[] {
  return [
    ...(places !== undefined && places.length > 0 ? [`/background/${placesAt}`] : []),
    ...(stage !== undefined && stage !== '0' ? [`/background/${stageAt}`] : []),
  ];
}
