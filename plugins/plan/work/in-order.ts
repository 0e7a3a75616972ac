import type {StepDraft} from './step-draft.ts'

/**
 * Put steps in an order in which each comes after those it depends on: the earliest as listed, but the tool and
 * setting in hand are used on where nothing forbids it. A name in `after` that ends in `*` stands for all steps that
 * start so; names of steps that are not there are taken out.
 */
export function inOrder(drafts: readonly StepDraft[]): StepDraft[] {
  const ids = new Set(drafts.map(({id}) => id))
  const left = drafts.map((draft) => ({...draft, after: known(draft.after, ids)}))
  const done = new Set<string>()
  const order: StepDraft[] = []
  while (left.length > 0) {
    const next = choose(left, done, order.at(-1))
    if (!next) throw new Error(`The steps ${left.map(({id}) => id).join(', ')} wait for each other.`)
    left.splice(left.indexOf(next), 1)
    done.add(next.id)
    order.push(next)
  }
  return order
}

function known(names: readonly string[], ids: ReadonlySet<string>): string[] {
  const found: string[] = []
  for (const name of names)
    if (ids.has(name)) found.push(name)
    else if (name.endsWith('*')) for (const id of ids) if (id.startsWith(name.slice(0, -1))) found.push(id)
  return found
}

function choose<S extends StepDraft>(
  left: readonly S[],
  done: ReadonlySet<string>,
  last: StepDraft | undefined,
): S | undefined {
  let best: S | undefined
  let bestFit = -1
  for (const step of left) {
    const fit = step.tool !== last?.tool ? 0 : step.setting !== last.setting ? 1 : 2
    if (fit <= bestFit || !isReady(step, done)) continue
    best = step
    bestFit = fit
  }
  return best
}

function isReady({after}: StepDraft, done: ReadonlySet<string>): boolean {
  for (const id of after) if (!done.has(id)) return false
  return true
}
