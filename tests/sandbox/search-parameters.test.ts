import fhirpath from 'fhirpath';
import r4 from 'fhirpath/fhir-context/r4';
import { describe, expect, it } from 'vitest';
import { elementPath } from '../../src/sandbox/element-path.js';
import { COMMON_PARAMETERS, SEARCH_PARAMETERS } from '../../src/sandbox/search-parameters.table.js';
import { madeUp } from './support/made-up.js';
import { publishedElements, publishedParameters } from './support/published.js';

const PUBLISHED = publishedParameters();
const ELEMENTS = publishedElements();

const OURS = [
  ...COMMON_PARAMETERS.map((parameter) => ({ type: 'Resource', ...parameter })),
  ...Object.entries(SEARCH_PARAMETERS).flatMap(([type, rows]) =>
    rows.map((row) => ({ type, ...row })),
  ),
];

const publishedAs = (definition: string) =>
  PUBLISHED.find(({ url }) => url === `http://hl7.org/fhir/SearchParameter/${definition}`);

/** The alternatives of a published expression that are about one type. */
const about = (type: string, expression: string) =>
  expression
    .split('|')
    .map((part) => part.trim())
    .filter((part) => part.replace('(', '').startsWith(`${type}.`));

/**
 * The published expression as the reference library evaluates it without a server: a reference
 * is told by its text, and `as` on many values, which FHIRPath forbids, is ofType.
 */
const evaluate = (resource: object, expression: string) =>
  fhirpath.evaluate(
    resource,
    expression
      .replace(/resolve\(\) is (\w+)/g, "reference.startsWith('$1/')")
      .replace(/\((\S+) as (\w+)\)/g, '$1.ofType($2)')
      .replace(/\.as\((\w+)\)/g, '.ofType($1)'),
    {},
    r4,
    { async: false, resolveInternalTypes: true },
  );

/** What can be found in one alternative: its path, its data type and what it refers to. */
function searched(alternative: string) {
  const [, type] = /(?: as |\.as\()(\w+)\)/.exec(alternative) ?? [];
  const [, referredTo] = /resolve\(\) is (\w+)/.exec(alternative) ?? [];
  const path = alternative.replace(/ as \w+|\.(?:as|where)\(.*?\)+$|[()]/g, '').trim();
  return madeUp(ELEMENTS, path, type, referredTo);
}

describe('search parameters, against the SearchParameter definitions of HL7 FHIR R4', () => {
  it.each(OURS)('$type.$code is the published $definition', (row) => {
    const published = publishedAs(row.definition);
    expect(published).toMatchObject({ code: row.code, type: row.kind });
    expect(published?.base).toContain(row.type);
    expect(row.expression.split(' | ')).toEqual(about(row.type, published?.expression ?? ''));
  });

  it('would be caught when an alternative of the published expression is left out', () => {
    const published = publishedAs('Condition-onset-date')?.expression ?? '';
    expect(['Condition.onset.as(dateTime)']).not.toEqual(about('Condition', published));
  });

  it('holds each parameter of a type once', () => {
    const names = OURS.map(({ type, code }) => `${type}.${code}`);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('what a search parameter finds, against the FHIRPath of fhirpath.js', () => {
  const cases = OURS.flatMap(({ type, code, expression }) =>
    type === 'Resource'
      ? []
      : expression
          .split(' | ')
          .flatMap((alternative) => searched(alternative))
          .map((resource, index) => ({ name: `${type}.${code}, ${index}`, expression, resource })),
  );

  it.each(cases)('$name', ({ expression, resource }) => {
    const found = elementPath(expression)(resource);
    expect(found).not.toEqual([]);
    expect(found).toEqual(evaluate(resource, expression));
  });

  it.each([
    ['a choice of another type', 'Condition.onset.as(Period)', { onsetDateTime: '2026' }],
    ['a reference to another type', 'Task.for.where(resolve() is Patient)', { for: group() }],
  ])('finds nothing in %s, as the library', (_what, expression, content) => {
    const resource = { resourceType: expression.split('.')[0] ?? '', ...content };
    expect(elementPath(expression)(resource)).toEqual([]);
    expect(evaluate(resource, expression)).toEqual([]);
  });

  it('would be caught when a path is read wrongly', () => {
    const resource = { resourceType: 'Condition', onsetDateTime: '2026' };
    expect(elementPath('Condition.onset')(resource)).not.toEqual(
      evaluate(resource, 'Condition.onset.as(Period)'),
    );
  });

  it('does not start with an expression that it cannot read', () => {
    expect(() => elementPath('Patient.deceased.exists()')).toThrow(/readable/);
  });
});

function group() {
  return { reference: 'Group/1' };
}
