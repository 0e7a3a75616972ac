import type {Paragraph, PhrasingContent, Root, RootContent} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'
import {SKIP, visit} from 'unist-util-visit'
import {planValue} from '../plan/plan-value.ts'
import {allSections} from './all.ts'
import {list} from './kit/flow.ts'
import {type Inline, text} from './kit/inline.ts'
import {type SectionName, sectionNames} from './names.ts'
import {type ComputedSection, computedSection} from './placed.ts'
import type {Section, SectionInput} from './section.ts'
import {wordValue} from './word-value.ts'

/** Everything that sections are worded from, and the text of the file. */
export interface BodyInput extends Omit<SectionInput, 'attributes'> {
  source: string
}

const beforeProse: readonly SectionName[] = ['drawing', 'before-you-cut']

/**
 * Fill the body of a build file in place: directives and value references where they stand, and the sections that
 * the file does not place around the prose, in the order of the contract. What the checks name stays as written.
 */
export function fillBody(tree: Root, input: BodyInput): void {
  fillValues(tree, input)
  const directives = tree.children.filter((node) => node.type === 'leafDirective')
  const leftOut = directives.flatMap(({name, attributes}) =>
    name === 'leave-out' ? Object.keys(attributes ?? {}).filter((section) => section !== 'cautions') : [],
  )
  const placed = new Set<string>()
  tree.children = tree.children.flatMap((node) =>
    node.type === 'leafDirective' ? fillDirective(node, placed, input) : [node],
  )
  const rest = allInOrder().filter(({name}) => !leftOut.includes(name) && !isPlaced(name, directives))
  const added = rest.map((section) => ({section, needs: section.needs({...input, attributes: {}})}))
  const made = added.flatMap(({section, needs}) => {
    const content = needs.length === 0 ? section.content({...input, attributes: {}}) : []
    return content.length > 0
      ? [{name: section.name, node: computedSection(section.name, section.title, content)}]
      : []
  })
  const isBefore = ({name}: {name: SectionName}) => beforeProse.includes(name)
  const frontMatter = tree.children[0]?.type === 'yaml' ? 1 : 0
  tree.children.splice(frontMatter, 0, ...made.filter(isBefore).map(({node}) => node))
  tree.children.push(...made.filter((one) => !isBefore(one)).map(({node}) => node))
  const open = added.filter(({section, needs}) => needs.length > 0 && !section.quiet)
  if (open.length > 0) tree.children.push(stillOpen(open))
}

/** Give the sections in the order in which they follow, those that stand before the prose first. */
function allInOrder(): Section[] {
  const order = [...beforeProse, ...sectionNames.filter((name) => !beforeProse.includes(name))]
  return order.flatMap((name) => allSections.find((section) => section.name === name) ?? [])
}

function isPlaced(name: SectionName, directives: readonly LeafDirective[]): boolean {
  return directives.some((directive) => directive.name === name)
}

function fillDirective(node: LeafDirective, placed: Set<string>, input: BodyInput): RootContent[] {
  if (node.name === 'leave-out') return []
  const section = allSections.find(({name}) => name === node.name)
  const view = node.attributes?.view ?? ''
  if (!section) return [asWritten(node, input.source)]
  const id = view ? `${section.name}-${view}` : section.name
  if (placed.has(id)) return []
  placed.add(id)
  const attributes = Object.fromEntries(
    Object.entries(node.attributes ?? {}).map(([key, value]) => [key, value ?? '']),
  )
  const needs = section.needs({...input, attributes})
  const content = needs.length > 0 ? [paragraphOf(needed(needs))] : section.content({...input, attributes})
  return [
    computedSection(
      id,
      view ? `${section.title}: ${view}` : section.title,
      content.length > 0 ? content : [paragraphOf([text('Nothing to show yet.')])],
    ),
  ]
}

/** Leave a line that names no section on the page as it was written. */
function asWritten({position}: LeafDirective, source: string): Paragraph {
  return paragraphOf([text(source.slice(position?.start.offset, position?.end.offset).trim())])
}

function fillValues(tree: Root, {plan, source}: BodyInput): void {
  visit(tree, 'valueReference', (node, at, parent) => {
    if (!parent || at === undefined) return
    const found = planValue(plan, node.value)
    const {start, end} = node.position ?? {}
    const children: PhrasingContent[] =
      found.is === 'unknown' ? [text(source.slice(start?.offset, end?.offset))] : wordValue(found, plan)
    parent.children[at] = {
      type: 'computedValue',
      data: {hName: 'span', hProperties: {className: ['value']}},
      children,
    }
    return SKIP
  })
}

/** Gather what the file does not have yet, a line a section, with the keys that would bring it. */
function stillOpen(open: readonly {section: Section; needs: string[]}[]): ComputedSection {
  const lines = open.map(({section, needs}): Inline[] => [`${section.title}: `, ...needed(needs)])
  return computedSection('still-open', 'Still open', [list(lines)])
}

function needed(keys: readonly string[]): PhrasingContent[] {
  const named = keys.flatMap((key, at): PhrasingContent[] => [
    ...(at === 0 ? [] : [text(at === keys.length - 1 ? ' and ' : ', ')]),
    {type: 'inlineCode', value: key},
  ])
  return [text('add '), ...named, text(' to the file.')]
}

function paragraphOf(children: PhrasingContent[]): Paragraph {
  return {type: 'paragraph', children}
}
