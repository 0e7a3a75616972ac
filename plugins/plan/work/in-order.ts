import type {StepDraft} from './step.ts'

/** A step in its place, and the ids of those of this build that it depends on. */
export interface PlacedStep {
  draft: StepDraft
  after: string[]
}

/**
 * Put steps in an order in which each comes after those it depends on: the earliest as listed, but the tool and
 * setting in hand are used on where nothing forbids it. A name in `after` that ends in `*` stands for all steps that
 * start so; names of steps that are not there are taken out.
 */
export function inOrder(drafts: readonly StepDraft[]): PlacedStep[] {
  const followers = new Map<string, number[]>()
  for (const {id} of drafts) followers.set(id, [])
  const steps = drafts.map((draft) => ({draft, after: known(draft.after, followers)}))
  // How many of those that each depends on are still to come; none of a step that has its place.
  const open = steps.map(({after}, at) => {
    for (const id of after) followers.get(id)!.push(at)
    return after.length
  })
  const order: PlacedStep[] = []
  let last = -1
  while (order.length < steps.length) {
    const next = choose(open, (at) => {
      if (drafts[at]!.tool !== drafts[last]?.tool) return 0
      return isSame(drafts[at]!.facts.setting, drafts[last]!.facts.setting) ? 2 : 1
    })
    if (next < 0) throw new Error(`The steps ${waiting(drafts, open).join(', ')} wait for each other.`)
    open[next] = -1
    last = next
    for (const at of followers.get(drafts[next]!.id)!) open[at]!--
    order.push(steps[next]!)
  }
  return order
}

/** Tell whether two settings say the same, all the way down; what is undefined says nothing. */
function isSame(one: unknown, other: unknown): boolean {
  if (one === other) return true
  if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return false
  const [own, others] = [one, other] as Record<string, unknown>[]
  for (const key in own) if (!isSame(own[key], others![key])) return false
  for (const key in others) if (others[key] !== undefined && own![key] === undefined) return false
  return true
}

function known(names: readonly string[], ids: ReadonlyMap<string, unknown>): string[] {
  const found: string[] = []
  for (const name of names)
    if (ids.has(name)) found.push(name)
    else if (name.endsWith('*')) {
      const start = name.slice(0, -1)
      for (const id of ids.keys()) if (id.startsWith(start)) found.push(id)
    }
  return found
}

/** The step, by its number, that nothing holds up and that `fits` best, the earliest of several; -1: none. */
function choose(open: readonly number[], fits: (at: number) => number): number {
  let best = -1
  let bestFit = -1
  for (let at = 0; at < open.length; at++) {
    if (open[at] !== 0) continue
    const fit = fits(at)
    if (fit <= bestFit) continue
    best = at
    bestFit = fit
  }
  return best
}

const waiting = (drafts: readonly StepDraft[], open: readonly number[]) =>
  drafts.flatMap(({id}, at) => (open[at]! > 0 ? [id] : []))
