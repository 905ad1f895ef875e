import {
  ANSWERS,
  type CodeRef,
  codeableConcept,
  ESD_PROCEDURE,
  HYBRID_ESD,
  ITEMS,
  localRef,
  SPECIMEN_PROCESSING,
  UNITS,
  WORD_CODES,
} from '../../src/terminology/index.js';
import type { FieldSource, InputLeaf, JournalOnly, Told } from './explain.js';
import { CASE_ID } from './records.js';

type Says = FieldSource['says'];
type Words = keyof typeof WORD_CODES;
type Row = readonly [at: string, place: string, path: string, says: Says];

/** FHIR R4 extension "Precision"; its value counts the decimals that were sent. */
const PRECISION = 'http://hl7.org/fhir/StructureDefinition/quantity-precision';

const concept = (ref: CodeRef, { settings }: Told): unknown =>
  codeableConcept(ref, settings.licences);

const word =
  (list: Words): Says =>
  ({ value }, told) => {
    const refs: Readonly<Record<string, CodeRef>> = WORD_CODES[list];
    const ref = refs[value];
    return ref === undefined ? undefined : concept(ref, told);
  };
const answer: Says = ({ value }, told) => concept(ANSWERS[value ? 'yes' : 'no'], told);
const none: Says = (_leaf, told) => concept(ANSWERS.no, told);
const same: Says = ({ value }) => value;
const as =
  (unit: keyof typeof UNITS): Says =>
  ({ value, pointer }, { version }) => {
    const decimals = version.now.esdCase.decimals[pointer];
    return {
      value,
      ...(decimals === undefined
        ? {}
        : { _value: { extension: [{ url: PRECISION, valueInteger: decimals }] } }),
      ...UNITS[unit],
    };
  };
const reference =
  (type: string): Says =>
  ({ value }) => ({ type, identifier: value });

const agentOrClass: Says = ({ holder }, told) => {
  const refs: Readonly<Record<string, CodeRef>> = {
    ...WORD_CODES.antithromboticClass,
    ...WORD_CODES.agent,
  };
  const ref = refs[holder.agent ?? holder.class];
  return ref === undefined ? undefined : concept(ref, told);
};
const procedureCode: Says = (_leaf, told) => {
  const { lesion, resection } = told.version.now.esdCase.fields;
  const organ = codeableConcept(ESD_PROCEDURE[lesion.organ], told.settings.licences);
  const hybrid = codeableConcept(HYBRID_ESD, told.settings.licences);
  return resection.technique === 'hybrid-esd'
    ? { ...organ, coding: [...(organ.coding ?? []), ...(hybrid.coding ?? [])] }
    : organ;
};
const steroid: Says = ({ holder }, { settings }) => {
  const ways: Readonly<Record<string, CodeRef>> = WORD_CODES.stricturePrevention;
  const drugs: Readonly<Record<string, CodeRef>> = WORD_CODES.strictureDrug;
  const [drug, way] = [drugs[holder.drug], ways[holder.measure]];
  if (drug === undefined || way === undefined) return undefined;
  const [named, given] = [drug, way].map((ref) => codeableConcept(ref, settings.licences));
  return {
    coding: [...(named?.coding ?? []), ...(given?.coding ?? [])],
    text: `${drug.text}: ${way.text}`,
  };
};
const bridged: Says = ({ value }, told) =>
  concept(localRef({ set: 'drug-decision', code: value ? 'bridged' : 'not-bridged' }), told);
const completeness: Says = ({ value }, told) =>
  concept(localRef({ set: 'resection-integrity', code: value ? 'complete' : 'incomplete' }), told);
const clipItem: Says = ({ value }, told) =>
  concept(ITEMS[value === 'during' ? 'clips-during' : 'clips-at-end'], told);
const messageName: Says = ({ value }, { version }) =>
  `${CASE_ID}.case.${value}.sha256-${version.now.esdCase.sha256}`;
const sourceName: Says = ({ value }, { settings }) => ({
  system: `${settings.identifierBase}/source`,
  value,
});
const dissected =
  (code: 'pinned' | 'oriented'): Says =>
  ({ value }, told) =>
    value ? concept(SPECIMEN_PROCESSING[code], told) : undefined;

