import type {Element, ElementContent} from 'hast'
import type {
  BlockContent,
  Heading,
  Link,
  List,
  ListItem,
  Paragraph,
  PhrasingContent,
  RootContent,
  Strong,
  Text,
} from 'mdast'
import {type State, toHast} from 'mdast-util-to-hast'
import type {Drawing, Fact, FactPart, Facts, Figures} from './kit-nodes.ts'

/** What may stand in a line of text: plain text, or any phrasing node. */
export type Inline = string | PhrasingContent

/** Turn plain texts among inline content into nodes. */
export function inline(content: readonly Inline[]): PhrasingContent[] {
  return content.map((one) => (typeof one === 'string' ? text(one) : one))
}

/** Write plain text; nothing in it is taken as Markdown or HTML. */
export function text(value: string): Text {
  return {type: 'text', value}
}

/** Write strong text. */
export function strong(...content: Inline[]): Strong {
  return {type: 'strong', children: inline(content)}
}

/** Link to an address of the site from its root (`/woods/`), or to a part of the page (`#layout`). */
export function link(url: string, ...content: Inline[]): Link {
  return {type: 'link', url, children: inline(content)}
}

/** Write a paragraph. */
export function paragraph(...content: Inline[]): Paragraph {
  return {type: 'paragraph', children: inline(content)}
}

/** Write a heading inside a section, one level under the section's own. */
export function subHeading(...content: Inline[]): Heading {
  return {type: 'heading', depth: 3, children: inline(content)}
}

/** Write a quiet remark below what it is about. */
export function note(...content: Inline[]): Paragraph {
  return {...paragraph(...content), data: {hProperties: {className: ['note']}}}
}

/** Say where a table's or a threshold's numbers come from; give `common practice, no source` where they have none. */
export function source(...content: Inline[]): Paragraph {
  return {...paragraph('Source: ', ...content), data: {hProperties: {className: ['source']}}}
}

/** Write a list; an item is a text, a run of inline content, or whole blocks. */
export function list(
  items: readonly (string | readonly Inline[] | {blocks: BlockContent[]})[],
  options: {ordered?: boolean} = {},
): List {
  return {
    type: 'list',
    ordered: options.ordered ?? false,
    spread: false,
    children: items.map((item) => ({
      type: 'listItem',
      spread: false,
      children: isBlocks(item) ? item.blocks : [paragraph(...(typeof item === 'string' ? [item] : item))],
    })),
  }
}

function isBlocks(
  item: string | readonly Inline[] | {blocks: BlockContent[]},
): item is {blocks: BlockContent[]} {
  return typeof item === 'object' && 'blocks' in item
}

/** Write facts, each a name and what it is: `['Scale length', length(616, plan)]`. A definition list on the page. */
export function facts(rows: readonly (readonly [string, ...Inline[]])[]): Facts {
  return {type: 'facts', data: {hName: 'dl'}, children: rows.map(oneFact)}
}

function oneFact([name, ...value]: readonly [string, ...Inline[]]): Fact {
  return {type: 'fact', data: {hName: 'div'}, children: [part('dt', [name]), part('dd', value)]}
}

function part(hName: 'dt' | 'dd', content: readonly Inline[]): FactPart {
  return {type: 'factPart', data: {hName}, children: inline(content)}
}

/**
 * Fold engineering figures away under one line (`figures` where nothing better names them).
 * The sentence that says what they mean stands before it, in the open.
 */
export function figures(summary: Inline, content: readonly RootContent[]): Figures {
  return folded('figures', summary, content)
}

/**
 * Fold what a section holds away under one line that names what is in it; the answer stands before it, in the open.
 * Nothing to hold, no fold.
 */
export function fold(summary: Inline, content: readonly RootContent[], id?: string): Figures[] {
  return content.length > 0 ? [folded('fold', summary, content, id)] : []
}

function folded(className: string, summary: Inline, content: readonly RootContent[], id?: string): Figures {
  const opener = {type: 'figuresSummary' as const, data: {hName: 'summary'}, children: inline([summary])}
  return {
    type: 'figures',
    data: {hName: 'details', hProperties: {...(id && {id}), className: [className]}},
    children: [opener, ...(content as BlockContent[])],
  }
}

/** Name what a fold holds, of what is there: `Length, layers, figures`. */
export function holds(...parts: readonly (readonly [string, readonly unknown[]])[]): string {
  const words = parts.filter(([, content]) => content.length > 0).map(([name]) => name)
  const said = words.join(', ')
  return said.charAt(0).toUpperCase() + said.slice(1)
}

/**
 * Put a drawing or a plot on the page: a whole `<svg>` as hast, which names itself by its own title and desc.
 * `alt` says what it shows where only text can stand; the caption is read by everyone.
 */
export function figure(svg: Element, {alt, caption}: {alt: string; caption?: readonly Inline[]}): Drawing {
  const below: ElementContent[] = caption
    ? [{type: 'element', tagName: 'figcaption', properties: {}, children: toElements(inline(caption))}]
    : []
  return {
    type: 'drawing',
    alt,
    data: {hName: 'figure', hProperties: {className: ['drawing']}, hChildren: [svg, ...below]},
    children: [],
  }
}

/** One step on the bench: what to do, and what belongs under it (settings, cautions, a check). */
export interface BenchStep {
  does: readonly Inline[]
  under?: BlockContent[]
  isDone?: boolean
}

/** Write steps with a box to tick before each, on paper or on the screen; the text is the box's label. */
export function steps(items: readonly BenchStep[]): List {
  return {
    type: 'list',
    ordered: false,
    spread: false,
    data: {hProperties: {className: ['steps']}},
    children: items.map(oneStep),
  }
}

function oneStep({does, under = [], isDone = false}: BenchStep): ListItem {
  const line = paragraph(...does)
  const box: Element = {
    type: 'element',
    tagName: 'input',
    properties: {type: 'checkbox', ...(isDone && {checked: true})},
    children: [],
  }
  const words: Element = {
    type: 'element',
    tagName: 'span',
    properties: {},
    children: toElements(line.children),
  }
  const label: Element = {
    type: 'element',
    tagName: 'label',
    properties: {},
    children: [box, {type: 'text', value: ' '}, words],
  }
  const hChildren: ElementContent[] = [label, ...toElements(under)]
  return {type: 'listItem', spread: false, checked: isDone, data: {hChildren}, children: [line, ...under]}
}

/** Link to the page of rules, at the rule that a problem comes from: what it looks for, why, how to mend it. */
export function problemLink(rule: string, ...content: Inline[]): Link {
  return link('/rules/#' + rule, ...content)
}

/** Turn section content, inline or block, into the elements it becomes on the page. */
export function toElements(content: readonly RootContent[]): ElementContent[] {
  return state().all({type: 'paragraph', children: content as PhrasingContent[]})
}

let known: State | undefined

/** What the library makes anew for each tree: one does for all, since nothing here leads to definitions or footnotes. */
function state(): State {
  const keep = (its: State): undefined => {
    known = its
  }
  if (!known) toHast({type: 'root', children: []}, {handlers: {root: keep}})
  return known!
}

/** Say which keys would bring a section: `Add box.length and scale.length to the file.` */
export function needed(keys: readonly string[]): PhrasingContent[] {
  const named = keys.flatMap((key, at): PhrasingContent[] => [
    ...(at === 0 ? [] : [text(at === keys.length - 1 ? ' and ' : ', ')]),
    {type: 'inlineCode', value: key},
  ])
  return [text('Add '), ...named, text(' to the file.')]
}
