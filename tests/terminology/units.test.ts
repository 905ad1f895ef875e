import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import { describe, expect, it } from 'vitest';
import { readDefinitions } from '../../scripts/profiles/definitions.js';
import { readConceptRows } from '../../scripts/terminology/read-csv.js';
import { UNITS } from '../../src/terminology/index.js';

const parser = UcumLhcUtils.getInstance();
const isUcum = (code: string): boolean => parser.validateUnitString(code).status === 'valid';

describe('units, against a UCUM parser', () => {
  const rows = readConceptRows().filter(({ group }) => group === 'unit');

  it('finds the units of the table', () => {
    expect(rows.length).toBeGreaterThan(25);
  });

  it.each(rows)('parses $code', ({ system, code }) => {
    expect(system).toBe('http://unitsofmeasure.org');
    expect(isUcum(code)).toBe(true);
  });

  it.each(['cm²', 'millimetre', 'cm2/hour', 'score', 'Min'])('rejects %s', (code) => {
    expect(isUcum(code)).toBe(false);
  });
});

describe('units, against the FHIR R4 value set of common UCUM units', () => {
  const common = new Set(
    readDefinitions()
      .valueSets.get('http://hl7.org/fhir/ValueSet/ucum-common')
      ?.compose?.include.flatMap(({ concept = [] }) => concept.map(({ code }) => code)),
  );

  it('are common ones, but for counts, scores and the dissection speed', () => {
    const rare = Object.values(UNITS).filter(({ code }) => !common.has(code));
    const counts = ['{clip}', '{lesion}', '{piece}', '{score}', '{tunnel}'];
    expect(rare.map(({ code }) => code).sort()).toEqual(['cm2/h', ...counts]);
  });
});
