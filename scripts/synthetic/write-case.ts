import type { CaseFields } from '../../src/contract/index.js';
import { addDays } from '../../src/kernel/index.js';
import { LUMEN_MM } from './draw-procedure.js';
import type { DrawnCase } from './drawn-case.js';
import { envelopeOf, laboratoryOf, operatorOf, sessionOf, unitOf } from './identifiers.js';
import { dayAt, instantAt, MINUTE_MS } from './instants.js';

type Part<K extends keyof CaseFields> = NonNullable<CaseFields[K]>;

/** The message of the finished dissection, with every part that the unit ever tells. */
export function writeCase(drawn: DrawnCase): CaseFields {
  const { unit, times, lesion, procedure } = drawn;
  const wasCut = procedure.outcome !== 'not-started';
  const { source, case: own, patient } = envelopeOf(drawn);
  const sentMs = times.outMs + drawn.chance('sent').whole(5, 60) * MINUTE_MS;
  return {
    schema: 'case/1',
    source,
    case: own,
    patient: { ...patient, ...bornOf(drawn), sex: drawn.patient.sex },
    revision: 1,
    sentAt: instantAt(sentMs, unit.offsetHours),
    session: sessionOf(drawn),
    lesionsInSession: lesion.lesionsInSession,
    unit: unitOf(drawn),
    before: beforeOf(drawn),
    lesion: lesionOf(drawn),
    times: timesOf(drawn),
    equipment: equipmentOf(drawn),
    ...(wasCut ? { dissection: dissectionOf(drawn), injection: INJECTION } : {}),
    safety: safetyOf(drawn),
    resection: resectionOf(drawn),
    ...(procedure.specimen === undefined ? {} : { defect: defectOf(drawn) }),
    specimen: specimenOf(drawn),
    team: teamOf(drawn),
    after: { destination: 'ward', diet: 'clear-fluids', informed: ['patient'] },
  };
}

function bornOf({ unit, times, patient, chance }: DrawnCase) {
  const on = dayAt(times.inMs, unit.offsetHours);
  const { ageYears } = patient;
  const sinceBirthday = chance('birthday').whole(1, 360);
  const birthday = addDays(on, -sinceBirthday);
  const year = Number(birthday.slice(0, 4)) - ageYears;
  const day = birthday.slice(4) === '-02-29' ? '-02-28' : birthday.slice(4);
  return { ageYears, bornOn: `${year}${day}` };
}

function beforeOf({ patient, lesion, tissue, chance }: DrawnCase): Part<'before'> {
  const { drug, drugStopped } = patient;
  const decision = drugStopped ? 'stopped' : 'continued';
  const isUpper = lesion.organ !== 'colon' && lesion.organ !== 'rectum';
  const carcinoma = lesion.tumour === 'squamous' ? 'carcinoma-squamous' : 'adenocarcinoma';
  const biopsy = chance('biopsy').happens(15) ? 'indefinite' : undefined;
  const seen =
    tissue.histology === 'carcinoma'
      ? carcinoma
      : tissue.histology === 'neuroendocrine-tumour'
        ? 'neuroendocrine-tumour'
        : tissue.histology;
  return {
    indications: [
      lesion.attempted
        ? 'residual-or-recurrent-lesion'
        : isUpper
          ? 'early-carcinoma'
          : 'large-laterally-spreading-tumour',
    ],
    biopsyResult: biopsy ?? seen,
    earlierAttempts: lesion.attempted ? [{ kind: 'emr' }] : [],
    asaClass: patient.asa,
    haemodialysis: patient.haemodialysis,
    ...(lesion.organ === 'stomach'
      ? { helicobacterPylori: chance('helicobacter').happens(40) ? 'positive' : 'eradicated' }
      : {}),
    antithrombotics: drug === 'none' ? [] : [{ class: drug, decision }],
    sedation: chance('sedation').happens(30) ? 'general-anaesthesia' : 'deep',
    ...(isUpper ? {} : { bowelPreparation: { right: 2, transverse: 3, left: 3 } }),
  };
}

function lesionOf({ lesion, tissue, procedure, chance }: DrawnCase): CaseFields['lesion'] {
  const { organ, site, tumour, longMm, shortMm } = lesion;
  const isBowel = organ === 'colon' || organ === 'rectum';
  const looks = chance('looks');
  const isRight = looks.happens(78);
  const isDeep = tissue.depth === 'sm' || tissue.depth === 'mp';
  return {
    organ,
    site,
    ...(organ === 'stomach' ? { stomachThird: THIRD[site] ?? 'middle' } : {}),
    longAxisMm: longMm,
    shortAxisMm: shortMm,
    tumour,
    paris: isBowel ? '0-IIa' : looks.happens(60) ? '0-IIc' : '0-IIa',
    ...(isBowel && tumour === 'colorectal'
      ? { lstType: looks.happens(55) ? ('lst-g-m' as const) : ('lst-ng-f' as const) }
      : {}),
    ...(organ === 'oesophagus'
      ? { circumferencePercent: Math.max(5, procedure.woundPercent - 15) }
      : {}),
    predictedDepth: isDeep === isRight ? 'superficial-submucosal' : 'intramucosal',
    chromoendoscopy: ['image-enhanced'],
  };
}

