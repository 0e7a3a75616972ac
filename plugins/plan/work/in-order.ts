import type {StepDraft} from './step-draft.ts'

/**
 * Put steps in an order in which each comes after those it depends on: the earliest as listed, but the tool and
 * setting in hand are used on where nothing forbids it. Names of steps that are not there are taken out of `after`.
 */
export function inOrder(drafts: readonly StepDraft[]): StepDraft[] {
  const ids = new Set(drafts.map(({id}) => id))
  const left = drafts.map((draft) => ({
    ...draft,
    after: draft.after.filter((id, i, all) => ids.has(id) && all.indexOf(id) === i),
  }))
  const done = new Set<string>()
  const isReady = ({after}: StepDraft) => after.every((id) => done.has(id))
  const order: StepDraft[] = []
  while (left.length > 0) {
    const last = order.at(-1)
    const sameTool = left.filter((step) => step.tool === last?.tool && isReady(step))
    const next = sameTool.find(({setting}) => setting === last?.setting) ?? sameTool[0] ?? left.find(isReady)
    if (!next) throw new Error(`The steps ${left.map(({id}) => id).join(', ')} wait for each other.`)
    left.splice(left.indexOf(next), 1)
    done.add(next.id)
    order.push(next)
  }
  return order
}
