import { keyedUuid, roundTo } from '../../src/kernel/index.js';
import {
  ANSWERS,
  BASE,
  COMPLICATIONS,
  COMPUTATIONS,
  type CodeRef,
  codeableConcept,
  INJECTED_MIXTURE,
  ITEMS,
  lesionCondition,
  localRef,
  REPORT_KINDS,
  REQUEST_KINDS,
  SPECIMEN_PROCESSING,
  SPECIMEN_TYPE,
  STRICTURE_FLAGS,
  STRUCTURE,
  SUBSTANCES,
  TEAM_FUNCTIONS,
  UNITS,
  WORD_CODES,
} from '../../src/terminology/index.js';
import type { Draft } from '../support/consistent-case.js';
import { ANSWER_ROWS } from './answer-sources.js';
import type { FixedSource, Told } from './explain.js';
import { CAUTION, paragraphsOf, saysOnlyFacts } from './plain-words.js';
import { CASE_ID, keyOf } from './records.js';

type Says = FixedSource['says'];
type Row = readonly [place: string, path: string, says: Says];

const fields = ({ version }: Told): Draft => version.now.esdCase.fields;
const concepts =
  (...refs: readonly CodeRef[]): Says =>
  (_resource, { settings }) =>
    refs.map((ref) => codeableConcept(ref, settings.licences));
const just =
  (...values: readonly unknown[]): Says =>
  () =>
    values;

/** Our own identifier: `base/type` and `case[.key]`. Source: the design of identifiers. */
const ownName = (resource: Draft, { identifierBase }: Told['settings']) => {
  const key = keyOf(resource);
  return {
    system: `${identifierBase}/${resource.resourceType.toLowerCase()}`,
    value: key === '' ? CASE_ID : `${CASE_ID}.${key}`,
  };
};
const ownIdentifier: Says = (resource, { settings }) => [ownName(resource, settings)];

/** References to resources of a type, by their keyed ids; `*` in the key any characters. */
const to =
  (type: string, key: string): Says =>
  (_resource, { settings, resources }) => {
    const fits = new RegExp(`^${key.replaceAll('*', '.*')}$`);
    return resources
      .filter((r) => r.resourceType === type && fits.test(keyOf(r)))
      .map((r) => {
        const { system, value } = ownName(r, settings);
        const id = keyedUuid(settings.secret, system, value);
        return { reference: `urn:uuid:${id}`, type };
      });
  };

/** Profile by type and key; the first row that fits. */
const PROFILES: readonly (readonly [RegExp, string])[] = [
  [/^Condition lesion$/, 'dr-lesion'],
  [/^Condition /, 'dr-complication'],
  [/^Device /, 'dr-device'],
  [/^DiagnosticReport /, 'dr-endoscopy-report'],
  [/^Media /, 'dr-media'],
  [/^MedicationAdministration injectate$/, 'dr-injectate'],
  [/^MedicationAdministration /, 'dr-drug-given'],
  [/^MedicationStatement /, 'dr-antithrombotic'],
  [/^Observation (procedure-duration|dissection-duration|specimen-area)$/, 'dr-computed'],
  [/^Observation (dissection-speed|stricture-risk)$/, 'dr-computed'],
  [/^Observation curability$/, 'dr-curability'],
  [/^Observation (bleeding-risk-score|node-risk|difficulty-score)\./, 'dr-score'],
  [/^Observation /, 'dr-endoscopy-finding'],
  [/^Procedure $/, 'dr-esd-procedure'],
  [/^Procedure /, 'dr-sub-procedure'],
  [/^Provenance /, 'dr-provenance'],
  [/^ServiceRequest /, 'dr-pathology-request'],
  [/^Specimen /, 'dr-specimen'],
];
const profile: Says = (resource, { version }) => {
  const name = `${resource.resourceType} ${keyOf(resource)}`;
  const share = version.now.assessment.defectCircumference;
  const isByWidth = share.kind === 'determined' && share.value.from === 'width';
  const claimed =
    name === 'Observation defect-circumference' && isByWidth
      ? 'dr-computed'
      : PROFILES.find(([pattern]) => pattern.test(name))?.[1];
  return [`${BASE}/StructureDefinition/${claimed}`];
};

const tag: Says = (_resource, { version }) => [
  { system: `${BASE}/CodeSystem/dr-revision`, code: String(version.version.state) },
];

/** The item that an Observation is about; its key, without the part that tells several apart. */
const item: Says = (resource, { settings }) => {
  const refs: Readonly<Record<string, CodeRef>> = ITEMS;
  const ref = refs[keyOf(resource).split('.')[0] ?? ''];
  return ref === undefined ? [] : [codeableConcept(ref, settings.licences)];
};