const CODED = 'valueCodeableConcept';
const QUANTITY = 'valueQuantity';
const TIME = 'valueDateTime';
const part = (code: string, value: string): string => `component[${code}].${value}`;

/** Fields that are the one value of an Observation: pointer, item, how it is said. */
const VALUES: readonly (readonly [string, string, string, Says])[] = [
  ['/lesionsInSession', 'lesions-in-session', QUANTITY, as('one')],
  ['/before/biopsyResult', 'biopsy-result', CODED, word('biopsyResult')],
  ['/before/tattooNearLesion', 'tattoo-near-lesion', CODED, answer],
  ['/before/asaClass', 'asa-class', CODED, word('asaClass')],
  ['/before/asaEmergency', 'asa-emergency', CODED, answer],
  ['/before/haemodialysis', 'haemodialysis', CODED, answer],
  ['/before/helicobacterPylori', 'helicobacter-status', CODED, word('helicobacter')],
  ['/before/iodineAllergy', 'iodine-allergy', CODED, answer],
  ['/before/sedation', 'sedation', CODED, word('sedation')],
  ['/before/intubated', 'intubation', CODED, answer],
  ['/before/premedication', 'premedication', CODED, none],
  ['/before/earlierAttempts', 'earlier-treatment', CODED, none],
  ['/before/antithrombotics', 'antithrombotics-taken', CODED, none],
  ['/lesion/distanceFromIncisorsCm', 'distance-from-incisors', QUANTITY, as('cm')],
  ['/lesion/distanceFromAnalVergeCm', 'distance-from-anal-verge', QUANTITY, as('cm')],
  ['/lesion/circumferencePercent', 'lesion-circumference', QUANTITY, as('percent')],
  ['/lesion/chromoendoscopy', 'chromoendoscopy', CODED, none],
  ['/equipment/gas', 'gas', CODED, word('gas')],
  ['/dissection/lifting', 'lifting-sign', CODED, word('lifting')],
  ['/dissection/fibrosis', 'fibrosis', CODED, word('fibrosis')],
  ['/dissection/fat', 'fat-amount', CODED, word('fat')],
  ['/dissection/plane', 'dissection-plane', CODED, word('plane')],
  ['/dissection/muscleInView', 'muscle-in-view', CODED, answer],
  ['/dissection/traction', 'traction', CODED, none],
  ['/dissection/incidents', 'incidents', CODED, none],
  ['/dissection/pauses', 'dissection-progress', CODED, none],
  ['/safety/bleeding', 'intraprocedural-bleeding', CODED, word('bleeding')],
  ['/safety/muscleInjury', 'muscle-injury', CODED, word('muscleInjury')],
  ['/safety/perforation/occurred', 'perforation', CODED, answer],
  ['/safety/closure/kind', 'defect-closure', CODED, word('closure')],
  ['/safety/stricturePrevention', 'stricture-prevention', CODED, none],
  ['/resection/outcome', 'en-bloc', CODED, word('resectionOutcome')],
  ['/resection/pieces', 'piece-count', QUANTITY, as('piece')],
  ['/resection/complete', 'resection-completeness', CODED, completeness],
  ['/resection/convertedTo', 'conversion', CODED, word('conversion')],
  ['/resection/reason', 'not-completed-reason', CODED, word('notCompletedReason')],
  ['/defect/circumferencePercent', 'defect-circumference', QUANTITY, as('percent')],
  ['/specimen/retrieved', 'specimen-retrieved', CODED, answer],
  ['/specimen/oriented', 'specimen-oriented', CODED, answer],
  ['/specimen/pinned', 'specimen-pinned', CODED, answer],
  ['/team/traineePercent', 'trainee-part', QUANTITY, as('percent')],
  ['/after/destination', 'destination', CODED, word('destination')],
  ['/after/diet', 'diet', CODED, word('diet')],
  ['/after/acidSuppression', 'acid-suppression', CODED, word('acidSuppression')],
  ['/after/antibiotics', 'antibiotics-after', CODED, answer],
  ['/after/informed', 'informed-persons', CODED, none],
];

