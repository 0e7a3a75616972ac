import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {cutDiagram} from '../../plugins/drawings/cut-diagram.ts'
import {apartPicture} from '../../plugins/drawings/pictures/apart.ts'
import {pageSvg} from '../../plugins/drawings/writers/svg.ts'
import type {Face, Hole} from '../../plugins/plan/kit/hole.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {partNamesById} from '../../plugins/words/cut-list.ts'
import {holeName, shortBitName} from '../../plugins/words/holes.ts'
import {bareLength} from '../../plugins/words/lengths.ts'
import {behind, faceNames, sideWord} from '../../plugins/words/sides.ts'
import {withFractions} from '../kit/markup.ts'
import type {SiteBuild} from '../kit/site-data.ts'

/** As many cut pieces as there is room for. */
const mostPieces = 4

/** Open the sheet with the whole instrument pulled apart, where each hole goes, and how the stock is cut. */
export function benchOpening({plan, build}: SiteBuild): Element | undefined {
  const apart = apartPicture(plan, build.values)
  const holes = holeChart(plan)
  const cuts = cutPieces(plan)
  const folded = [...holes, ...cuts]
  if (!apart && folded.length === 0) return undefined
  return h('section.bench-opening', [
    h('h2', 'Parts'),
    apart && h('div.apart', [apart]),
    ...(folded.length > 0 ? [h('details', [h('summary', 'Every hole, and the cuts'), ...folded])] : []),
  ])
}

/** List the holes face by face: on the box from its head end, elsewhere from the nut line. */
function holeChart(plan: Plan): Element[] {
  const {holes = []} = plan
  const faces = [...new Set(holes.map(({face}) => face))]
  if (faces.length === 0) return []
  const head = ['Hole', 'Bit', 'At', 'Off centre', 'Deep'].map((name) => h('th', {scope: 'col'}, name))
  return [
    h('table.hole-chart', [
      h('caption', 'Holes: on the box from its head end, elsewhere from the nut line'),
      h('thead', [h('tr', head)]),
      ...faces.map((face) => faceRows(face, holes, plan)),
    ]),
  ]
}

function faceRows(face: Face, holes: readonly Hole[], plan: Plan): Element {
  const rows = holes
    .filter((hole) => hole.face === face)
    .map(({what, bit, stationMm, alongMm, offMm, depthMm, proposed}) => {
      const atMm = alongMm ?? stationMm
      const at = `${bareLength(Math.abs(atMm), plan)}${atMm < 0 ? ` ${behind}` : ''}`
      const off = offMm === 0 ? '0' : `${bareLength(Math.abs(offMm), plan)} ${sideWord(offMm, plan)}`
      const deep = depthMm === undefined ? 'through' : bareLength(depthMm, plan, 'down')
      const name = `${holeName(what)}${proposed ? ' (proposed)' : ''}`
      return h(
        'tr',
        [name, bit ? shortBitName(bit) : '', at, off, deep].map((text) => h('td', withFractions(text))),
      )
    })
  return h('tbody', [h('tr', [h('th', {scope: 'rowgroup', colSpan: 5}, faceNames[face])]), ...rows])
}

function cutPieces(plan: Plan): ElementContent[] {
  const {pieces = [], parts = []} = plan.cuts ?? {}
  const names = partNamesById(parts)
  if (pieces.length === 0) return []
  return [
    h(
      'div.cuts',
      pieces
        .slice(0, mostPieces)
        .map((piece, at) =>
          h('figure', [
            pageSvg(cutDiagram(piece, names, plan), `sheet-cuts-${at + 1}`),
            h('figcaption', `${piece.id}, ${piece.wood}`),
          ]),
        ),
    ),
  ]
}
