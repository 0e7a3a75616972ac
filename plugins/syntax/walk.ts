import type {Node} from 'unist'

/** The children of a node, as they are walked. */
interface Walked<N extends Node> {
  children: N[]
}

/**
 * Call a function for every node below a parent, in the order of the text, with its index and its own parent.
 * What stands in a node's place after the call is entered, unless the call returned `skip`.
 */
export function walk<N extends Node>(
  parent: Walked<N>,
  visit: (node: N, index: number, parent: Walked<N>) => unknown,
): void {
  for (let index = 0; index < parent.children.length; index++) {
    const skipped = visit(parent.children[index]!, index, parent) === 'skip'
    const node = parent.children[index]
    if (!skipped && node && 'children' in node) walk(node as unknown as Walked<N>, visit)
  }
}
