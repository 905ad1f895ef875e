import { keyedUuid } from '../../src/kernel/index.js';
import type { ReportMessage } from '../../src/record/index.js';
import {
  ANSWERS,
  BASE,
  COMPUTATIONS,
  type CodeRef,
  codeableConcept,
  ITEMS,
  localCoding,
  REPORT_KINDS,
  STRUCTURE,
  UNITS,
  WORD_CODES,
} from '../../src/terminology/index.js';
import type { Draft } from '../support/consistent-case.js';
import type { FieldSource, FixedSource, JournalOnly, Scope, Tables, Told } from './explain.js';
import { paragraphsOf } from './plain-words.js';
import { keyOf } from './records.js';

type Says = FieldSource['says'];
type Fixed = FixedSource['says'];
type Words = keyof typeof WORD_CODES;

/** FHIR R4 extension "Precision"; its value counts the decimals that were sent. */
const PRECISION = 'http://hl7.org/fhir/StructureDefinition/quantity-precision';

const inForce = ({ version }: Told): ReportMessage => {
  const [report] = version.now.reports;
  if (report === undefined) throw new Error('the record of a test has a report');
  return report;
};
const concept = (ref: CodeRef, { settings }: Told) => codeableConcept(ref, settings.licences);

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
  ({ value, pointer }, told) => {
    const decimals = inForce(told).decimals[pointer];
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

/** Fields that are the one value of an Observation. */
const CODED: readonly (readonly [at: string, item: string, words: Words])[] = [
  ['/findings/tumour', 'specimen-tumour-kind', 'tumour'],
  ['/findings/site', 'specimen-site', 'site'],
  ['/findings/paris', 'specimen-paris-type', 'paris'],
  ['/findings/histology', 'histology', 'histology'],
  ['/findings/histologicalType', 'histologic-type', 'histologicalType'],
  ['/findings/polypType', 'polyp-type', 'polypType'],
  ['/findings/differentiation', 'differentiation', 'differentiation'],
  ['/findings/gastricType', 'gastric-type', 'gastricType'],
  ['/findings/depth', 'invasion-depth', 'depth'],
  ['/findings/ly', 'lymphatic-invasion', 'state'],
  ['/findings/v', 'venous-invasion', 'state'],
  ['/findings/perineural', 'perineural-invasion', 'state'],
  ['/findings/budding/grade', 'tumour-budding', 'buddingGrade'],
  ['/findings/ulcer', 'ulceration', 'ulcer'],
  ['/findings/hm/state', 'lateral-margin', 'horizontalMargin'],
  ['/findings/vm/state', 'vertical-margin', 'verticalMargin'],
  ['/findings/resectionStatus', 'stated-resection-status', 'resectionStatus'],
  ['/findings/pT', 'pathological-t', 'pT'],
  ['/background/intestinalMetaplasia', 'intestinal-metaplasia', 'intestinalMetaplasia'],
  ['/background/atrophy', 'gastric-atrophy', 'atrophy'],
  ['/background/olga', 'olga-stage', 'gastritisStage'],
  ['/background/olgim', 'olgim-stage', 'gastritisStage'],
  ['/background/helicobacterPylori', 'helicobacter-histology', 'helicobacterFinding'],
  ['/ancillary/p53', 'p53-pattern', 'p53'],
  ['/ancillary/mismatchRepair', 'mismatch-repair', 'mismatchRepair'],
  ['/ancillary/microsatellites', 'microsatellites', 'microsatellites'],
  ['/ancillary/her2', 'her2-score', 'her2'],
];

/** Fields that are a part of an Observation: pointer, item, part, element, how it is said. */
const C = 'valueCodeableConcept';
const Q = 'valueQuantity';
const PARTS: readonly (readonly [string, string, string, typeof C | typeof Q, Says])[] = [
  ['/specimen/procedure', 'specimen-handling', 'specimen-procedure', C, word('specimenProcedure')],
  ['/specimen/piecesReceived', 'specimen-handling', 'pieces-received', Q, as('piece')],
  ['/specimen/sliceIntervalMm', 'specimen-handling', 'slice-interval', Q, as('mm')],
  ['/specimen/longAxisMm', 'fixed-specimen-dimensions', 'specimen-length', Q, as('mm')],
  ['/specimen/shortAxisMm', 'fixed-specimen-dimensions', 'specimen-width', Q, as('mm')],
  ['/specimen/thicknessMm', 'fixed-specimen-dimensions', 'specimen-height', Q, as('mm')],
  ['/findings/sizeMm', 'tumour-dimensions', 'tumour-length', Q, as('mm')],
  ['/findings/shortSizeMm', 'tumour-dimensions', 'tumour-width', Q, as('mm')],
  ['/findings/undiffLengthMm', 'gastric-type', 'undifferentiated-length', Q, as('mm')],
  ['/findings/undiffInSm', 'gastric-type', 'undifferentiated-in-submucosa', C, answer],
  ['/findings/barrettDepth', 'invasion-depth', 'barrett-layer', C, word('barrettDepth')],
  ['/findings/smDepthUm', 'invasion-depth', 'submucosal-invasion-depth', Q, as('um')],
  ['/findings/smWidthUm', 'invasion-depth', 'submucosal-invasion-width', Q, as('um')],
  ['/findings/budding/count', 'tumour-budding', 'bud-count', Q, as('one')],
  ['/findings/hm/carcinoma', 'lateral-margin', 'margin-carcinoma', C, word('state')],
  ['/findings/hm/dysplasia', 'lateral-margin', 'margin-dysplasia', C, word('state')],
  ['/findings/hm/distanceMm', 'lateral-margin', 'margin-distance', Q, as('mm')],
  ['/findings/vm/carcinoma', 'vertical-margin', 'margin-carcinoma', C, word('state')],
  ['/findings/vm/dysplasia', 'vertical-margin', 'margin-dysplasia', C, word('state')],
  ['/findings/vm/distanceUm', 'vertical-margin', 'margin-distance', Q, as('um')],
  ['/findings/tnmEdition', 'pathological-t', 'tnm-edition', C, word('tnmEdition')],
  ['/background/metaplasiaIn', 'intestinal-metaplasia', 'metaplasia-site', C, none],
  [
    '/background/metaplasiaIn/*',
    'intestinal-metaplasia',
    'metaplasia-site',
    C,
    word('stomachPart'),
  ],
  ['/background/atrophyIn', 'gastric-atrophy', 'atrophy-site', C, none],
  ['/background/atrophyIn/*', 'gastric-atrophy', 'atrophy-site', C, word('stomachPart')],
  ['/ancillary/her2Amplified', 'her2-score', 'her2-amplified', C, answer],
];

const PIECE = 'piece-findings.{n}';
const OF_PIECES: typeof PARTS = [
  ['longAxisMm', PIECE, 'specimen-length', Q, as('mm')],
  ['shortAxisMm', PIECE, 'specimen-width', Q, as('mm')],
  ['thicknessMm', PIECE, 'specimen-height', Q, as('mm')],
  ['histology', PIECE, 'histology', C, word('histology')],
  ['depth', PIECE, 'invasion-depth', C, word('depth')],
  ['hm/state', PIECE, 'lateral-margin', C, word('horizontalMargin')],
  ['hm/carcinoma', PIECE, 'piece-lateral-margin-carcinoma', C, word('state')],
  ['hm/dysplasia', PIECE, 'piece-lateral-margin-dysplasia', C, word('state')],
  ['hm/distanceMm', PIECE, 'piece-lateral-margin-distance', Q, as('mm')],
  ['vm/state', PIECE, 'vertical-margin', C, word('verticalMargin')],
  ['vm/carcinoma', PIECE, 'piece-vertical-margin-carcinoma', C, word('state')],
  ['vm/dysplasia', PIECE, 'piece-vertical-margin-dysplasia', C, word('state')],
  ['vm/distanceUm', PIECE, 'piece-vertical-margin-distance', Q, as('um')],
];

const REPORT = 'DiagnosticReport pathology.*';
const ELSEWHERE: readonly (readonly [at: string, place: string, path: string, says: Says])[] = [
  ['/background/barrett', 'Observation barrett-mucosa', C, answer],
  ['/background/autoimmuneGastritis', 'Observation autoimmune-gastritis', C, answer],
  ['/ancillary/ki67Percent', 'Observation ki-67-share', Q, as('percent')],
  ['/ancillary/stains', 'Observation special-stains', C, none],
  ['/ancillary/stains/*', 'Observation special-stains', 'component[].code', word('stain')],
  ['/specimen/receivedAt', 'Specimen specimen', 'receivedTime', same],
  ['/laboratory', REPORT, 'performer[]', reference('Organization')],
  ['/pathologist', REPORT, 'resultsInterpreter[]', reference('Practitioner')],
  ['/report/reportedAt', REPORT, 'issued', same],
  [
    '/accession',
    REPORT,
    'identifier[]',
    ({ value }) => ({ type: STRUCTURE.identifierType.accession, ...value }),
  ],
  [
    '/accession',
    'Specimen specimen',
    'accessionIdentifier',
    ({ value }) => ({ type: STRUCTURE.identifierType.accession, ...value }),
  ],
  ['/report/status', REPORT, 'status', (_leaf, told) => statusOf(told)],
  ['/report/amendmentReason', 'Provenance ', 'reason[]', word('amendmentReason')],
  ['/patient/system', REPORT, 'subject.identifier.system', same],
  ['/patient/value', REPORT, 'subject.identifier.value', same],
  [
    '/revision',
    'Provenance ',
    'entity[].what.identifier.value',
    ({ value }, told) =>
      `${told.version.version.caseId}.pathology.${value}.sha256-${inForce(told).sha256}`,
  ],
];

/** Of a record with one report and no final one before it. Source: FHIR R4, status codes. */
const statusOf = (told: Told): string =>
  inForce(told).fields.report.status === 'final' ? 'final' : 'preliminary';

/** Source: the case itself names who sends it, and which it is. */
const OF_THE_CASE = 'the case says the same, or the contract refuses the report';
const JOURNAL_ONLY: readonly JournalOnly[] = [
  { at: '/schema', reason: 'names the form of the message' },
  { at: '/source', reason: OF_THE_CASE },
  { at: '/case', reason: OF_THE_CASE },
  { at: '/sentAt', reason: 'stands where the report was not signed' },
  { at: '/report/version', reason: 'tells amendments apart, which the status says' },
  { at: '/specimen/pieces', reason: 'an empty list of things' },
];

const just =
  (...values: readonly unknown[]): Fixed =>
  () =>
    values;

const urlOf = (told: Told, type: string, key: string) => {
  const { identifierBase, secret } = told.settings;
  const { caseId } = told.version.version;
  const system = `${identifierBase}/${type.toLowerCase()}`;
  const id = keyedUuid(secret, system, key === '' ? caseId : `${caseId}.${key}`);
  return { reference: `urn:uuid:${id}`, type };
};
const to =
  (type: string, ...keys: readonly string[]): Fixed =>
  (_resource, told) =>
    keys.map((key) => urlOf(told, type, key));

/** The pathologist and the laboratory, as far as the report or the case names them. */
const reporters: Fixed = (_resource, told) => {
  const { laboratory, pathologist } = inForce(told).fields;
  const named = laboratory ?? told.version.now.esdCase.fields.specimen?.laboratory;
  return [
    ...(named === undefined ? [] : [{ type: 'Organization', identifier: named }]),
    ...(pathologist === undefined ? [] : [{ type: 'Practitioner', identifier: pathologist }]),
  ];
};
const firstReporter: Fixed = (resource, told) => {
  const [first] = reporters(resource, told);
  return [first ?? { type: 'Organization', display: 'Laboratory, not named by the sender' }];
};
const issued: Fixed = (_resource, told) => {
  const { report, sentAt } = inForce(told).fields;
  return [report.reportedAt ?? sentAt];
};

const item: Fixed = (resource, told) => {
  const refs: Readonly<Record<string, CodeRef>> = ITEMS;
  const ref = refs[keyOf(resource).split('.')[0] ?? ''];
  return ref === undefined ? [] : [concept(ref, told)];
};
const profile: Fixed = (resource) => {
  const isReport = resource.resourceType === 'DiagnosticReport';
  const isDerived = keyOf(resource) === 'resection-status';
  const claimed = isReport
    ? 'dr-pathology-report'
    : isDerived
      ? 'dr-computed'
      : 'dr-pathology-finding';
  return [`${BASE}/StructureDefinition/${claimed}`];
};
const ownIdentifier: Fixed = (resource, { settings, version }) => [
  {
    system: `${settings.identifierBase}/${resource.resourceType.toLowerCase()}`,
    value: `${version.version.caseId}.${keyOf(resource)}`,
  },
];
const caseTimes: Fixed = (_resource, { version }) => [version.now.esdCase.fields.times.scopeInAt];

/** R0, R1, R2 or RX once more, as the sentences of the definitions say it. */
const residual: Fixed = (_resource, told) => {
  const { resection } = told.version.now.esdCase.fields;
  const { hm, vm } = inForce(told).fields.findings ?? {};
  const states = [hm?.state, vm?.state];
  const status = () => {
    if (resection.complete === false || resection.outcome === 'abandoned') return 'R2';
    if (states.includes('1')) return 'R1';
    if (states.includes(undefined)) return undefined;
    return resection.outcome === 'en-bloc' && states.every((s) => s === '0') ? 'R0' : 'RX';
  };
  const found = status();
  return found === undefined ? [] : [concept(WORD_CODES.resectionStatus[found], told)];
};

/** Either kind of vessel invaded, or both free of it. */
const vessels: Fixed = (_resource, told) => {
  const { ly, v } = inForce(told).fields.findings ?? {};
  const state = ly === '1' || v === '1' ? '1' : ly === '0' && v === '0' ? '0' : 'X';
  return [concept(WORD_CODES.state[state], told)];
};

const absence: Fixed = (resource, told) => {
  const { findings = {}, report } = inForce(told).fields;
  const isHarmless = ['none', 'indefinite', 'low-grade-dysplasia', 'high-grade-dysplasia'].includes(
    findings.histology ?? '',
  );
  if (keyOf(resource) === 'lymphovascular-invasion' && isHarmless) {
    return [STRUCTURE.absent.notApplicable];
  }
  return [report.status === 'final' ? STRUCTURE.absent.unknown : STRUCTURE.absent.tempUnknown];
};

const notDerived: Fixed = (_resource, told) => {
  const { hm, vm } = inForce(told).fields.findings ?? {};
  const missing = Object.entries({ hm, vm }).flatMap(([name, told]) =>
    told === undefined ? [`pathology.findings.${name}`] : [],
  );
  return [{ text: `Not derived, because not reported: ${missing.join(', ')}.` }];
};

const method: Fixed = (_resource, told) => {
  const { rulesVersion } = told.version.now.assessment;
  return [COMPUTATIONS['vessel-invasion'], COMPUTATIONS['resection-status']].map((ref) => {
    const named = concept(ref, told);
    const coding = (named.coding ?? []).map((one) => ({ ...one, version: rulesVersion }));
    return { ...named, coding };
  });
};

const FINDING = 'Observation *';
const FIXED: readonly (readonly [place: string, path: string, says: Fixed])[] = [
  ['* *', 'resourceType', (resource) => [resource.resourceType]],
  ['* *', 'meta.profile[]', profile],
  [
    '* *',
    'meta.tag[]',
    (_resource, { version }) => [
      { system: `${BASE}/CodeSystem/dr-revision`, code: String(version.version.state) },
    ],
  ],
  [REPORT, 'meta.tag[]', just(localCoding('report-origin', 'transcribed'))],
  ['* *', 'identifier[]', ownIdentifier],
  ['* *', 'subject.type', just('Patient')],
  [
    '* *',
    'subject.identifier',
    (_r, { version }) => [identifierOf(version.now.esdCase.fields.patient)],
  ],
  [
    '* *',
    'encounter',
    (_r, { version }) => [{ type: 'Encounter', identifier: version.now.esdCase.fields.encounter }],
  ],
  ['* *', 'effectiveDateTime', caseTimes],
  ['* *', 'issued', issued],
  ['Observation resection-status', 'issued', (_r, told) => [inForce(told).fields.sentAt]],
  [
    'Observation resection-status',
    'performer[]',
    (_r, { version }) => [
      { type: 'Practitioner', identifier: version.now.esdCase.fields.team.operator },
    ],
  ],
  [FINDING, 'performer[]', reporters],
  [FINDING, 'partOf[]', to('Procedure', '')],
  [FINDING, 'focus[]', to('Condition', 'lesion')],
  [FINDING, 'category[]', just(STRUCTURE.observationCategory.laboratory)],
  [FINDING, 'code', item],
  [FINDING, 'status', (_r, told) => [statusOf(told)]],
  [
    FINDING,
    'specimen',
    (resource, told) => {
      const [, piece] = keyOf(resource).split('.');
      const ours = told.version.now.esdCase.fields.specimen?.pieces?.length;
      const theirs = inForce(told).fields.specimen?.pieces?.length;
      const isPaired = piece !== undefined && ours === theirs;
      return [urlOf(told, 'Specimen', isPaired ? `specimen.${piece}` : 'specimen')];
    },
  ],
  [
    FINDING,
    'component[].code',
    (_r, told) => Object.values(ITEMS).map((ref) => concept(ref, told)),
  ],
  [
    'Observation special-stains',
    'component[].valueCodeableConcept',
    (_r, told) => [concept(ANSWERS.yes, told)],
  ],
  [FINDING, 'dataAbsentReason', absence],
  ['Observation lymphovascular-invasion', 'valueCodeableConcept', vessels],
  [
    'Observation lymphovascular-invasion',
    'derivedFrom[]',
    to('Observation', 'lymphatic-invasion', 'venous-invasion'),
  ],
  ['Observation resection-status', 'valueCodeableConcept', residual],
  ['Observation resection-status', 'note[]', notDerived],
  [
    'Observation resection-status',
    'derivedFrom[]',
    to('Observation', 'en-bloc', 'resection-completeness', 'lateral-margin', 'vertical-margin'),
  ],
  [FINDING, 'method', method],
  [
    REPORT,
    'extension[]',
    (_r, told) => [
      {
        url: 'http://hl7.org/fhir/StructureDefinition/event-partOf',
        valueReference: urlOf(told, 'Procedure', ''),
      },
    ],
  ],
  [REPORT, 'basedOn[]', to('ServiceRequest', 'pathology')],
  [REPORT, 'specimen[]', to('Specimen', 'specimen')],
  [REPORT, 'category[]', just(STRUCTURE.pathologyReportCategory)],
  [REPORT, 'code', (_r, told) => [concept(REPORT_KINDS['pathology-report'], told)]],
  [REPORT, 'performer[]', firstReporter],
  [
    REPORT,
    'result[]',
    (_r, told) =>
      told.resources
        .filter(({ meta }) => meta.profile[0].endsWith('/dr-pathology-finding'))
        .map((resource) => urlOf(told, 'Observation', keyOf(resource))),
  ],
  [REPORT, 'text', (resource, told) => (saysFindings(resource, told) ? [resource.text] : [])],
  [REPORT, 'conclusion', (resource) => [paragraphsOf(resource.text.div).join(' ')]],
];

const identifierOf = ({ system, value }: Draft) => ({ system, value });

/** The text is two paragraphs: where it comes from, and what was found, in words of its codes. */
function saysFindings({ text }: Draft, told: Told): boolean {
  const [origin, found = '', ...more] = paragraphsOf(text.div);
  const { findings = {}, report } = inForce(told).fields;
  const lead = report.status === 'final' ? 'Pathology: ' : 'Pathology, interim report: ';
  const known = told.resources
    .filter(({ meta }) => meta.profile[0].endsWith('/dr-pathology-finding'))
    .flatMap((r) => [r.valueCodeableConcept?.text, ...partTexts(r)])
    .map((one) => String(one).toLowerCase());
  const numbers = [findings.sizeMm, findings.shortSizeMm, findings.smDepthUm].map(String);
  const said = found
    .slice(lead.length, -1)
    .replace(' (', ', ')
    .replace(')', '')
    .split(/; |, /)
    .map((part) => part.replace(/^(depth|\w+ invasion|budding): /, '').toLowerCase());
  return (
    more.length === 0 &&
    origin === 'Transcribed from the message of the note system, not the original report.' &&
    found.startsWith(lead) &&
    said.every(
      (part) =>
        known.includes(part) ||
        part === 'nothing told yet' ||
        (/^tumour [\d. x]+ mm$|^\d+ um into the submucosa$/.test(part) &&
          (part.match(/[\d.]+/g) ?? []).every((number) => numbers.includes(number))),
    )
  );
}

const partTexts = ({ component = [] }: Draft): readonly unknown[] =>
  component.map((one: Draft) => one.valueCodeableConcept?.text);

const asSource = ([at, item, code, value, says]: (typeof PARTS)[number]): FieldSource => ({
  at,
  in: `Observation ${item}`,
  path: `component[${code}].${value}`,
  says,
});

/** Where every field of a report stands in the record, and what else its resources hold. */
export const REPORT_TABLES: Tables = {
  fields: [
    ...CODED.map(([at, key, list]) => ({
      at,
      in: `Observation ${key}`,
      path: C,
      says: word(list),
    })),
    ...PARTS.map(asSource),
    ...OF_PIECES.map(asSource).map((row) => ({ ...row, at: `/specimen/pieces/*/${row.at}` })),
    ...ELSEWHERE.map(([at, place, path, says]) => ({ at, in: place, path, says })),
  ],
  fixed: FIXED.map(([place, path, says]) => ({ in: place, path, says })),
  journalOnly: JOURNAL_ONLY,
};

const OWN = /\/(dr-pathology-finding|dr-pathology-report)$/;

/** The report in force, and the resources that say what it says. */
export const scopeOf = (fields: Draft): Scope => ({
  fields,
  owns: (resource) => OWN.test(resource.meta.profile[0]) || keyOf(resource) === 'resection-status',
});