/** Fields that are a part of an Observation: pointer, item, code of the part, how it is said. */
const PARTS: readonly (readonly [string, string, string, string, Says])[] = [
  ['/before/bowelPreparation/right', 'bowel-preparation', 'bbps-right', QUANTITY, as('score')],
  [
    '/before/bowelPreparation/transverse',
    'bowel-preparation',
    'bbps-transverse',
    QUANTITY,
    as('score'),
  ],
  ['/before/bowelPreparation/left', 'bowel-preparation', 'bbps-left', QUANTITY, as('score')],
  ['/lesion/longAxisMm', 'lesion-description', 'lesion-length', QUANTITY, as('mm')],
  ['/lesion/shortAxisMm', 'lesion-description', 'lesion-width', QUANTITY, as('mm')],
  ['/lesion/tumour', 'lesion-description', 'tumour-kind', CODED, word('tumour')],
  ['/lesion/paris', 'lesion-description', 'paris-type', CODED, word('paris')],
  ['/lesion/lstType', 'lesion-description', 'lst-type', CODED, word('lstType')],
  ['/lesion/jnet', 'lesion-description', 'jnet-type', CODED, word('jnet')],
  ['/lesion/kudo', 'lesion-description', 'kudo-type', CODED, word('kudo')],
  ['/lesion/nice', 'lesion-description', 'nice-type', CODED, word('nice')],
  ['/lesion/ipcl', 'lesion-description', 'ipcl-type', CODED, word('ipcl')],
  ['/lesion/vesselPattern', 'lesion-description', 'vessel-pattern', CODED, word('pattern')],
  ['/lesion/surfacePattern', 'lesion-description', 'surface-pattern', CODED, word('pattern')],
  ['/lesion/demarcationLine', 'lesion-description', 'demarcation-line', CODED, answer],
  [
    '/lesion/predictedDepth',
    'lesion-description',
    'predicted-depth',
    CODED,
    word('predictedDepth'),
  ],
  ['/lesion/stomachThird', 'lesion-description', 'stomach-third', CODED, word('stomachThird')],
  ['/lesion/wall', 'lesion-description', 'wall-position', CODED, word('wall')],
  ['/lesion/clockHour', 'lesion-description', 'clock-position', QUANTITY, as('one')],
  ['/lesion/touchesDentateLine', 'lesion-description', 'dentate-line-touched', CODED, answer],
  ['/lesion/pragueCircumferentialCm', 'barrett-extent', 'c', QUANTITY, as('cm')],
  ['/lesion/pragueMaximumCm', 'barrett-extent', 'm', QUANTITY, as('cm')],
  ['/lesion/hiatusFromIncisorsCm', 'barrett-extent', 'hiatus-distance', QUANTITY, as('cm')],
  ['/times/firstInjectionAt', 'procedure-times', 'first-injection-time', TIME, same],
  ['/times/firstIncisionAt', 'procedure-times', 'first-incision-time', TIME, same],
  ['/times/dissectionEndAt', 'procedure-times', 'dissection-end-time', TIME, same],
  ['/equipment/endoscope/kind', 'endoscope', 'endoscope-kind', CODED, word('endoscope')],
  ['/equipment/endoscope/channelMm', 'endoscope', 'endoscope-channel', QUANTITY, as('mm')],
  ['/equipment/endoscope/waterJet', 'endoscope', 'water-jet', CODED, answer],
  ['/equipment/endoscope/cap', 'endoscope', 'distal-cap', CODED, word('cap')],
  ['/position/patient', 'positioning', 'patient-position', CODED, word('position')],
  ['/position/changed', 'positioning', 'position-changed', CODED, answer],
  ['/position/changedTo/*', 'positioning', 'position-taken', CODED, word('position')],
  ['/position/lesionSide', 'positioning', 'lesion-gravity-side', CODED, word('gravitySide')],
  ['/position/retroflexed', 'positioning', 'retroflexion', CODED, answer],
  ['/markers/placed', 'marking', 'markers-placed', CODED, answer],
  ['/markers/distanceMm', 'marking', 'marker-distance', QUANTITY, as('mm')],
  ['/markers/spacingMm', 'marking', 'marker-spacing', QUANTITY, as('mm')],
  ['/markers/nextVisibleFromEach', 'marking', 'next-marker-visible', CODED, answer],
  ['/injection/fluids/*', 'injection-technique', 'injected-fluid', CODED, word('fluid')],
  ['/injection/dye', 'injection-technique', 'injected-dye', CODED, word('dye')],
  ['/injection/adrenaline', 'injection-technique', 'injected-adrenaline', CODED, answer],
  ['/injection/routes/*', 'injection-technique', 'injection-route', CODED, word('injectionRoute')],
  ['/injection/repeated', 'injection-technique', 'injection-repeated', CODED, answer],
  ['/incision/strategy', 'incision', 'incision-strategy', CODED, word('incisionStrategy')],
  ['/incision/firstSide', 'incision', 'incision-first-side', CODED, word('incisionSide')],
  ['/incision/approach', 'incision', 'incision-approach', CODED, word('approach')],
  ['/incision/tunnels', 'incision', 'tunnel-count', QUANTITY, as('one')],
  [
    '/dissection/pauses/*/leftPercent',
    'dissection-progress',
    'dissected-left',
    QUANTITY,
    as('percent'),
  ],
  [
    '/dissection/pauses/*/rightPercent',
    'dissection-progress',
    'dissected-right',
    QUANTITY,
    as('percent'),
  ],
  ['/safety/perforation/sizeMm', 'perforation', 'perforation-size', QUANTITY, as('mm')],
  ['/safety/perforation/at', 'perforation', 'perforation-time', TIME, same],
  ['/safety/closure/extent', 'defect-closure', 'closure-extent', CODED, word('closureExtent')],
  ['/safety/siteInspection/inspectedAt', 'site-inspection', 'inspection-time', TIME, same],
  ['/safety/siteInspection/visibleVessels', 'site-inspection', 'visible-vessels', CODED, answer],
  ['/safety/siteInspection/coagulated', 'site-inspection', 'vessels-coagulated', CODED, answer],
  ['/defect/longAxisMm', 'defect-dimensions', 'defect-length', QUANTITY, as('mm')],
  ['/defect/shortAxisMm', 'defect-dimensions', 'defect-width', QUANTITY, as('mm')],
  ['/defect/widthMm', 'defect-dimensions', 'defect-circumferential-width', QUANTITY, as('mm')],
  ['/defect/lumenDiameterMm', 'defect-dimensions', 'lumen-diameter', QUANTITY, as('mm')],
  ['/specimen/retrievedAt', 'specimen-retrieved', 'retrieval-time', TIME, same],
  ['/specimen/longAxisMm', 'specimen-dimensions', 'specimen-length', QUANTITY, as('mm')],
  ['/specimen/shortAxisMm', 'specimen-dimensions', 'specimen-width', QUANTITY, as('mm')],
  ['/specimen/thicknessMm', 'specimen-dimensions', 'specimen-height', QUANTITY, as('mm')],
  [
    '/specimen/lesionLongAxisMm',
    'specimen-lesion-dimensions',
    'specimen-lesion-length',
    QUANTITY,
    as('mm'),
  ],
  [
    '/specimen/lesionShortAxisMm',
    'specimen-lesion-dimensions',
    'specimen-lesion-width',
    QUANTITY,
    as('mm'),
  ],
  ['/specimen/pieces/*/longAxisMm', 'piece-dimensions.{n}', 'specimen-length', QUANTITY, as('mm')],
  ['/specimen/pieces/*/shortAxisMm', 'piece-dimensions.{n}', 'specimen-width', QUANTITY, as('mm')],
  ['/after/dietFromOn', 'diet', 'diet-from', TIME, same],
];

