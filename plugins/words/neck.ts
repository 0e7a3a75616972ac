import type {FreeBody} from '../plan/neck/bow.ts'
import type {Because} from '../plan/neck/inside-neck.ts'
import type {Budget} from '../plan/neck-shape/budget.ts'

const between =
  'it bows between nut and bridge, least if the box holds it straight from its edge on, most if the box does not help'

/** What the strings really do to neck, top and joint, and so why the neck bows as it does; no capital, no full stop. */
export const bowWhy: Readonly<Record<FreeBody, string>> = {
  'on top': `nut, bridge and anchors all stand on the neck, so the pull closes inside it and the screws carry almost none of it: ${between}`,
  'bridge on the top': `the neck carries the pull, the top the bridge’s downforce, and the screws hold the two together: ${between}`,
  through: `the neck carries the pull from nut to tail, and the top the bridge’s downforce, which it hands to the neck at both walls of the box: ${between}`,
  end: 'the neck ends at the box and is held there: it bows from the nut to that joint, which carries the pull times the height of the strings above it',
}

/** Why a neck that runs through is as thick inside the box as it must be: after the thickness. */
export const insideBecause: Readonly<Record<Because, string>> = {
  strength: 'for the wood to carry the strings for years',
  bow: 'to stay straight enough',
  practice: 'by common practice, no source',
}

/** What asks for neck past the bridge. */
export const tailNeeds: Readonly<Record<Budget['needs'], string>> = {
  anchors: 'the anchors need',
  box: 'the box needs',
}
