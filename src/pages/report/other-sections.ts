import { fixedText } from '../../kernel/index.js';
import type {
  FollowUpCounts,
  OutcomeReport,
  QuantityId,
  QuantityResult,
  ReportCell,
  SurvivalCurve,
} from '../../outcomes/index.js';
import { element, type Markup } from '../markup.js';
import { shortText } from '../stratum-text.js';
import { survivalChart } from '../survival-chart.js';
import { NOT_SHOWN } from './indicator-words.js';
import { type Row, tableOf } from './table.js';

/** A table a quantity: its middle and quarters, in all cases and in groups. */
export function quantityTables({ cells }: OutcomeReport): readonly Markup[] {
  const ids = [...new Set(cells.flatMap(({ quantities }) => quantities.map(({ id }) => id)))];
  return ids.map((id) =>
    tableOf({
      caption: QUANTITY_TITLES[id],
      columns: [
        { title: 'Cases' },
        { title: 'Median', isNumber: true },
        { title: 'Middle half (quartiles)', isNumber: true },
        { title: 'Unit' },
        { title: 'Values (n)', isNumber: true },
        { title: 'Missing', isNumber: true },
      ],
      parts: [{ rows: cells.map((cell) => quantityRow(cell, id)) }],
    }),
  );
}

function quantityRow({ stratum, quantities }: ReportCell, id: QuantityId): Row {
  const result = quantities.find((quantity) => quantity.id === id);
  return {
    head: shortText(stratum),
    cells: result === undefined ? 'not in this report' : quantityCells(result),
  };
}

function quantityCells(result: QuantityResult): Row['cells'] {
  switch (result.kind) {
    case 'suppressed':
      return NOT_SHOWN;
    case 'no-value':
      return ['no value', '–', '–', '0', String(result.missing)];
    case 'quartiles': {
      const { median, q1, q3, unit, n, missing } = result;
      const middle = `${fixedText(q1, 1)} to ${fixedText(q3, 1)}`;
      return [fixedText(median, 1), middle, unitText(unit), String(n), String(missing)];
    }
  }
}

/** A unit as people write it. */
const unitText = (unit: string): string =>
  unit === 'd' ? 'days' : unit.replace('cm2', 'cm²').replace('mm2', 'mm²');

const QUANTITY_TITLES: { readonly [Q in QuantityId]: string } = {
  speedCm2PerH: 'Speed of the dissection, each to 0.1 cm²/h',
  sizeMm: 'Longest axis of the lesion',
  procedureMin: 'Time of the procedure, each to a minute',
  pathologyDays: 'Days to the final pathology report',
};

/** Where the first checks after the resections stand. */
export function followUpTable({ followUp, followUpDefinitions }: OutcomeReport): Markup {
  if (followUp === undefined) return element('p', {}, `First checks: ${NOT_SHOWN}.`);
  return tableOf({
    caption: 'First check after the resection',
    columns: [{ title: 'State' }, { title: 'Lesions', isNumber: true }],
    parts: [
      {
        rows: FOLLOW_UP_STATES.map((state) => ({
          head: followUpDefinitions[state],
          cells: [String(followUp[state])],
        })),
      },
    ],
  });
}

const FOLLOW_UP_STATES: readonly (keyof FollowUpCounts)[] = [
  ...(['onTime', 'late', 'notYetDue', 'overdue', 'lost', 'ended'] as const),
  ...(['unplanned', 'notPlanned'] as const),
];

/** The curve of lesions without recurrence, or why there is none. */
export function recurrenceFigure({ recurrence }: OutcomeReport): Markup {
  if (recurrence === undefined) {
    return element('p', {}, 'No curve: small numbers, or no lesion was checked.');
  }
  return element('figure', {}, recurrenceChart([recurrence]));
}

/** @param curves none where small numbers hide it, or no lesion was checked */
export const recurrenceChart = (curves: readonly SurvivalCurve[]): Markup =>
  survivalChart({
    id: 'recurrence',
    title: 'Lesions without neoplasia at the scar',
    upTitle: 'Percentage without neoplasia at the scar',
    curves: curves.map((curve) => ({ label: 'all lesions with a check', curve })),
    caption: ['A recurrence is dated to the check that found it, so the curve falls late.'],
  });