/** Words and times of lists whose code is the word itself. */
const LISTED: readonly (readonly [string, string, string, Says])[] = [
  ['/before/premedication/*', 'premedication', 'code', word('premedication')],
  ['/before/earlierAttempts/*/kind', 'earlier-treatment', 'code', word('earlierAttempt')],
  ['/before/earlierAttempts/*/on', 'earlier-treatment', TIME, same],
  ['/lesion/chromoendoscopy/*', 'chromoendoscopy', 'code', word('chromoendoscopy')],
  ['/dissection/traction/*', 'traction', 'code', word('traction')],
  ['/dissection/incidents/*/kind', 'incidents', 'code', word('incident')],
  ['/dissection/incidents/*/at', 'incidents', TIME, same],
  ['/safety/clips/*/purpose', 'clips-*{phase}', 'code', word('clipPurpose')],
  ['/safety/clips/*/count', 'clips-*{phase}', QUANTITY, as('one')],
  [
    '/safety/stricturePrevention/*/measure',
    'stricture-prevention',
    'code',
    word('stricturePrevention'),
  ],
  ['/safety/stricturePrevention/*/at', 'stricture-prevention', TIME, same],
  ['/after/informed/*', 'informed-persons', 'code', word('informed')],
];

const MAIN = 'Procedure ';
const STATEMENT = 'MedicationStatement {drug}';
const OPERATOR = reference('Practitioner');

