import { ESGE_BARRETT_2023 } from '../esge-barrett-2023.table.js';
import type { FollowUpRow } from '../follow-ups.table.js';
import type { ExaminationFacts } from './plan-facts.js';
import { askTrack, type Track } from './track.js';

/**
 * The series that an examination turns another into: neoplasia at the scar opens the rule of a
 * local risk again, Barrett mucosa that is gone or back opens the rule for that.
 *
 * Source: the plan logic of follow-up (derived); Barrett: esgeBarrett2023.
 *
 * @returns undefined where the series goes on
 */
export function turnOf(track: Track, examination: ExaminationFacts): Track | undefined {
  if (!track.turns) return undefined;
  if (examination.recurrence === 'found') return localTrack(track, examination);
  if (track.row === 'BAR-1' && examination.barrettLeft === false) {
    return eradicated(track, examination);
  }
  const afterEradication = track.row === 'BAR-2' || track.row === 'BAR-3';
  if (afterEradication && examination.barrettLeft === true) {
    return { ...again(track, examination), row: 'BAR-1', says: ['Barrett mucosa is back'] };
  }
  return undefined;
}

/** The row of a local risk by the lineage that the rule was told. */
const LOCAL_ROW: Readonly<Record<string, FollowUpRow>> = {
  squamous: 'OES-2',
  barrett: 'BAR-1',
  gastric: 'GAS-2',
  colorectal: 'COL-2',
};

function localTrack(track: Track, examination: ExaminationFacts): Track {
  const { tumour, organ } = track.inputs;
  const byOrgan = organ === 'duodenum' ? 'DUO-1' : undefined;
  return {
    ...again(track, examination),
    row: byOrgan ?? LOCAL_ROW[String(tumour)] ?? 'clinician',
    says: ['neoplasia at the scar'],
    local: true,
    ...(examination.treated ? {} : { state: 'to-confirm' }),
    reasons: examination.treated ? ['recurrence'] : ['recurrence', 'recurrence-untreated'],
  };
}

function eradicated(track: Track, { on }: ExaminationFacts): Track {
  const { histology = null } = track.inputs;
  return askTrack({
    rule: ESGE_BARRETT_2023,
    told: { stage: 'later', eradicationDate: on, baselineHistology: histology },
    anchorOn: on,
    local: false,
  });
}

function again(track: Track, { on }: ExaminationFacts): Track {
  const { named, state, ...rest } = track;
  return { ...rest, cites: [], anchorOn: on, reasons: [] };
}
