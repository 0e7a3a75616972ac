import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {listedAs} from '../../plugins/plan/context.ts'
import type {RackPiece} from '../../plugins/plan/rack.ts'
import {type Inline, link, toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {fractions} from '../../plugins/sections/measures.ts'
import {inchMm} from '../../plugins/tables/units.ts'
import {bareLength, type Ruler} from '../../plugins/words/lengths.ts'
import {number} from '../../plugins/words/quantities.ts'
import {type Page, pageOf} from '../page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'

/** Wood is sold and sawn to about this, whatever an instrument's own ruler. */
const rulers = {in: {units: 'in', rulerMm: inchMm / 16}, mm: {units: 'mm', rulerMm: 1}} as const

/** Write the page of the rack: what is at hand, where each offcut came from, what is reserved, and what each build used. */
export function rackPage({around, journal, builds, rack}: SiteData): Page[] {
  const {day} = rack
  const opens = day ? 'The wood at hand as of ' : 'The wood at hand'
  const ends = `${day ? ', the last date in the journal' : ''}, and what each build used.`
  const describes = opens + (day ?? '') + ends
  const content = [
    h('header.page-head', [
      h('h1', 'The rack'),
      h('p', [opens, day && h('time', {dateTime: day}, day), ends]),
    ]),
    h('div.prose', [
      ...standing(rack, builds, rulers[journal.units?.value ?? 'in']),
      ...lotsAtHand(rack, builds),
      ...usedBy(builds.filter(({plan}) => (plan.cuts?.pieces.length ?? 0) > 0)),
    ]),
  ]
  return [pageOf('/rack/', {title: 'The rack', describes, within: '/rack/'}, content, around.prefix)]
}

function standing(
  {pieces, reserved}: SiteData['rack'],
  builds: readonly SiteBuild[],
  ruler: Ruler,
): ElementContent[] {
  if (pieces.length === 0)
    return [h('p', ['Nothing stands on the rack. Pieces are listed in ', h('code', 'builds/rack.yaml'), '.'])]
  const pieceTable = table({
    caption: 'On the rack',
    columns: [
      {head: 'Piece'},
      {head: 'Wood'},
      {head: `Long × wide × thick, ${ruler.units}`},
      {head: 'Where from, and what for'},
    ],
    rows: pieces.map(({id, wood, lengthMm, widthMm, thicknessMm, from, ...known}) => [
      id,
      wood,
      sizes([lengthMm, widthMm, thicknessMm], ruler),
      [...(from ? leftOver(from, builds) : [noted(known)]), ...kept(id, reserved, builds)],
    ]),
  })
  return toElements([pieceTable])
}

/** List hardware and strings. */
function lotsAtHand({lots, reserved}: SiteData['rack'], builds: readonly SiteBuild[]): ElementContent[] {
  if (lots.length === 0) return []
  const lotTable = table({
    caption: 'Hardware and strings',
    columns: [{head: 'Name'}, {head: 'What'}, {head: 'How many', align: 'right'}],
    rows: lots.map(({id, item, count}) => [id, [item, ...kept(id, reserved, builds)], String(count)]),
  })
  return toElements([lotTable])
}

/** Say which builds that are not started reserve a piece: `; kept for Fog signal`. */
function kept(id: string, reserved: SiteData['rack']['reserved'], builds: readonly SiteBuild[]): Inline[] {
  const of = reserved.filter((one) => one.id === id || one.id === listedAs(id))
  return of.flatMap(({by}, at): Inline[] => {
    const one = builds.find(({slug}) => slug === by)
    return [
      at === 0 ? ' kept for ' : ', ',
      one ? link(`/builds/${by}/`, one.title) : 'a build not shown here',
    ]
  })
}

/** Write sizes with their unit in the head: `40 × 3 1/2 × 3/4`. */
const sizes = (mm: readonly number[], ruler: Ruler): Inline[] =>
  mm.flatMap((one, at) => [...(at === 0 ? [] : [' × ']), ...fractions(bareLength(one, ruler, 'down'))])

/** Say what the rack's file tells of a piece: `Old rail; 800 kg/m³; 12 GPa along the grain`. */
function noted({remark, densityKgM3, stiffnessMpa}: Partial<RackPiece>): string {
  return [
    remark,
    densityKgM3 && `${number(densityKgM3, 0)} kg/m³`,
    stiffnessMpa && `${number(stiffnessMpa / 1000, 1)} GPa along the grain`,
  ]
    .filter(Boolean)
    .join('; ')
}

function leftOver({build, piece}: NonNullable<RackPiece['from']>, builds: readonly SiteBuild[]): Inline[] {
  const one = builds.find(({slug}) => slug === build)
  return [
    `left over from ${piece}, `,
    one ? link(`/builds/${build}/`, one.title) : 'for a build not shown here',
  ]
}

function usedBy(builds: readonly SiteBuild[]): ElementContent[] {
  if (builds.length === 0) return []
  const used = table({
    caption: 'What each build cut into',
    columns: [
      {head: 'Build'},
      {head: 'Pieces'},
      {head: 'Parts', align: 'right'},
      {head: 'Offcuts', align: 'right'},
    ],
    rows: builds.map(({slug, title, plan: {cuts}}) => [
      link(`/builds/${slug}/`, title),
      cuts!.pieces.map(({id}) => id).join(', '),
      String(cuts!.pieces.flatMap(({strips}) => strips.flatMap((strip) => strip.cuts)).length),
      String(cuts!.pieces.flatMap(({offcuts}) => offcuts).length),
    ]),
  })
  return [h('h2', 'What was used'), ...toElements([used])]
}