/** Thirds of the stomach by site. */
const THIRD: Readonly<Record<string, 'upper' | 'middle' | 'lower'>> = {
  'stomach-cardia': 'upper',
  'stomach-fundus': 'upper',
  'stomach-body': 'middle',
  'stomach-angulus': 'middle',
  'stomach-antrum': 'lower',
  'stomach-pylorus': 'lower',
};

function timesOf({ unit, times, procedure }: DrawnCase): CaseFields['times'] {
  const at = (ms: number): string => instantAt(ms, unit.offsetHours);
  const { outcome } = procedure;
  return {
    scopeInAt: at(times.inMs),
    ...(outcome === 'not-started'
      ? {}
      : { firstInjectionAt: at(times.injectionMs), firstIncisionAt: at(times.incisionMs) }),
    ...(procedure.specimen === undefined ? {} : { dissectionEndAt: at(times.endMs) }),
    scopeOutAt: at(outcome === 'not-started' ? times.injectionMs : times.outMs),
  };
}

function equipmentOf({ lesion }: DrawnCase): Part<'equipment'> {
  const isBowel = lesion.organ === 'colon' || lesion.organ === 'rectum';
  return {
    endoscope: {
      kind: isBowel ? 'colonoscope' : 'gastroscope',
      channelMm: 3.2,
      waterJet: true,
      cap: 'straight',
    },
    knives: [{ kind: 'needle', injectionChannel: true, minChannelMm: 2.8 }],
    generator: [
      { purpose: 'incision', mode: 'pulsed-cut', powerW: 50 },
      { purpose: 'dissection', mode: 'forced-coagulation', powerW: 40 },
    ],
    gas: 'carbon-dioxide',
  };
}

const INJECTION: Part<'injection'> = {
  fluids: ['glycerol'],
  dye: 'indigo-carmine',
  routes: ['needle'],
  repeated: true,
};

function dissectionOf({ lesion, chance }: DrawnCase): Part<'dissection'> {
  const lifts = { F0: 'lifted', F1: 'partly-lifted', F2: 'not-lifted' } as const;
  return {
    lifting: lifts[lesion.fibrosis],
    fibrosis: lesion.fibrosis,
    plane: 'deep-submucosa',
    traction: chance('traction').happens(35) ? ['clip-with-line'] : [],
  };
}

function safetyOf({ lesion, procedure }: DrawnCase): Part<'safety'> {
  const { perforated, muscleInjury, bleeding, prophylaxis, specimen } = procedure;
  const isTreated = prophylaxis !== 'none';
  return {
    bleeding,
    muscleInjury,
    perforation: { occurred: perforated },
    closure: perforated ? { kind: 'clips', extent: 'complete' } : { kind: 'none' },
    siteInspection: { visibleVessels: bleeding !== 'none', coagulated: bleeding !== 'none' },
    ...(lesion.organ === 'oesophagus' && specimen !== undefined
      ? { stricturePrevention: isTreated ? [{ measure: prophylaxis }] : [] }
      : {}),
  };
}

function resectionOf({ procedure, chance }: DrawnCase): CaseFields['resection'] {
  const { outcome, hybrid, pieces, complete } = procedure;
  if (outcome === 'not-started') return { outcome, reason: 'not-lifting' };
  const technique = hybrid ? 'hybrid-esd' : 'esd';
  if (outcome === 'abandoned') {
    const reason = chance('reason').happens(60) ? 'severe-fibrosis' : 'deep-invasion-suspected';
    return { outcome, technique, complete: false, reason };
  }
  return { outcome, technique, pieces, complete };
}

function defectOf({ procedure }: DrawnCase): Part<'defect'> {
  const { longMm = 1, shortMm = 1 } = procedure.specimen ?? {};
  return {
    longAxisMm: longMm + 2,
    shortAxisMm: shortMm + 2,
    circumferencePercent: procedure.woundPercent,
    lumenDiameterMm: LUMEN_MM,
  };
}

function specimenOf(drawn: DrawnCase): Part<'specimen'> {
  const { specimen, outcome, pieces } = drawn.procedure;
  if (specimen === undefined) return { retrieved: false };
  const axes = { longAxisMm: specimen.longMm, shortAxisMm: specimen.shortMm };
  const part = Math.max(2, Math.floor(specimen.shortMm / 2));
  return {
    retrieved: true,
    oriented: outcome === 'en-bloc',
    pinned: true,
    ...(outcome === 'en-bloc'
      ? axes
      : {
          pieces: Array.from({ length: pieces }, () => ({ longAxisMm: part, shortAxisMm: part })),
        }),
    fixative: 'formalin-10-percent-buffered',
    laboratory: laboratoryOf(drawn),
  };
}

function teamOf(drawn: DrawnCase): CaseFields['team'] {
  const { phase } = drawn.procedure;
  const first = drawn.unit.operators[0]?.number;
  const operator = operatorOf(drawn);
  if (phase === 'from-forty' || drawn.operator.number === first) return { operator };
  const traineePercent = phase === 'first-twenty' ? 50 : 90;
  return { operator, supervisor: operatorOf(drawn, first), traineePercent };
}
