import { sha256 } from '../../src/kernel/index.js';
import type { CaseJournal, JournalEntry, StateToStore } from '../../src/pipeline/index.js';

/** A message of an invented unit; its bytes need not be a case, the store never reads them. */
export function entry(caseId: string, revision = 1, text = `{"revision":${revision}}`) {
  const bytes = new TextEncoder().encode(text);
  return {
    caseId,
    kind: 'case',
    source: 'unit-a',
    naturalKey: '',
    revision,
    sentAt: '2026-03-02T09:30:00+01:00',
    hash: sha256(bytes),
    bytes,
    receivedAt: '2026-03-02T08:30:05.125Z',
  } as const satisfies JournalEntry;
}

export function state(caseId: string, number = 1, version = `{"state":${number}}`): StateToStore {
  return {
    caseId,
    source: 'unit-a',
    state: number,
    version,
    facts: {
      caseId,
      state: number,
      source: 'unit-a',
      unit: null,
      organ: 'stomach',
      site: null,
      operator: 'op-1',
      traineePercent: null,
      scopeInAt: '2026-03-02T08:00:00+01:00',
      resectionOutcome: 'complete',
      technique: 'esd',
      pieces: 1,
      endoscopicallyComplete: true,
      lesionLongAxisMm: 22.5,
      specimenLongAxisMm: 31,
      specimenShortAxisMm: 24,
      specimenAreaCm2: null,
      procedureMin: 75,
      dissectionMin: null,
      speedCm2PerH: null,
      defectCircumferencePercent: null,
      strictureFlag: null,
      fibrosis: null,
      intraproceduralBleeding: null,
      muscleInjury: null,
      perforation: false,
      specimenRetrieved: null,
      pathologyStatus: null,
      pathologyReportedAt: null,
      horizontalMargin: null,
      verticalMargin: null,
      histology: null,
      invasionDepth: null,
      curabilityRule: 'esge-esd-2022',
      curabilityClass: null,
      curabilityGroup: null,
      withdrawn: false,
      awaitsPathology: true,
      resectedOn: '2026-03-02',
      tumour: null,
      sizeBand: '20-to-29-mm',
      traineeBand: 'not-told',
      pathologyDays: null,
      firstCheckState: 'not-planned',
      firstCheckOn: null,
      firstCheckTiming: null,
      firstCheckLatestOn: null,
      recurrenceOn: null,
      lastCheckOn: null,
      lastKnownAliveOn: null,
      deathOn: null,
      enBloc: 'yes',
      r0: 'missing',
      curative: 'missing',
      intraproceduralPerforation: 'no',
      delayedPerforation: 'window-open',
      bleeding28d: 'window-open',
      bleeding6h30d: 'not-applicable',
      bleeding30dCsdb: 'window-open',
      stricture: 'not-applicable',
      conversionToSurgery: 'window-open',
      death30d: 'window-open',
      readmission30d: 'window-open',
      adverseEvent30d: 'window-open',
      residualOrRecurrence: 'not-applicable',
    },
    searchKeys: { patient: `p-${caseId}` },
    followUps: { patientKey: `p-${caseId}`, rows: [] },
  };
}

/** What the pipeline does with a message that changes the case. */
export const accept =
  (caseId: string, number = 1) =>
  async (journal: CaseJournal): Promise<void> => {
    await journal.append(entry(caseId, number));
    await journal.saveState(state(caseId, number));
  };
