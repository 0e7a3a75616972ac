import {type StringMaterial, stringMaterials, unevenPull} from '../../tables/strings.ts'
import {median} from './median.ts'
import {pullLimits} from './pull-word.ts'
import type {StringFacts} from './string-facts.ts'

export interface Balance {
  /** Pull over the median pull of the strings of like material, less 1. */
  offMedian?: number
  uneven?: boolean
  /** The pull (N) to aim for: the median of the others that pull easy or firm, else the middle of easy and firm. */
  targetN: number
}

/**
 * Compare the pulls of a set, string by string. Of two strings that are far apart only the one further from the usual
 * pull is called uneven, since each would mend the other.
 */
export function balance(set: readonly StringFacts[], play: string | undefined): Balance[] {
  return set.map((string) => {
    const {tensionN} = string
    const alike = set.filter((other) => feelOf(other) === feelOf(string) && other.tensionN !== undefined)
    const middleN = median(alike.map((other) => other.tensionN!))
    const sound = alike.filter(
      (other) => other !== string && (other.pull === 'easy' || other.pull === 'firm'),
    )
    const targetN = median(sound.map((other) => other.tensionN!)) ?? usualN(string, play)
    if (tensionN === undefined || middleN === undefined || alike.length < 2) return {targetN}
    const offMedian = tensionN / middleN - 1
    const other = alike.length === 2 ? alike.find((one) => one !== string) : undefined
    const isWorse = !other || farFromUsual(string, play) >= farFromUsual(other, play)
    return {targetN, offMedian, ...(Math.abs(offMedian) > unevenPull && isWorse && {uneven: true})}
  })
}

const materialOf = ({material}: StringFacts) => (material ?? 'steel') as StringMaterial
const feelOf = (string: StringFacts) => stringMaterials[materialOf(string)].feel

/** The middle between slack and stiff, in N, as ratios are heard and felt. */
function usualN(string: StringFacts, play: string | undefined): number {
  const {slackN, firmN} = pullLimits(materialOf(string), play)
  return Math.sqrt(slackN * firmN)
}

function farFromUsual(string: StringFacts, play: string | undefined): number {
  return Math.abs(Math.log(string.tensionN! / usualN(string, play)))
}
