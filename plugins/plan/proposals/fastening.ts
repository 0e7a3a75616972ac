import {screwLengths, usualGauges} from '../../tables/screws.ts'
import {type Block, planBlocks} from '../box/box-blocks.ts'
import {planEndJoint} from '../fasteners/end-joint.ts'
import type {Fastener} from '../fasteners/fastener.ts'
import {planFasteners} from '../fasteners/fasteners.ts'
import {screwKeeps} from '../fasteners/screw-edges.ts'
import {isForTop, planScrewPlaces} from '../fasteners/screw-places.ts'
import {screwSize} from '../fasteners/screw-size.ts'
import type {Settled} from '../settled.ts'
import type {Around, Propose} from './around.ts'
import {blocksUnder, endBlock} from './blocks.ts'
import type {Proposal} from './proposal.ts'
import {added, markAt, sizeOf, type Texts, withTexts} from './texts.ts'

/**
 * Propose what fastens the neck to the box: on top, blocks under the top and a screw up through each; at the end, a
 * block behind the wall and screws through both. They are the first sold that bear three times what the strings ask of
 * them, by the same statics as those of the file. A neck that runs through, or that the file glues well enough, needs
 * none.
 */
export const proposeFastening: Propose = (settled, around) => {
  const {values, neck, pull} = around
  const isSaid = values.screws && !(values.screws.length > 0 && values.screws.every(isForTop))
  if (isSaid || !values.box || !neck || neck.joins === 'through') return []
  const isGlued = Boolean(values.neck?.glue && !values.neck.laminations)
  if (neck.joins === 'on top' && isGlued) return []
  if (!pull) return values.strings ? [{key: 'screws', open: 'pull not known'}] : []
  if (neck.joins === 'on top') return onTop(settled, around)
  const end = planEndJoint(settled, {box: boxOf(around), pull})
  const isHeld = isGlued && end?.glue.mostMpa !== undefined && end.glue.stressMpa <= end.glue.mostMpa
  return isHeld || !end ? [] : atTheEnd(settled, around, end)
}

const boxOf = ({place, sizes, neck, blocks}: Around) => ({...place, ...sizes, neck, blocks})

function onTop(settled: Settled, around: Around): Proposal[] {
  const given = settled.values.box?.blocks
  const blocks = given ? undefined : blocksUnder(settled, around)
  if (!given && !blocks) return [{key: 'box', open: 'no room for blocks'}]
  const held = withBlocks(settled, around, blocks ? {blocks} : {})
  const under = (held.around.blocks ?? []).filter(
    ({of, offMm, widthMm}) => of !== 'box.end-block' && Math.abs(offMm) < widthMm / 2,
  )
  const along = under.map((block) => alongOf(block, held.settled))
  if (along.length === 0) return []
  const neckMm = held.around.neck!.widthMm
  const through = ['block', 'top']
  const screws = screwsThatHold(held, [['0'], offsAt(neckMm / 4, settled)], (size, length, off) => ({
    size,
    length,
    along,
    off,
    through,
    into: 'neck',
  }))
  if (!screws) return [{key: 'screws', open: 'no screw holds'}]
  return [
    ...(blocks ? [{key: 'box', texts: {box: {blocks}}, why: 'blocks under the neck' as const}] : []),
    {key: 'screws', texts: {screws: added([screws])}, why: 'screws into the neck'},
  ]
}

/** Where a block's middle lies along the box: as the file has it, or where the file places it from the nut line, by the ruler. */
function alongOf({of, alongMm}: Block, {values, ...ruler}: Settled): string {
  const given = values.box?.blocks?.[Number(of.split('.').at(-1)) - 1]?.along
  return given?.text ?? markAt(alongMm, ruler, 'down').text
}

