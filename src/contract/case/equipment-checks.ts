import type { CrossCheck } from '../cross-check.js';
import type { ReadableCase } from './readable-case.js';

export const equipmentChecks: readonly CrossCheck<ReadableCase>[] = [
  {
    rule: 'PC-12',
    message: 'Injection through the knife is recorded, but no knife that was used has a channel.',
    expected: 'a knife with injectionChannel true, or routes without through-knife',
    broken: ({ equipment = {}, injection = {} }) => {
      const { knives = [] } = equipment;
      const at = injection.routes?.indexOf('through-knife') ?? -1;
      const noneHasOne =
        knives.length > 0 && knives.every(({ injectionChannel }) => injectionChannel === false);
      return at >= 0 && noneHasOne ? [`/injection/routes/${at}`] : [];
    },
  },
  {
    rule: 'PC-15',
    message: 'This instrument is wider than the channel of the endoscope.',
    expected: 'minChannelMm of at most equipment.endoscope.channelMm, unless endoscopes changed',
    broken: (sent) => {
      const channelMm = sent.equipment?.endoscope?.channelMm;
      if (channelMm === undefined || mayHaveChanged(sent)) return [];
      return widths(sent)
        .filter(([minChannelMm]) => minChannelMm !== undefined && minChannelMm > channelMm)
        .map(([, pointer]) => pointer);
    },
  },
];

type Width = readonly [minChannelMm: number | undefined, pointer: string];

function widths({ equipment: { knives = [], accessories = [] } = {} }: ReadableCase): Width[] {
  return [
    ...knives.map(
      ({ minChannelMm }, i): Width => [minChannelMm, `/equipment/knives/${i}/minChannelMm`],
    ),
    ...accessories.map(
      ({ minChannelMm }, i): Width => [minChannelMm, `/equipment/accessories/${i}/minChannelMm`],
    ),
  ];
}

/** With a second endoscope the instrument may have gone through that one. */
const mayHaveChanged = ({ dissection }: ReadableCase): boolean =>
  dissection?.incidents?.some(({ kind }) => kind === 'endoscope-exchanged') === true;
