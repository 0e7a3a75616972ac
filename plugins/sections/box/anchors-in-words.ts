import type {BlockContent} from 'mdast'
import type {Build} from '../../build-file/build.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, inWords, length, list, subHeading} from '../kit.ts'

/** Say how the strings are held at the tail, by kind of anchor and of string end, and what guards soft wood. */
export function anchorsInWords(plan: Plan, {values}: Build): BlockContent[] {
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