/** Fields that stand in other resources. */
const ELSEWHERE: readonly Row[] = [
  ['/source', 'Provenance ', 'agent[].who.identifier', sourceName],
  ['/case', MAIN, 'identifier[]', same],
  ['/session', MAIN, 'identifier[]', same],
  ['/patient/system', '* *', 'subject.identifier.system', same],
  ['/patient/value', '* *', 'subject.identifier.value', same],
  ['/revision', 'Provenance ', 'entity[].what.identifier.value', messageName],
  ['/sentAt', 'Provenance ', 'recorded', same],
  ['/sentAt', '* *', 'issued', same],
  ['/sentAt', '* *', 'recordedDate', same],
  ['/sentAt', '* *', 'dateAsserted', same],
  ['/encounter', '* *', 'encounter', reference('Encounter')],
  ['/encounter', '* *', 'context', reference('Encounter')],
  ['/unit', MAIN, 'performer[].onBehalfOf', reference('Organization')],
  ['/unit', 'DiagnosticReport *', 'performer[]', reference('Organization')],
  ['/before/indications/*', MAIN, 'reasonCode[]', word('indication')],
  ['/before/referral', MAIN, 'basedOn[]', reference('ServiceRequest')],
  ['/before/antithrombotics/*/class', STATEMENT, 'medicationCodeableConcept', agentOrClass],
  ['/before/antithrombotics/*/agent', `${STATEMENT}*`, 'medicationCodeableConcept', agentOrClass],
  ['/before/antithrombotics/*/class', `${STATEMENT}*`, 'medicationCodeableConcept', agentOrClass],
  [
    '/before/antithrombotics/*/indication',
    STATEMENT,
    'reasonCode[]',
    word('antithromboticIndication'),
  ],
  ['/before/antithrombotics/*/thromboticRisk', STATEMENT, 'reasonCode[]', word('thromboticRisk')],
  ['/before/antithrombotics/*/decision', STATEMENT, 'statusReason[]', word('drugDecision')],
  [
    '/before/antithrombotics/*/replacedBy',
    STATEMENT,
    'statusReason[]',
    word('antithromboticClass'),
  ],
  ['/before/antithrombotics/*/bridged', STATEMENT, 'statusReason[]', bridged],
  ['/before/antithrombotics/*/advisedBy', STATEMENT, 'statusReason[]', word('adviser')],
  ['/before/antithrombotics/*/lastDoseAt', STATEMENT, 'effectiveDateTime', same],
  ['/before/antithrombotics/*/lastDoseAt', STATEMENT, 'effectivePeriod.end', same],
  [
    '/before/antithrombotics/*/restartPlannedOn',
    `${STATEMENT}.restart`,
    'effectivePeriod.start',
    same,
  ],
  ['/before/antithrombotics/*/restartedAt', `${STATEMENT}.restart`, 'effectivePeriod.start', same],
  ['/lesion/organ', '* *', 'bodySite[]', word('organ')],
  ['/lesion/site', '* *', 'bodySite[]', word('site')],
  ['/lesion/site', '* *', 'bodySite', word('site')],
  ['/lesion/site', '* *', 'collection.bodySite', word('site')],
  ['/lesion/organ', '* *', 'bodySite', word('organ')],
  ['/lesion/organ', '* *', 'collection.bodySite', word('organ')],
  ['/lesion/organ', MAIN, 'code', procedureCode],
  ['/lesion/organ', 'Specimen *', 'collection.method', procedureCode],
  ['/lesion/images/*/shows', 'Media image.{n}', 'view', word('imageSubject')],
  ['/lesion/images/*/url', 'Media image.{n}', 'content.url', same],
  ['/times/scopeInAt', MAIN, 'performedPeriod.start', same],
  ['/times/scopeOutAt', MAIN, 'performedPeriod.end', same],
  ['/times/scopeInAt', '* *', 'effectivePeriod.start', same],
  ['/times/scopeOutAt', '* *', 'effectivePeriod.end', same],
  ['/times/scopeInAt', '* *', 'occurredPeriod.start', same],
  ['/times/scopeOutAt', '* *', 'occurredPeriod.end', same],
  ['/times/scopeInAt', '* *', 'effectiveDateTime', same],
  ['/times/scopeInAt', 'Media *', 'createdDateTime', same],
  ['/times/scopeOutAt', 'ServiceRequest *', 'authoredOn', same],
  ['/times/scopeOutAt', 'Specimen *', 'collection.collectedDateTime', same],
  ['/equipment/endoscope/device', MAIN, 'usedReference[]', reference('Device')],
  ['/equipment/knives/*/kind', 'Device knife-{kind}*', 'type', word('knife')],
  [
    '/equipment/knives/*/injectionChannel',
    'Device knife-{kind}*',
    'property[injection-channel].valueCode[]',
    answer,
  ],
  [
    '/equipment/knives/*/minChannelMm',
    'Device knife-{kind}*',
    'property[minimum-channel].valueQuantity[]',
    as('mm'),
  ],
  ['/equipment/accessories/*/kind', 'Device {kind}*', 'type', word('accessory')],
  [
    '/equipment/accessories/*/minChannelMm',
    'Device {kind}*',
    'property[minimum-channel].valueQuantity[]',
    as('mm'),
  ],
  [
    '/equipment/generator/*/purpose',
    'Device generator',
    'property[].type',
    word('electrodePurpose'),
  ],
  [
    '/equipment/generator/*/mode',
    'Device generator',
    'property[].valueCode[]',
    word('electrodeMode'),
  ],
  ['/equipment/generator/*/powerW', 'Device generator', 'property[].valueQuantity[]', as('watt')],
  ['/injection/totalMl', 'MedicationAdministration injectate', 'dosage.dose', as('ml')],
  ['/safety/vessels/*/site', 'Procedure vessel.{n}', 'bodySite[]', word('vesselSite')],
  ['/safety/vessels/*/means', 'Procedure vessel.{n}', 'code', word('haemostasisMeans')],
  ['/safety/vessels/*/bleeding', 'Procedure vessel.{n}', 'reasonCode[]', word('bleeding')],
  ['/safety/vessels/*/at', 'Procedure vessel.{n}', 'performedPeriod.start', same],
  ['/safety/vessels/*/at', 'Procedure vessel.{n}', 'performedPeriod.end', same],
  ['/safety/perforation/at', 'Condition perforation', 'onsetDateTime', same],
  [
    '/safety/stricturePrevention/*/drug',
    'MedicationAdministration {measure}*',
    'medicationCodeableConcept',
    steroid,
  ],
  [
    '/safety/stricturePrevention/*/doseMg',
    'MedicationAdministration {measure}*',
    'dosage.dose',
    as('mg'),
  ],
  [
    '/safety/stricturePrevention/*/at',
    'MedicationAdministration {measure}*',
    'effectiveDateTime',
    same,
  ],
  [
    '/safety/stricturePrevention/*/measure',
    'MedicationAdministration {measure}*',
    'medicationCodeableConcept',
    word('stricturePrevention'),
  ],
  ['/resection/technique', MAIN, 'code', procedureCode],
  ['/resection/reason', MAIN, 'statusReason', word('notCompletedReason')],
  ['/specimen/retrievedAt', 'Specimen *', 'collection.collectedDateTime', same],
  ['/specimen/oriented', 'Specimen specimen', 'processing[].procedure', dissected('oriented')],
  ['/specimen/pinned', 'Specimen specimen', 'processing[].procedure', dissected('pinned')],
  ['/specimen/container', 'Specimen specimen', 'container[].identifier[]', same],
  [
    '/specimen/fixative',
    'Specimen specimen',
    'container[].additiveCodeableConcept',
    word('fixative'),
  ],
  ['/specimen/fixedAt', 'Specimen specimen', 'processing[].timeDateTime', same],
  ['/specimen/laboratory', 'ServiceRequest pathology', 'performer[]', reference('Organization')],
  ['/team/operator', MAIN, 'performer[].actor', OPERATOR],
  ['/team/supervisor', MAIN, 'performer[].actor', OPERATOR],
  ['/team/assistants/*', MAIN, 'performer[].actor', OPERATOR],
  ['/team/operator', '* *', 'recorder', OPERATOR],
  ['/team/operator', '* *', 'performer[]', OPERATOR],
  ['/team/operator', '* *', 'operator', OPERATOR],
  ['/team/operator', '* *', 'requester', OPERATOR],
  ['/team/operator', '* *', 'resultsInterpreter[]', OPERATOR],
  ['/team/operator', '* *', 'collection.collector', OPERATOR],
  ['/team/operator', 'Provenance ', 'agent[].who', OPERATOR],
];