/** Codes that a part of an Observation may carry. */
const PART_CODES: readonly CodeRef[] = [
  ...Object.values(ITEMS),
  ...(['bbps-right', 'bbps-transverse', 'bbps-left'] as const).map((code) =>
    localRef({ set: 'bbps', code }),
  ),
  ...(['c', 'm'] as const).map((code) => localRef({ set: 'prague', code })),
];

/** Numbers of the assessment: item, field, decimals that are kept, unit. */
const ASSESSED = [
  { item: 'procedure-duration', field: 'procedureMin', decimals: 1, unit: 'min' },
  { item: 'dissection-duration', field: 'dissectionMin', decimals: 1, unit: 'min' },
  { item: 'specimen-area', field: 'specimenAreaCm2', decimals: 3, unit: 'cm2' },
  { item: 'dissection-speed', field: 'speedCm2PerH', decimals: 3, unit: 'cm2PerH' },
] as const;

const assessed: Says = (resource, { version }) => {
  const row = ASSESSED.find((candidate) => candidate.item === keyOf(resource));
  const finding = row === undefined ? undefined : version.now.assessment[row.field];
  if (row === undefined || finding?.kind !== 'determined') return [];
  return [{ value: roundTo(finding.value, row.decimals), ...UNITS[row.unit] }];
};

const byWidth: Says = (_resource, { version }) => {
  const finding = version.now.assessment.defectCircumference;
  if (finding.kind === 'indeterminate' || finding.value.from === 'operator') return [];
  return [{ value: roundTo(finding.value.percent, 1), ...UNITS.percent }];
};

const strictureFlag: Says = (_resource, { version, settings }) => {
  const finding = version.now.assessment.strictureRisk;
  if (finding?.kind !== 'determined') return [];
  return [codeableConcept(STRICTURE_FLAGS[finding.value.flag], settings.licences)];
};

/** Why a number is absent: which fields would have been needed. */
const missingNote: Says = (
  resource,
  {
    version: {
      now: { assessment },
    },
  },
) => {
  const row = ASSESSED.find((candidate) => candidate.item === keyOf(resource));
  const finding = row === undefined ? assessment.strictureRisk : assessment[row.field];
  return finding?.kind === 'indeterminate'
    ? [{ text: `Not computed, because not recorded: ${finding.missing.join(', ')}.` }]
    : [];
};

const FACTORS = {
  'long-defect': 'the defect is longer than 30 mm',
  'upper-oesophagus': 'it lies in the upper oesophagus',
  'three-quarters-exactly': 'at exactly three quarters published thresholds differ',
};
const factorNote: Says = (_resource, { version }) => {
  const finding = version.now.assessment.strictureRisk;
  if (finding?.kind !== 'determined') return [];
  const said = finding.value.factors.map((name) => FACTORS[name]);
  return [{ text: `Also: ${said.join('; ')}.` }];
};

const method: Says = (_resource, { version, settings }) =>
  Object.values(COMPUTATIONS).map((ref) => {
    const concept = codeableConcept(ref, settings.licences);
    const { rulesVersion } = version.now.assessment;
    const coding = (concept.coding ?? []).map((one) => ({ ...one, version: rulesVersion }));
    return { ...concept, coding };
  });

const mixture: Says = (_resource, told) => {
  const { fluids = [], dye = 'none', adrenaline = false } = fields(told).injection ?? {};
  const fluidRefs: Readonly<Record<string, CodeRef>> = WORD_CODES.fluid;
  const dyeRefs: Readonly<Record<string, CodeRef>> = WORD_CODES.dye;
  const names = [
    ...fluids.map((fluid: string) => fluidRefs[fluid]?.text),
    ...(dye === 'none' ? [] : [dyeRefs[dye]?.text]),
    ...(adrenaline ? [SUBSTANCES.adrenaline.text] : []),
  ].map((name) => String(name).toLowerCase());
  const concept = codeableConcept(INJECTED_MIXTURE, told.settings.licences);
  const text = names.length === 0 ? concept.text : `${concept.text}: ${names.join(', ')}`;
  return [{ ...concept, text }];
};

const lesionCode: Says = (_resource, told) => {
  const { lesion, before } = fields(told);
  const ref = lesionCondition(lesion.organ, before?.biopsyResult, lesion.site);
  return [codeableConcept(ref, told.settings.licences)];
};

const reportCode: Says = (_resource, told) => {
  const refs: Readonly<Record<string, CodeRef>> = REPORT_KINDS['endoscopy-report'];
  const ref = refs[fields(told).lesion.organ];
  return ref === undefined ? [] : [codeableConcept(ref, told.settings.licences)];
};

