import {type StringMaterial, type StringPullRow, stringMaterials, stringPulls} from '../../tables/strings.ts'

export type PullWord = 'slack' | 'easy' | 'firm' | 'stiff'

/** Say what a player would call a pull (N). Source: the table of pulls. */
export function pullWord(tensionN: number, limits: PullLimits): PullWord {
  if (tensionN < limits.slackN) return 'slack'
  if (tensionN <= limits.easyN) return 'easy'
  return tensionN <= limits.firmN ? 'firm' : 'stiff'
}

export type PullLimits = Pick<StringPullRow, 'slackN' | 'easyN' | 'firmN'>

/** Give the limits of pull (N) for a string of this material, steel where it is not known, and this way of playing. */
export function pullLimits(material: StringMaterial | undefined, play: string | undefined): PullLimits {
  const {slackN, slackUnderSlideN, easyN, firmN} = stringPulls[stringMaterials[material ?? 'steel'].feel]
  return {slackN: play === 'slide' ? slackUnderSlideN : slackN, easyN, firmN}
}