/** Several equal fields in one place: tests told beside two drugs, clips of one phase. */
const SHARED: readonly Row[] = [
  ['/safety/clips/*/phase', 'Observation clips-*{phase}', 'code', clipItem],
  ['/before/antithrombotics/*/inr', 'Observation inr.*', QUANTITY, as('one')],
  ['/before/antithrombotics/*/inrOn', 'Observation inr.*', 'effectiveDateTime', same],
  [
    '/before/antithrombotics/*/creatinineClearanceMlPerMin',
    'Observation creatinine-clearance.*',
    QUANTITY,
    as('mlPerMin'),
  ],
];

/** Where every field of a case stands in its resources. */
export const FIELD_SOURCES: readonly FieldSource[] = [
  ...VALUES.map(([at, item, path, says]) => ({ at, in: `Observation ${item}`, path, says })),
  ...PARTS.map(([at, item, code, value, says]) => ({
    at,
    in: `Observation ${item}`,
    path: part(code, value),
    says,
  })),
  ...LISTED.map(([at, item, path, says]) => ({
    at,
    in: `Observation ${item}`,
    path: `component[].${path}`,
    says,
  })),
  ...ELSEWHERE.map(([at, place, path, says]) => ({ at, in: place, path, says })),
  ...SHARED.map(([at, place, path, says]) => ({
    at,
    in: place,
    path,
    says,
    shared: true as const,
  })),
];

