import type {BlockContent, Heading, Parent, PhrasingContent, RootContent} from 'mdast'
import './kit/nodes.ts'

/** A computed section in its place: a heading, then what was computed. */
export interface ComputedSection extends Parent {
  type: 'computedSection'
  children: [Heading, ...(RootContent | BlockContent)[]]
}

/** A value of the plan in a sentence. */
export interface ComputedValue extends Parent {
  type: 'computedValue'
  children: PhrasingContent[]
}

declare module 'mdast' {
  interface PhrasingContentMap {
    computedValue: ComputedValue
  }
  interface RootContentMap {
    computedSection: ComputedSection
    computedValue: ComputedValue
  }
}

/** Put content under its heading; the heading's id names the section on the page. */
export function computedSection(id: string, title: string, content: RootContent[]): ComputedSection {
  const heading: Heading = {
    type: 'heading',
    depth: 2,
    data: {hProperties: {id}},
    children: [{type: 'text', value: title}],
  }
  return {
    type: 'computedSection',
    data: {hName: 'section', hProperties: {className: ['computed', `computed-${id}`], ariaLabelledBy: [id]}},
    children: [heading, ...content],
  }
}
