import type {Nodes, Root, RootContent} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'
import {type SectionName, sectionNames} from '../tables/section-names.ts'
import {allSections} from './all.ts'
import {fillValues} from './fill-values.ts'
import {type Inline, list, needed, paragraph, text} from './kit.ts'
import {type ComputedSection, computedSection, type Figures} from './kit-nodes.ts'
import type {Section, SectionInput} from './section.ts'

/** What warns the maker. */
const forMakers: readonly SectionName[] = ['before-you-cut']

/** What stands before the prose: how it stands, and the drawing. */
const beforeProse: readonly SectionName[] = ['before-you-cut', 'drawing']

/**
 * Fill the body of a build file in place: directives and value references where they stand, and the sections that
 * the file does not place around the prose, in the order of section-names.ts. What cannot be filled stays as written.
 */
export function fillBody(tree: Root, given: BodyInput): void {
  const directives = tree.children.filter((node) => node.type === 'leafDirective')
  const out = [...leftOut(directives), ...(given.isForVisitors ? forMakers : [])]
  const input = {...given, isOnPage: (name: SectionName) => !out.includes(name)}
  fillValues(tree, input.plan)
  const placed = new Set<string>()
  tree.children = tree.children.flatMap((node) =>
    node.type === 'leafDirective' ? fillDirective(node, placed, input) : [node],
  )
  const rest = sectionsNotPlaced(directives, out).map((section) => ({
    section,
    needs: needsOf(section, {...input, attributes: {}}),
  }))
  const ready = asOne(rest.filter(({needs}) => needs.length === 0).map(({section}) => made(section, input)))
  const before = ready.filter(({name}) => beforeProse.includes(name)).flatMap(({nodes}) => nodes)
  const after = ready.filter(({name}) => !beforeProse.includes(name)).flatMap(({nodes}) => nodes)
  tree.children.splice(tree.children[0]?.type === 'yaml' ? 1 : 0, 0, ...before)
  // What is open in its file is the maker's alone.
  tree.children.push(...after, ...(given.isForVisitors ? [] : stillOpen(rest)))
}

/** List the sections that the file neither places nor leaves out, in their order; cautions are never left out. */
function sectionsNotPlaced(directives: readonly LeafDirective[], out: readonly string[]): Section[] {
  const order = [...beforeProse, ...sectionNames.filter((name) => !beforeProse.includes(name))]
  return order
    .filter((name) => !out.includes(name))
    .filter((name) => !directives.some((directive) => directive.name === name))
    .flatMap((name) => allSections.find((section) => section.name === name) ?? [])
}

function leftOut(directives: readonly LeafDirective[]): string[] {
  return directives
    .filter(({name}) => name === 'leave-out')
    .flatMap(({attributes}) => Object.keys(attributes ?? {}))
    .filter((name) => name !== 'cautions')
}

/** Layout and lines that follow each other are one section, since both are what is marked on the stick. */
function asOne(ready: ReturnType<typeof made>[]): ReturnType<typeof made>[] {
  const [layout] = ready.find(({name}) => name === 'layout')?.nodes ?? []
  const [lines] = ready.find(({name}) => name === 'lines')?.nodes ?? []
  if (!layout || !lines) return ready
  const [heading, ...stations] = layout.children
  const [, ...marks] = lines.children
  const folds = marks.filter(isFold).map((one, at) => (at === 0 ? withId(one, 'lines') : one))
  const open = [...marks, ...stations].filter((node) => !isFold(node))
  const mark: ComputedSection = {
    ...layout,
    children: [{...heading, children: [text('Mark')]}, ...open, ...within(stations.filter(isFold), folds)],
  }
  return ready.flatMap((one) =>
    one.name === 'lines' ? [] : one.name === 'layout' ? [{...one, nodes: [mark]}] : [one],
  )
}

/** Fold the lines' exact places away among the stations, which have each line's place already. */
function within([stations, ...others]: readonly Figures[], folds: readonly Figures[]): Figures[] {
  if (!stations) return [...folds]
  return [{...stations, children: [...stations.children, ...folds]}, ...others]
}

const isFold = (node: Nodes): node is Figures => node.type === 'figures'

const withId = (node: Figures, id: string): Figures => ({
  ...node,
  data: {...node.data, hProperties: {id, ...node.data?.hProperties}},
})

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
  /** Leave out what warns the maker. */
  isForVisitors?: boolean | undefined
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
  if (node.name === 'leave-out' || (input.isForVisitors && forMakers.includes(node.name as SectionName)))
    return []
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
