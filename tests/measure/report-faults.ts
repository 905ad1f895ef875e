import type { MeasureReport, MeasureReportGroup } from 'fhir/r4.js';

/** What a group and a stratum have in common. */
export type Cell = Pick<MeasureReportGroup, 'population' | 'measureScore'>;

/** A way to break one rule on a report of outcomes. */
export interface ReportFault {
  readonly rule: string;
  readonly name: string;
  /** In counts and rate of a group, or of a stratum. */
  readonly inCell?: (cell: Cell) => void;
  /** Anywhere else. */
  readonly inReport?: (report: MeasureReport) => void;
  /** Another rule that cannot hold either. */
  readonly also?: string;
}

const score = (cell: Cell): NonNullable<Cell['measureScore']> => (cell.measureScore ??= {});

/** Population 0 initial, 1 denominator, 2 what is excluded, 3 numerator. */
const setCount = (cell: Cell, population: number, count: number): void => {
  const found = cell.population?.[population];
  if (found !== undefined) found.count = count;
};

const reasons = (cell: Cell) => cell.population?.[2]?.extension?.[0]?.extension ?? [];

/** Nobody to count, so that no rule asks for a rate. */
const countNobody = (cell: Cell): void => {
  for (const population of [1, 2, 3]) setCount(cell, population, 0);
  for (const reason of reasons(cell)) reason.valueUnsignedInt = 0;
};

const ABSENT = 'http://hl7.org/fhir/StructureDefinition/data-absent-reason';

export const REPORT_FAULTS: readonly ReportFault[] = [
  {
    rule: 'dr-r-out-1',
    name: 'a rate and a reason against it',
    inCell: (cell) => {
      score(cell).extension?.push({ url: ABSENT, valueCode: 'not-applicable' });
    },
  },
  {
    rule: 'dr-r-out-1',
    name: 'another reason than these two',
    inCell: (cell) => {
      cell.measureScore = { extension: [{ url: ABSENT, valueCode: 'unknown' }] };
      countNobody(cell);
    },
  },
  {
    rule: 'dr-r-out-2',
    name: 'counts beside a masked rate',
    inCell: (cell) => {
      cell.measureScore = { extension: [{ url: ABSENT, valueCode: 'masked' }] };
      countNobody(cell);
    },
  },
  {
    rule: 'dr-r-out-3',
    name: 'a population twice',
    inCell: ({ population = [] }) => {
      const [initial] = population;
      if (initial !== undefined) population.push(structuredClone(initial));
    },
    also: 'dr-r-out-4',
  },
  {
    rule: 'dr-r-out-4',
    name: 'more in the denominator than there are cases',
    inCell: (cell) => setCount(cell, 0, 1),
  },
  {
    rule: 'dr-r-out-5',
    name: 'a rate that is none of these counts',
    inCell: (cell) => {
      score(cell).value = (cell.measureScore?.value ?? 0) + 0.001;
    },
  },
  {
    rule: 'dr-r-out-6',
    name: 'a rate outside of its interval',
    inCell: (cell) => {
      const upper = score(cell).extension?.[0]?.extension?.find(({ url }) => url === 'upper');
      if (upper !== undefined) upper.valueDecimal = 0.1;
    },
  },
  {
    rule: 'dr-r-out-6',
    name: 'no interval',
    inCell: (cell) => {
      delete score(cell).extension;
    },
  },
  {
    rule: 'dr-r-out-7',
    name: 'reasons that do not add up',
    inCell: (cell) => {
      const [missing] = reasons(cell);
      if (missing !== undefined) missing.valueUnsignedInt = 3;
    },
  },
  {
    rule: 'dr-r-out-8',
    name: 'an indicator twice',
    inReport: (report) => {
      report.group = [...(report.group ?? []), ...(report.group ?? []).slice(0, 1)];
    },
  },
  {
    rule: 'dr-r-out-9',
    name: 'a Measure without its version',
    inReport: (report) => {
      report.measure = 'https://dissection-records.example/fhir/Measure/dr-outcomes';
    },
  },
  {
    rule: 'dr-r-out-9',
    name: 'a period without its days',
    inReport: (report) => {
      report.period.end = '2025-12';
    },
  },
  {
    rule: 'profile-shape',
    name: 'a report of single patients',
    inReport: (report) => {
      report.type = 'individual';
    },
  },
  {
    rule: 'profile-shape',
    name: 'no reporter',
    inReport: (report) => {
      delete report.reporter;
    },
  },
  {
    rule: 'profile-shape',
    name: 'the cases that were counted',
    inReport: (report) => {
      report.evaluatedResource = [{ reference: 'Procedure/1' }];
    },
  },
  {
    rule: 'r4-unknown-element',
    name: 'an element that R4 does not have',
    inReport: (report) => {
      Object.assign(report, { scoring: { text: 'proportion' } });
    },
  },
];
