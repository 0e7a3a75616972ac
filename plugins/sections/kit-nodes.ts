import type {ElementContent} from 'hast'
import type {BlockContent, Data, Heading, Paragraph, Parent, PhrasingContent, RootContent, Table} from 'mdast'

// Markdown has no section, no caption, no definition list, no fold and no drawing. Each of these nodes says by its data
// what element it becomes, so that any pipeline renders it; kit-to-markdown.ts says how it reads as text.

/** A table with what Markdown's own lacks; `children` are the scrolling box around the table, and the note. */
export interface CaptionedTable extends Parent {
  type: 'captionedTable'
  caption: PhrasingContent[]
  table: Table
  children: (Scrolling | Paragraph)[]
}
/** A box that scrolls sideways inside itself. */
interface Scrolling extends Parent {
  type: 'scrolling'
  children: Table[]
}
export interface Facts extends Parent {
  type: 'facts'
  children: Fact[]
}
export interface Fact extends Parent {
  type: 'fact'
  children: [FactPart, FactPart]
}
export interface FactPart extends Parent {
  type: 'factPart'
  children: PhrasingContent[]
}
/** Engineering figures, folded under a sentence that says what they mean. */
export interface Figures extends Parent {
  type: 'figures'
  children: (FiguresSummary | BlockContent)[]
}
interface FiguresSummary extends Parent {
  type: 'figuresSummary'
  children: PhrasingContent[]
}
/** A drawing or plot: its hast is in `data.hChildren`, `alt` is what it shows. */
export interface Drawing extends Parent {
  type: 'drawing'
  alt: string
  data: Data & {hChildren: ElementContent[]}
  children: []
}
/** `1/2` set as a proper fraction; it copies as plain text. */
export interface Fraction extends Parent {
  type: 'fraction'
  children: PhrasingContent[]
}
/** A quantity in the build's units, then the other in smaller type. */
export interface Measure extends Parent {
  type: 'measure'
  children: PhrasingContent[]
}
/** Text in smaller type. */
interface Small extends Parent {
  type: 'small'
  children: PhrasingContent[]
}
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
  interface BlockContentMap {
    captionedTable: CaptionedTable
    facts: Facts
    figures: Figures
    drawing: Drawing
  }
  interface PhrasingContentMap {
    computedValue: ComputedValue
    fraction: Fraction
    measure: Measure
    small: Small
  }
  interface RootContentMap {
    captionedTable: CaptionedTable
    computedSection: ComputedSection
    computedValue: ComputedValue
    drawing: Drawing
    fact: Fact
    factPart: FactPart
    facts: Facts
    figures: Figures
    figuresSummary: FiguresSummary
    fraction: Fraction
    measure: Measure
    scrolling: Scrolling
    small: Small
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
