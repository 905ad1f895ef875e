import { answer, coded, each, type FindingRow, measured, part, time } from './finding-row.js';

const exam = { about: 'session', category: 'exam' } as const;
const lesion = { about: 'lesion', category: 'procedure' } as const;
const session = { about: 'session', category: 'procedure' } as const;

/** Every field of the case that becomes an Observation; a pointer stands in one row only. */
export const FINDINGS: readonly FindingRow[] = [
  { item: 'biopsy-result', ...lesion, value: coded('/before/biopsyResult', 'biopsyResult') },
  { item: 'tattoo-near-lesion', ...lesion, value: answer('/before/tattooNearLesion') },
  { item: 'asa-class', ...exam, value: coded('/before/asaClass', 'asaClass') },
  { item: 'asa-emergency', ...exam, value: answer('/before/asaEmergency') },
  { item: 'haemodialysis', ...exam, value: answer('/before/haemodialysis') },
  {
    item: 'helicobacter-status',
    ...exam,
    value: coded('/before/helicobacterPylori', 'helicobacter'),
  },
  { item: 'iodine-allergy', ...exam, value: answer('/before/iodineAllergy') },
  { item: 'sedation', ...session, value: coded('/before/sedation', 'sedation') },
  { item: 'intubation', ...session, value: answer('/before/intubated') },
  {
    item: 'premedication',
    ...session,
    list: { at: '/before/premedication', words: 'premedication' },
  },
  {
    item: 'bowel-preparation',
    ...exam,
    parts: [
      part(
        { set: 'bbps', code: 'bbps-right' },
        measured('/before/bowelPreparation/right', 'score'),
      ),
      part(
        { set: 'bbps', code: 'bbps-transverse' },
        measured('/before/bowelPreparation/transverse', 'score'),
      ),
      part({ set: 'bbps', code: 'bbps-left' }, measured('/before/bowelPreparation/left', 'score')),
    ],
  },
  {
    item: 'lesion-description',
    ...lesion,
    parts: [
      part('lesion-length', measured('/lesion/longAxisMm', 'mm')),
      part('lesion-width', measured('/lesion/shortAxisMm', 'mm')),
      part('tumour-kind', coded('/lesion/tumour', 'tumour')),
      part('paris-type', coded('/lesion/paris', 'paris')),
      part('lst-type', coded('/lesion/lstType', 'lstType')),
      part('jnet-type', coded('/lesion/jnet', 'jnet')),
      part('kudo-type', coded('/lesion/kudo', 'kudo')),
      part('nice-type', coded('/lesion/nice', 'nice')),
      part('ipcl-type', coded('/lesion/ipcl', 'ipcl')),
      part('vessel-pattern', coded('/lesion/vesselPattern', 'pattern')),
      part('surface-pattern', coded('/lesion/surfacePattern', 'pattern')),
      part('demarcation-line', answer('/lesion/demarcationLine')),
      part('predicted-depth', coded('/lesion/predictedDepth', 'predictedDepth')),
      part('stomach-third', coded('/lesion/stomachThird', 'stomachThird')),
      part('wall-position', coded('/lesion/wall', 'wall')),
      part('clock-position', measured('/lesion/clockHour', 'one')),
      part('dentate-line-touched', answer('/lesion/touchesDentateLine')),
    ],
  },
  {
    item: 'distance-from-incisors',
    ...lesion,
    value: measured('/lesion/distanceFromIncisorsCm', 'cm'),
  },
  {
    item: 'distance-from-anal-verge',
    ...lesion,
    value: measured('/lesion/distanceFromAnalVergeCm', 'cm'),
  },
  {
    item: 'lesion-circumference',
    ...lesion,
    value: measured('/lesion/circumferencePercent', 'percent'),
  },
  {
    item: 'barrett-extent',
    ...exam,
    parts: [
      part({ set: 'prague', code: 'c' }, measured('/lesion/pragueCircumferentialCm', 'cm')),
      part({ set: 'prague', code: 'm' }, measured('/lesion/pragueMaximumCm', 'cm')),
      part('hiatus-distance', measured('/lesion/hiatusFromIncisorsCm', 'cm')),
    ],
  },
  {
    item: 'chromoendoscopy',
    ...lesion,
    list: { at: '/lesion/chromoendoscopy', words: 'chromoendoscopy' },
  },
  { item: 'lesions-in-session', ...session, value: measured('/lesionsInSession', 'one') },
  {
    item: 'procedure-times',
    ...session,
    parts: [
      part('first-injection-time', time('/times/firstInjectionAt')),
      part('first-incision-time', time('/times/firstIncisionAt')),
      part('dissection-end-time', time('/times/dissectionEndAt')),
    ],
  },
  {
    item: 'endoscope',
    ...session,
    parts: [
      part('endoscope-kind', coded('/equipment/endoscope/kind', 'endoscope')),
      part('endoscope-channel', measured('/equipment/endoscope/channelMm', 'mm')),
      part('water-jet', answer('/equipment/endoscope/waterJet')),
      part('distal-cap', coded('/equipment/endoscope/cap', 'cap')),
    ],
  },
  { item: 'gas', ...session, value: coded('/equipment/gas', 'gas') },
  {
    item: 'positioning',
    ...session,
    parts: [
      part('patient-position', coded('/position/patient', 'position')),
      part('position-changed', answer('/position/changed')),
      each('position-taken', '/position/changedTo', 'position'),
      part('lesion-gravity-side', coded('/position/lesionSide', 'gravitySide')),
      part('retroflexion', answer('/position/retroflexed')),
    ],
  },
  {
    item: 'marking',
    ...lesion,
    parts: [
      part('markers-placed', answer('/markers/placed')),
      part('marker-distance', measured('/markers/distanceMm', 'mm')),
      part('marker-spacing', measured('/markers/spacingMm', 'mm')),
      part('next-marker-visible', answer('/markers/nextVisibleFromEach')),
    ],
  },
  {
    item: 'injection-technique',
    ...lesion,
    parts: [
      each('injected-fluid', '/injection/fluids', 'fluid'),
      part('injected-dye', coded('/injection/dye', 'dye')),
      part('injected-adrenaline', answer('/injection/adrenaline')),
      each('injection-route', '/injection/routes', 'injectionRoute'),
      part('injection-repeated', answer('/injection/repeated')),
    ],
  },
  {
    item: 'incision',
    ...lesion,
    parts: [
      part('incision-strategy', coded('/incision/strategy', 'incisionStrategy')),
      part('incision-first-side', coded('/incision/firstSide', 'incisionSide')),
      part('incision-approach', coded('/incision/approach', 'approach')),
      part('tunnel-count', measured('/incision/tunnels', 'one')),
    ],
  },
  { item: 'lifting-sign', ...lesion, value: coded('/dissection/lifting', 'lifting') },
  { item: 'fibrosis', ...lesion, counted: true, value: coded('/dissection/fibrosis', 'fibrosis') },
  { item: 'fat-amount', ...lesion, value: coded('/dissection/fat', 'fat') },
  { item: 'dissection-plane', ...lesion, value: coded('/dissection/plane', 'plane') },
  { item: 'muscle-in-view', ...lesion, value: answer('/dissection/muscleInView') },
  { item: 'traction', ...lesion, list: { at: '/dissection/traction', words: 'traction' } },
  {
    item: 'intraprocedural-bleeding',
    ...lesion,
    counted: true,
    value: coded('/safety/bleeding', 'bleeding'),
  },
  {
    item: 'muscle-injury',
    ...lesion,
    counted: true,
    value: coded('/safety/muscleInjury', 'muscleInjury'),
  },
  {
    item: 'perforation',
    ...lesion,
    counted: true,
    value: answer('/safety/perforation/occurred'),
    parts: [
      part('perforation-size', measured('/safety/perforation/sizeMm', 'mm')),
      part('perforation-time', time('/safety/perforation/at')),
    ],
  },
  {
    item: 'defect-closure',
    ...lesion,
    value: coded('/safety/closure/kind', 'closure'),
    parts: [part('closure-extent', coded('/safety/closure/extent', 'closureExtent'))],
  },
  {
    item: 'site-inspection',
    ...lesion,
    parts: [
      part('inspection-time', time('/safety/siteInspection/inspectedAt')),
      part('visible-vessels', answer('/safety/siteInspection/visibleVessels')),
      part('vessels-coagulated', answer('/safety/siteInspection/coagulated')),
    ],
  },
  { item: 'piece-count', ...lesion, value: measured('/resection/pieces', 'piece') },
  { item: 'conversion', ...lesion, value: coded('/resection/convertedTo', 'conversion') },
  {
    item: 'not-completed-reason',
    ...lesion,
    value: coded('/resection/reason', 'notCompletedReason'),
  },
  {
    item: 'defect-dimensions',
    ...lesion,
    parts: [
      part('defect-length', measured('/defect/longAxisMm', 'mm')),
      part('defect-width', measured('/defect/shortAxisMm', 'mm')),
      part('defect-circumferential-width', measured('/defect/widthMm', 'mm')),
      part('lumen-diameter', measured('/defect/lumenDiameterMm', 'mm')),
    ],
  },
  {
    item: 'specimen-retrieved',
    ...lesion,
    counted: true,
    value: answer('/specimen/retrieved'),
    parts: [part('retrieval-time', time('/specimen/retrievedAt'))],
  },
  { item: 'specimen-oriented', ...lesion, onSpecimen: true, value: answer('/specimen/oriented') },
  { item: 'specimen-pinned', ...lesion, onSpecimen: true, value: answer('/specimen/pinned') },
  {
    item: 'specimen-dimensions',
    ...lesion,
    onSpecimen: true,
    parts: [
      part('specimen-length', measured('/specimen/longAxisMm', 'mm')),
      part('specimen-width', measured('/specimen/shortAxisMm', 'mm')),
      part('specimen-height', measured('/specimen/thicknessMm', 'mm')),
    ],
  },
  {
    item: 'specimen-lesion-dimensions',
    ...lesion,
    onSpecimen: true,
    parts: [
      part('specimen-lesion-length', measured('/specimen/lesionLongAxisMm', 'mm')),
      part('specimen-lesion-width', measured('/specimen/lesionShortAxisMm', 'mm')),
    ],
  },
  { item: 'trainee-part', ...session, value: measured('/team/traineePercent', 'percent') },
  { item: 'destination', ...session, value: coded('/after/destination', 'destination') },
  {
    item: 'diet',
    ...session,
    value: coded('/after/diet', 'diet'),
    parts: [part('diet-from', time('/after/dietFromOn'))],
  },
  {
    item: 'acid-suppression',
    ...session,
    value: coded('/after/acidSuppression', 'acidSuppression'),
  },
  { item: 'antibiotics-after', ...session, value: answer('/after/antibiotics') },
  { item: 'informed-persons', ...session, list: { at: '/after/informed', words: 'informed' } },
];
