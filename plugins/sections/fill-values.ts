import type {Root, RootContent} from 'mdast'
import {planValue} from '../plan/plan-value.ts'
import type {Plan} from '../plan/shape/plan.ts'
import {walk} from '../syntax/walk.ts'
import {wordValue} from './word-value.ts'
import './placed.ts'

/** Put the plan's values where a sentence names them, in place; a name that the plan does not have stays as written. */
export function fillValues(tree: Root, plan: Plan): void {
  walk<RootContent>(tree, (node, at, parent) => {
    if (node.type !== 'valueReference') return
    const found = planValue(plan, node.value)
    if (found.is === 'unknown') {
      node.data = {hName: 'span', hChildren: [{type: 'text', value: `:value[${node.value}]`}]}
      return
    }
    const data = {hName: 'span', hProperties: {className: ['value']}}
    parent.children[at] = {type: 'computedValue', data, children: wordValue(found, plan)}
    return 'skip'
  })
}
