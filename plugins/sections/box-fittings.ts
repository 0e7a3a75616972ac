import type {BlockContent} from 'mdast'
import {type Block, blockValues} from '../plan/box/box-blocks.ts'
import type {Hole} from '../plan/kit/hole.ts'
import type {Settled} from '../plan/kit/settled.ts'
import type {Plan} from '../plan/plan.ts'
import {blockName} from '../words/places.ts'
import {inWords} from '../words/quantities.ts'
import {sidesExplained} from '../words/sides.ts'
import {type Inline, list, subHeading} from './kit.ts'
import {type Cell, table, under} from './kit-table.ts'
import {length, lengthAlone, offCentre} from './measures.ts'

/** Say what is done to the box before anything is fixed to it, and how one gets inside afterwards. */
export function prepareBox({box, pickup, fasteners = []}: Plan, {values}: Settled): BlockContent[] {
  const top = values.box?.top
  const paper = top?.paper?.value
  const held = box?.topHeld
  const isScrewed = fasteners.some(({holdsTop}) => holdsTop)
  const hasHoles = (box?.soundHoles?.length ?? 0) > 0
  return [
    subHeading('Preparing the box'),
    list([
      'Settle which face is the top: the one under the strings, flat, and sound enough to drill. Pencil “top” inside it, and bass and treble on the edges: left and right change places when it is turned over.',
      ...(paper === 'keep'
        ? ['Keep its paper: seal it with thin shellac before drilling, so that the bit does not lift it.']
        : []),
      ...(paper === 'strip'
        ? [
            'Strip its paper before anything is marked: damp it, wait, and lift it with a blunt blade; let the wood dry for a day.',
          ]
        : []),
      'An old finish may hold lead: test it before sanding, and see the cautions.',
      ...(box?.blocks?.length
        ? ['Glue the blocks in before the top is drilled, so that the bit comes out in them cleanly.']
        : []),
      ...(held ? [heldInWords[held === 'screwed' && !isScrewed ? 'unscrewed' : held] ?? ''] : []),
      ...(pickup
        ? [
            box?.isShut
              ? 'With the top glued down nobody gets at the wiring again: settle that first.'
              : 'Leave the wires long enough to lift the top and lay it beside the box.',
          ]
        : []),
      ...(hasHoles
        ? []
        : ['There is no sound hole in the file; without one the box is closed, and quieter.']),
    ]),
  ]
}

const heldInWords: Readonly<Record<string, string>> = {
  glued: 'The top is glued down: everything inside is finished, tested and photographed first.',
  screwed:
    'The top is screwed: it comes off for every repair. Drill its screw holes before the finish, and do not drive the screws tight until it has dried.',
  unscrewed: 'The top is screwed: it comes off for every repair. With which screws, the file does not say.',
  hinged:
    'The top is hinged: a strip of felt under its free edge keeps it from rattling, and a catch keeps it shut.',
}

/** List the blocks to glue inside: wood, size, and where their middles lie along the box and off the centre line. */
export function blocksToGlue(plan: Plan, {values}: Settled): BlockContent[] {
  const blocks = plan.box?.blocks ?? []
  if (!blocks.length) return []
  const at = (mm: number) => lengthAlone(mm, plan)
  const row = (block: Block): Cell[] => [
    [
      blockName(block.of).replace(/^./, (first) => first.toUpperCase()),
      under(`${blockValues(values, block)?.wood?.value ?? 'any wood'}, ${block.glued ?? 'under the top'}`),
    ],
    [
      at(block.lengthMm),
      ' × ',
      at(block.widthMm),
      ...(block.thicknessMm === undefined ? [] : [' × ', at(block.thicknessMm)]),
    ],
    [at(block.alongMm), under(...offCentre(block.offMm, plan))],
  ]
  return [
    table({
      caption: 'Blocks to glue inside the box',
      columns: [
        {head: ['Block', under('Wood, where glued')]},
        {head: 'Along × across × thick'},
        {head: ['Middle from the head-side edge', under('Off the centre line')]},
      ],
      rows: blocks.map((block) => row(block)),
      note: `Their grain runs along the longer side. Clamp each until its glue has set, on a face that has been scraped bare.${blocks.some(({offMm}) => offMm !== 0) ? ` ${sidesExplained(plan)}` : ''}`,
    }),
  ]
}

/** Say how the strings are held at the tail, by kind of anchor and of string end, and what guards soft wood. */
export function anchorsInWords(plan: Plan, {values}: Settled): BlockContent[] {
  const kind = values.anchors?.kind?.value
  if (!kind) return []
  const {anchors = [], anchorRow: row, strings = []} = plan
  const ends = [...new Set(strings.flatMap(({ends: end}) => end ?? []))]
  const [first] = anchors
  const items: (string | readonly Inline[])[] = [kindInWords[kind]]
  if (first)
    items.push([
      'They stand in a row ',
      length(first.stationMm, plan),
      ' from the nut',
      ...(anchors.length > 1 && row?.bodyMm !== undefined && values.anchors?.spacing
        ? [', ', length(values.anchors.spacing.mm, plan), ' apart']
        : []),
      '.',
    ])
  if (ends.length) items.push(`Buy strings with ${inWords(ends)} ends${endsInWords(ends, kind)}.`)
  if (row?.isSoft && kind !== 'ferrule')
    items.push(
      'The wood is soft and the strings cut into it: put an eyelet, a ferrule or a strip of hardwood where each bears.',
    )
  return [subHeading('Anchors'), list(items)]
}

const kindInWords = {
  ferrule:
    'Ferrules, in two steps from the back: drill the string holes through, with scrap tight under the playing face, then open each for its ferrule’s body, the string hole as the bit’s guide. Measure your ferrules for the depth, and press them in with a clamp, not a hammer.',
  tailpiece:
    'A tailpiece holds all strings: screw it to wood that takes the whole pull, and pad it where it could rattle.',
  pins: 'Pins: bore, then ream each hole until its pin stands tight with the string beside it.',
  plain:
    'Plain holes: round their edges over with sandpaper or a countersink, so that no string breaks over a corner.',
} as const

function endsInWords(ends: readonly string[], kind: string): string {
  if (ends.includes('ball') && kind === 'ferrule')
    return ': each goes in from the back, and its ball sits in the ferrule'
  if (ends.includes('loop') && kind !== 'tailpiece')
    return ': a loop needs a pin or a hook, so put a small screw behind each hole'
  if (ends.includes('plain')) return ': a plain end is tied, or knotted round a bead'
  return ''
}

/** Say where strap buttons go, and what holds them. */
export function strapButtons(plan: Plan): BlockContent[] {
  const buttons = (plan.holes ?? []).filter(({what}) => what.hole === 'strap button')
  if (!buttons.length) return []
  return [
    subHeading('Strap buttons'),
    list([
      ...buttons.map((button) => placeInWords(button, plan)),
      'Glue a block of hardwood inside behind each; a felt washer goes under the button. Places by common practice, no source.',
    ]),
  ]
}

function placeInWords({face, alongMm, offMm, downMm}: Hole, plan: Plan): Inline[] {
  const down: Inline[] = downMm === undefined ? [] : [', ', lengthAlone(downMm, plan), ' below the top']
  if (face === 'tail end') return ['One in the tail wall, ', ...offCentre(offMm, plan), ...down, '.']
  return [
    'One in the side towards the player’s chin',
    ...(alongMm === undefined ? [] : [', ', length(alongMm, plan), ' from the box’s head-side edge']),
    ...down,
    '.',
  ]
}
