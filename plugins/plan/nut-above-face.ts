import type {Action} from './shape/strings.ts'

/** Say how high (mm) the string stands above the playing face at the nut: `action.nutMm` is above the crowns. */
export const nutAboveFaceMm = ({nutMm, crownMm = 0}: Pick<Action, 'nutMm' | 'crownMm'>): number =>
  nutMm + crownMm
