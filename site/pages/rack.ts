import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import type {StockPiece} from '../../plugins/build-file/schema.ts'
import {fractions} from '../../plugins/sections/kit/fraction.ts'
import {toElements} from '../../plugins/sections/kit/to-elements.ts'
import {table} from '../../plugins/sections/kit.ts'
import {pageOf} from '../html/page-of.ts'
import type {Page} from '../publish/page.ts'
import type {SiteData} from '../site-data.ts'

/** Write the page of the rack: the wood at hand, and what each build took. */
export function rackPage({around, rack}: SiteData): Page[] {
  const describes = 'The wood at hand, and what became of the rest.'
  const content = [
    h('header.page-head', [h('h1', 'The rack'), h('p', describes)]),
    h('div.prose', rack.length > 0 ? toElements([pieces(rack)]) : empty()),
  ]
  return [pageOf('/rack/', {title: 'The rack', describes, within: '/rack/'}, content, around.prefix)]
}

function empty(): ElementContent[] {
  return [h('p', ['Nothing stands on the rack. Pieces are listed in ', h('code', 'builds/rack.yaml'), '.'])]
}

function pieces(rack: readonly StockPiece[]) {
  return table({
    caption: 'Pieces on the rack',
    columns: [
      {head: 'Piece'},
      {head: 'Wood'},
      {head: 'Length'},
      {head: 'Width'},
      {head: 'Thickness'},
      {head: 'Remark'},
    ],
    rows: rack.map((piece) => [
      piece.id?.value ?? '',
      piece.wood?.text ?? '',
      fractions(piece.length?.text ?? ''),
      fractions(piece.width?.text ?? ''),
      fractions(piece.thickness?.text ?? ''),
      piece.remark?.value ?? '',
    ]),
  })
}