const esdStatus: Says = (_resource, told) => {
  const { outcome } = fields(told).resection;
  return [{ abandoned: 'stopped', 'not-started': 'not-done' }[String(outcome)] ?? 'completed'];
};
const reportStatus: Says = (_resource, { resources, settings }) => {
  const hasSpecimen = resources.some(({ resourceType }) => resourceType === 'Specimen');
  return [hasSpecimen && settings.endoscopyReport === 'wait' ? 'preliminary' : 'final'];
};
const drugStatus: Says = (resource, told) => {
  const drugs = fields(told).before?.antithrombotics ?? [];
  const [name = ''] = keyOf(resource).split('.');
  const drug = drugs.find((d: Draft) => (d.agent ?? d.class) === name) ?? {};
  if (keyOf(resource).endsWith('.restart')) {
    return [drug.restartedAt === undefined ? 'intended' : 'active'];
  }
  return [drug.decision === 'continued' ? 'active' : 'on-hold'];
};

const text: Says = (resource, told) =>
  paragraphsOf(resource.text.div).every((sentence) => saysOnlyFacts(sentence, told))
    ? [resource.text]
    : [];
const conclusion: Says = (_resource, { resources }) => {
  const main = resources.find((r) => r.resourceType === 'Procedure' && keyOf(r) === '');
  return [[...paragraphsOf(main.text.div), CAUTION].join(' ')];
};

const software: Says = (_resource, { settings }) => [
  {
    type: 'Device',
    identifier: { system: `${BASE}/software`, value: settings.softwareVersion },
    display: `dissection-records ${settings.softwareVersion}`,
  },
];
const provenanceTag: Says = (_resource, { version }) => [
  { system: `${BASE}/CodeSystem/dr-provenance`, code: `${CASE_ID}.${version.version.state}` },
];

const PART_OF = 'http://hl7.org/fhir/StructureDefinition/event-partOf';
const partOf: Says = (resource, told) =>
  to('Procedure', '')(resource, told).map((valueReference) => ({ url: PART_OF, valueReference }));

/** All but the verdict, which may wait for pathology. */
const status: Says = (resource) => (keyOf(resource) === 'curability' ? [] : ['final']);

/** Of all but verdicts and scores, which say more. */
const absence: Says = (resource) =>
  /^(curability|bleeding-risk-score|node-risk|difficulty-score)/.test(keyOf(resource))
    ? []
    : [STRUCTURE.absent.unknown, STRUCTURE.absent.notPerformed];

