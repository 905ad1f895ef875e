import {
  type Condition,
  isNeeds,
  type Needs,
  type Read,
  truthOf,
} from '../../src/rules/condition.js';
import type { Item } from '../../src/rules/points.js';
import {
  type Band,
  type ClassRule,
  classRule,
  type ScoreRule,
  scoreRule,
} from '../../src/rules/rule.js';
import type { Row } from '../../src/rules/table.js';
import { changesOfCondition, replaced } from './changes.js';

/** A rule with one point of it changed. */
export interface Planted<R> {
  readonly name: string;
  readonly rule: R;
  /** The step of the table in which it lies, from 0; absent for a group of a score. */
  readonly step?: number;
  /** Whether it exchanges two steps. */
  readonly ordersSteps?: true;
  /** Whether the change can play a part; elsewhere both rules say the same. */
  readonly touches: (read: Read) => boolean | Needs;
}

type Step = readonly Row[];

/** Every single-point change of a table: conditions, classes, reasons, rows, order of steps. */
export function plantedInTable(rule: ClassRule): readonly Planted<ClassRule>[] {
  const withTable = (table: readonly Step[]) => classRule({ ...rule, table });
  const ofRows = rule.table.flatMap((step, i) =>
    step.flatMap((row, j) =>
      changesOfRow(rule, row).map(({ name, to, touches }) => ({
        name: `${row.row}: ${name}`,
        rule: withTable(replaced(rule.table, i, replaced(step, j, ...to))),
        step: i,
        touches,
      })),
    ),
  );
  return [...ofRows, ...swappedSteps(rule, withTable)];
}

interface ChangedRow {
  readonly name: string;
  readonly to: readonly Row[];
  readonly touches: (read: Read) => boolean | Needs;
}

function changesOfRow(rule: ClassRule, row: Row): readonly ChangedRow[] {
  const holds = (read: Read) => truthOf(row.when, read);
  const classes = [...new Set(rule.table.flat().map((other) => other.class))];
  const { reason, ...unreasoned } = row;
  return [
    ...changesOfCondition(rule.fields, row.when).map(({ name, to }) => ({
      name,
      to: [{ ...row, when: to }],
      touches: (read: Read) => differ(row.when, to, read),
    })),
    ...classes
      .filter((other) => other !== row.class)
      .map((other) => ({
        name: `gives ${other}`,
        to: [{ ...row, class: other }],
        touches: holds,
      })),
    ...(reason === undefined ? [] : [{ name: 'no reason', to: [unreasoned], touches: holds }]),
    { name: 'removed', to: [], touches: holds },
  ];
}

/** Neighbouring steps in the other order. */
function swappedSteps(
  rule: ClassRule,
  withTable: (table: readonly Step[]) => ClassRule,
): readonly Planted<ClassRule>[] {
  return rule.table.flatMap((step, i) => {
    const next = rule.table[i + 1];
    if (next === undefined) return [];
    return [
      {
        name: `${namesOf(next)} before ${namesOf(step)}`,
        rule: withTable(replaced(replaced(rule.table, i, next), i + 1, step)),
        step: i,
        ordersSteps: true as const,
        touches: (read: Read) => both(anyHolds(step, read), () => anyHolds(next, read)),
      },
    ];
  });
}

const namesOf = (step: Step): string => `${step[0]?.row}${step.length > 1 ? ' and others' : ''}`;

/** Whether two conditions differ on a question. */
function differ(one: Condition, other: Condition, read: Read): boolean | Needs {
  const first = truthOf(one, read);
  const second = truthOf(other, read);
  if (isNeeds(first)) return first;
  return isNeeds(second) ? second : first !== second;
}

export function anyHolds(step: Step, read: Read): boolean | Needs {
  const truths = step.map(({ when }) => truthOf(when, read));
  return truths.includes(true) || (truths.find(isNeeds) ?? false);
}

function both(one: boolean | Needs, other: () => boolean | Needs): boolean | Needs {
  return one === true ? other() : one;
}

/** Every single-point change of a score: conditions, points, items, groups and their rates. */
export function plantedInScore(rule: ScoreRule): readonly Planted<ScoreRule>[] {
  const withItems = (items: readonly Item[]) => scoreRule({ ...rule, items });
  const withBands = (bands: readonly Band[]) => scoreRule({ ...rule, bands });
  return [
    ...rule.items.flatMap((item, i) =>
      changesOfItem(rule, item).map(({ name, to, touches }) => ({
        name: `${item.item}: ${name}`,
        rule: withItems(replaced(rule.items, i, ...to)),
        step: 0,
        touches,
      })),
    ),
    ...rule.bands.flatMap((band, i) =>
      changesOfBand(rule, band).map(({ name, to }) => ({
        name: `${band.group}: ${name}`,
        rule: withBands(replaced(rule.bands, i, ...to)),
        touches: () => true,
      })),
    ),
  ];
}

function changesOfItem(rule: ScoreRule, item: Item) {
  const holds = (read: Read) => truthOf(item.when, read);
  return [
    ...changesOfCondition(rule.fields, item.when).map(({ name, to }) => ({
      name,
      to: [{ ...item, when: to }],
      touches: (read: Read) => differ(item.when, to, read),
    })),
    ...[1, -1].map((more) => ({
      name: `${item.points} as ${item.points + more} points`,
      to: [{ ...item, points: item.points + more }],
      touches: holds,
    })),
    { name: 'removed', to: [], touches: holds },
  ];
}

function changesOfBand(rule: ScoreRule, band: Band) {
  const { when, rate } = band;
  return [
    ...(['from', 'to'] as const)
      .filter((end) => Number.isFinite(band[end]))
      .flatMap((end) =>
        [1, -1].map((more) => ({
          name: `${end} ${band[end]} as ${band[end] + more}`,
          to: [{ ...band, [end]: band[end] + more }],
        })),
      ),
    ...(when === undefined ? [] : changesOfCondition(rule.fields, when)).map(({ name, to }) => ({
      name,
      to: [{ ...band, when: to }],
    })),
    ...(rate === undefined
      ? []
      : [0.1, -0.1].map((more) => ({
          name: `rate ${rate.percent} ${more > 0 ? 'higher' : 'lower'}`,
          to: [{ ...band, rate: { ...rate, percent: rate.percent + more } }],
        }))),
    { name: 'removed', to: [] },
  ];
}
