import type {RootContent} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'
import {allSections} from './all.ts'
import {paragraph} from './kit/flow.ts'
import {needed} from './needed.ts'
import {computedSection} from './placed.ts'
import type {SectionInput} from './section.ts'

/** Everything that sections are worded from, and the text of the file. */
export interface BodyInput extends Omit<SectionInput, 'attributes'> {
  source: string
}

/**
 * Make what stands where a directive stood: its section, or one line that names the key which would bring it.
 * A second one of the same kind leaves nothing (`placed` holds those so far), an unknown one stays as written.
 */
export function fillDirective(node: LeafDirective, placed: Set<string>, input: BodyInput): RootContent[] {
  if (node.name === 'leave-out') return []
  const section = allSections.find(({name}) => name === node.name)
  if (!section) return [asWritten(node, input.source)]
  const view = node.attributes?.view ?? ''
  const id = view ? `${section.name}-${view}` : section.name
  if (placed.has(id)) return []
  placed.add(id)
  const attributes = entriesOf(node)
  const needs = section.needs({...input, attributes})
  const made = needs.length > 0 ? [paragraph(...needed(needs))] : section.content({...input, attributes})
  const content = made.length > 0 ? made : [paragraph('Nothing to show yet.')]
  return [computedSection(id, view ? `${section.title}: ${view}` : section.title, content)]
}

function entriesOf({attributes}: LeafDirective): Record<string, string> {
  return Object.fromEntries(Object.entries(attributes ?? {}).map(([key, value]) => [key, value ?? '']))
}

/** Keep the line a directive, so that it is written back as it was, and let it show as text on the page. */
function asWritten(node: LeafDirective, source: string): RootContent {
  const value = source.slice(node.position?.start.offset, node.position?.end.offset).trim()
  return {...node, data: {asWritten: value, hName: 'p', hChildren: [{type: 'text', value}]}}
}
