import type { Chance } from './chance.js';
import type { DrawnLesion } from './draw-lesion.js';
import type { DrawnProcedure } from './draw-procedure.js';
import {
  BUDDING,
  DEPTH,
  DIFFERENTIATION,
  FREE_OF_EN_BLOC,
  HISTOLOGY,
  MARGIN_FAULT,
  POLYP,
  SUBMUCOSAL_DEPTH,
  ULCER,
  VESSELS,
} from './pathology.table.js';

type MarginState = '0' | '1' | 'X';

/** What the invented tissue holds, whether a report ever tells it or not. */
export interface DrawnTissue {
  readonly histology: (typeof HISTOLOGY)['gastric'][number]['value'];
  readonly depth: (typeof DEPTH)['gastric'][number]['value'];
  /** With the depth `sm` alone. */
  readonly smDepthUm?: number;
  readonly ly: '0' | '1';
  readonly v: '0' | '1';
  /** Of carcinomas alone. */
  readonly differentiation?: (typeof DIFFERENTIATION)[number]['value'];
  /** Of colorectal carcinomas in the submucosa alone. */
  readonly budding?: (typeof BUDDING)[number]['value'];
  readonly ulcer: boolean;
  readonly polyp: (typeof POLYP)[number]['value'];
  readonly hm: MarginState;
  readonly vm: MarginState;
}

export function drawTissue(
  lesion: DrawnLesion,
  procedure: DrawnProcedure,
  chance: Chance,
): DrawnTissue {
  const { tumour } = lesion;
  const histology = chance.pick(HISTOLOGY[tumour]);
  const isCarcinoma = histology === 'carcinoma';
  const invades = isCarcinoma || histology === 'neuroendocrine-tumour';
  const top = tumour === 'squamous' ? 'ep' : 'm';
  const depth = invades ? chance.pick(DEPTH[tumour]) : top;
  const isDeep = depth === 'sm' || depth === 'mp';
  const { ly, v } = VESSELS[isDeep ? 'deeper' : 'mucosa'];
  const { medianUm, spread } = SUBMUCOSAL_DEPTH[tumour === 'squamous' ? 'squamous' : 'others'];
  const smDepthUm = Math.round(chance.logNormal(medianUm, spread));
  const differentiation = chance.pick(DIFFERENTIATION);
  const budding = chance.pick(BUDDING);
  return {
    histology,
    depth,
    ...(depth === 'sm' ? { smDepthUm: Math.min(6_000, Math.max(10, smDepthUm)) } : {}),
    ly: invades && chance.happens(ly.percent) ? '1' : '0',
    v: invades && chance.happens(v.percent) ? '1' : '0',
    ...(isCarcinoma ? { differentiation } : {}),
    ...(isCarcinoma && tumour === 'colorectal' && depth === 'sm' ? { budding } : {}),
    ulcer: isCarcinoma && tumour === 'gastric' && chance.happens(ULCER.percent),
    polyp: chance.pick(POLYP),
    ...drawMargins(lesion, procedure, isDeep, chance),
  };
}

/** A resection in pieces has cut edges within the lesion: its horizontal margin is not assessed. */
function drawMargins(
  { organ, fibrosis }: DrawnLesion,
  { outcome }: DrawnProcedure,
  isDeep: boolean,
  chance: Chance,
): Pick<DrawnTissue, 'hm' | 'vm'> {
  const { percent } = FREE_OF_EN_BLOC[organ][fibrosis === 'F2' ? 'severe' : 'other'];
  const isFree = chance.happens(percent);
  const fault = chance.pick(MARGIN_FAULT);
  if (outcome !== 'en-bloc') return { hm: 'X', vm: '0' };
  if (isFree) return { hm: '0', vm: '0' };
  return fault.margin === 'vm' && isDeep
    ? { hm: '0', vm: fault.state }
    : { hm: fault.state, vm: '0' };
}
