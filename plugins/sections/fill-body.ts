import type {Root, RootContent} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'
import {type SectionName, sectionNames} from '../tables/section-names.ts'
import {allSections} from './all.ts'
import {fillValues} from './fill-values.ts'
import {type Inline, list, needed, paragraph} from './kit.ts'
import {type ComputedSection, computedSection} from './kit-nodes.ts'
import type {Section, SectionInput} from './section.ts'

const beforeProse: readonly SectionName[] = ['drawing', 'before-you-cut']

/**
 * Fill the body of a build file in place: directives and value references where they stand, and the sections that
 * the file does not place around the prose, in the order of section-names.ts. What cannot be filled stays as written.
 */
export function fillBody(tree: Root, input: BodyInput): void {
  const directives = tree.children.filter((node) => node.type === 'leafDirective')
  fillValues(tree, input.plan)
  const placed = new Set<string>()
  tree.children = tree.children.flatMap((node) =>
    node.type === 'leafDirective' ? fillDirective(node, placed, input) : [node],
  )
  const rest = sectionsNotPlaced(directives).map((section) => ({
    section,
    needs: needsOf(section, {...input, attributes: {}}),
  }))
  const ready = rest.filter(({needs}) => needs.length === 0).map(({section}) => made(section, input))
  const before = ready.filter(({name}) => beforeProse.includes(name)).flatMap(({nodes}) => nodes)
  const after = ready.filter(({name}) => !beforeProse.includes(name)).flatMap(({nodes}) => nodes)
  tree.children.splice(tree.children[0]?.type === 'yaml' ? 1 : 0, 0, ...before)
  tree.children.push(...after, ...stillOpen(rest))
}

/** List the sections that the file neither places nor leaves out, in their order; cautions are never left out. */
function sectionsNotPlaced(directives: readonly LeafDirective[]): Section[] {
  const leftOut = directives
    .filter(({name}) => name === 'leave-out')
    .flatMap(({attributes}) => Object.keys(attributes ?? {}))
  const order = [...beforeProse, ...sectionNames.filter((name) => !beforeProse.includes(name))]
  return order
    .filter((name) => name === 'cautions' || !leftOut.includes(name))
    .filter((name) => !directives.some((directive) => directive.name === name))
    .flatMap((name) => allSections.find((section) => section.name === name) ?? [])
}

function made(section: Section, input: BodyInput): {name: SectionName; nodes: ComputedSection[]} {
  const {name, title} = section
  const content = contentOf(section, {...input, attributes: {}})
  return {name, nodes: content.length > 0 ? [computedSection(name, title, content)] : []}
}

/** Gather what the file does not have yet, a line a section, with the keys that would bring it. */
function stillOpen(rest: readonly {section: Section; needs: string[]}[]): ComputedSection[] {
  const open = rest.filter(({section, needs}) => needs.length > 0 && !section.quiet)
  const lines = open.map(({section, needs}): Inline[] => [`${section.title}. `, ...needed(needs)])
  return lines.length > 0 ? [computedSection('still-open', 'Still open', [list(lines)])] : []
}

/** Everything that sections are worded from, and the text of the file. */
interface BodyInput extends Omit<SectionInput, 'attributes'> {
  source: string
  /** Told of a section that fails, which is a fault of this program; the others stand. Without it, the fault is thrown. */
  failed?: Failed | undefined
}

/** Hear that a section could not be made, and why. */
export type Failed = (section: SectionName, error: Error) => void

function contentOf(section: Section, {failed, ...input}: BodyInput & SectionInput): RootContent[] {
  if (!failed) return section.content(input)
  try {
    return section.content(input)
  } catch (error) {
    failed(section.name, error as Error)
    return [
      paragraph('This program fails to show this, which is its own fault; the rest of the page stands.'),
    ]
  }
}

/** A section that cannot say what it needs is tried, and says that it fails. */
function needsOf(section: Section, {failed, ...input}: BodyInput & SectionInput): string[] {
  if (!failed) return section.needs(input)
  try {
    return section.needs(input)
  } catch {
    return []
  }
}

/**
 * Make what stands where a directive stood: its section, or one line that names the key which would bring it.
 * A second one of the same kind leaves nothing (`placed` holds those so far), an unknown one stays as written.
 */
function fillDirective(node: LeafDirective, placed: Set<string>, input: BodyInput): RootContent[] {
  if (node.name === 'leave-out') return []
  const section = allSections.find(({name}) => name === node.name)
  if (!section) return [asWritten(node, input.source)]
  const attributes = entriesOf(node)
  const view = Object.hasOwn(attributes, 'view') ? attributes.view! : ''
  const id = view ? `${section.name}-${view}` : section.name
  if (placed.has(id)) return []
  placed.add(id)
  const needs = needsOf(section, {...input, attributes})
  const made = needs.length > 0 ? [paragraph(...needed(needs))] : contentOf(section, {...input, attributes})
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
