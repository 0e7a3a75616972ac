import {readLeaf} from '../../build-file/quantities/read-leaf.ts'
import type {Kind, Leaf} from '../../build-file/schema/kinds.ts'

/** By leaf, unit and text. Builds say much the same, so few texts are read more than once; many marks are forgotten again. */
const known = new WeakMap<Leaf, Record<'in' | 'mm', Map<string, object>>>()
const mostKnown = 1000

/**
 * Read a text that is assumed or proposed as the file's reader would read it there; nothing of a text that it would not
 * take, and a text whose kind is no quantity as it stands.
 */
export function readOwn(kind: Kind | undefined, text: string, units: 'in' | 'mm'): object {
  const leaf = kind?.is === 'either' ? kind.first : kind
  if (leaf?.is === 'either') return readOwn(leaf, text, units)
  if (leaf?.is !== 'leaf') return {value: text}
  const ofLeaf = known.get(leaf) ?? {in: new Map(), mm: new Map()}
  known.set(leaf, ofLeaf)
  const before = ofLeaf[units].get(text)
  if (before) return before
  const reading = readLeaf(leaf.leaf, text, {units, limits: leaf.limits})
  const read = reading.ok ? reading.value : {}
  if (ofLeaf[units].size === mostKnown) ofLeaf[units].clear()
  ofLeaf[units].set(text, read)
  return read
}
