import { type Content, element, type Markup } from '../markup.js';

/** A column; numbers stand at the right. */
export interface Column {
  readonly title: string;
  readonly isNumber?: boolean;
}

/** A row: what it is about, then a cell a column, or one sentence over all of them. */
export interface Row {
  readonly head: Content;
  readonly cells: readonly Content[] | string;
}

/** Rows that belong together, under a line of their own when they have a title. */
export interface Part {
  readonly title?: string;
  readonly rows: readonly Row[];
}

export interface Table {
  readonly caption: string;
  /** The first is the column of the heads. */
  readonly columns: readonly Column[];
  readonly parts: readonly Part[];
}

/** A table whose columns and rows have heads, so that it can be heard as well as seen. */
export function tableOf({ caption, columns, parts }: Table): Markup {
  return element(
    'div',
    // Reached by keyboard, for it may be wider than the window.
    { class: 'scroll', role: 'region', tabindex: '0', 'aria-label': caption },
    element(
      'table',
      {},
      element('caption', {}, caption),
      element('thead', {}, element('tr', {}, ...columns.map(columnHead))),
      ...parts
        .filter(({ rows }) => rows.length > 0)
        .map(({ title, rows }) =>
          element(
            'tbody',
            {},
            ...(title === undefined ? [] : [partHead(title, columns.length)]),
            ...rows.map((row) => rowOf(row, columns)),
          ),
        ),
    ),
  );
}

const columnHead = ({ title, isNumber }: Column): Markup =>
  element('th', { scope: 'col', class: isNumber === true ? 'number' : undefined }, title);

const partHead = (title: string, width: number): Markup =>
  element(
    'tr',
    {},
    element('th', { scope: 'rowgroup', colspan: String(width), class: 'part' }, title),
  );

function rowOf({ head, cells }: Row, columns: readonly Column[]): Markup {
  const first = element('th', { scope: 'row' }, head);
  if (typeof cells === 'string') {
    const width = String(columns.length - 1);
    return element('tr', {}, first, element('td', { colspan: width }, cells));
  }
  return element(
    'tr',
    {},
    first,
    ...cells.map((cell, i) =>
      element('td', { class: columns[i + 1]?.isNumber === true ? 'number' : undefined }, cell),
    ),
  );
}
