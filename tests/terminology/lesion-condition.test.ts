import { describe, expect, it } from 'vitest';
import { BIOPSY_RESULTS, ORGANS, SITE_ORGAN, SITES, type Site } from '../../src/contract/index.js';
import { codeableConcept, lesionCondition, WORD_CODES } from '../../src/terminology/index.js';

const OFF = { snomedCt: false };
const ICD10 = 'http://hl7.org/fhir/sid/icd-10';
const ICDO3 = 'http://terminology.hl7.org/CodeSystem/icd-o-3';

type Arguments = Parameters<typeof lesionCondition>;

const icd10 = (...args: Arguments) =>
  codeableConcept(lesionCondition(...args), OFF).coding?.find(({ system }) => system === ICD10);

/**
 * ICD-10 (WHO), chapter II: the block and the beginning of the title say the behaviour. What the
 * biopsy says of it is the behaviour digit of ICD-O-3: /3 malignant, /2 in situ, /0 benign, /1
 * uncertain.
 */
const BLOCKS = [
  ['adenocarcinoma', /^C(15|16|17|18|19|20|21)/, /^Malignant neoplasm/],
  ['carcinoma-squamous', /^C(15|16|17|18|19|20|21)/, /^Malignant neoplasm/],
  ['high-grade-dysplasia', /^D0[01]\./, /^Carcinoma in situ/],
  ['low-grade-dysplasia', /^D1[23]\./, /^Benign neoplasm/],
  ['sessile-serrated-lesion', /^D1[23]\./, /^Benign neoplasm/],
  ['indefinite', /^D37\./, /^Neoplasm of uncertain or unknown behaviour/],
  ['not-taken', /^D37\./, /^Neoplasm of uncertain or unknown behaviour/],
  [undefined, /^D37\./, /^Neoplasm of uncertain or unknown behaviour/],
] as const;

describe('the lesion before pathology, against the blocks of ICD-10 chapter II', () => {
  it.each(BLOCKS)('after a biopsy %s is coded in %s at every site', (result, code, title) => {
    for (const site of SITES) {
      const coding = icd10(SITE_ORGAN[site], result, site);
      expect(coding?.code).toMatch(code);
      expect(coding?.display).toMatch(title);
    }
    for (const organ of ORGANS) expect(icd10(organ, result)?.code).toMatch(code);
  });

  it('would notice a benign lesion coded as malignant', () => {
    expect(icd10('stomach', 'adenocarcinoma')?.code).not.toMatch(/^D1[23]\./);
  });
});

/**
 * The topography of ICD-O-3 is the malignant section of ICD-10 (ICD-O-3, introduction); a category
 * without a fourth digit has .9 there.
 */
const topographyOf = (site: Site): string | undefined =>
  codeableConcept(WORD_CODES.site[site], OFF).coding?.find(({ system }) => system === ICDO3)?.code;

const asTopography = (code = ''): string => (code.includes('.') ? code : `${code}.9`);

describe('a carcinoma by ICD-10, against the topography of ICD-O-3', () => {
  it.each(SITES)('is coded at the same place: %s', (site) => {
    const malignant = icd10(SITE_ORGAN[site], 'adenocarcinoma', site);
    expect(asTopography(malignant?.code)).toBe(topographyOf(site));
  });

  it('would notice the wrong place', () => {
    const malignant = icd10('colon', 'adenocarcinoma', 'caecum');
    expect(asTopography(malignant?.code)).not.toBe(topographyOf('sigmoid-colon'));
  });
});

/** Titles of ICD-10 for the organ; D37.7 is that of all digestive organs without one of their own. */
const ORGAN_TITLES = {
  oesophagus: /oesophagus|Oesophagus|Cardia|Stomach|Other digestive organs/,
  stomach: /[Ss]tomach|Cardia|[Pp]ylor/,
  duodenum: /Duodenum|Small intestine|Other and unspecified parts of intestine/,
  colon: /[Cc]olon|Caecum|flexure/,
  rectum: /[Rr]ect|Anal canal|anal canal|Other digestive organs/,
} as const;

describe('the lesion before pathology, by organ', () => {
  it.each(ORGANS)('has titles of the %s and no other organ', (organ) => {
    const sites = SITES.filter((site) => SITE_ORGAN[site] === organ);
    for (const site of [undefined, ...sites]) {
      for (const result of BIOPSY_RESULTS) {
        expect(icd10(organ, result, site)?.display).toMatch(ORGAN_TITLES[organ]);
      }
    }
  });

  it('would notice another organ', () => {
    expect(icd10('stomach', 'adenocarcinoma')?.display).not.toMatch(ORGAN_TITLES.colon);
  });
});

describe('the lesion before pathology in SNOMED CT', () => {
  const snomed = (...args: Arguments) =>
    codeableConcept(lesionCondition(...args), OFF).coding?.filter(
      ({ system }) => system === 'http://snomed.info/sct',
    );

  it('never says more of the behaviour than ICD-10 does (names of the Global Patient Set)', () => {
    for (const organ of ORGANS) {
      for (const result of [undefined, ...BIOPSY_RESULTS]) {
        const isMalignant = icd10(organ, result)?.code?.startsWith('C') ?? false;
        for (const { display } of snomed(organ, result) ?? []) {
          expect(/carcinoma|malignant/i.test(display ?? '')).toBe(isMalignant);
        }
      }
    }
    expect(snomed('stomach', 'adenocarcinoma')?.[0]?.display).toBe('Carcinoma of stomach');
  });

  it('leaves the organ out at its border, where the organ would be the wrong one', () => {
    expect(snomed('rectum', 'adenocarcinoma', 'anal-canal')).toEqual([]);
    expect(snomed('rectum', 'adenocarcinoma', 'rectum-lower')).not.toEqual([]);
  });
});
