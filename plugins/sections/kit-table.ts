import type {Element, Nodes} from 'hast'
import type {Table, TableCell, TableRow} from 'mdast'
import {type Inline, inline, note as noteBelow, toElements} from './kit.ts'
import type {CaptionedTable} from './kit-nodes.ts'

/** A cell: a text, one inline node, or several. */
export type Cell = Inline | readonly Inline[]

export interface TableOptions {
  /** One line that names the table; also its name for those who do not see it. */
  caption: Inline | readonly Inline[]
  /** `align: 'right'` for numbers. */
  columns: readonly {head: Cell; align?: 'right'}[]
  rows: readonly (readonly Cell[])[]
  /** The first cell of each row is its heading; true unless said otherwise. */
  rowHeads?: boolean
  /** A class for each row that stands out, by its number from 0. */
  rowClass?: (row: number) => string | undefined
  /** An id for each row that is led to. */
  rowId?: (row: number) => string | undefined
  /** A remark below the table. */
  note?: Inline | readonly Inline[]
}

/**
 * Write a table with caption and scopes, in a box that scrolls sideways inside itself.
 * The table's classes name its right-hand columns (`n2`: the second), which is shorter than a class a cell.
 */
export function table(options: TableOptions): CaptionedTable {
  const caption = inline(cells(options.caption))
  const plain: Table = {
    type: 'table',
    align: options.columns.map((column) => column.align ?? null),
    children: [
      headRow(options),
      ...options.rows.map((row, at) =>
        bodyRow(options, row, {className: options.rowClass?.(at), id: options.rowId?.(at)}),
      ),
    ],
  }
  const [element] = toElements([{...plain, align: null}]) as [Element]
  const captionElement: Element = {
    type: 'element',
    tagName: 'caption',
    properties: {},
    children: toElements(caption),
  }
  const numbers = options.columns.flatMap(({align}, at) => (align ? [`n${at + 1}`] : []))
  plain.data = {
    hChildren: [captionElement, ...dense(element).children],
    ...(numbers.length > 0 && {hProperties: {className: numbers}}),
  }
  return {
    type: 'captionedTable',
    caption,
    table: plain,
    data: {hName: 'div', hProperties: {className: ['table']}},
    children: [
      {type: 'scrolling', data: {hName: 'div', hProperties: {className: ['scrolling']}}, children: [plain]},
      ...(options.note === undefined ? [] : [noteBelow(...cells(options.note))]),
    ],
  }
}

/** Leave out the line breaks between rows and cells: a page of tables is half of them. */
function dense(element: Element): Element {
  if (element.tagName === 'th' || element.tagName === 'td') return element
  const children = element.children.filter(({type}) => type !== 'text')
  return {...element, children: children.map((child) => (child.type === 'element' ? dense(child) : child))}
}

function headRow({columns}: TableOptions): TableRow {
  return {type: 'tableRow', children: columns.map(({head, align}) => cell(head, {scope: 'col', align}))}
}

function bodyRow(
  {columns, rowHeads = true}: TableOptions,
  row: readonly Cell[],
  {className, id}: {className: string | undefined; id: string | undefined},
): TableRow {
  return {
    type: 'tableRow',
    ...((className || id) && {
      data: {hProperties: {...(id && {id}), ...(className && {className: [className]})}},
    }),
    children: row.map((content, at) =>
      cell(content, {align: columns[at]?.align, ...(rowHeads && at === 0 ? {scope: 'row' as const} : {})}),
    ),
  }
}

function cell(content: Cell, {scope, align}: {scope?: 'col' | 'row'; align: 'right' | undefined}): TableCell {
  const hProperties = scope && {scope}
  return {
    type: 'tableCell',
    data: {...(hProperties && {hProperties}), ...(scope === 'row' && {hName: 'th'})},
    // A column of numbers never wraps, so a quantity in it needs no more to keep it together.
    children: inline(cells(content)).flatMap((one) =>
      align && one.type === 'measure' ? one.children : [one],
    ),
  }
}

function cells(content: Cell): readonly Inline[] {
  return Array.isArray(content) ? content : [content as Inline]
}

/** Write what belongs to a cell below it, smaller: a hole's bit, a part's wood. */
export const under = (...content: readonly Inline[]): Inline => ({
  type: 'small',
  data: {hName: 'small'},
  children: inline([' ', ...content]).flatMap((one) => (one.type === 'measure' ? one.children : [one])),
})

/** Give the text of an element, as it is read. */
export function textOf(node: Nodes): string {
  if (node.type === 'text') return node.value
  return 'children' in node ? node.children.map(textOf).join('') : ''
}
