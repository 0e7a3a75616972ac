import type {Element, ElementContent} from 'hast'
import type {BlockContent, List, ListItem} from 'mdast'
import {paragraph} from './flow.ts'
import type {Inline} from './inline.ts'
import {toElements} from './to-elements.ts'

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
