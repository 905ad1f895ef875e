import type { CaseFields } from '../../contract/index.js';
import { minutesIfTold } from './spans.js';

type Safety = NonNullable<CaseFields['safety']>;
type Drugs = NonNullable<NonNullable<CaseFields['before']>['antithrombotics']>;

/** Bleeding, injury, the end of the procedure and the specimen; `undefined` was not told. */
export interface ClosingFacts {
  readonly vesselsSealedAtSpecimenOnly: boolean | undefined;
  readonly clipOnVesselDuring: boolean | undefined;
  readonly muscleInjury: Safety['muscleInjury'];
  readonly closure: NonNullable<Safety['closure']>['kind'] | undefined;
  readonly perforated: boolean | undefined;
  readonly perforationDescribed: boolean;
  readonly inspectionTimeTold: boolean;
  readonly retrievalTimeTold: boolean;
  /** Minutes from retrieval to inspection; negative when inspected first. */
  readonly inspectedAfterRetrievalMin: number | undefined;
  readonly visibleVessels: boolean | undefined;
  readonly vesselsCoagulated: boolean | undefined;
  readonly prophylaxisGiven: boolean | undefined;
  readonly dualAntiplatelet: 'with advice' | 'without advice' | undefined;
  readonly specimenRetrieved: boolean | undefined;
  readonly specimenPinned: boolean | undefined;
  readonly specimenOriented: boolean | undefined;
  /** Minutes from retrieval to fixation; negative when fixed first. */
  readonly fixedAfterRetrievalMin: number | undefined;
  readonly piecesListed: number | undefined;
}

/**
 * Reads the end of the procedure from a case.
 *
 * Source: the fields of the case; "both continued" as common practice counts them.
 */
export function closingFacts({ safety = {}, specimen, before }: CaseFields): ClosingFacts {
  const { perforation, siteInspection, stricturePrevention } = safety;
  return {
    vesselsSealedAtSpecimenOnly: sealedAtSpecimenOnly(safety),
    clipOnVesselDuring: safety.clips?.some(
      ({ phase, purpose }) => phase === 'during' && purpose === 'vessel',
    ),
    muscleInjury: safety.muscleInjury,
    closure: safety.closure?.kind,
    perforated: perforation?.occurred,
    perforationDescribed: perforation?.sizeMm !== undefined || perforation?.at !== undefined,
    inspectionTimeTold: siteInspection?.inspectedAt !== undefined,
    retrievalTimeTold: specimen?.retrievedAt !== undefined,
    inspectedAfterRetrievalMin: minutesIfTold(specimen?.retrievedAt, siteInspection?.inspectedAt),
    visibleVessels: siteInspection?.visibleVessels,
    vesselsCoagulated: siteInspection?.coagulated,
    prophylaxisGiven: stricturePrevention && stricturePrevention.length > 0,
    dualAntiplatelet: dualAntiplatelet(before?.antithrombotics ?? []),
    specimenRetrieved: specimen?.retrieved,
    specimenPinned: specimen?.pinned,
    specimenOriented: specimen?.oriented,
    fixedAfterRetrievalMin: minutesIfTold(specimen?.retrievedAt, specimen?.fixedAt),
    piecesListed: specimen?.pieces?.length,
  };
}

/** A vessel whose place was not told may have been sealed at its root. */
function sealedAtSpecimenOnly({ vessels }: Safety): boolean | undefined {
  if (vessels === undefined) return undefined;
  return vessels.length > 0 && vessels.every(({ site }) => site === 'specimen-side');
}

function dualAntiplatelet(drugs: Drugs): ClosingFacts['dualAntiplatelet'] {
  const both = drugs.filter(
    ({ class: drugClass, decision }) =>
      decision === 'continued' && (drugClass === 'aspirin' || drugClass === 'p2y12-inhibitor'),
  );
  if (new Set(both.map((drug) => drug.class)).size < 2) return undefined;
  return both.some(({ advisedBy }) => advisedBy === 'cardiologist')
    ? 'with advice'
    : 'without advice';
}
