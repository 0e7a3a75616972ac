import type {Root, RootContent} from 'hast'
import {raw} from 'hast-util-raw'
import {defaultSchema, type Schema, sanitize} from 'hast-util-sanitize'
import {h} from 'hastscript'
import {EXIT, SKIP, visit} from 'unist-util-visit'
import {type Computed, isComputed} from './computed.ts'

// Media of another address, and what HTML no longer has, are left out; the rest is what Markdown itself can say.
const withoutTags = ['picture', 'source', 'strike', 'tt']
const anywhere = ['dir', 'id', 'lang', 'title']

/** What an author's HTML may hold: no script, style, class, form or handler, and no id that the page itself uses. */
const authorSchema: Schema = {
  ...defaultSchema,
  clobberPrefix: 'own-',
  tagNames: [
    ...(defaultSchema.tagNames ?? []).filter((tag) => !withoutTags.includes(tag)),
    'figcaption',
    'figure',
    'time',
  ],
  attributes: {
    a: [
      ['className', 'data-footnote-backref'],
      'href',
      'dataFootnoteBackref',
      'dataFootnoteRef',
      'ariaDescribedBy',
      'ariaLabel',
    ],
    code: [['className', /^language-./]],
    details: ['open'],
    h2: [['className', 'sr-only']],
    img: ['alt', 'height', 'src', 'width'],
    input: ['checked', ['disabled', true], ['type', 'checkbox']],
    li: [['className', 'task-list-item']],
    ol: [['className', 'contains-task-list'], 'reversed', 'start'],
    section: ['dataFootnotes', ['className', 'footnotes']],
    td: ['align', 'colSpan', 'rowSpan'],
    th: ['align', 'colSpan', 'rowSpan', 'scope'],
    time: ['dateTime'],
    ul: [['className', 'contains-task-list']],
    '*': anywhere,
  },
  protocols: {...defaultSchema.protocols, href: ['http', 'https', 'mailto', 'tel']},
}

/**
 * Make what the author wrote harmless, before anything computed stands among it.
 * Each stretch between two computed sections is read by itself, so that HTML left open swallows none of them.
 */
export function rehypeAuthor() {
  return (tree: Root): void => {
    const harmless: RootContent[] = []
    let stretch: RootContent[] = []
    for (const node of [...tree.children, undefined]) {
      if (node && !isComputed(node)) stretch.push(node)
      else {
        harmless.push(...clean(stretch), ...(node ? [node] : []))
        stretch = []
      }
    }
    tree.children = harmless
  }
}

function clean(stretch: RootContent[]): RootContent[] {
  const written: Root = {type: 'root', children: stretch}
  const whole = (hasHtml(written) ? raw(written, {passThrough: ['computed']}) : written) as Root
  const values = setAside(whole)
  const harmless = sanitize(whole, authorSchema)
  if (harmless.type !== 'root') return [harmless]
  visit(harmless, 'element', (node, at, parent) => {
    const value = values[node.data?.setAside ?? -1]
    if (!value) return undefined
    parent!.children[at!] = value
    return SKIP
  })
  return harmless.children
}

function hasHtml(tree: Root): boolean {
  let found = false
  visit(tree, 'raw', () => {
    found = true
    return EXIT
  })
  return found
}

/** Put a marked, empty element for each computed value; the mark is in `data`, which no HTML can write. */
function setAside(tree: Root): Computed[] {
  const values: Computed[] = []
  visit(tree, 'computed', (node, at, parent) => {
    parent!.children[at!] = {...h('span'), data: {setAside: values.length}}
    values.push(node)
    return SKIP
  })
  return values
}

declare module 'hast' {
  interface ElementData {
    setAside?: number
  }
}
