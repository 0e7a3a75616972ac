import {screwLengths} from '../../tables/screws.ts'
import {inch} from '../../tables/units.ts'
import {planBlocks} from '../box/box-blocks.ts'
import {gapToRectangle, type Rectangle, rectangle} from '../box/gap.ts'
import {planJack} from '../box/jack.ts'
import {planSoundHoles} from '../box/sound-holes.ts'
import {planFasteners} from '../fasteners/fasteners.ts'
import {screwKeeps} from '../fasteners/screw-edges.ts'
import {isForTop, planScrewPlaces} from '../fasteners/screw-places.ts'
import {screwSize} from '../fasteners/screw-size.ts'
import type {Proposal} from '../kit/proposal.ts'
import {added, markAt, sizeOf, type Texts, withTexts} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import type {Around, Propose} from './around.ts'

/** The gauges that hold a top, thin before thick, and how far apart they stand at the most (mm): common practice, no source. */
const gauges = [4, 6, 8] as const
const mostApartMm = inch(6)
/** Thread that bites: two shanks, and 1/4 in; two thirds of a screw are thread, and this stays under its tip (mm). */
const threadPart = 2 / 3
const tipKeepsMm = inch(1 / 8)

/**
 * Propose the screws that hold a top which comes off: near each corner and between, along both sides, into the wall
 * where that is as thick as the distances to its edges ask for, else into a block in the corner of wall and top. Each
 * keeps five shanks from an end and two and a half from an edge, and is clear of neck, holes, blocks, jack and bridge.
 */
export const proposeTopScrews: Propose = (settled, around) => {
  const {values, sizes, place} = around
  const isSaid = values.screws && (values.screws.length === 0 || values.screws.some(isForTop))
  if (values.box?.top?.held?.value !== 'screwed' || isSaid) return []
  if (!sizes?.inside || place?.tailMm === undefined) return []
  for (const gauge of gauges) {
    const proposals = withGauge(gauge, settled, around)
    if (proposals) return proposals
  }
  return [{key: 'screws', open: 'no room for the top’s screws'}]
}

function withGauge(gauge: number, settled: Settled, around: Around): Proposal[] | undefined {
  const {outside, inside} = around.sizes!
  const {shankMm} = screwSize(gauge)
  const threadMm = Math.max(2 * shankMm, inch(1 / 4))
  const leastMm = Math.max(outside.topMm + threadMm, threadMm / threadPart)
  const length = screwLengths[settled.units].find((text) => sizeOf(text, text, settled).mm >= leastMm - 1e-6)
  if (!length) return undefined
  const isInWall = outside.sidesMm >= 2 * screwKeeps.edge * shankMm - 1e-6
  const long = markAt(2 * screwKeeps.end * shankMm, settled, 'up')
  const wide = markAt(2 * screwKeeps.edge * shankMm, settled, 'up')
  const deep = markAt(sizeOf(length, length, settled).mm - outside.topMm + tipKeepsMm, settled, 'up')
  if (deep.mm > inside!.heightMm) return undefined
  const offMm = isInWall ? (outside.widthMm - outside.sidesMm) / 2 : (inside!.widthMm - wide.mm) / 2
  // The middle of a wall is no matter of easy marks.
  const fine = isInWall ? {...settled, rulerMm: settled.values.ruler!.mm} : settled
  const off = markAt(offMm, fine, 'down')
  const along = rowsAlong(settled, around, {longMm: long.mm, wideMm: wide.mm, offMm: off.mm, isInWall})
  if (!along) return undefined
  const offs = [`-${off.text}`, off.text]
  const blocks = isInWall
    ? []
    : along.flatMap((text) =>
        offs.map((offText) => ({
          along: text,
          off: offText,
          length: long.text,
          width: wide.text,
          thickness: deep.text,
          glued: 'on the sides',
        })),
      )
  const row = {
    size: String(gauge),
    length,
    along,
    off: offs,
    through: ['top'],
    into: isInWall ? 'side' : 'block',
    head: 'round',
  }
  if (!isSound(settled, around, blocks, row)) return undefined
  return [
    ...(blocks.length
      ? [{key: 'box', texts: {box: {blocks: added(blocks)}}, why: 'blocks in the corners' as const}]
      : []),
    {key: 'screws', texts: {screws: added([row])}, why: 'screws round the top'},
  ]
}

interface Grid {
  /** Of the block under each screw, or of the wood that it keeps round itself. */
  longMm: number
  wideMm: number
  offMm: number
  isInWall: boolean
}

