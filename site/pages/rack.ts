import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {boardStrip, longestPx} from '../../plugins/drawings/board-strip.ts'
import {listedAs} from '../../plugins/plan/kit/context.ts'
import type {CutPiece, Cuts} from '../../plugins/plan/stock/cut-list.ts'
import {type Shares, sharesOf} from '../../plugins/plan/stock/ledger.ts'
import {offcutName, offcutOf, onlyReserves, type RackPiece} from '../../plugins/plan/stock/rack.ts'
import {type Inline, link, paragraph, toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {inchMm} from '../../plugins/tables/units.ts'
import {partName, plainName} from '../../plugins/words/cut-list.ts'
import {bareLength, type Ruler} from '../../plugins/words/lengths.ts'
import {inWords, number} from '../../plugins/words/quantities.ts'
import {keptFractions, withFractions} from '../kit/markup.ts'
import {type Page, pageShowing} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'

/** Wood is sold and sawn to about this, whatever an instrument's own ruler. */
const rulers = {in: {units: 'in', rulerMm: inchMm / 16}, mm: {units: 'mm', rulerMm: 1}} as const

/** Write the page of the rack: what is at hand, where each offcut came from, what is reserved, and what was cut of each board. */
export function rackPage({around, journal, builds, rack}: SiteData): Page[] {
  const {day} = rack
  const opens = day ? 'The wood at hand as of ' : 'The wood at hand'
  const ends = `${day ? ', the last date in the journal' : ''}, and what was cut of it.`
  const describes = opens + (day ?? '') + ends
  const ruler = rulers[journal.units?.value ?? 'in']
  const cut = builds.flatMap((one) => one.plan.cuts?.pieces.map((piece) => ({one, piece})) ?? [])
  const longestMm = Math.max(
    1,
    ...[...rack.pieces, ...cut.map(({piece}) => piece)].map(({lengthMm}) => lengthMm),
  )
  const scale = {ruler, pxPerMm: longestPx / longestMm}
  const titles = titlesOn(rack, builds)
  const drawn = cut.slice(0, mostDrawn)
  const content = () => [
    h('header.page-head', [
      h('h1', 'The rack'),
      h('p', [opens, day && h('time', {dateTime: day}, day), ends]),
    ]),
    h('div.prose', [
      ...standing(rack, titles, scale),
      ...lotsAtHand(rack, titles),
      ...cutBoards(drawn, scale),
    ]),
  ]
  const shows = [
    rack,
    scale,
    [...titles],
    drawn.map(({one: {slug, title, build, plan}, piece}) => [
      slug,
      title,
      onlyReserves(build),
      piece,
      plan.cuts,
    ]),
  ]
  const data = {title: 'The rack', describes, within: '/rack/'}
  return [pageShowing('/rack/', data, {shows, content, prefix: around.prefix})]
}

type Titles = ReadonlyMap<string, string>

/** The titles of the builds that wood is left over from or kept for, by their slugs. */
function titlesOn({pieces, reserved}: SiteData['rack'], builds: readonly SiteBuild[]): Titles {
  const named = new Set([...pieces.flatMap(({from}) => from?.build ?? []), ...reserved.map(({by}) => by)])
  return new Map(builds.filter(({slug}) => named.has(slug)).map(({slug, title}) => [slug, title]))
}

function standing(
  {pieces, reserved}: SiteData['rack'],
  titles: Titles,
  {ruler, pxPerMm}: Scale,
): ElementContent[] {
  if (pieces.length === 0)
    return [h('p', ['Nothing stands on the rack. Pieces are listed in ', h('code', 'builds/rack.yaml'), '.'])]
  return [
    h('h2', 'What stands there'),
    h('p', 'Each from above, all to one scale. What is spoken for has a bar along its edge.'),
    h(
      'ul.boards',
      pieces.map((piece, at) => {
        const {id, wood, lengthMm, widthMm, thicknessMm, clearMm, from, ...known} = piece
        const says = sizeInWords([lengthMm, widthMm, thicknessMm], ruler)
        const told: Inline[] = [
          ...(from ? ['; ', ...leftOver(from, titles)] : [noted(known)]),
          ...kept(id, reserved, titles),
        ]
        const isReserved = reserved.some((one) => one.id === id || one.id === listedAs(id))
        const look = {id: `board-${at + 1}`, title: `${id}, ${wood}`, says, kept: [], pxPerMm}
        return h('li', [
          h('h3', [id, ', ', wood]),
          ...toElements([paragraph(...keptFractions(says), ...told)]),
          boardStrip({lengthMm, widthMm, clearMm, isReserved}, look),
        ])
      }),
    ),
  ]
}

/** So many boards that were cut are drawn; who looks for older ones finds them on the pages of their builds. */
const mostDrawn = 40

/** Draw what was cut of each board, and say what became of it. */
function cutBoards(
  drawn: readonly {one: SiteBuild; piece: CutPiece}[],
  {ruler, pxPerMm}: Scale,
): ElementContent[] {
  if (drawn.length === 0) return []
  return [
    h('h2', 'What was cut of them'),
    h('p', 'Parts are filled; what is left and named goes back on the rack.'),
    h(
      'ul.boards',
      drawn.map(({one, piece}, at) => {
        const {id, wood, offcuts, lengthMm, widthMm, thicknessMm} = piece
        const cuts = one.plan.cuts!
        const left = offcuts.map(
          (off, i) => `${offcutOf(piece, i, one.slug)}, ${sizeInWords([off.lengthMm, off.widthMm], ruler)}`,
        )
        const parts = partsOf(piece, cuts)
        const says = `Cut of it: ${inWords(parts)}. Left: ${left.length > 0 ? inWords(left) : 'nothing'}.`
        const kept = offcuts.map((_, i) => `${id}-${offcutName(i)}`)
        const look = {id: `cut-${at + 1}`, title: `${id}, ${wood}`, says, kept, pxPerMm}
        return h('li', [
          h('h3', [id, ', ', wood]),
          h('p', [
            ...withFractions(sizeInWords([lengthMm, widthMm, thicknessMm], ruler)),
            onlyReserves(one.build) ? ', to be cut for ' : ', for ',
            h('a', {href: `/builds/${one.slug}/#cut-list`}, one.title),
            ...withFractions(`. ${says} ${sharesInWords(sharesOf(piece, cuts))}`),
          ]),
          boardStrip({lengthMm, widthMm, cut: piece}, look),
        ])
      }),
    ),
  ]
}

/** Name what is cut of a piece; several alike once, with their count. */
function partsOf({strips}: CutPiece, {parts}: Cuts): string[] {
  const names = new Map(parts.map((part) => [part.id, plainName(partName(part.called))]))
  const counts = new Map<string, number>()
  for (const {partId} of strips.flatMap(({cuts}) => cuts)) {
    const name = names.get(partId) ?? partId
    counts.set(name, (counts.get(name) ?? 0) + 1)
  }
  return [...counts].map(([name, count]) => (count === 1 ? name : `${name} (${count})`))
}

/** Say what became of a board in parts of a hundred. */
function sharesInWords({parts, kept, saw, waste}: Shares): string {
  const whole = parts + kept + saw + waste
  const share = (area: number) => `${number((100 * area) / whole, 0)} %`
  return `Of its face, parts ${share(parts)}, left ${share(kept)}, saw dust ${share(saw)}, ends and rests ${share(waste)}.`
}

/** At which the longest board fits a phone. */
interface Scale {
  ruler: Ruler
  pxPerMm: number
}

/** List hardware and strings. */
function lotsAtHand({lots, reserved}: SiteData['rack'], titles: Titles): ElementContent[] {
  if (lots.length === 0) return []
  const lotTable = table({
    caption: 'Hardware and strings',
    columns: [{head: 'Name'}, {head: 'What'}, {head: 'How many', align: 'right'}],
    rows: lots.map(({id, item, count}) => [id, [item, ...kept(id, reserved, titles)], String(count)]),
  })
  return toElements([lotTable])
}

/** Say which builds that are not started reserve a piece: `; kept for Fog signal`. */
function kept(id: string, reserved: SiteData['rack']['reserved'], titles: Titles): Inline[] {
  const of = reserved.filter((one) => one.id === id || one.id === listedAs(id))
  return of.flatMap(({by}, at): Inline[] => {
    const title = titles.get(by)
    return [
      at === 0 ? '; kept for ' : ', ',
      title !== undefined ? link(`/builds/${by}/`, title) : 'a build not shown here',
    ]
  })
}

/** Write sizes in a line: `40 × 3 1/2 × 3/4 in`. */
const sizeInWords = (mm: readonly number[], ruler: Ruler): string =>
  `${mm.map((one) => bareLength(one, ruler, 'down')).join(' × ')} ${ruler.units}`

/** Say what the rack's file tells of a piece: `Old rail; 800 kg/m³; 12 GPa along the grain`. */
function noted({remark, densityKgM3, stiffnessMpa}: Partial<RackPiece>): string {
  const told = [
    remark,
    densityKgM3 && `${number(densityKgM3, 0)} kg/m³`,
    stiffnessMpa && `${number(stiffnessMpa / 1000, 1)} GPa along the grain`,
  ]
  return told.flatMap((one) => (one ? [`; ${one}`] : [])).join('')
}

function leftOver({build, piece}: NonNullable<RackPiece['from']>, titles: Titles): Inline[] {
  const title = titles.get(build)
  return [
    `left over from ${piece}, `,
    title !== undefined ? link(`/builds/${build}/`, title) : 'for a build not shown here',
  ]
}
