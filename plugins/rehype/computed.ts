import type {Element, ElementContent, Node, Parent, Root} from 'hast'
import {h} from 'hastscript'
import type {Handlers, State} from 'mdast-util-to-hast'
import {SKIP, visit} from 'unist-util-visit'
import type {ComputedSection, ComputedValue} from '../sections/kit-nodes.ts'

/** What was computed, kept apart from what the author wrote until that is made harmless. */
export interface Computed extends Parent {
  type: 'computed'
  children: [Element]
}

declare module 'hast' {
  interface RootContentMap {
    computed: Computed
  }
  interface ElementContentMap {
    computed: Computed
  }
}

/** Say whether a node was computed. */
export function isComputed(node: Node): node is Computed {
  return node.type === 'computed'
}

/** Handlers for remark-rehype: computed sections and values become nodes of their own type. */
export const computedHandlers: Handlers = {computedSection: apart, computedValue: apart}

function apart(state: State, node: ComputedSection | ComputedValue): ElementContent {
  const {hName = 'div', hProperties = {}} = node.data ?? {}
  const blocks = node.type === 'computedSection'
  const children = blocks ? state.wrap(state.all(node), true) : state.all(node)
  return {type: 'computed', children: [h(hName, hProperties, children)]}
}

/** Put what was computed in its place, an element among the author's. */
export function rehypeComputed() {
  return (tree: Root): void => {
    visit(tree, 'computed', (node, at, parent) => {
      parent!.children[at!] = node.children[0]
      return SKIP
    })
  }
}
