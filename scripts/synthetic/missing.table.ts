import { INVENTED } from './sources.table.js';

/** A part of a message that its sender leaves out now and then; a JSON Pointer (RFC 6901). */
export interface LeftOut {
  readonly at: string;
  /** Of 100 messages that would have it. */
  readonly percent: number;
  readonly from: string;
}

const leftOut = (at: string, percent: number): LeftOut => ({ at, percent, from: INVENTED });

/** Each on its own; none on which a record cannot stand. */
export const LEFT_OUT: Readonly<Record<'case' | 'pathology' | 'examination', readonly LeftOut[]>> =
  {
    case: [
      leftOut('/lesion/shortAxisMm', 6),
      leftOut('/lesion/paris', 8),
      leftOut('/lesion/predictedDepth', 22),
      leftOut('/dissection/fibrosis', 12),
      leftOut('/safety/muscleInjury', 15),
      leftOut('/safety/perforation', 3),
      leftOut('/safety/bleeding', 9),
      leftOut('/specimen/shortAxisMm', 7),
      leftOut('/specimen/longAxisMm', 5),
      leftOut('/times/firstIncisionAt', 6),
      leftOut('/times/firstInjectionAt', 14),
      leftOut('/defect', 20),
      leftOut('/before/asaClass', 10),
      leftOut('/before/haemodialysis', 18),
      leftOut('/before/antithrombotics', 4),
      leftOut('/before/helicobacterPylori', 30),
      leftOut('/before/biopsyResult', 9),
      leftOut('/resection/technique', 5),
      leftOut('/resection/complete', 4),
      leftOut('/equipment/generator', 35),
      leftOut('/after', 25),
      leftOut('/patient/bornOn', 8),
    ],
    pathology: [
      leftOut('/findings/ly', 5),
      leftOut('/findings/v', 6),
      leftOut('/findings/budding', 18),
      leftOut('/findings/smDepthUm', 4),
      leftOut('/findings/ulcer', 12),
      leftOut('/findings/hm', 1.5),
      leftOut('/findings/vm', 1.5),
      leftOut('/findings/sizeMm', 4),
      leftOut('/specimen/receivedAt', 10),
    ],
    examination: [
      leftOut('/scar/biopsy', 8),
      leftOut('/quality/inspectionMin', 40),
      leftOut('/newLesions', 12),
      leftOut('/next', 25),
    ],
  };
