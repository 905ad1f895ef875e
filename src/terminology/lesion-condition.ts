import type { BIOPSY_RESULTS, Organ, PathologyFields, Site } from '../contract/index.js';
import { type CodeRef, localDisplay, localRef } from './code-ref.js';
import {
  type Behaviour,
  BORDER_SITES,
  ORGAN_ICD10,
  ORGAN_SNOMED,
  SITE_ICD10,
} from './lesion-codes.table.js';

type BiopsyResult = (typeof BIOPSY_RESULTS)[number];
type Findings = NonNullable<PathologyFields['findings']>;
type Histology = NonNullable<Findings['histology']>;

/**
 * Behaviour by biopsy, as the digit behind the stroke of ICD-O-3 morphology has it: 8148/2 and
 * 8077/2 for high grade, 8148/0 and 8077/0 for low grade, 8213/0 for serrated lesions. A biopsy without
 * dysplasia does not clear the lesion, and the grade of a neuroendocrine tumour is not told.
 *
 * Source: concepts.csv, morphology rows.
 */
const BIOPSY_BEHAVIOUR: Readonly<Record<BiopsyResult, Behaviour>> = {
  'not-taken': 'uncertain',
  'no-dysplasia': 'uncertain',
  indefinite: 'uncertain',
  'low-grade-dysplasia': 'benign',
  'high-grade-dysplasia': 'in-situ',
  'carcinoma-squamous': 'malignant',
  adenocarcinoma: 'malignant',
  'adenocarcinoma-differentiated': 'malignant',
  'adenocarcinoma-undifferentiated': 'malignant',
  'sessile-serrated-lesion': 'benign',
  'sessile-serrated-lesion-dysplasia': 'benign',
  'neuroendocrine-tumour': 'uncertain',
};

const BEHAVIOUR_TEXT: Readonly<Record<Behaviour, string>> = {
  malignant: 'Carcinoma',
  'in-situ': 'High-grade dysplasia or carcinoma in situ',
  benign: 'Benign or low-grade neoplasia',
  uncertain: 'Neoplasia of uncertain behaviour',
};

/**
 * The lesion as a Condition before its pathology: SNOMED CT by organ and ICD-10 by site, both by
 * behaviour, and our code for a dissected lesion. Without a biopsy the behaviour is uncertain,
 * never benign.
 */
export function lesionCondition(organ: Organ, biopsyResult?: BiopsyResult, site?: Site): CodeRef {
  const behaviour = biopsyResult === undefined ? 'uncertain' : BIOPSY_BEHAVIOUR[biopsyResult];
  return conditionOf(behaviour, organ, site);
}

/**
 * The lesion as a Condition once the specimen was read. A carcinoma that is in situ by its pT, or
 * by its layer where the lineage calls that layer in situ, has the code of a carcinoma in situ; a
 * lesion without a tumour has no code of one.
 *
 * Source: pTis of the UICC TNM and category D00 to D09 of ICD-10, from memory; behaviour as for biopsies.
 */
export function lesionByHistology(
  organ: Organ,
  { histology, tumour, depth, pT }: Findings & { readonly histology: Histology },
  site?: Site,
): CodeRef {
  if (histology === 'none') {
    return {
      ...localRef({ set: 'lesion-type', code: 'dissected-lesion' }),
      text: `No dysplasia and no tumour: ${localDisplay('gi-subsite', site ?? organ)}`,
    };
  }
  const isInSitu =
    pT === undefined
      ? depth !== undefined && tumour !== undefined && IN_SITU[tumour] === depth
      : pT === 'pTis';
  const behaviour = HISTOLOGY_BEHAVIOUR[histology];
  return conditionOf(behaviour === 'malignant' && isInSitu ? 'in-situ' : behaviour, organ, site);
}

/** Layers that are in situ in the TNM: squamous within the epithelium, colorectal in the mucosa. */
const IN_SITU: Readonly<Partial<Record<string, Findings['depth']>>> = {
  squamous: 'ep',
  colorectal: 'm',
};

/** As the behaviour by biopsy; what stands outside of the order of dysplasia is uncertain. */
const HISTOLOGY_BEHAVIOUR: Readonly<Record<Exclude<Histology, 'none'>, Behaviour>> = {
  indefinite: 'uncertain',
  'low-grade-dysplasia': 'benign',
  'high-grade-dysplasia': 'in-situ',
  carcinoma: 'malignant',
  'neuroendocrine-tumour': 'uncertain',
  'other-tumour': 'uncertain',
  'not-assessable': 'uncertain',
};

function conditionOf(behaviour: Behaviour, organ: Organ, site: Site | undefined): CodeRef {
  const snomed = ORGAN_SNOMED[organ][behaviour];
  const isBorder = site !== undefined && BORDER_SITES.includes(site);
  const icd10 = site === undefined ? ORGAN_ICD10[organ] : SITE_ICD10[site];
  return {
    ...localRef({ set: 'lesion-type', code: 'dissected-lesion' }),
    open: [...(snomed === undefined || isBorder ? [] : [snomed]), icd10[behaviour]],
    text: `${BEHAVIOUR_TEXT[behaviour]}: ${localDisplay('gi-subsite', site ?? organ)}`,
  };
}
