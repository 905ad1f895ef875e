import type { CaseFields } from '../../contract/index.js';
import { VISCOUS_FLUIDS } from './fluids.table.js';
import { minutesIfTold } from './spans.js';

type Endoscope = NonNullable<NonNullable<CaseFields['equipment']>['endoscope']>;
type Incision = NonNullable<CaseFields['incision']>;
type Dissection = NonNullable<CaseFields['dissection']>;

/** How the dissection was done; `undefined` was not told. */
export interface CourseFacts {
  readonly markersPlaced: boolean | undefined;
  readonly markerDistanceMm: number | undefined;
  readonly nextMarkerVisible: boolean | undefined;
  readonly endoscopeKind: Endoscope['kind'] | undefined;
  readonly channelMm: number | undefined;
  readonly capFitted: boolean | undefined;
  readonly gas: NonNullable<CaseFields['equipment']>['gas'];
  readonly retroflexed: boolean | undefined;
  readonly viscousThroughKnife: boolean | undefined;
  readonly dye: NonNullable<CaseFields['injection']>['dye'];
  readonly injectedMl: number | undefined;
  readonly injectedAgain: boolean | undefined;
  readonly strategy: Incision['strategy'];
  readonly firstSide: Incision['firstSide'];
  readonly approach: Incision['approach'];
  readonly lesionSide: NonNullable<CaseFields['position']>['lesionSide'];
  readonly patientTurned: boolean | undefined;
  readonly dissectionMin: number | undefined;
  readonly plane: Dissection['plane'];
  readonly muscleInView: boolean | undefined;
  /** Largest lead of one side over the other at a pause, in points of percent. */
  readonly unevenPoints: number | undefined;
  /** Orientation was lost, and the gas was not let out after that. */
  readonly orientationLeftLost: boolean | undefined;
}

/**
 * Reads the course of the dissection from a case.
 *
 * Source: the fields of the case, arithmetic, and the table of viscous fluids.
 */
export function courseFacts(fields: CaseFields): CourseFacts {
  const { markers, equipment = {}, position = {}, injection = {}, incision = {}, times } = fields;
  const { endoscope } = equipment;
  const dissection = fields.dissection ?? {};
  return {
    markersPlaced: markers?.placed,
    markerDistanceMm: markers?.distanceMm,
    nextMarkerVisible: markers?.nextVisibleFromEach,
    endoscopeKind: endoscope?.kind,
    channelMm: endoscope?.channelMm,
    capFitted: endoscope?.cap === undefined ? undefined : endoscope.cap !== 'none',
    gas: equipment.gas,
    retroflexed: position.retroflexed,
    viscousThroughKnife: viscousThroughKnife(injection),
    dye: injection.dye,
    injectedMl: injection.totalMl,
    injectedAgain: injection.repeated,
    strategy: incision.strategy,
    firstSide: incision.firstSide,
    approach: incision.approach,
    lesionSide: position.lesionSide,
    patientTurned: position.changed,
    dissectionMin: minutesIfTold(times.firstIncisionAt, times.dissectionEndAt),
    plane: dissection.plane,
    muscleInView: dissection.muscleInView,
    unevenPoints: unevenPoints(dissection),
    orientationLeftLost: orientationLeftLost(dissection),
  };
}

/** With two routes and two fluids nobody knows which went where: then it is not said. */
function viscousThroughKnife({ routes, fluids }: NonNullable<CaseFields['injection']>) {
  if (routes === undefined || fluids === undefined) return undefined;
  if (!routes.includes('through-knife')) return false;
  const viscous = fluids.filter((fluid) => VISCOUS_FLUIDS.includes(fluid)).length;
  return viscous > 0 && (routes.length === 1 || viscous === fluids.length);
}

function unevenPoints({ pauses }: Dissection): number | undefined {
  if (pauses === undefined || pauses.length === 0) return undefined;
  return Math.max(...pauses.map((pause) => Math.abs(pause.leftPercent - pause.rightPercent)));
}

function orientationLeftLost({ incidents }: Dissection): boolean | undefined {
  const kinds = incidents?.map(({ kind }) => kind);
  return kinds && kinds.lastIndexOf('orientation-lost') > kinds.lastIndexOf('desufflation');
}
