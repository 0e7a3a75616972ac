/** How a wood's grain shows on a planed face: hardly, in open pores, or in lines of early and late wood. */
export type Grain = 'fine' | 'open' | 'lined'

/**
 * What woods look like planed and oiled, so that a drawing can be filled by them: a colour and the kind of grain, by a
 * word of the wood's name. Boards of one tree differ by more than some of these do.
 */
// biome-ignore format: a line each
const rows: readonly (readonly [word: string, colour: string, grain: Grain])[] = [
  ['alder', '#d3a679', 'fine'],
  ['ash', '#dcc49a', 'open'],
  ['aspen', '#e8dcc0', 'fine'],
  ['basswood', '#e6d5ae', 'fine'],
  ['beech', '#d9b48a', 'fine'],
  ['birch', '#e4cda2', 'fine'],
  ['bubinga', '#8f4a35', 'fine'],
  ['butternut', '#c29b6c', 'open'],
  ['cedar', '#b9764f', 'lined'],
  ['cherry', '#b87751', 'fine'],
  ['chestnut', '#b98d5c', 'open'],
  ['cottonwood', '#e2d3b2', 'fine'],
  ['douglas-fir', '#d09a66', 'lined'],
  ['ebony', '#3a3230', 'fine'],
  ['elm', '#bf9566', 'open'],
  ['fir', '#d9b583', 'lined'],
  ['hemlock', '#dcbf92', 'lined'],
  ['hickory', '#c99c6b', 'open'],
  ['juniper', '#b0694a', 'lined'],
  ['larch', '#c98d5a', 'lined'],
  ['lime', '#e6d5ae', 'fine'],
  ['locust', '#b0893f', 'open'],
  ['mahogany', '#9a5238', 'open'],
  ['maple', '#e7d2a8', 'fine'],
  ['oak', '#c39b66', 'open'],
  ['padauk', '#9c3f2a', 'open'],
  ['pecan', '#c99c6b', 'open'],
  ['pine', '#e2bd82', 'lined'],
  ['plywood', '#dcbf92', 'fine'],
  ['poplar', '#cfc893', 'fine'],
  ['purpleheart', '#6f4058', 'fine'],
  ['redwood', '#a65f43', 'lined'],
  ['rosewood', '#5f3a2d', 'open'],
  ['sapele', '#96553a', 'open'],
  ['spruce', '#ead3a3', 'lined'],
  ['sycamore', '#d8b892', 'fine'],
  ['teak', '#a9793f', 'open'],
  ['walnut', '#7b5640', 'open'],
  ['wenge', '#4b382e', 'open'],
  ['willow', '#d5b98b', 'fine'],
]

export const woodColourSource = 'common practice, no source'

/** A wood that is not known by name, as a board from the shed looks. */
const unknown = {colour: '#d2b98e', grain: 'fine'} as const

/** Find the kind of tree that a wood's name ends with: `cedar` of `western redcedar`. */
export const treeOf = (wood: string | undefined): string | undefined => rowOf(wood)?.[0]

/** Find how a wood looks. */
export function lookOf(wood: string | undefined): {colour: string; grain: Grain} {
  const found = rowOf(wood)
  return found ? {colour: found[1], grain: found[2]} : unknown
}

/** By a word of its name, or the end of one. */
function rowOf(wood = ''): (typeof rows)[number] | undefined {
  const words = wood.toLowerCase().split(/[\s,]+/)
  return rows.find(([tree]) => words.some((one) => one.endsWith(tree)))
}
