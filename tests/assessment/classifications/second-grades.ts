import type { Choices, SecondWriting } from '../../support/every-question.js';

export interface Event {
  readonly intervention: string;
  readonly generalAnaesthesia: boolean;
  readonly transfusion: boolean;
  readonly drugsBeyondGradeI: boolean;
  readonly emergencyVisit: boolean;
  readonly death: boolean;
  readonly admissionHours: number;
  readonly observationHours: number;
  readonly criticalCare: string;
}

// Source: Nass KJ et al. Gastrointest Endosc 2022;95:1078-1085, table as reproduced (none to IIIa),
// IIIb by complement (second source), IVa to V from memory, in plain words.
function agree(e: Event): string {
  if (e.death) return 'V';
  if (e.criticalCare === 'multi-organ') return 'IVb';
  if (e.criticalCare === 'single-organ') return 'IVa';
  if (e.intervention === 'surgical') return 'IIIb';
  if (e.intervention !== 'none') return 'IIIa';
  if (e.transfusion || e.drugsBeyondGradeI || e.admissionHours > 24) return 'II';
  if (e.emergencyVisit || e.admissionHours > 0 || e.observationHours >= 3) return 'I';
  return 'none';
}

// Source: Dindo D et al. Ann Surg 2004;240:205-213, table as reproduced: grade III is divided by
// the anaesthesia; any deviation from the normal course is grade I.
function clavienDindo(e: Event): string {
  if (e.death) return 'V';
  if (e.criticalCare === 'multi-organ') return 'IVb';
  if (e.criticalCare === 'single-organ') return 'IVa';
  if (e.intervention !== 'none') return e.generalAnaesthesia ? 'IIIb' : 'IIIa';
  if (e.transfusion || e.drugsBeyondGradeI) return 'II';
  if (e.emergencyVisit || e.admissionHours > 0 || e.observationHours > 0) return 'I';
  return 'none';
}

const FLAGS = [false, true];
const EVENTS: Choices<Event> = {
  intervention: ['none', 'endoscopic', 'radiological', 'surgical'],
  generalAnaesthesia: FLAGS,
  transfusion: FLAGS,
  drugsBeyondGradeI: FLAGS,
  emergencyVisit: FLAGS,
  death: FLAGS,
  admissionHours: [0, 0.5, 1, 23, 24, 24.5, 25],
  observationHours: [0, 1, 2.5, 3, 4],
  criticalCare: ['none', 'single-organ', 'multi-organ'],
};

export const AGREE_SECOND: SecondWriting<Event> = { id: 'agree', says: agree, choices: EVENTS };
export const CLAVIEN_DINDO_SECOND: SecondWriting<Event> = {
  id: 'clavien-dindo',
  says: clavienDindo,
  choices: EVENTS,
};
