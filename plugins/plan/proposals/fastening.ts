import {type Block, planBlocks} from '../box/box-blocks.ts'
import {type EndJoint, planEndJoint} from '../fasteners/end-joint.ts'
import {isForTop} from '../fasteners/screw-places.ts'
import type {Proposal} from '../kit/proposal.ts'
import {added, markAt, type Texts, withTexts} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import type {Around, Propose} from './around.ts'
import {blocksUnder, endBlock} from './blocks.ts'
import {type Held, offsAt, screwsIntoEnd, screwsThatHold} from './screws-that-hold.ts'

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
  const offs = [['0'], offsAt(neckMm / 4, settled)]
  const screws = screwsThatHold(heldBy(held), [1, 2], (size, length, count) => ({
    size,
    length,
    along,
    off: offs[count - 1]!,
    through,
    into: 'neck',
  }))?.texts
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

function atTheEnd(settled: Settled, around: Around, end: EndJoint): Proposal[] {
  const isGiven = around.blocks?.some(({of, glued}) => of === 'box.end-block' || glued === 'at the ends')
  const block = isGiven ? undefined : endBlock(settled, around)
  if (!isGiven && !block) return [{key: 'box', open: 'no room for blocks'}]
  const held = withBlocks(settled, around, block ? {'end-block': block} : {})
  const screws = screwsIntoEnd(heldBy(held), end)?.texts
  if (!screws) return [{key: 'screws', open: 'no screw holds'}]
  return [
    ...(block
      ? [{key: 'box', texts: {box: {'end-block': block}}, why: 'block behind the end' as const}]
      : []),
    {key: 'screws', texts: {screws: added([screws])}, why: 'screws into the end'},
  ]
}

function withBlocks(settled: Settled, around: Around, box: {readonly [key: string]: Texts}) {
  const values = withTexts(settled, {box}, settled.units)
  const {place, sizes, neck} = around
  const blocks = planBlocks(values, {place, sizes, neck, rulerMm: settled.rulerMm})
  return {settled: {...settled, values}, around: {...around, values, blocks}}
}

const heldBy = ({settled, around}: ReturnType<typeof withBlocks>): Held => ({
  settled,
  box: boxOf(around),
  place: around.place,
  taper: around.taper,
  pull: around.pull,
})
