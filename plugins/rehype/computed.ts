import type {Element, ElementContent, Node, Parent, Root} from 'hast'
import {h} from 'hastscript'
import type {ListItem, Parent as MarkdownParent, Root as MarkdownRoot, Table} from 'mdast'
import {defaultHandlers, type Handlers, type State} from 'mdast-util-to-hast'
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
export const computedHandlers: Handlers = {
  computedSection: apart,
  computedValue: apart,
  table: (state, node: Table) => asMade('table', node) ?? defaultHandlers.table(state, node),
  listItem: (state, node: ListItem, parent) =>
    asMade('li', node, typeof node.checked === 'boolean' ? {className: ['task-list-item']} : {}) ??
    defaultHandlers.listItem(state, node, parent),
}

/** What brings its own elements needs none made of its Markdown, which would be thrown away. */
function asMade(
  tagName: string,
  {data}: Table | ListItem,
  properties: Element['properties'] = {},
): Element | undefined {
  if (!data?.hChildren) return undefined
  return {
    type: 'element',
    tagName,
    properties: {...properties, ...data.hProperties},
    children: data.hChildren,
  }
}

/**
 * Leave out of what was computed the Markdown that brings its own elements: a page's tables are most of its tree, and
 * the step to HTML would walk all their cells to find definitions.
 */
export function remarkOwnElements() {
  return (tree: MarkdownRoot): void => {
    tree.children = tree.children.map((node) =>
      node.type === 'computedSection' ? withOwnElements(node) : node,
    )
  }
}

function withOwnElements<T extends MarkdownParent>(node: T): T {
  if (node.data?.hChildren) return {...node, children: []}
  const children = node.children.map((child) => ('children' in child ? withOwnElements(child) : child))
  return {...node, children}
}

function apart(state: State, node: ComputedSection | ComputedValue): ElementContent {
  const {hName = 'div', hProperties = {}} = node.data ?? {}
  const blocks = node.type === 'computedSection'
  const children = blocks ? state.wrap(state.all(node), true) : state.all(node)
  return {type: 'computed', children: [h(hName, hProperties, children)]}
}

/**
 * List the elements of a tree in the order of the page. What was computed is most of a page: gone through as a list, it
 * costs a tenth of a visit that knows the way to each.
 */
export function elementsIn(tree: Parent): Element[] {
  const found: Element[] = []
  const gather = ({children}: Parent) => {
    for (let at = 0; at < children.length; at++) {
      const node = children[at]!
      if (node.type === 'element') found.push(node)
      if ('children' in node) gather(node)
    }
  }
  gather(tree)
  return found
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
