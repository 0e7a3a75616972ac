import type {Root, RootContent} from 'hast'
import {isComputed} from './computed.ts'

/** Bring the author's footnotes up to the end of the prose, before the computed sections that follow it. */
export function rehypeFootnotes() {
  return (tree: Root): void => {
    const notes = tree.children.findLast(isFootnotes)
    if (!notes) return
    const others = tree.children.filter((node) => node !== notes)
    const end = others.findLastIndex((node) => node.type === 'element')
    const after = others.findIndex((node, at) => at > end && isComputed(node))
    if (after < 0) return
    others.splice(after, 0, notes, {type: 'text', value: '\n'})
    tree.children = others
  }
}

function isFootnotes(node: RootContent): boolean {
  return node.type === 'element' && node.properties.dataFootnotes !== undefined
}
