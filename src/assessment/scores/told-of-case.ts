import type { AntithromboticClass, CaseFields } from '../../contract/index.js';
import type { Told } from '../../rules/index.js';
import {
  ANTIPLATELETS,
  KIND_OF_CLASS,
  LOWER_THIRD_OF_SITE,
  MORPHOLOGY_OF_LST,
  MORPHOLOGY_OF_PARIS,
  PLACE_OF_SITE,
} from './case-words.table.js';
import type { Place } from './colorectal-fields.table.js';
import { drugFlags } from './drug-list.js';

/**
 * What a case tells of the BEST-J score. The size is that seen through the endoscope.
 *
 * Source: bestJCalculator, use of the items.
 */
export function bestJTold({ before, lesion, lesionsInSession }: CaseFields): Told {
  const drugs = before?.antithrombotics?.map((drug) => ({
    kind: KIND_OF_CLASS[drug.class],
    interrupted: drug.decision !== 'continued' || drug.bridged === true,
  }));
  return {
    ...drugFlags(drugs),
    haemodialysis: before?.haemodialysis,
    lowerThird: lowerThird(lesion),
    multiple: lesionsInSession === undefined ? undefined : lesionsInSession > 1,
    sizeMm: lesion.longAxisMm,
  };
}

/**
 * What a case tells of the Limoges score. A drug that was stopped counts as used.
 *
 * Source: albouys2024, abstract.
 */
export function limogesTold(fields: CaseFields): Told {
  const drugs = fields.before?.antithrombotics;
  return {
    age: ageYears(fields),
    antithrombotic: drugs === undefined ? undefined : drugs.length > 0,
    location: placeOf(fields),
    sizeMm: fields.lesion.longAxisMm,
    asa: fields.before?.asaClass,
  };
}

/**
 * What a case tells of the Korean bleeding score.
 *
 * Source: korea2019, abstract.
 */
export function krBleedingTold(fields: CaseFields): Told {
  return {
    location: placeOf(fields),
    sizeMm: fields.lesion.longAxisMm,
    antiplatelet: antiplatelet(fields.before?.antithrombotics?.map((drug) => drug.class)),
  };
}

/**
 * What a case tells of the difficulty score of 2021.
 *
 * Source: li2021, abstract.
 */
export function difficulty2021Told(fields: CaseFields): Told {
  return { ...difficultyTold(fields), dentateLine: dentateLine(fields.lesion) };
}

/**
 * What a case tells of the difficulty score of 2023. A field that a case leaves out is not known
 * here, also where the score reads it as "no".
 *
 * Source: li2023, abstract.
 */
export function difficulty2023Told(fields: CaseFields): Told {
  const { nice } = fields.lesion;
  return {
    ...difficultyTold(fields),
    precedingBiopsy: precedingBiopsy(fields),
    nice: nice === undefined ? null : Number(nice),
  };
}

/**
 * What a case tells of the difficulty score of 2019.
 *
 * Source: matsumoto2019, abstract.
 */
export function matsumotoTold(fields: CaseFields): Told {
  return {
    emrScar: fields.before?.earlierAttempts?.some(({ kind }) => kind === 'emr'),
    sizeMm: fields.lesion.longAxisMm,
    location: placeOf(fields),
    morphology: morphology(fields.lesion),
  };
}

function difficultyTold(fields: CaseFields): Told {
  return {
    sizeMm: fields.lesion.longAxisMm,
    circumferencePercent: fields.lesion.circumferencePercent,
    location: placeOf(fields),
    lst: lstKind(fields.lesion),
  };
}

/** Whole years from birth to the day on which the scope went in, by the calendar. */
function ageYears({ patient, times }: CaseFields): number | undefined {
  const { bornOn } = patient;
  if (bornOn === undefined) return patient.ageYears;
  const on = times.scopeInAt.slice(0, 'YYYY-MM-DD'.length);
  const years = Number(on.slice(0, 4)) - Number(bornOn.slice(0, 4));
  return on.slice(4) < bornOn.slice(4) ? years - 1 : years;
}

function placeOf({ lesion }: CaseFields): Place | undefined {
  if (lesion.site !== undefined) return PLACE_OF_SITE[lesion.site];
  return lesion.organ === 'rectum' ? 'rectum' : 'colon';
}

type Lesion = CaseFields['lesion'];

function lowerThird({ stomachThird, site }: Lesion): boolean | undefined {
  if (stomachThird !== undefined) return stomachThird === 'lower';
  return site === undefined ? undefined : LOWER_THIRD_OF_SITE[site];
}

function lstKind(lesion: Lesion): 'G' | 'NG' | 'none' | undefined {
  switch (morphology(lesion)) {
    case 'LST-G':
      return 'G';
    case 'LST-NG-F':
    case 'LST-NG-PD':
      return 'NG';
    case 'protruded':
    case 'depressed':
      return 'none';
    case undefined:
      return undefined;
  }
}

function morphology({ lstType, paris }: Lesion) {
  if (lstType !== undefined) return MORPHOLOGY_OF_LST[lstType];
  return paris === undefined ? undefined : MORPHOLOGY_OF_PARIS[paris];
}

/** The dentate line lies in the rectum: nothing in the colon reaches it. */
function dentateLine({ organ, touchesDentateLine }: Lesion): boolean | null {
  return touchesDentateLine ?? (organ === 'colon' ? false : null);
}

function precedingBiopsy({ before }: CaseFields): boolean | null {
  const attempts = before?.earlierAttempts;
  if (attempts?.some(({ kind }) => kind === 'biopsy')) return true;
  if (before?.biopsyResult !== undefined) return before.biopsyResult !== 'not-taken';
  return attempts === undefined ? null : false;
}

function antiplatelet(classes: readonly AntithromboticClass[] | undefined) {
  if (classes === undefined) return undefined;
  const taken = new Set(classes.filter((drug) => ANTIPLATELETS.includes(drug)));
  if (taken.size === 0) return 'none';
  return taken.size === 1 && taken.has('aspirin') ? 'aspirin-alone' : 'other-or-combined';
}