function atTheEnd(
  settled: Settled,
  around: Around,
  {middleMm, halfMm}: {middleMm: number; halfMm: number},
): Proposal[] {
  const isGiven = around.blocks?.some(({of, glued}) => of === 'box.end-block' || glued === 'at the ends')
  const block = isGiven ? undefined : endBlock(settled, around)
  if (!isGiven && !block) return [{key: 'box', open: 'no room for blocks'}]
  const held = withBlocks(settled, around, block ? {'end-block': block} : {})
  const neckMm = held.around.neck!.widthMm
  const [along, through] = [['0'], ['block', 'side']]
  const screws = screwsThatHold(held, [offsAt(neckMm / 4, settled)], (size, length, off) => {
    const keepsMm = screwKeeps.edge * screwSize(Number(size)).shankMm
    const down = [markAt(middleMm + halfMm - keepsMm, settled, 'down').text]
    return {size, length, along, off, down, through, into: 'neck'}
  })
  if (!screws) return [{key: 'screws', open: 'no screw holds'}]
  return [
    ...(block
      ? [{key: 'box', texts: {box: {'end-block': block}}, why: 'block behind the end' as const}]
      : []),
    {key: 'screws', texts: {screws: added([screws])}, why: 'screws into the end'},
  ]
}

/** Two places, one on each side of the centre line. */
function offsAt(mm: number, settled: Settled): string[] {
  const {text} = markAt(mm, settled, 'down')
  return [`-${text}`, text]
}

function withBlocks(settled: Settled, around: Around, box: {readonly [key: string]: Texts}) {
  const values = withTexts(settled, {box}, settled.units)
  const {place, sizes, neck} = around
  const blocks = planBlocks(values, {place, sizes, neck, rulerMm: settled.rulerMm})
  return {settled: {...settled, values}, around: {...around, values, blocks}}
}

/** Write a row of screws of a gauge and a length, so far off the centre line. */
type Row = (size: string, length: string, off: readonly string[]) => {readonly [key: string]: Texts}

/**
 * Find the first row in which every screw holds: one to a block before two, thin before thick. Up into the neck the
 * longest that stays in the wood costs nothing; along it, where the hole is deep, the shortest does.
 */
function screwsThatHold(
  {settled, around}: {settled: Settled; around: Around},
  offs: readonly (readonly string[])[],
  row: Row,
): Texts | undefined {
  const lengths = screwLengths[settled.units]
  for (const off of offs)
    for (const gauge of usualGauges) {
      const tries = (length: string) => {
        const texts = row(String(gauge), length, off)
        return {texts, ...tryScrews(settled, around, texts)}
      }
      const longest = tries(lengths.at(-1)!)
      const mostMm = Math.min(...longest.screws.map(({longestMm = Number.POSITIVE_INFINITY}) => longestMm))
      const leastMm = Math.max(...longest.screws.map(({shortestMm}) => shortestMm))
      const fitting = lengths.filter((length) => {
        const {mm: longMm} = sizeOf(length, length, settled)
        return longMm >= leastMm - slackMm && longMm <= mostMm + slackMm
      })
      const isEndless = mostMm === Number.POSITIVE_INFINITY
      const best = fitting.length ? tries(fitting.at(-1)!) : undefined
      if (!best?.hold) continue
      return isEndless ? fitting.map(tries).find(({hold}) => hold)!.texts : best.texts
    }
  return undefined
}

/** Work a row of screws out as the plan would, and tell whether all of them hold. */
function tryScrews(settled: Settled, around: Around, row: Texts): {screws: Fastener[]; hold: boolean} {
  const {taper, pull, place} = around
  const {screws: _, ...others} = settled.values
  const values = withTexts({...settled, values: others}, {screws: [row]}, settled.units)
  const tried = {...settled, values}
  const end = planEndJoint(tried, {box: boxOf(around), pull})
  const places = planScrewPlaces(values, place)
  const {fasteners = [], conflicts} = planFasteners(tried, places, {box: boxOf(around), taper}, {pull, end})
  return {
    screws: fasteners,
    hold: fasteners.length > 0 && conflicts.length === 0 && fasteners.every(holds),
  }
}

const slackMm = 1e-6

/** Tell whether a screw stays in the wood, bites enough, has enough under its head, and bears its load. */
function holds(screw: Fastener): boolean {
  const {lengthMm, longestMm = lengthMm, shortestMm, overN, astray, offBox, loadN} = screw
  const isInWood = lengthMm <= longestMm + slackMm && lengthMm >= shortestMm - slackMm
  return isInWood && screw.hasPad && overN === undefined && loadN !== undefined && !astray && !offBox
}