const nothing = 'an empty list of things: there is nothing to make a resource of';
const isStent = ({ holder }: InputLeaf): boolean => holder.measure === 'stent';

/** Fields that no resource carries, and why. */
export const JOURNAL_ONLY: readonly JournalOnly[] = [
  { at: '/schema', reason: 'names the form of the message' },
  { at: '/patient/bornOn', reason: 'the Patient belongs to the target; ours would compete' },
  { at: '/patient/ageYears', reason: 'the Patient belongs to the target; ours would compete' },
  { at: '/patient/sex', reason: 'the Patient belongs to the target; ours would compete' },
  { at: '/before/indications', reason: nothing },
  { at: '/lesion/images', reason: nothing },
  { at: '/equipment/knives', reason: nothing },
  { at: '/equipment/accessories', reason: nothing },
  { at: '/equipment/generator', reason: nothing },
  { at: '/position/changedTo', reason: nothing },
  { at: '/injection/fluids', reason: nothing },
  { at: '/injection/routes', reason: nothing },
  { at: '/safety/vessels', reason: nothing },
  { at: '/safety/clips', reason: nothing },
  { at: '/specimen/pieces', reason: nothing },
  { at: '/team/assistants', reason: nothing },
  {
    at: '/before/antithrombotics/*/inrOn',
    when: ({ holder }) => holder.inr === undefined,
    reason: 'the day of a test without its result',
  },
  {
    at: '/before/antithrombotics/*/restartPlannedOn',
    when: ({ holder }) => holder.restartedAt !== undefined,
    reason: 'the plan gave way to the restart that took place',
  },
  { at: '/safety/stricturePrevention/*/drug', when: isStent, reason: 'a stent has no drug' },
  { at: '/safety/stricturePrevention/*/doseMg', when: isStent, reason: 'a stent has no dose' },
];
