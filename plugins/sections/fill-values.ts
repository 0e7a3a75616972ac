import type {PhrasingContent, Root} from 'mdast'
import {SKIP, visit} from 'unist-util-visit'
import {planValue} from '../plan/plan-value.ts'
import type {Plan} from '../plan/shape/plan.ts'
import {text} from './kit/inline.ts'
import {wordValue} from './word-value.ts'
import './placed.ts'

/** Put the plan's values where a sentence names them, in place; a name that the plan does not have stays as written. */
export function fillValues(tree: Root, plan: Plan, source: string): void {
  visit(tree, 'valueReference', (node, at, parent) => {
    if (!parent || at === undefined) return
    const found = planValue(plan, node.value)
    const {start, end} = node.position ?? {}
    const children: PhrasingContent[] =
      found.is === 'unknown' ? [text(source.slice(start?.offset, end?.offset))] : wordValue(found, plan)
    const data = {hName: 'span', hProperties: {className: ['value']}}
    parent.children[at] = {type: 'computedValue', data, children}
    return SKIP
  })
}