const ROWS: readonly Row[] = [
  ['* *', 'resourceType', (resource) => [resource.resourceType]],
  ['* *', 'meta.profile[]', profile],
  ['* *', 'meta.tag[]', tag],
  ['* *', 'identifier[]', ownIdentifier],
  ['* *', 'subject.type', just('Patient')],
  ['Procedure ', 'text', text],
  ['DiagnosticReport *', 'text', text],
  ['DiagnosticReport *', 'conclusion', conclusion],
  ['DiagnosticReport *', 'extension[]', partOf],
  ['DiagnosticReport *', 'status', reportStatus],
  ['DiagnosticReport *', 'category[]', just(STRUCTURE.endoscopyReportCategory)],
  ['DiagnosticReport *', 'code', reportCode],
  ['DiagnosticReport *', 'specimen[]', to('Specimen', '*')],
  ['DiagnosticReport *', 'result[]', to('Observation', '*')],
  ['DiagnosticReport *', 'media[].link', to('Media', '*')],
  ['Procedure ', 'status', esdStatus],
  ['Procedure ', 'statusReason', just(STRUCTURE.absent.unknown)],
  ['Procedure ', 'category', just(STRUCTURE.procedureCategory)],
  ['Procedure ', 'performer[].function', concepts(...Object.values(TEAM_FUNCTIONS))],
  ['Procedure *', 'reasonReference[]', to('Condition', 'lesion')],
  ['Procedure ', 'report[]', to('DiagnosticReport', 'endoscopy')],
  ['Procedure ', 'complication[]', concepts(COMPLICATIONS.perforation)],
  ['Procedure ', 'complicationDetail[]', to('Condition', 'perforation')],
  ['Procedure ', 'usedReference[]', to('Device', '*')],
  ['Procedure vessel.*', 'partOf[]', to('Procedure', '')],
  ['Procedure vessel.*', 'status', just('completed')],
  ['Condition *', 'clinicalStatus', just(STRUCTURE.conditionClinical.active)],
  ['Condition lesion', 'verificationStatus', just(STRUCTURE.conditionVerification.provisional)],
  ['Condition perforation', 'verificationStatus', just(STRUCTURE.conditionVerification.confirmed)],
  ['Condition *', 'category[]', just(STRUCTURE.conditionCategory.encounterDiagnosis)],
  ['Condition lesion', 'code', lesionCode],
  ['Condition perforation', 'code', concepts(COMPLICATIONS.perforation)],
  ['Condition perforation', 'extension[]', partOf],
  ['Specimen *', 'status', just('available')],
  ['Specimen *', 'type', concepts(SPECIMEN_TYPE)],
  ['Specimen *', 'request[]', to('ServiceRequest', 'pathology')],
  ['Specimen *', 'parent[]', to('Specimen', 'specimen')],
  ['Specimen *', 'processing[].procedure', concepts(SPECIMEN_PROCESSING['formalin-fixed'])],
  ['ServiceRequest *', 'status', just('active')],
  ['ServiceRequest *', 'intent', just('order')],
  ['ServiceRequest *', 'category[]', just(STRUCTURE.laboratoryRequest)],
  ['ServiceRequest *', 'code', concepts(REQUEST_KINDS['histopathology-esd'])],
  ['ServiceRequest *', 'reasonReference[]', to('Condition', 'lesion')],
  ['ServiceRequest *', 'supportingInfo[]', to('Procedure', '')],
  ['ServiceRequest *', 'specimen[]', to('Specimen', 'specimen')],
  [
    'Device generator',
    'type',
    concepts(localRef({ set: 'device-type', code: 'electrosurgical-generator' })),
  ],
  [
    'Device *',
    'property[].type',
    concepts(
      localRef({ set: 'device-property', code: 'injection-channel' }),
      localRef({ set: 'device-property', code: 'minimum-channel' }),
    ),
  ],
  ['Media *', 'status', just('completed')],
  ['Media *', 'partOf[]', to('Procedure', '')],
  ['MedicationAdministration *', 'status', just('completed')],
  ['MedicationAdministration *', 'partOf[]', to('Procedure', '')],
  ['MedicationAdministration injectate', 'medicationCodeableConcept', mixture],
  ['MedicationStatement *', 'status', drugStatus],
  ['MedicationStatement *', 'partOf[]', to('Procedure', '')],
  ['Observation *', 'partOf[]', to('Procedure', '')],
  ['Observation *', 'focus[]', to('Condition', 'lesion')],
  ['Observation *', 'specimen', to('Specimen', '*')],
  ['Observation *', 'derivedFrom[]', to('Observation', '*')],
  ...ANSWER_ROWS,
  ['Observation *', 'status', status],
  ['Observation *', 'category[]', just(...Object.values(STRUCTURE.observationCategory))],
  ['Observation *', 'code', item],
  ['Observation *', 'component[].code', concepts(...PART_CODES)],
  ...[
    'premedication',
    'chromoendoscopy',
    'traction',
    'informed-persons',
    'stricture-prevention',
    'incidents',
    'earlier-treatment',
  ].map(
    (key): Row => [`Observation ${key}`, 'component[].valueCodeableConcept', concepts(ANSWERS.yes)],
  ),
  ['Observation antithrombotics-taken', 'valueCodeableConcept', concepts(ANSWERS.yes)],
  ...ASSESSED.flatMap(({ item: key }): readonly Row[] => [
    [`Observation ${key}`, 'valueQuantity', assessed],
    [`Observation ${key}`, 'note[]', missingNote],
  ]),
  ['Observation defect-circumference', 'valueQuantity', byWidth],
  ['Observation stricture-risk', 'valueCodeableConcept', strictureFlag],
  ['Observation stricture-risk', 'note[]', missingNote],
  ['Observation stricture-risk', 'note[]', factorNote],
  ['Observation *', 'method', method],
  ['Observation *', 'dataAbsentReason', absence],
  ['Provenance ', 'meta.tag[]', provenanceTag],
  [
    'Provenance ',
    'target[]',
    (resource, told) =>
      [...new Set(told.resources.map((r) => r.resourceType))].flatMap((type) =>
        to(String(type), '*')(resource, told),
      ),
  ],
  ['Provenance ', 'activity', just(STRUCTURE.provenanceActivity.create)],
  [
    'Provenance ',
    'agent[].type',
    just(
      STRUCTURE.provenanceAgent.author,
      STRUCTURE.provenanceAgent.assembler,
      STRUCTURE.provenanceAgent.enterer,
    ),
  ],
  ['Provenance ', 'agent[].who', software],
  ['Provenance ', 'agent[].who.type', just('Device')],
  ['Provenance ', 'entity[].role', just('source')],
  [
    'Provenance ',
    'entity[].what.identifier.system',
    (_resource, { settings }) => [`${settings.identifierBase}/message`],
  ],
];

/** What stands in the resources beside the fields of the case: codes, names, links, results. */
export const FIXED_SOURCES: readonly FixedSource[] = ROWS.map(([place, path, says]) => ({
  in: place,
  path,
  says,
}));
