import {stringify} from 'yaml'
import type {Build} from './build.ts'
import {scalarOf} from './edit-yaml.ts'

type Tree = {[key: string]: Tree | Tree[] | object} | object

/**
 * Write keys of a build as lines of its front matter, a line a key, as far as the file says or the build is proposed
 * to have it: what is assumed is left out. A key that the file has is written whole, and takes its line's place.
 */
export function writeLines({values}: Pick<Build, 'values'>, keys: readonly string[]): string[] {
  return keys.map((key) => {
    const tree = saidOf((values as Record<string, unknown>)[key])
    return stringify({[key]: tree}, {collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: false})
      .replace(/^\{(.*)\}\n$/s, '$1')
      .trimEnd()
  })
}

/** Take the texts of what is said, in their lists and records. */
function saidOf(value: unknown): Tree | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  if ('place' in value) {
    const {text, assumed} = value as unknown as {text: string; assumed?: true}
    return assumed ? undefined : scalarOf(text)
  }
  if (Array.isArray(value)) return value.map(saidOf)
  const said = Object.entries(value).flatMap(([key, item]) => {
    const tree = saidOf(item)
    return tree === undefined || (isEmpty(tree) && !isEmpty(item)) ? [] : [[key, tree] as const]
  })
  return Object.fromEntries(said)
}

const isEmpty = (tree: object): boolean => !('value' in tree) && Object.keys(tree).length === 0
