/** One who dissects in an invented unit. */
export interface InventedOperator {
  readonly number: string;
  readonly joinedOn: string;
  /** Dissections before joining. */
  readonly casesBefore: number;
  /** Also the share of the cases of the unit while at work there. */
  readonly casesPerYear: number;
}

export interface InventedUnit {
  readonly name: string;
  /** Of 100 cases of a set of units, about as its operators do in a year. */
  readonly share: number;
  readonly offsetHours: number;
  readonly operators: readonly InventedOperator[];
}

/** Days between which the procedures lie; the last one is also the last of any message. */
export const FIRST_DAY = '2018-01-01';
export const LAST_DAY = '2026-06-30';

/**
 * So many cases fill one set of the units below at the pace of its operators; the next ones come
 * from a set of their own, so that a larger run has more units and not busier people.
 */
export const CASES_OF_A_SET = 5_000;

/**
 * Units and people, all invented for this generator. The upkeep of about 25 cases a year is a
 * number of the ESGE curriculum (Endoscopy 2019;51:980-992, from memory); who does more, who begins
 * and who comes with experience is invented.
 */
export const UNITS: readonly InventedUnit[] = [
  {
    name: 'vale',
    share: 40,
    offsetHours: 1,
    operators: [
      { number: '1', joinedOn: FIRST_DAY, casesBefore: 450, casesPerYear: 120 },
      { number: '2', joinedOn: FIRST_DAY, casesBefore: 60, casesPerYear: 80 },
      { number: '3', joinedOn: '2020-03-02', casesBefore: 0, casesPerYear: 25 },
      { number: '4', joinedOn: '2023-09-04', casesBefore: 0, casesPerYear: 12 },
    ],
  },
  {
    name: 'ridge',
    share: 55,
    offsetHours: 9,
    operators: [
      { number: '1', joinedOn: FIRST_DAY, casesBefore: 1200, casesPerYear: 200 },
      { number: '2', joinedOn: FIRST_DAY, casesBefore: 240, casesPerYear: 110 },
      { number: '3', joinedOn: '2021-04-01', casesBefore: 15, casesPerYear: 45 },
    ],
  },
  {
    name: 'shore',
    share: 5,
    offsetHours: 0,
    operators: [
      { number: '1', joinedOn: FIRST_DAY, casesBefore: 5, casesPerYear: 14 },
      { number: '2', joinedOn: '2019-10-01', casesBefore: 0, casesPerYear: 9 },
    ],
  },
];
