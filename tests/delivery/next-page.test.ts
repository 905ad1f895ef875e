import { describe, expect, it } from 'vitest';
import { nextPath } from '../../src/delivery/next-page.js';

/*
 * Oracle: FHIR R4 (4.0.1), RESTful API, "Paging" (a link of relation next, absolute or relative to
 * the base); that our credentials go to no other place is a rule of the project.
 */
const BASE = 'https://fhir.example/r4';
const page = (url: string) => nextPath({ link: [{ relation: 'next', url }] }, BASE);

describe('the link to a further page', () => {
  it.each([
    [`${BASE}?_getpages=1`, '?_getpages=1'],
    [`${BASE}/Appointment?_page=a.2`, '/Appointment?_page=a.2'],
    ['Appointment?_page=a.2', '/Appointment?_page=a.2'],
    ['/r4/Appointment?_page=a.2', '/Appointment?_page=a.2'],
  ])('%s is followed', (url, path) => {
    expect(page(url)).toBe(path);
  });

  it.each([
    'https://elsewhere.example/r4?_page=2',
    'http://fhir.example/r4?_page=2',
    'https://fhir.example:8443/r4?_page=2',
    'https://fhir.example/other?_page=2',
    'https://fhir.example/r4-other?_page=2',
    'https://fhir.example/r4/../admin',
    'http://[',
  ])('%s is not', (url) => {
    expect(page(url)).toBe('elsewhere');
  });

  it('is missing on the last page', () => {
    expect(nextPath({ link: [{ relation: 'self', url: BASE }] }, BASE)).toBeUndefined();
    expect(nextPath('no Bundle', BASE)).toBeUndefined();
  });
});
