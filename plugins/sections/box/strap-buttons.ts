import type {BlockContent} from 'mdast'
import type {Hole} from '../../plan/shape/holes.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, length, list, subHeading} from '../kit.ts'

/** Say where strap buttons go, and what holds them. */
export function strapButtons(plan: Plan): BlockContent[] {
  const buttons = (plan.holes ?? []).filter(({what}) => what === 'strap button')
  if (!buttons.length) return []
  return [
    subHeading('Strap buttons'),
    list([
      ...buttons.map((button) => placeInWords(button, plan)),
      'Glue a block of hardwood inside behind each: a wall alone does not hold a screw. Put a felt washer under the button. Places by common practice, no source.',
    ]),
  ]
}

function placeInWords({face, alongMm}: Hole, plan: Plan): Inline[] {
  if (face === 'tail end') return ['One in the middle of the tail wall.']
  return [
    'One in the side towards the player’s chin',
    ...(alongMm === undefined ? [] : [', ', length(alongMm, plan), ' from the box’s head-side edge']),
    '.',
  ]
}
