import type { Organ, Site } from '../contract/index.js';
import type { ConceptKey } from './code-ref.js';

/** How the lesion behaves, as far as it is known before the specimen has been read. */
export type Behaviour = 'malignant' | 'in-situ' | 'benign' | 'uncertain';

type ByBehaviour = Readonly<Record<Behaviour, Extract<ConceptKey, `dx-${string}`>>>;

const row = (
  malignant: ByBehaviour['malignant'],
  inSitu: ByBehaviour['malignant'],
  benign: ByBehaviour['malignant'],
  uncertain: ByBehaviour['malignant'],
): ByBehaviour => ({ malignant, 'in-situ': inSitu, benign, uncertain });

const oesophagus = (malignant: ByBehaviour['malignant']): ByBehaviour =>
  row(malignant, 'dx-d00-1', 'dx-d13-0', 'dx-d37-7');
const stomach = (malignant: ByBehaviour['malignant']): ByBehaviour =>
  row(malignant, 'dx-d00-2', 'dx-d13-1', 'dx-d37-1');
const colon = (
  malignant: ByBehaviour['malignant'],
  benign: ByBehaviour['malignant'],
): ByBehaviour => row(malignant, 'dx-d01-0', benign, 'dx-d37-4');

const DUODENUM = row('dx-c17-0', 'dx-d01-4', 'dx-d13-2', 'dx-d37-2');
const RECTUM = row('dx-c20', 'dx-d01-2', 'dx-d12-8', 'dx-d37-5');

/**
 * ICD-10 (WHO) by organ and behaviour, for a case that does not tell the site.
 *
 * Source: titles of the categories C15 to C21, D00, D01, D12, D13 and D37 in concepts.csv. From
 * memory: D37.7 holds the oesophagus and the anal canal, D37.5 the rectosigmoid junction.
 */
export const ORGAN_ICD10: Readonly<Record<Organ, ByBehaviour>> = {
  oesophagus: oesophagus('dx-c15-9'),
  stomach: stomach('dx-c16-9'),
  duodenum: DUODENUM,
  colon: colon('dx-c18-9', 'dx-d12-6'),
  rectum: RECTUM,
};

/**
 * The same by site. From memory: the oesophagogastric junction stands under the cardia, the
 * ileocaecal valve under the caecum, and both flexures under D12.3. The angulus has no category
 * of its own.
 */
export const SITE_ICD10: Readonly<Record<Site, ByBehaviour>> = {
  'oesophagus-cervical': oesophagus('dx-c15-0'),
  'oesophagus-upper-third': oesophagus('dx-c15-3'),
  'oesophagus-middle-third': oesophagus('dx-c15-4'),
  'oesophagus-lower-third': oesophagus('dx-c15-5'),
  'oesophagus-abdominal': oesophagus('dx-c15-2'),
  'oesophagogastric-junction': stomach('dx-c16-0'),
  'stomach-cardia': stomach('dx-c16-0'),
  'stomach-fundus': stomach('dx-c16-1'),
  'stomach-body': stomach('dx-c16-2'),
  'stomach-angulus': stomach('dx-c16-9'),
  'stomach-antrum': stomach('dx-c16-3'),
  'stomach-pylorus': stomach('dx-c16-4'),
  'duodenum-bulb': DUODENUM,
  'duodenum-second-part': DUODENUM,
  'duodenum-third-part': DUODENUM,
  caecum: colon('dx-c18-0', 'dx-d12-0'),
  'ileocaecal-valve': colon('dx-c18-0', 'dx-d12-0'),
  'ascending-colon': colon('dx-c18-2', 'dx-d12-2'),
  'hepatic-flexure': colon('dx-c18-3', 'dx-d12-3'),
  'transverse-colon': colon('dx-c18-4', 'dx-d12-3'),
  'splenic-flexure': colon('dx-c18-5', 'dx-d12-3'),
  'descending-colon': colon('dx-c18-6', 'dx-d12-4'),
  'sigmoid-colon': colon('dx-c18-7', 'dx-d12-5'),
  'rectosigmoid-junction': row('dx-c19', 'dx-d01-1', 'dx-d12-7', 'dx-d37-5'),
  'rectum-upper': RECTUM,
  'rectum-middle': RECTUM,
  'rectum-lower': RECTUM,
  'anal-canal': row('dx-c21-1', 'dx-d01-3', 'dx-d12-9', 'dx-d37-7'),
};

/**
 * SNOMED CT by organ and behaviour, where a freely licensed concept says that and no more: the
 * malignant biopsies are all carcinomas, and a neoplasm without behaviour claims none.
 */
export const ORGAN_SNOMED: Readonly<
  Record<Organ, Partial<Record<Behaviour, Extract<ConceptKey, `lesion-${string}`>>>>
> = {
  oesophagus: { malignant: 'lesion-carcinoma-oesophagus' },
  stomach: { malignant: 'lesion-carcinoma-stomach', uncertain: 'lesion-neoplasm-stomach' },
  duodenum: { malignant: 'lesion-carcinoma-duodenum' },
  colon: {
    malignant: 'lesion-carcinoma-colon',
    benign: 'lesion-benign-neoplasm-colon',
    uncertain: 'lesion-neoplasm-colon',
  },
  rectum: { malignant: 'lesion-malignant-rectum', uncertain: 'lesion-neoplasm-rectum' },
};

/** Sites at the border of their organ, of which a concept of the organ would say too much. */
export const BORDER_SITES: readonly Site[] = [
  'oesophagogastric-junction',
  'rectosigmoid-junction',
  'anal-canal',
];
