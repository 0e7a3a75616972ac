import type {Root} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'
import {allSections} from './all.ts'
import {type BodyInput, fillDirective} from './fill-directive.ts'
import {fillValues} from './fill-values.ts'
import {list} from './kit/flow.ts'
import type {Inline} from './kit/inline.ts'
import {type SectionName, sectionNames} from './names.ts'
import {needed} from './needed.ts'
import {type ComputedSection, computedSection} from './placed.ts'
import type {Section} from './section.ts'

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
    needs: section.needs({...input, attributes: {}}),
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
  const content = section.content({...input, attributes: {}})
  return {name, nodes: content.length > 0 ? [computedSection(name, title, content)] : []}
}

/** Gather what the file does not have yet, a line a section, with the keys that would bring it. */
function stillOpen(rest: readonly {section: Section; needs: string[]}[]): ComputedSection[] {
  const open = rest.filter(({section, needs}) => needs.length > 0 && !section.quiet)
  const lines = open.map(({section, needs}): Inline[] => [`${section.title}. `, ...needed(needs)])
  return lines.length > 0 ? [computedSection('still-open', 'Still open', [list(lines)])] : []
}