/** Say where along the box the screws stand: at both ends, and so many between that none is too far from the next. */
function rowsAlong(settled: Settled, around: Around, grid: Grid): string[] | undefined {
  const {outside} = around.sizes!
  const fromEndMm = grid.longMm / 2 + (grid.isInWall ? 0 : outside.sidesMm)
  const first = markAt(fromEndMm, settled, 'up')
  const last = markAt(outside.lengthMm - fromEndMm, settled, 'down')
  if (last.mm - first.mm < grid.longMm) return undefined
  const gaps = Math.ceil((last.mm - first.mm) / mostApartMm - 1e-6)
  const stepMm = (last.mm - first.mm) / gaps
  const between = Array.from({length: gaps - 1}, (_, i) => first.mm + (i + 1) * stepMm)
  const isFree = (mm: number) => isClear(mm, around, grid)
  if (!isFree(first.mm) || !isFree(last.mm)) return undefined
  const free = between.flatMap((mm) => {
    const tries = [0, 1, -1, 2, -2, 3, -3].map((part) => markAt(mm + (part * stepMm) / 8, settled, 'down'))
    return tries.find((one) => isFree(one.mm))?.text ?? []
  })
  return [first.text, ...free, last.text]
}

/** Tell whether a screw at both sides, and its block, would be clear of neck, blocks and sound holes there (mm along the box). */
function isClear(alongMm: number, around: Around, {longMm, wideMm, offMm}: Grid): boolean {
  const {values, place, neck, blocks = []} = around
  const stationMm = place!.atMm + alongMm
  return [-offMm, offMm].every((off) => {
    const own = rectangle(stationMm, off, longMm, wideMm)
    const isUnderNeck = neck !== undefined && Math.abs(off) - wideMm / 2 < neck.widthMm / 2
    const meets = blocks.some((one) =>
      overlap(own, rectangle(one.stationMm, one.offMm, one.lengthMm, one.widthMm)),
    )
    const isBored = (values.box?.holes ?? []).some(({diameter, at, along, off: across}) => {
      const hole = at?.mm ?? (along && place!.atMm + along.mm)
      return (
        hole !== undefined &&
        diameter !== undefined &&
        gapToRectangle({stationMm: hole, offMm: across?.mm ?? 0, diameterMm: diameter.mm}, own) < inch(1 / 8)
      )
    })
    return !isUnderNeck && !meets && !isBored
  })
}

const overlap = (a: Rectangle, b: Rectangle): boolean =>
  a.fromMm < b.toMm && b.fromMm < a.toMm && a.leftMm < b.rightMm && b.leftMm < a.rightMm

/** Tell whether blocks fit and screws hold, by the plan's own computations, and nothing else is in their way. */
function isSound(settled: Settled, around: Around, blocks: Texts[], row: Texts): boolean {
  const {place, sizes, neck, taper, pull, bridge} = around
  const texts = {screws: added([row]), ...(blocks.length > 0 && {box: {blocks: added(blocks)}})}
  const values = withTexts(settled, texts, settled.units)
  const tried = {...settled, values}
  const placed = planBlocks(values, {place, sizes, neck, rulerMm: settled.rulerMm})
  const box = {...place, ...sizes, neck, blocks: placed}
  const view = {place, outside: sizes?.outside, neck, taper, blocks: placed, bridge, bridgeSeat: undefined}
  const {conflicts} = planSoundHoles(tried, view)
  const screws = planFasteners(tried, planScrewPlaces(values, place), {box, taper}, {pull, end: undefined})
  const own = (screws.fasteners ?? []).filter(({holdsTop}) => holdsTop)
  const isOf = (of: string) => of === `screws.${values.screws?.length}`
  const jackIn = values.pickup?.jack
  const strings = values.strings?.length
  const before =
    jackIn && planJack(jackIn, {...box, blocks: around.blocks}, {hasStrapButtons: false, strings})
  const after = jackIn && planJack(jackIn, box, {hasStrapButtons: false, strings})
  return (
    own.length > 0 &&
    own.every(
      ({covered, overN, astray, lengthMm, longestMm = lengthMm}) =>
        !covered && overN === undefined && !astray && lengthMm <= longestMm + 1e-6,
    ) &&
    !(placed ?? []).some(({wouldDo}) => wouldDo) &&
    !conflicts.some(({kind}) => kind === 'hole-block') &&
    !screws.conflicts.some(({of}) => isOf(of.split('.').slice(0, 2).join('.'))) &&
    before?.wallMm === after?.wallMm
  )
}
