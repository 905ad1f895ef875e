import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import {
  DEFAULT_UNIT_SETTINGS,
  parseUnitSettings,
  REVIEW_CHECKS,
} from '../../src/contract/index.js';

/** A file as units wrote it before the review and the rule sets could be chosen. */
const EARLIER = {
  schema: 'unit-settings/1',
  version: 3,
  identifierBase: 'urn:oid:2.999.7',
  licences: { snomedCt: false },
  endoscopyReport: 'wait',
  missingPatient: 'require',
};

// Oracle: ajv, another implementation of JSON Schema draft 2020-12, on the published schema.
const ajv = new Ajv2020({ strict: true, strictTypes: false });
formats.default(ajv);
const published = ajv.compile(
  JSON.parse(readFileSync('shared/schemas/unit-settings.schema.json', 'utf8')),
);

const read = (settings: object) =>
  parseUnitSettings(new TextEncoder().encode(JSON.stringify(settings)));

function problemsOf(settings: object) {
  expect(published(settings)).toBe(false);
  const checked = read(settings);
  return checked.ok ? [] : checked.problems;
}

describe('the settings of a unit', () => {
  it('may be those of the example', () => {
    const settings = parseUnitSettings(readFileSync('examples/settings/unit.json'));
    expect(settings).toMatchObject({ ok: true, value: { smallCells: 'show', version: 1 } });
  });

  it('may leave out what came later: the defaults hold', () => {
    expect(published(EARLIER)).toBe(true);
    const checked = read(EARLIER);
    if (!checked.ok) throw new Error('an earlier file is sound');
    const { schema, version, identifierBase, licences, endoscopyReport, missingPatient, ...later } =
      checked.value;
    expect({ schema, version, identifierBase, licences, endoscopyReport, missingPatient }).toEqual(
      EARLIER,
    );
    expect(later).toEqual({
      // The rule set that is named as the default of every organ with a table.
      curabilityRules: {
        oesophagus: 'esge-esd-2022',
        stomach: 'esge-esd-2022',
        colon: 'esge-esd-2022',
        rectum: 'esge-esd-2022',
      },
      // The rule sets that are named as the defaults of each organ.
      followUpRules: {
        oesophagus: 'esge-esd-2022-follow-up',
        stomach: 'esge-esd-2022-follow-up',
        duodenum: 'esge-duodenum-2021',
        colon: 'esge-esd-2022-follow-up',
        rectum: 'esge-esd-2022-follow-up',
      },
      closedWeekdays: ['saturday', 'sunday'],
      closedDays: [],
      publicHolidays: [],
      checksOff: [],
      strictureProphylaxis: 'above-three-quarters',
      antithromboticEdition: 'bsg-esge-2021',
      timeZone: 'UTC',
      waitingCaseDays: 14,
      // Decision of the project: a proposal stands on the server only where the unit wants it.
      proposedAppointments: false,
      // Counts below 5 are hidden: the must-have list of the project, common practice.
      smallCells: 'hide',
      smallCellThreshold: 5,
    });
    expect(DEFAULT_UNIT_SETTINGS).toMatchObject(later);
  });

  it.each([{ smallCells: 'never' }, { smallCellThreshold: 1 }, { smallCellThreshold: 2.5 }])(
    'hide small counts or show them, and small is a number of 2 or more: not %j',
    (change) => {
      const [pointer = ''] = Object.keys(change);
      expect(problemsOf({ ...EARLIER, ...change })).toMatchObject([{ pointer: `/${pointer}` }]);
    },
  );

  it.each([
    ['Europe/Madrid', true],
    ['UTC', true],
    ['Europe/Nowhere', false],
    ['+02:00', false],
    ['', false],
  ])('are at a place of the IANA time zone database: %s %s', (timeZone, isSound) => {
    const settings = read({ ...EARLIER, timeZone }); // a JSON Schema has no list of them
    const problems = settings.ok ? [] : settings.problems;
    expect(problems.map(({ pointer }) => pointer)).toEqual(isSound ? [] : ['/timeZone']);
  });

  it('may name the unit in one line, in any script', () => {
    for (const name of ['Endoscopy unit of Vale (invented)', 'Ñ', '内視鏡センター']) {
      expect(published({ ...EARLIER, name })).toBe(true);
      expect(read({ ...EARLIER, name })).toMatchObject({ ok: true, value: { name } });
    }
    for (const name of ['', ' Vale', 'Vale ', 'Vale\nRidge', 'a'.repeat(101)]) {
      expect(problemsOf({ ...EARLIER, name })).toMatchObject([
        { rule: 'bad-format', pointer: '/name' },
      ]);
    }
  });

  it('choose a rule set for one organ and leave the others as they are', () => {
    const own = { ...EARLIER, curabilityRules: { colon: 'jsccr-2019' } };
    expect(published(own)).toBe(true);
    expect(read(own)).toMatchObject({
      ok: true,
      value: { curabilityRules: { colon: 'jsccr-2019', rectum: 'esge-esd-2022' } },
    });
  });

  it.each([
    ['oesophagus', ['esge-esd-2022', 'jges-jes-2020', 'kr-2020']],
    ['stomach', ['esge-esd-2022', 'jges-jgca-2021']],
    ['colon', ['esge-esd-2022', 'jsccr-2019']],
    ['rectum', ['esge-esd-2022', 'jsccr-2019']],
  ])('offer the rule sets of the %s alone', (organ, offered) => {
    for (const set of offered) {
      expect(read({ ...EARLIER, curabilityRules: { [organ]: set } }).ok).toBe(true);
    }
    for (const set of ['maps-iii-2025', organ === 'stomach' ? 'kr-2020' : 'jges-jgca-2021']) {
      expect(problemsOf({ ...EARLIER, curabilityRules: { [organ]: set } })).toMatchObject([
        {
          rule: 'not-in-list',
          pointer: `/curabilityRules/${organ}`,
          expected: `one of: ${offered.join(', ')}`,
        },
      ]);
    }
  });

  it('have no rule set for the duodenum', () => {
    const own = { ...EARLIER, curabilityRules: { duodenum: 'esge-esd-2022' } };
    expect(problemsOf(own)).toMatchObject([
      { rule: 'unknown-field', pointer: '/curabilityRules/duodenum' },
    ]);
  });

  it('choose a follow-up for one organ, of the sets that speak of it', () => {
    const own = { ...EARLIER, followUpRules: { colon: 'bsg-2019' } };
    expect(published(own)).toBe(true);
    expect(read(own)).toMatchObject({
      ok: true,
      value: { followUpRules: { colon: 'bsg-2019', rectum: 'esge-esd-2022-follow-up' } },
    });
    expect(problemsOf({ ...EARLIER, followUpRules: { stomach: 'bsg-2019' } })).toMatchObject([
      { rule: 'not-in-list', pointer: '/followUpRules/stomach' },
    ]);
  });

  it('name closed days and weekdays, and leave one day of the week open', () => {
    const week = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
    const own = {
      ...EARLIER,
      closedWeekdays: week.slice(1),
      closedDays: ['2027-02-08'],
      publicHolidays: ['2027-01-01'],
    };
    expect(published(own)).toBe(true);
    expect(read(own)).toMatchObject({ ok: true, value: own });
    expect(problemsOf({ ...EARLIER, closedWeekdays: week })).toMatchObject([
      { pointer: '/closedWeekdays' },
    ]);
    expect(problemsOf({ ...EARLIER, closedDays: ['2027-02-30'] })).toMatchObject([
      { pointer: '/closedDays/0' },
    ]);
  });

  it('switch checks off by id; an unknown id is refused with the list of those that exist', () => {
    const own = { ...EARLIER, checksOff: ['PC-13', 'AT-01'] };
    expect(read(own)).toMatchObject({ ok: true, value: { checksOff: ['PC-13', 'AT-01'] } });
    expect(read({ ...EARLIER, checksOff: REVIEW_CHECKS }).ok).toBe(true);
    // PC-12 and PC-15 are contradictions, which no unit can switch off.
    for (const id of ['PC-12', 'PC-15', 'PC-99', 'pc-13']) {
      expect(problemsOf({ ...EARLIER, checksOff: ['PC-13', id] })).toMatchObject([
        {
          rule: 'not-in-list',
          pointer: '/checksOff/1',
          expected: `one of: ${REVIEW_CHECKS.join(', ')}`,
        },
      ]);
    }
  });

  it.each([
    ['strictureProphylaxis', ['above-three-quarters', 'from-three-quarters']],
    ['antithromboticEdition', ['bsg-esge-2016', 'bsg-esge-2021', 'asia-pacific-2018']],
  ])('know these words for %s', (field, words) => {
    for (const word of words) {
      expect(read({ ...EARLIER, [field]: word })).toMatchObject({
        ok: true,
        value: { [field]: word },
      });
    }
    expect(problemsOf({ ...EARLIER, [field]: 'newest' })).toMatchObject([
      { rule: 'not-in-list', pointer: `/${field}`, expected: `one of: ${words.join(', ')}` },
    ]);
  });
});
