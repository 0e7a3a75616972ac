import type {BlockContent} from 'mdast'
import type {Lid} from '../plan/box/lid.ts'
import type {Plan} from '../plan/plan.ts'
import {saddleRuler} from '../words/lengths.ts'
import {forceWords, number} from '../words/quantities.ts'
import {facts, figures, type Inline, needed, note, paragraph, source} from './kit.ts'
import {force, lengthAlone} from './measures.ts'

/** Say how far the top sinks under a bridge that stands on it, and what that does; or what would tell. */
export function lidInWords(plan: Plan): BlockContent[] {
  const {lid, bridgeSeat} = plan.box ?? {}
  if (!bridgeSeat) return []
  if (!lid)
    return plan.bridge?.downforceN === undefined
      ? []
      : [paragraph('How far the top sinks under the bridge depends on its wood. ', ...needed(['box.wood']))]
  if (lid.standsOn)
    return [paragraph(`The bridge’s foot stands on the ${lid.standsOn}, so the top carries none of it.`)]
  return [
    paragraph(...sinking(lid, plan), ...stretched(lid), ...tipping(lid, plan), ...stressed(lid)),
    figures(`Figures: the top under ${forceWords(lid.pushN, plan)}`, lidFigures(lid, plan)),
  ]
}

/** Say how far it sinks, between what bounds, and what it comes to in time. */
function sinking({sinkMm, rangeMm, sinkAfterCreepMm, pushN, tooLimp}: Lid, plan: Plan): Inline[] {
  const at = (mm: number) => lengthAlone(mm, saddleRuler(plan))
  const [low = sinkMm, high = sinkMm] = rangeMm
  if (pushN <= 0) return ['The strings do not press the bridge down, so the top does not sink.']
  return [
    tooLimp
      ? 'The top is too limp: strung, it sinks by about '
      : 'Strung, the top sinks under the bridge by about ',
    at(sinkMm),
    ' (',
    at(low),
    ' if the walls hold its edges fast, ',
    at(high),
    ' if it lies loose on them and its wood is limp), and in time by up to ',
    at(sinkAfterCreepMm),
    plan.action?.bridgeToBuildMm === undefined
      ? '. Build the bridge higher by the first, and shim it when the strings have come down.'
      : '. Shim the bridge when the strings have come down.',
  ]
}

/** Say where the top sinks so far that it would be held by being stretched, which is not reckoned. */
function stretched({isTaut}: Lid): string[] {
  if (!isTaut) return []
  return [
    ' That is more than half its thickness, where a top is drawn taut like a skin as well: it will sink somewhat less than said, and pull at its edges.',
  ]
}

/** Say how strings that are held at the bridge tip it. */
function tipping({leanMm, momentNmm}: Lid, plan: Plan): Inline[] {
  if (leanMm === undefined || momentNmm === undefined) return []
  return [
    ' The strings are held at the bridge itself, so they tip it more than they press it: with ',
    `${number(-momentNmm / 1000, 2)} N·m, which draws its crown `,
    lengthAlone(leanMm, saddleRuler(plan)),
    ' towards the nut.',
  ]
}

function stressed({stressMpa, mayCarryMpa, isAcrossGrain}: Lid): Inline[] {
  if (stressMpa === undefined || mayCarryMpa === undefined) return []
  return [
    ` Its wood is stressed by ${number(stressMpa, 1)} MPa${isAcrossGrain ? ' across its grain' : ''}, where a third of what breaks it, ${number(mayCarryMpa, 1)} MPa, may stay on it for years.`,
  ]
}

const sheetSource = 'Plywood: Handbook of Finnish Plywood (2002), from memory'
const solidSource =
  'Stiffness across the grain: means of Wood Handbook, FPL-GTR-282, Table 5-1, from memory; across it, it is taken to hold twice what even pull tears it at (from memory)'

/** Give what the sinking is reckoned with. */
function lidFigures(
  {pushN, wood, thicknessMm, grain, otherGrainMm, isAcrossGrain}: Lid,
  plan: Plan,
): BlockContent[] {
  const at = (mm: number) => lengthAlone(mm, saddleRuler(plan))
  const isSheet = wood === 'plywood' && !isAcrossGrain
  return [
    facts([
      ['The bridge presses it with', force(pushN, plan)],
      ['Top', at(thicknessMm), ` of ${wood}`],
      ...(otherGrainMm === undefined
        ? []
        : [
            [
              'Grain',
              `along the box’s longer side, which is ${grain} the neck; the other way it would sink by `,
              at(otherGrainMm),
            ] as const,
          ]),
    ]),
    note(
      `A flat plate on the four walls, without braces and sound holes, the bridge’s foot pressing it evenly. The likely figure lies half way between edges held fast and edges that lie loose (common practice, no source)${isSheet ? '' : '; a solid top is taken to be sawn flat, or at its stiffest on the quarter'}.`,
    ),
    source(
      `Plates: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, arts. 34, 44 and 85. ${isSheet ? sheetSource : solidSource}; what may stay on it: after ASTM D245, from memory; creep: Wood Handbook, FPL-GTR-282, ch. 5.`,
    ),
  ]
}
